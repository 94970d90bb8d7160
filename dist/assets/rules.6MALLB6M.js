//# allFunctionsCalledOnLoad
import{a as Y}from"./chunk.VQSIRTZ7.js";import{a as Q}from"./chunk.DPTGSEAY.js";import{c as b}from"./chunk.MI3U7UAE.js";import"./chunk.P6PE5TZN.js";import{a as Z}from"./chunk.G5CYZMU4.js";import{b as B,k as D,p as G,q as V,r as _,s as J,t as K,v as h}from"./chunk.VB4DZK4W.js";import"./chunk.ZN66SSCI.js";import{g as W,i as X}from"./chunk.NG2N4OGR.js";import{c as w}from"./chunk.KUMKDYU5.js";import{b as I,c as P}from"./chunk.I6UDG63Q.js";import"./chunk.JH4WJHGB.js";import"./chunk.FR5VNLUN.js";import{Ca as l,Eb as F,Fa as d,Gb as N,Hb as z,Kb as y,Lb as H,Na as C,Oa as T,Ya as q,Z as $,d as a,e as A,f as k,g,m as R,o as U,r as m,t as M,ua as x,xa as c,xb as j}from"./chunk.TZYIGFUF.js";var ee=["not-yet","learning","known"];async function te(e,t){let r=h();if(!r)return;let n=r.standing(e),{units:s,c:o}=r.course,i=r.learner.id,u=s[n.unit].rules.map(f=>o.rules[f].id),p=M(i).filter(f=>u.includes(f.rule)),v=t==="learning"&&n.known>=0,S=t==="not-yet"?[]:u.map(f=>({learner:i,rule:f,since:!v&&p.find(ce=>ce.rule===f)?.since||T(),known:t==="known"?T():""})),L=t==="learning"&&n.state==="not-yet"?pe(r,n.unit):"";if(!await c(()=>x(i,u,S))||!L)return;q(L,()=>c(()=>x(i,u,p)),{hold:!0,name:"odd"})}function pe(e,t){let{units:r}=e.course,n=w(r,e.taught,t),s=e.reader.taught.filter(o=>e.standing(o.unit).state==="learning").map(o=>r[o.unit].name);return n.length?a("rules.odd-needs",{rule:r[t].name,rules:g(n.map(o=>r[o].name))}):s.length?a("rules.odd-ready",{rules:g(s)}):""}function re(e,t,r){let{units:n}=e.course,s=e.reader.order,o=i=>i>=0&&i<s.length&&V(n,s,t,i)?i:-1;return{earlier:o(r-1),later:o(r+1)}}async function ne(e,t){let r=h();if(!r)return;let n=r.reader.order.filter(u=>u!==e);n.splice(t,0,e);let{id:s,order:o}=r.learner;if(!await c(()=>$(s,{order:n.map(u=>r.course.units[u].id)})))return;let i=()=>c(()=>$(s,{order:o}));q(a("rules.moved",{rule:r.course.units[e].name,n:t+1}),i)}async function se(){let e=h();e&&await c(()=>$(e.learner.id,{order:void 0}))}function oe(e,t){let r=t.readiness,n=e.criterion,s=e.course.c.rules[r.rule].name,o=e.course.units[t.unit].rules.length>1,i=(u,p)=>l`<li class=${u?"met":""}>
      ${p}<span class="quiet"> · ${a(u?"ready.met":"ready.not-yet")}</span>
    </li>`;return l`
    <ul class="plan-ready" data-t="ready">
      ${i(r.sessions>=n.sessions,a("ready.sessions",{n:r.sessions,of:n.sessions}))}
      ${i(r.days>=n.days,a("ready.days",{n:r.days,of:n.days}))}
      ${r.percent>=0?i(r.percent>=n.percent,a("ready.found",{n:r.percent,of:n.percent})):d}
      ${i(!r.muchHelp,a("ready.help"))}
      ${o?i(r.practised>=r.wanted,a("ready.rule",{n:r.practised,of:r.wanted,rule:s})):d}
    </ul>
  `}var ae=e=>l`
  <details class="card" data-t="criterion">
    <summary>${a("ready.title")}</summary>
    <p>${a("ready.what")}</p>
    <div class="fields">
      ${O(e,"sessions",1,20)} ${O(e,"days",1,20)} ${O(e,"percent",50,100)}
    </div>
    <p class="quiet">${a("ready.source")}</p>
    <p class="quiet">${a("ready.review-source")}</p>
    <p class="quiet">${a("rules.order-source")}</p>
    ${e.learner.order?l`<button class="plain" data-t="reset-order" @click=${()=>{se()}}>
            ${a("rules.reset-order")}
          </button>`:d}
  </details>
`;function O(e,t,r,n){let s=`ready-${t}`,o=e.criterion[t],i=u=>{fe({[t]:u})};return l`<div>
    <label for=${s}>${a(`ready.${t}-field`)}</label>
    ${j({id:s,least:r,most:n,now:o,usual:B[t],choose:i})}
  </div>`}async function fe(e){let t=h();if(!t)return;let{sessions:r,days:n,percent:s}={...t.criterion,...e};await c(()=>$(t.learner.id,{ready:{sessions:r,days:n,percent:s}}))}var $e=7;function ie(e){let{units:t,x:r,c:n}=e.course,s=R().ahead,o=e.ahead(s?[D(r,n.juz,s)]:void 0),i=G(t,o,e.taught),u=e.reader.order.find(v=>i.some(S=>S.unit===v));if(u===void 0)return d;let p=e.learner.order?a("plan.your-order"):b(n,u);return l`
    <section class="card" data-t="next">
      <h2>${a("next.title")}</h2>
      <p><b>${t[u].name}</b>: ${y(p)}</p>
      ${he(e)}
      <label for="ahead">${a("next.where")}</label>
      ${ge(s,n.juz.length)}
      <ol class="plan-bars">
        ${ye(e,i,u)}
      </ol>
      <p class="quiet">${a("next.what",{child:N(m())})}</p>
    </section>
  `}function he(e){let t=e.reader.taught.find(n=>e.standing(n.unit).state==="learning");if(!t)return d;let r=e.course.units[t.unit].name;return l`<p class="quiet" data-t="not-ready">${a("next.not-ready",{rule:r})}</p>`}var ge=(e,t)=>l`
  <select
    id="ahead"
    data-t="ahead"
    @change=${r=>U({ahead:Number(r.target.value)})}
  >
    <option value="0" ?selected=${e===0}>${a("next.pages",{n:_})}</option>
    ${Array.from({length:t},(r,n)=>l`<option value=${n+1} ?selected=${e===n+1}>
          ${a("next.juz",{n:n+1})}
        </option>`)}
  </select>
`;function ye(e,t,r){let n=Math.max(1,...t.map(o=>o.places)),s=t.slice(0,$e);return s.some(o=>o.unit===r)||s.splice(-1,1,t.find(o=>o.unit===r)),s.map(o=>{let i=e.course.units[o.unit],u=o.unit===r;return l`<li .style=${`--pencil:var(--c-${i.family})`}>
      <button data-t="bar-${i.id}" @click=${()=>be(i.id)}>
        <span
          >${i.name}${u?l`<span class="quiet"> · ${a("next.proposed")}</span>`:d}</span
        >
        <span class="plan-bar" aria-hidden="true"
          ><span .style=${`inline-size:${Math.round(100*o.places/n)}%`}></span
        ></span>
        <span class="plan-figure">${a("today.places",{n:o.places})}</span>
      </button>
    </li>`})}function be(e){let t=document.querySelector(`[data-t="rung-${e}"]`);t&&(t.open=!0,t.scrollIntoView({block:"center",behavior:Y()}),t.querySelector("summary").focus({preventScroll:!0}))}var we=6;function de(e,t,r,n){let s=e.course.units[t.unit];return l`<li class=${t.state} .style=${W(s.family)}>
    <details data-t="rung-${s.id}" name="rung">
      <summary>
        <span class="rung-name"
          ><span class="inked">${X(s.family)}${s.name}</span> ${s.ar?z(s.ar,"ar small"):d}</span
        ><span class="state">${ve(t)}${n?` · ${a("step.next")}`:d}</span>
      </summary>
      ${Se(e,t,s,r)}
    </details>
  </li>`}function ve(e){if(e.state==="not-yet")return a("step.not-yet");let t=e.state==="learning",r=k(C(t?e.since:e.known)),n=a(t?"rules.since":"rules.known-since",{day:r});return`${a(`step.${e.state}`)} · ${n}`}function Se(e,t,r,n){let s=r.rules.map(i=>e.course.c.rules[i]),o=s.length>1;return l`
    ${s.map(i=>l`<p>${o?l`<b>${i.name}. </b>`:d}${i.short}</p>`)}
    ${ke(e,t,r)}
    <p class="quiet">
      ${a("rules.place",{n:n+1})}
      ${y(e.learner.order?a("plan.your-order"):b(e.course.c,t.unit))}
    </p>
    ${t.state==="learning"?oe(e,t):d} ${xe(t)}
    <div class="row">
      <a class="button plain" href=${Q(r.id)}>${a("rules.lesson")}</a>
      ${s.map(i=>Ce(i,o))}
    </div>
    ${m()?Te(e,t,r,n):d}
  `}function ke(e,t,r){let{units:n}=e.course;if(!r.needs.length)return d;let s=m()?w(n,e.taught,t.unit):[],o=g((s.length?s:r.needs).map(i=>n[i].name));return l`<p class="quiet">
    ${a(s.length?"rules.needs-first":"rules.needs",{rules:o})}
  </p>`}function xe(e){if(e.due<0)return d;let t=A(C(e.due));return l`<p class="quiet" data-t="due">
    ${a(e.state==="due"?"rules.is-due":"rules.due",{day:t})}
  </p>`}var Ce=(e,t)=>l`
  <a class="button plain" href="#/lines?rule=${e.id}" data-t="lines-${e.id}"
    >${t?a("rules.lines-of",{rule:e.name}):a("rules.lines")}</a
  >
`;function Te(e,t,r,n){let s=re(e,t.unit,n);return l`
    ${Ee(e,r.rules)}
    <div class="row choice" role="group" aria-label=${a("rules.state")}>
      ${ee.map(o=>qe(t,r,o))}
    </div>
    <div class="row">
      ${le(t,r,"earlier",s.earlier)} ${le(t,r,"later",s.later)}
    </div>
  `}var qe=(e,t,r)=>l`
  <button
    class="chip"
    data-t="${t.id}-${r}"
    aria-pressed=${r===e.state||r==="known"&&e.state==="due"}
    @click=${()=>{te(e.unit,r)}}
  >
    ${a(`step.${r}`)}
  </button>
`,le=(e,t,r,n)=>l`
  <button
    class="plain"
    data-t="${t.id}-${r}"
    ?disabled=${n<0}
    @click=${()=>{ne(e.unit,n)}}
  >
    ${a(`rules.${r}`)}
  </button>
`;function Ee(e,t){let{c:r}=e.course,n=t.map(i=>r.rules[i].id),s=e.sessions.filter(i=>ue(i,n).length);if(!s.length)return d;let o=s.slice(-we).reverse();return l`<details class="plan-history opens">
    <summary>${a("rules.history",{n:s.length})}</summary>
    <ul>
      ${o.map(i=>Oe(r,i,ue(i,n)))}
    </ul>
  </details>`}var ue=(e,t)=>I(e).filter(r=>t.includes(r.rule));function Oe(e,t,r){let{found:n,of:s}=P(r),o=s>0?` · ${a("record.found",{n,of:s})}`:"";return l`<li>
    ${k(t.day)}: <a href=${Z(e,t)}>${F(e.surahs,t.from,t.to)}</a>${o}
    · ${a(`outcome.${t.outcome}`)}
  </li>`}function Le(e){let t=K();return l`
    <main class="rules">
      <h1 tabindex="-1">${a("nav.rules")}</h1>
      ${t?Ae(t,!!m(e)):l`<p role="status">
              ${a(e.course==="failed"?"today.no-lines":"rules.looking")}
            </p>`}
    </main>
  `}function Ae(e,t){let r=e.reader.order.map(o=>e.standing(o)),n=r.filter(o=>o.known>=0).length,s=e.reader.order.find(o=>!e.taught[o]);return l`
    <p class="quiet" data-t="count">${a("rules.known",{n,of:r.length})}</p>
    ${t?ie(e):d}
    <ol class="ladder">
      ${H(r,o=>o.unit,(o,i)=>de(e,o,i,o.unit===s))}
    </ol>
    ${t?ae(e):d}
  `}var Et={title:()=>a("nav.rules"),view:Le,enter:()=>{J().catch(()=>{})}};export{Et as rules};
