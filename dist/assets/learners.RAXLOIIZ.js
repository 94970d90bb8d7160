//# allFunctionsCalledOnLoad
import{a as G,b as K}from"./chunk.K6AWTCIU.js";import{a as Z}from"./chunk.Z2KYQVY2.js";import{g as Y,h as u}from"./chunk.SY3C5SWB.js";import{c as J,d as F,s as Q,u as V}from"./chunk.VB4DZK4W.js";import"./chunk.ZN66SSCI.js";import{g as W,i as X}from"./chunk.NG2N4OGR.js";import"./chunk.KUMKDYU5.js";import{a as H}from"./chunk.RKHWIURI.js";import"./chunk.SZWTVXW4.js";import"./chunk.I6UDG63Q.js";import"./chunk.JH4WJHGB.js";import"./chunk.FR5VNLUN.js";import{Ca as i,Eb as I,Fa as x,Gb as p,Ja as j,Lb as S,Ma as A,Oa as U,R as T,Ua as z,d as a,f as P,g as m,ha as b,l as B,m as g,o as l,ub as D}from"./chunk.TZYIGFUF.js";var _=(t,o)=>w([t],o);async function w([t,...o],e){t&&(await z(t.id),l({together:o.map(n=>n.id),ticked:[],home:"learners"}),location.hash=e?T(e):"#/lines")}var dt=2;function R(t,{learner:o}){let e=r=>{let s=g().ticked.filter(d=>d!==o.id);l({ticked:r?[...s,o.id]:s})},n=i`<span class="who">${Y(o)}<bdi>${p(o)}</bdi></span>`;return H(`tick-${o.id}`,n,t.ticked.includes(o.id),e)}var O=({last:t})=>t?i`${P(t.day)}<span class="quiet"> · ${a(`outcome.${t.outcome}`)}</span>`:i`<span class="quiet">${a("everyone.nothing-yet")}</span>`;function L(t,{next:o},e){return o&&t.course&&t.course!=="failed"?e(o,t.course):i`<span class="quiet" aria-hidden="true">…</span>`}var M=(t,o)=>L(t,o,({learning:e,plan:n},{units:r})=>{let s=r[e];if(s)return i`<span class="inked" .style=${W(s.family)}
        >${X(s.family)}${s.name}</span
      >`;let d=n.do===J?"today.card.settle":"everyone.no-rule";return i`<span class="quiet">${a(d)}</span>`}),q=(t,o)=>L(t,o,({due:e},{c:n})=>{if(!e.length)return i`<span class="quiet">${a("everyone.nothing-due")}</span>`;let r=e.slice(0,dt).map(d=>n.rules[d].name),s=e.length-r.length;return m([...r,...s?[a("everyone.more",{n:s})]:[]])}),E=(t,o)=>L(t,o,({lines:e,rules:n,places:r,plan:s},{c:d,units:c})=>{if(!e)return i`<span class="quiet">${a("plan.nowhere")}</span>`;let h=s.do===F?a("today.card.teach",{rule:c[s.unit].name}):m(n.map(it=>it.name)),y=h?`${h} · ${a("today.places",{n:r})}`:a("today.card.read");return i`<span class="nowrap">${I(d.surahs,e.from,e.to)}</span><br /><span
        class="quiet"
        >${y}</span
      >`});function C(t,{learner:o,next:e}){let n=e||t.course==="failed",r=e?.lines;return i`<button
    class="big"
    data-t="start-${o.id}"
    ?disabled=${!n}
    @click=${()=>{_(o,r)}}
  >
    ${a(r||!n?"everyone.start":"today.choose")}<span class="hidden"
      >: ${p(o)}</span
    >
  </button>`}function tt(t,o){let e=G(t),n=t.reader.taught.filter(d=>t.standing(d.unit).state==="learning"),{lines:r,places:s}=e;return{of:o,plan:t.today,learning:n.at(-1)?.unit??-1,due:t.today.due,rules:K(e),lines:r,places:s}}function et(t,o,e,n){let r=b([...o],d=>d.learner),s=b([...e],d=>d.learner);return new Map(t.map(d=>{let c=r.get(d.id)??[],h=[n,d,c.map(y=>[y.id,y.updated??""]),s.get(d.id)??[]];return[d.id,JSON.stringify(h)]}))}var lt=B();function ot({learners:t,sessions:o,taught:e}){let n=A(U());return lt([t,o,e,n],()=>et(t,o,e,n))}function k(t,o){let e=t.outlooks.get(o);return e&&e.of===ot(t).get(o)?e:void 0}var f;function nt(t){f||!t.course||t.course==="failed"||u(t).every(o=>k(t,o.id))||(f=j(()=>{f=void 0;let o=g(),e=u(o).find(s=>!k(o,s.id)),n=e&&V(e);if(!n)return;let r=tt(n,ot(o).get(e.id));l({outlooks:new Map(o.outlooks).set(e.id,r)})}))}function rt(){f?.(),f=void 0}function at(t,o){let e=o.filter(c=>t.ticked.includes(c.learner.id)),n=e.length>1,r=e.map(c=>c.learner),s=e[0]?.next?.lines,d=m(r.map(c=>p(c)));return i`
    <section class="card" data-t="together">
      <h2>${a("together.title")}</h2>
      <p class="quiet" role="status" data-t="together-who">
        ${n?a("together.who",{child:d}):a("together.what")}
      </p>
      <div class="row">
        <button
          class="big"
          data-t="same-lines"
          ?disabled=${!n||!s}
          @click=${()=>{w(r,s)}}
        >
          ${a("together.same")}
        </button>
        <button
          class="plain"
          data-t="same-choose"
          ?disabled=${!n}
          @click=${()=>{w(r,void 0)}}
        >
          ${a("together.choose")}
        </button>
        ${ct(t,o)}
      </div>
    </section>
  `}function ct(t,o){let e=o.every(r=>t.ticked.includes(r.learner.id)),n=e?[]:o.map(r=>r.learner.id);return i`<button class="plain" data-t="tick-all" @click=${()=>l({ticked:n})}>
    ${a(e?"together.none":"together.all")}
  </button>`}var N=matchMedia("(min-width: 900px)"),st=()=>l({});function mt(t){let o=new Map;for(let e of t.sessions)o.has(e.learner)||o.set(e.learner,e);return u(t).map(e=>({learner:e,last:o.get(e.id),next:k(t,e.id)}))}function pt(t){if(t.closed)return i`<main class="learners">${D(t.closed)}</main>`;let o=mt(t);return i`
    <main class="learners">
      <h1 tabindex="-1">${a("nav.learners")}</h1>
      ${o.length?[ut(t,o),N.matches?ht(t,o):yt(t,o)]:x}
      ${o.length>1?at(t,o):x} ${Z(t)}
    </main>
  `}function ut(t,o){let e=o.filter(s=>s.next).length,n=o.length,r=t.course==="failed"?a("today.no-lines"):e<n?a("everyone.so-far",{n:e,of:n}):a("everyone.count",{n:e});return i`<p class="quiet" role="status" data-t="everyone-said">${r}</p>`}var ft=["who","last","rule","due","lines"],ht=(t,o)=>i`
  <table data-t="everyone">
    <thead>
      <tr>
        ${ft.map(e=>i`<th scope="col">${a(`everyone.${e}`)}</th>`)}
        <td></td>
      </tr>
    </thead>
    <tbody>
      ${S(o,e=>e.learner.id,e=>i`<tr data-t="row">
            <th scope="row">${R(t,e)}</th>
            <td>${O(e)}</td>
            <td>${M(t,e)}</td>
            <td>${q(t,e)}</td>
            <td>${E(t,e)}</td>
            <td>${C(t,e)}</td>
          </tr>`)}
    </tbody>
  </table>
`,yt=(t,o)=>i`
  <ul class="everyone" data-t="everyone">
    ${S(o,e=>e.learner.id,e=>i`<li class="card" data-t="row">
          <div class="row">${R(t,e)}${C(t,e)}</div>
          <dl>
            ${v("last",O(e))} ${v("rule",M(t,e))} ${v("due",q(t,e))}
            ${v("lines",E(t,e))}
          </dl>
        </li>`)}
  </ul>
`,v=(t,o)=>i`
  <div>
    <dt>${a(`everyone.${t}`)}</dt>
    <dd>${o}</dd>
  </div>
`,oe={title:()=>a("nav.learners"),view:pt,enter(){N.addEventListener("change",st),l({together:[],adding:!1}),Q().catch(()=>{})},drawn:nt,leave(){N.removeEventListener("change",st),rt(),l({ticked:[]})}};export{oe as learners};
