//# allFunctionsCalledOnLoad
import{a as R,b as u,c as E}from"./chunk.WYM44QVL.js";import"./chunk.QZEEDDTA.js";import{f as k}from"./chunk.MHOPZ4P2.js";import{c as w}from"./chunk.SORUR6TA.js";import{a as b,c as v,e as S}from"./chunk.Y3ELL5AQ.js";import"./chunk.I6UDG63Q.js";import"./chunk.CB627SJK.js";import"./chunk.CKAGG5SX.js";import"./chunk.EM6JLGQQ.js";import"./chunk.JH4WJHGB.js";import"./chunk.FR5VNLUN.js";import{Ca as s,Eb as g,Gb as l,Ua as f,Va as h,d as o,e as i,m,o as d,q as c,r as p,ub as $,wb as y}from"./chunk.TZYIGFUF.js";function q(t){let{route:e}=t,r=v(t.catalogue,e.name==="result"?e.query:"");return s`<main class="handed">
    ${"bad"in r?R(t,r):N(t,r.given)}
  </main>`}function N(t,e){let r=t.sessions.find(a=>b(a.id)===e.id);return s`
    <h1 tabindex="-1">${o("nav.result")}</h1>
    <section class="card" data-t="told-result">
      <h2>${g(t.catalogue.surahs,e.from,e.to)}</h2>
      ${T(t,e)}
      <p data-t="result-how">${x(e)}</p>
      <p class="quiet" data-t="result-day">${i(e.day)}</p>
      ${k(o("result.says"),e.say)}
    </section>
    ${t.closed?$(t.closed):r?H(t,r):I(t,e)}
  `}var T=({catalogue:t},e)=>S(t,e).map(r=>s`<p data-t="result-found">${r}</p>`),x=t=>[o(`outcome.${t.outcome}`),t.helped&&o("result.helped"),t.paper&&o("record.on-paper"),t.together&&o("result.together"),t.minutes&&o("result.minutes",{n:t.minutes})].filter(Boolean).join(" · ");function H(t,e){let r=t.learners.find(n=>n.id===e.learner),a=()=>{f(e.learner)};return s`
    <p data-t="result-there">${o("result.there",{child:l(r)})}</p>
    <a class="button big" href="#/record" data-t="result-record" @click=${a}
      >${o("result.record")}</a
    >
  `}function I(t,e){let r=c(t).length>0,a=!r||!!u(t);return s`
    <form class="card" data-t="taking" @submit=${n=>{L(n,e)}}>
      ${r?E(t,o("result.whose"),n=>o("result.into",{child:n})):s`<p>${o("result.nobody")}</p>
              ${y("result-name")}`}
      <button class="main" data-t="result-take" ?disabled=${!a}>${o("result.take")}</button>
    </form>
  `}async function L(t,e){t.preventDefault();let r=t.currentTarget.querySelector("#result-name");r&&await h(r.value);let a=r?p():u(m());a&&await w(e,a.id,l(a))}var U={title:()=>o("nav.result"),view:q,enter:()=>d({received:void 0})};export{U as result};
