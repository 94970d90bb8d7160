import{a as H}from"./chunk.P4TWWTJR.js";import{a as z}from"./chunk.HOVA7EIO.js";import{b}from"./chunk.LCOACQMV.js";import{a as W}from"./chunk.4RNP4JMQ.js";import{a as J}from"./chunk.7P5GCF4H.js";import{g as K,i as Q}from"./chunk.ZZZOJVYT.js";import{C,G as c,i as $}from"./chunk.6M4S66JV.js";import{c as v}from"./chunk.4U7YGSLN.js";import"./chunk.QJIUZPA5.js";import{b as I,k as P,q as w,r as q,s as B,t as D,u as G,v as V,w as _,x as h}from"./chunk.T25QC45N.js";import"./chunk.C2CM5TJ3.js";import{e as j}from"./chunk.F2Z7EUMU.js";import{a as T}from"./chunk.ABXU77RL.js";import"./chunk.M2I3IBPU.js";import{a as l,c as u,n as F,o as N}from"./chunk.JW3C4FA3.js";import{c as s,d as A,e as k,g,i as R,k as y,m,o as M,t as U}from"./chunk.XR2DP2R4.js";var X=["not-yet","learning","known"];async function Y(e,t){let n=h();if(!n)return;let r=n.standing(e),{units:o,c:a}=n.course,i=n.learner.id,d=o[r.unit].rules.map(f=>a.rules[f].id),p=M(i).filter(f=>d.includes(f.rule)),S=t==="learning"&&r.known>=0,x=t==="not-yet"?[]:d.map(f=>({learner:i,rule:f,since:!S&&p.find(ie=>ie.rule===f)?.since||T(),known:t==="known"?T():""})),O=t==="learning"&&r.state==="not-yet"?ue(n,r.unit):"";!await c(()=>C(i,d,x))||!O||y({notice:{text:O,hold:!0,name:"odd",action:{label:s("undo"),run:()=>{c(()=>C(i,d,p))}}}})}function ue(e,t){let{units:n}=e.course,r=w(n,e.taught,t),o=e.reader.taught.filter(a=>e.standing(a.unit).state==="learning").map(a=>n[a.unit].name);return r.length?s("rules.odd-needs",{rule:n[t].name,rules:g(r.map(a=>n[a].name))}):o.length?s("rules.odd-ready",{rules:g(o)}):""}function Z(e,t,n){let{units:r}=e.course,o=e.reader.order,a=i=>i>=0&&i<o.length&&D(r,o,t,i)?i:-1;return{earlier:a(n-1),later:a(n+1)}}async function ee(e,t){let n=h();if(!n)return;let r=n.reader.order.filter(i=>i!==e);r.splice(t,0,e);let{id:o,order:a}=n.learner;await c(()=>$(o,{order:r.map(i=>n.course.units[i].id)}))&&y({notice:{text:s("rules.moved",{rule:n.course.units[e].name,n:t+1}),action:{label:s("undo"),run:()=>{c(()=>$(o,{order:a}))}}}})}async function te(){let e=h();e&&await c(()=>$(e.learner.id,{order:void 0}))}function ne(e,t){let n=t.readiness,r=e.criterion,o=e.course.c.rules[n.rule].name,a=e.course.units[t.unit].rules.length>1,i=(d,p)=>l`<li class=${d?"met":""}>
      ${p}<span class="quiet"> · ${s(d?"ready.met":"ready.not-yet")}</span>
    </li>`;return l`
    <ul class="plan-ready" data-t="ready">
      ${i(n.sessions>=r.sessions,s("ready.sessions",{n:n.sessions,of:r.sessions}))}
      ${i(n.days>=r.days,s("ready.days",{n:n.days,of:r.days}))}
      ${n.percent>=0?i(n.percent>=r.percent,s("ready.found",{n:n.percent,of:r.percent})):u}
      ${i(!n.muchHelp,s("ready.help"))}
      ${a?i(n.practised>=n.wanted,s("ready.rule",{n:n.practised,of:n.wanted,rule:o})):u}
    </ul>
  `}var re=e=>l`
  <details class="card" data-t="criterion">
    <summary>${s("ready.title")}</summary>
    <p>${s("ready.what")}</p>
    <div class="fields">
      ${L(e,"sessions",1,20)} ${L(e,"days",1,20)} ${L(e,"percent",50,100)}
    </div>
    <p class="quiet">${s("ready.source")}</p>
    <p class="quiet">${s("ready.review-source")}</p>
    <p class="quiet">${s("rules.order-source")}</p>
    ${e.learner.order?l`<button class="plain" data-t="reset-order" @click=${()=>{te()}}>
            ${s("rules.reset-order")}
          </button>`:u}
  </details>
`;function L(e,t,n,r){let o=`ready-${t}`,a=e.criterion[t],i=d=>{de({[t]:d})};return l`<div>
    <label for=${o}>${s(`ready.${t}-field`)}</label>
    ${z({id:o,least:n,most:r,now:a,usual:I[t],choose:i})}
  </div>`}async function de(e){let t=h();if(!t)return;let{sessions:n,days:r,percent:o}={...t.criterion,...e};await c(()=>$(t.learner.id,{ready:{sessions:n,days:r,percent:o}}))}var ce=7;function se(e){let{units:t,x:n,c:r}=e.course,o=R().ahead,a=e.ahead(o?[P(n,r.juz,o)]:void 0),i=B(t,a,e.taught),d=e.reader.order.find(S=>i.some(x=>x.unit===S));if(d===void 0)return u;let p=e.learner.order?s("plan.your-order"):v(r,d);return l`
    <section class="card" data-t="next">
      <h2>${s("next.title")}</h2>
      <p><b>${t[d].name}</b>: ${b(p)}</p>
      ${me(e)}
      <label for="ahead">${s("next.where")}</label>
      ${pe(o,r.juz.length)}
      <ol class="plan-bars">
        ${fe(e,i,d)}
      </ol>
      <p class="quiet">${s("next.what",{child:N(m())})}</p>
    </section>
  `}function me(e){let t=e.reader.taught.find(r=>e.standing(r.unit).state==="learning");if(!t)return u;let n=e.course.units[t.unit].name;return l`<p class="quiet" data-t="not-ready">${s("next.not-ready",{rule:n})}</p>`}var pe=(e,t)=>l`
  <select
    id="ahead"
    data-t="ahead"
    @change=${n=>y({ahead:Number(n.target.value)})}
  >
    <option value="0" ?selected=${e===0}>${s("next.pages",{n:G})}</option>
    ${Array.from({length:t},(n,r)=>l`<option value=${r+1} ?selected=${e===r+1}>
          ${s("next.juz",{n:r+1})}
        </option>`)}
  </select>
`;function fe(e,t,n){let r=Math.max(1,...t.map(a=>a.places)),o=t.slice(0,ce);return o.some(a=>a.unit===n)||o.splice(-1,1,t.find(a=>a.unit===n)),o.map(a=>{let i=e.course.units[a.unit],d=a.unit===n;return l`<li .style=${`--pencil:var(--c-${i.family})`}>
      <button data-t="bar-${i.id}" @click=${()=>$e(i.id)}>
        <span
          >${i.name}${d?l`<span class="quiet"> · ${s("next.proposed")}</span>`:u}</span
        >
        <span class="plan-bar" aria-hidden="true"
          ><span .style=${`inline-size:${Math.round(100*a.places/r)}%`}></span
        ></span>
        <span class="plan-figure">${s("today.places",{n:a.places})}</span>
      </button>
    </li>`})}function $e(e){let t=document.querySelector(`[data-t="rung-${e}"]`);t&&(t.open=!0,t.scrollIntoView({block:"center",behavior:W()}),t.querySelector("summary").focus({preventScroll:!0}))}var he=6;function ae(e,t,n,r){let o=e.course.units[t.unit];return l`<li class=${t.state} .style=${K(o.family)}>
    <details data-t="rung-${o.id}" name="rung">
      <summary>
        <span class="rung-name"
          ><span class="inked">${Q(o.family)}${o.name}</span> ${o.ar?F(o.ar,"ar small"):u}</span
        ><span class="state">${ge(t)}${r?` · ${s("step.next")}`:u}</span>
      </summary>
      ${ye(e,t,o,n)}
    </details>
  </li>`}function ge(e){if(e.state==="not-yet")return s("step.not-yet");let t=e.state==="learning",n=k(q(t?e.since:e.known)),r=s(t?"rules.since":"rules.known-since",{day:n});return`${s(`step.${e.state}`)} · ${r}`}function ye(e,t,n,r){let o=n.rules.map(i=>e.course.c.rules[i]),a=o.length>1;return l`
    ${o.map(i=>l`<p>${a?l`<b>${i.name}. </b>`:u}${i.short}</p>`)}
    ${be(e,t,n)}
    <p class="quiet">
      ${s("rules.place",{n:r+1})}
      ${b(e.learner.order?s("plan.your-order"):v(e.course.c,t.unit))}
    </p>
    ${t.state==="learning"?ne(e,t):u} ${ve(t)}
    <div class="row">
      <a class="button plain" href=${J(n.id)}>${s("rules.lesson")}</a>
      ${o.map(i=>we(i,a))}
    </div>
    ${m()?Se(e,t,n,r):u}
  `}function be(e,t,n){let{units:r}=e.course;if(!n.needs.length)return u;let o=m()?w(r,e.taught,t.unit):[],a=g((o.length?o:n.needs).map(i=>r[i].name));return l`<p class="quiet">
    ${s(o.length?"rules.needs-first":"rules.needs",{rules:a})}
  </p>`}function ve(e){if(e.due<0)return u;let t=A(q(e.due));return l`<p class="quiet" data-t="due">
    ${s(e.state==="due"?"rules.is-due":"rules.due",{day:t})}
  </p>`}var we=(e,t)=>l`
  <a class="button plain" href="#/lines?rule=${e.id}" data-t="lines-${e.id}"
    >${t?s("rules.lines-of",{rule:e.name}):s("rules.lines")}</a
  >
`;function Se(e,t,n,r){let o=Z(e,t.unit,r);return l`
    ${ke(e,n.rules)}
    <div class="row choice" role="group" aria-label=${s("rules.state")}>
      ${X.map(a=>xe(t,n,a))}
    </div>
    <div class="row">
      ${oe(t,n,"earlier",o.earlier)} ${oe(t,n,"later",o.later)}
    </div>
  `}var xe=(e,t,n)=>l`
  <button
    class="chip"
    data-t="${t.id}-${n}"
    aria-pressed=${n===e.state||n==="known"&&e.state==="due"}
    @click=${()=>{Y(e.unit,n)}}
  >
    ${s(`step.${n}`)}
  </button>
`,oe=(e,t,n,r)=>l`
  <button
    class="plain"
    data-t="${t.id}-${n}"
    ?disabled=${r<0}
    @click=${()=>{ee(e.unit,r)}}
  >
    ${s(`rules.${n}`)}
  </button>
`;function ke(e,t){let{c:n}=e.course,r=t.map(i=>n.rules[i].id),o=e.sessions.filter(i=>r.includes(i.rule));if(!o.length)return u;let a=o.slice(-he).reverse();return l`<details class="plan-history opens">
    <summary>${s("rules.history",{n:o.length})}</summary>
    <ul>
      ${a.map(i=>Ce(n,i))}
    </ul>
  </details>`}function Ce(e,t){let n=t.found+t.missed,r=U({rule:t.rule,from:t.from,to:t.to}),o=n>0?` · ${s("record.found",{n:t.found,of:n})}`:"";return l`<li>
    ${k(t.day)}: <a href=${r}>${j(e.surahs,t.from,t.to)}</a>${o} ·
    ${s(`outcome.${t.outcome}`)}
  </li>`}function Te(e){let t=_();return l`
    <main class="rules">
      <h1 tabindex="-1">${s("nav.rules")}</h1>
      ${t?qe(t,!!m(e)):l`<p role="status">
              ${s(e.course==="failed"?"today.no-lines":"rules.looking")}
            </p>`}
    </main>
  `}function qe(e,t){let n=e.reader.order.map(a=>e.standing(a)),r=n.filter(a=>a.known>=0).length,o=e.reader.order.find(a=>!e.taught[a]);return l`
    <p class="quiet" data-t="count">${s("rules.known",{n:r,of:n.length})}</p>
    ${t?se(e):u}
    <ol class="ladder">
      ${H(n,a=>a.unit,(a,i)=>ae(e,a,i,a.unit===o))}
    </ol>
    ${t?re(e):u}
  `}var vt={title:()=>s("nav.rules"),view:Te,enter:()=>{V().catch(()=>{})}};export{vt as rules};
