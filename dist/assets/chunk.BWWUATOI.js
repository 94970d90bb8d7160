//# allFunctionsCalledOnLoad
import{a as g}from"./chunk.23NKZ6VE.js";import{g as f,i as d}from"./chunk.NG2N4OGR.js";import{Ca as l,Fa as u,H as p,I as m,d as c}from"./chunk.TZYIGFUF.js";function k(i,s){let e=g(i).filter(t=>s.rules.has(t.id)),n=t=>e.filter(r=>t.includes(r.family)).length>1,o=i.groups.filter(t=>n(t.families)||s.also?.includes(t.id));return[l`<div class="row">
      ${a(s,p,c("case.stops"),"")}
      ${o.map(t=>a(s,t.id,t.name,t.families[0]))}
    </div>`,l`<div class="row">${e.map(t=>a(s,t.id,t.name,t.family))}</div>`]}function a({rule:i,also:s=[],...e},n,o,t){let r=n===i||s.includes(n),h=!r&&s.length>=m,$=()=>r?s.filter(v=>v!==n):[...s,n],C=n===i||h;return b(`${e.name}-${n}`,o,t,r,()=>e.choose($()),C)}var b=(i,s,e,n,o,t=!1)=>l`<button
    type="button"
    class="chip"
    .style=${e?f(e):""}
    ?disabled=${t}
    aria-pressed=${n}
    data-t=${i}
    @click=${o}
  >
    ${e?d(e):u}${s}
  </button>`;export{k as a,b};
