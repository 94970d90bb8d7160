//# allFunctionsCalledOnLoad
import{b as l}from"./chunk.QZEEDDTA.js";import{c as f,d as c}from"./chunk.MHOPZ4P2.js";import{Ca as a,Fa as m,Gb as s,d as i,q as p,sb as d}from"./chunk.TZYIGFUF.js";function b({route:r},{bad:e,vars:o}){let t="query"in r&&!r.query.trim();return a`
    <h1 tabindex="-1">${i(t?"paste.title":"unread.title")}</h1>
    ${t?m:a`<p class="problem" data-t="unread">${i(`unread.${e}`,o)}</p>`}
    ${l(!t)}
  `}function g(r){let e=p(r);return e.length===1?e[0]:e.find(o=>o.id===f().learner)}function k(r,e,o){let t=p(r);if(t.length===1)return a`<p data-t="for">${o(s(t[0]))}</p>`;let u=n=>s(t.find(y=>y.id===n)),h=t.map(n=>n.id);return d(e,"for",h,g(r)?.id??"",u,n=>c({learner:n}))}export{b as a,g as b,k as c};
