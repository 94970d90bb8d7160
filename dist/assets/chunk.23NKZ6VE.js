//# allFunctionsCalledOnLoad
import{a as t}from"./chunk.KUMKDYU5.js";var i=e=>t(e).flatMap(l=>l.rules.map(s=>e.rules[s]));function a(e,l,s){let o=e.rules.filter(r=>r.id===l),n=i(e).filter(r=>r.id!==l&&(s==="all"||s.has(r.id)));return[...o,...n].map(r=>e.rules.indexOf(r))}export{i as a,a as b};
