//# allFunctionsCalledOnLoad
import{T as o}from"./chunk.TZYIGFUF.js";var y=({lines:e,since:s},t)=>t.filter(n=>n.day>=s&&r(n)===r(e)),r=({rule:e,from:s,to:t})=>o({rule:e,from:s,to:t}),a=(e,s)=>e.lessons.filter(t=>t.rules.every(n=>s.has(n))),g=(e,s,t)=>e.lessons.filter(n=>s.includes(n.id)&&!n.rules.every(i=>t.has(i)));export{y as a,a as b,g as c};
