//# allFunctionsCalledOnLoad
import{b as u,c as L}from"./chunk.SZWTVXW4.js";import{Ca as a,Fa as g,Gb as d,Lb as x,d as p,l as y,m as h,q as l}from"./chunk.TZYIGFUF.js";var U=["read","made"],$=(e,t)=>e.made===t.made?e.id<t.id?-1:1:e.made<t.made?-1:1;function O(e,t,n){let i=[...e].sort($);if(n==="made")return i;let s=new Map;for(let{learner:o,at:m}of t)s.has(o)||s.set(o,m);let r=o=>s.get(o.id)??"";return i.sort((o,m)=>r(o)===r(m)?0:r(o)<r(m)?1:-1)}var f=(e,t)=>e.colour??Math.max(0,[...t].sort($).findIndex(n=>n.id===e.id))%8;function D(e){let t=Array.from({length:8},()=>0);for(let n of e)t[f(n,e)]++;return t.indexOf(Math.min(...t))}var S="Segmenter"in Intl?new Intl.Segmenter:void 0,E=/[\u200e\u200f\u061c\u202a-\u202e\u2066-\u2069\s]/g;function b(e){let t=e.replace(E,"");return(S?.segment(t)[Symbol.iterator]().next().value?.segment??[...t][0]??"").toLocaleUpperCase()}var w=e=>`--own:var(--l-${e})`,c=e=>a`<span class="disc" aria-hidden="true" .style=${w(f(e,h().learners))}
    >${b(d(e))}</span
  >`;var C=y();function P(e){let{learners:t,sessions:n,settings:i}=e,s=i.sort??"read";return C([t,n,s],()=>O(l(e),n,s))}function Q(e,t,n){let i=P(e).filter(r=>r.id!==t.id);if(!i.length)return a`<span class="who">${c(t)}${v(t)}</span>`;let s=r=>o=>{u(o.currentTarget.closest("details")),n(r)};return a`
    <details class="menu who" data-t="switch" @focusout=${L} @keydown=${R}>
      <summary class="button plain">
        ${c(t)}${v(t)}<span class="hidden">: ${p("switch.what")}</span>
      </summary>
      <div class="menu-list">
        ${x(i,r=>r.id,r=>a`<button class="plain" data-t="switch-${r.id}" @click=${s(r.id)}>
              ${c(r)}<bdi>${d(r)}</bdi>
            </button>`)}
        ${M(e)}
      </div>
    </details>
  `}var v=e=>a`<bdi data-t="whose">${d(e)}</bdi>`,M=e=>l(e).length>1?a`<a class="button plain" href="#/learners" data-t="everyone">${p("nav.learners")}</a>`:g;function R(e){let t=e.currentTarget;e.key!=="Escape"||!t.open||(e.preventDefault(),e.stopPropagation(),u(t))}export{U as a,O as b,f as c,D as d,b as e,w as f,c as g,P as h,Q as i,M as j,R as k};
