//# allFunctionsCalledOnLoad
import{a as j,b as l,c as z}from"./chunk.WYM44QVL.js";import"./chunk.QZEEDDTA.js";import{c as F,d as I,f as W}from"./chunk.MHOPZ4P2.js";import{a as q}from"./chunk.RKHWIURI.js";import{a as T}from"./chunk.SORUR6TA.js";import"./chunk.Y3ELL5AQ.js";import"./chunk.I6UDG63Q.js";import{c as O}from"./chunk.CB627SJK.js";import{c as M,d as x,f as D}from"./chunk.CKAGG5SX.js";import"./chunk.EM6JLGQQ.js";import"./chunk.JH4WJHGB.js";import"./chunk.FR5VNLUN.js";import{Ca as r,Eb as H,Fa as c,Gb as N,R as y,Va as L,d as a,m as g,o as v,q as $,r as w,s as k,t as S,ub as G,wb as E,y as b}from"./chunk.TZYIGFUF.js";function C(t){let{route:e}=t,n=M(t.catalogue,e.name==="work"?e.query:"");return r`<main class="handed">
    ${"bad"in n?j(t,n):J(t,n.given)}
  </main>`}var h=(t,e)=>H(t.catalogue.surahs,e.from,e.to),J=(t,e)=>r`
  <h1 tabindex="-1">${a("nav.work")}</h1>
  <section class="card" data-t="given">
    <h2>${h(t,e.lines)}</h2>
    <p data-t="given-task">${x(t.catalogue,e.lines)}</p>
    <p data-t="given-times">${a("given.times",{n:e.times})}</p>
    ${W(a("given.says"),e.say)}
  </section>
  ${t.closed?K(t,e):P(t,e)}
`,K=(t,e)=>r`
  ${G(t.closed)}
  <a class="button big" href=${y(e.lines)} data-t="work-lines">${h(t,e.lines)}</a>
`;function P(t,e){let n=$(t).length>0,o=l(t);return r`
    <form class="card" data-t="starting" @submit=${i=>{U(i,e)}}>
      ${n?z(t,a("given.who"),i=>a("given.for",{child:i})):E("work-name")}
      ${o||!n?R(t,e,o):c}
      ${o?.work?r`<p class="quiet">${a("given.instead",{lines:h(t,o.work.lines)})}</p>`:c}
      <button class="main" data-t="work-start" ?disabled=${n&&!o}>${a("given.start")}</button>
      <p class="quiet">${a("given.kept")}</p>
    </form>
  `}var Q=t=>!t||!k(t.id).length,f=(t,e)=>F()[t]??Q(e);function R(t,e,n){let o=N(n),i=new Set(n?S(n.id).map(s=>s.rule):[]),m=O(t.catalogue,e.lessons,i),u={...t.settings,...n?.own},d=e.held&&b.some(s=>e.held[s]!==u[s]),p=(s,A)=>q(`take-${s}`,A,f(s,n),B=>I({[s]:B}));return r`
    ${m.length?r`${p("taught",a("given.taught",{n:m.length,child:o}))}
            <details class="opens">
              <summary>${a("given.which")}</summary>
              <ul>
                ${m.map(s=>r`<li>${s.name}</li>`)}
              </ul>
            </details>`:c}
    ${d?p("held",a("given.held",{lengths:D(e.held)})):c}
  `}async function U(t,e){t.preventDefault();let n=g(),o=t.currentTarget.querySelector("#work-name"),i={taught:f("taught",l(n)),held:f("held",l(n))},{s:m,a:u}=e.lines.from;o&&await L(o.value,{place:{s:m,a:u}});let d=o?w():l(n);d&&await T(d.id,e,i)}var ft={title:()=>a("nav.work"),view:C,enter:()=>v({received:void 0})};export{ft as work};
