import{a as Y}from"./chunk.3D77W5K2.js";import{a as z}from"./chunk.ZHFQYOYG.js";import{a as N}from"./chunk.P7LSG5ID.js";import{b}from"./chunk.PCM2CTZV.js";import{a as X}from"./chunk.4RNP4JMQ.js";import{a as K}from"./chunk.7P5GCF4H.js";import{g as Q,i as W}from"./chunk.CLYPCFEQ.js";import{D as C,H as c,j as $}from"./chunk.RCYS5ULD.js";import{c as v}from"./chunk.2ICTYC5G.js";import"./chunk.U4LIOG5F.js";import"./chunk.XWG3HUNR.js";import{b as P,k as B,q as w,r as q,s as D,t as G,u as V,v as _,w as J,x as h}from"./chunk.6WKKIGEP.js";import{b as H,c as I}from"./chunk.LE5K7YXS.js";import"./chunk.C2CM5TJ3.js";import{e as U}from"./chunk.SBHWFWE5.js";import{a as T}from"./chunk.ABXU77RL.js";import"./chunk.E6OLOVED.js";import{a as l,c as u,n as j,o as F}from"./chunk.A6UYY2CG.js";import{d as o,e as A,f as k,h as g,j as R,l as y,o as m,q as M}from"./chunk.S3BIYIDD.js";import"./chunk.YE24VLP2.js";var Z=["not-yet","learning","known"];async function ee(e,t){let n=h();if(!n)return;let r=n.standing(e),{units:s,c:a}=n.course,i=n.learner.id,d=s[r.unit].rules.map(f=>a.rules[f].id),p=M(i).filter(f=>d.includes(f.rule)),S=t==="learning"&&r.known>=0,x=t==="not-yet"?[]:d.map(f=>({learner:i,rule:f,since:!S&&p.find(de=>de.rule===f)?.since||T(),known:t==="known"?T():""})),L=t==="learning"&&r.state==="not-yet"?me(n,r.unit):"";!await c(()=>C(i,d,x))||!L||y({notice:{text:L,hold:!0,name:"odd",action:{label:o("undo"),run:()=>{c(()=>C(i,d,p))}}}})}function me(e,t){let{units:n}=e.course,r=w(n,e.taught,t),s=e.reader.taught.filter(a=>e.standing(a.unit).state==="learning").map(a=>n[a.unit].name);return r.length?o("rules.odd-needs",{rule:n[t].name,rules:g(r.map(a=>n[a].name))}):s.length?o("rules.odd-ready",{rules:g(s)}):""}function te(e,t,n){let{units:r}=e.course,s=e.reader.order,a=i=>i>=0&&i<s.length&&G(r,s,t,i)?i:-1;return{earlier:a(n-1),later:a(n+1)}}async function ne(e,t){let n=h();if(!n)return;let r=n.reader.order.filter(i=>i!==e);r.splice(t,0,e);let{id:s,order:a}=n.learner;await c(()=>$(s,{order:r.map(i=>n.course.units[i].id)}))&&y({notice:{text:o("rules.moved",{rule:n.course.units[e].name,n:t+1}),action:{label:o("undo"),run:()=>{c(()=>$(s,{order:a}))}}}})}async function re(){let e=h();e&&await c(()=>$(e.learner.id,{order:void 0}))}function se(e,t){let n=t.readiness,r=e.criterion,s=e.course.c.rules[n.rule].name,a=e.course.units[t.unit].rules.length>1,i=(d,p)=>l`<li class=${d?"met":""}>
      ${p}<span class="quiet"> · ${o(d?"ready.met":"ready.not-yet")}</span>
    </li>`;return l`
    <ul class="plan-ready" data-t="ready">
      ${i(n.sessions>=r.sessions,o("ready.sessions",{n:n.sessions,of:r.sessions}))}
      ${i(n.days>=r.days,o("ready.days",{n:n.days,of:r.days}))}
      ${n.percent>=0?i(n.percent>=r.percent,o("ready.found",{n:n.percent,of:r.percent})):u}
      ${i(!n.muchHelp,o("ready.help"))}
      ${a?i(n.practised>=n.wanted,o("ready.rule",{n:n.practised,of:n.wanted,rule:s})):u}
    </ul>
  `}var oe=e=>l`
  <details class="card" data-t="criterion">
    <summary>${o("ready.title")}</summary>
    <p>${o("ready.what")}</p>
    <div class="fields">
      ${O(e,"sessions",1,20)} ${O(e,"days",1,20)} ${O(e,"percent",50,100)}
    </div>
    <p class="quiet">${o("ready.source")}</p>
    <p class="quiet">${o("ready.review-source")}</p>
    <p class="quiet">${o("rules.order-source")}</p>
    ${e.learner.order?l`<button class="plain" data-t="reset-order" @click=${()=>{re()}}>
            ${o("rules.reset-order")}
          </button>`:u}
  </details>
`;function O(e,t,n,r){let s=`ready-${t}`,a=e.criterion[t],i=d=>{pe({[t]:d})};return l`<div>
    <label for=${s}>${o(`ready.${t}-field`)}</label>
    ${N({id:s,least:n,most:r,now:a,usual:P[t],choose:i})}
  </div>`}async function pe(e){let t=h();if(!t)return;let{sessions:n,days:r,percent:s}={...t.criterion,...e};await c(()=>$(t.learner.id,{ready:{sessions:n,days:r,percent:s}}))}var fe=7;function ae(e){let{units:t,x:n,c:r}=e.course,s=R().ahead,a=e.ahead(s?[B(n,r.juz,s)]:void 0),i=D(t,a,e.taught),d=e.reader.order.find(S=>i.some(x=>x.unit===S));if(d===void 0)return u;let p=e.learner.order?o("plan.your-order"):v(r,d);return l`
    <section class="card" data-t="next">
      <h2>${o("next.title")}</h2>
      <p><b>${t[d].name}</b>: ${b(p)}</p>
      ${$e(e)}
      <label for="ahead">${o("next.where")}</label>
      ${he(s,r.juz.length)}
      <ol class="plan-bars">
        ${ge(e,i,d)}
      </ol>
      <p class="quiet">${o("next.what",{child:F(m())})}</p>
    </section>
  `}function $e(e){let t=e.reader.taught.find(r=>e.standing(r.unit).state==="learning");if(!t)return u;let n=e.course.units[t.unit].name;return l`<p class="quiet" data-t="not-ready">${o("next.not-ready",{rule:n})}</p>`}var he=(e,t)=>l`
  <select
    id="ahead"
    data-t="ahead"
    @change=${n=>y({ahead:Number(n.target.value)})}
  >
    <option value="0" ?selected=${e===0}>${o("next.pages",{n:V})}</option>
    ${Array.from({length:t},(n,r)=>l`<option value=${r+1} ?selected=${e===r+1}>
          ${o("next.juz",{n:r+1})}
        </option>`)}
  </select>
`;function ge(e,t,n){let r=Math.max(1,...t.map(a=>a.places)),s=t.slice(0,fe);return s.some(a=>a.unit===n)||s.splice(-1,1,t.find(a=>a.unit===n)),s.map(a=>{let i=e.course.units[a.unit],d=a.unit===n;return l`<li .style=${`--pencil:var(--c-${i.family})`}>
      <button data-t="bar-${i.id}" @click=${()=>ye(i.id)}>
        <span
          >${i.name}${d?l`<span class="quiet"> · ${o("next.proposed")}</span>`:u}</span
        >
        <span class="plan-bar" aria-hidden="true"
          ><span .style=${`inline-size:${Math.round(100*a.places/r)}%`}></span
        ></span>
        <span class="plan-figure">${o("today.places",{n:a.places})}</span>
      </button>
    </li>`})}function ye(e){let t=document.querySelector(`[data-t="rung-${e}"]`);t&&(t.open=!0,t.scrollIntoView({block:"center",behavior:X()}),t.querySelector("summary").focus({preventScroll:!0}))}var be=6;function ue(e,t,n,r){let s=e.course.units[t.unit];return l`<li class=${t.state} .style=${Q(s.family)}>
    <details data-t="rung-${s.id}" name="rung">
      <summary>
        <span class="rung-name"
          ><span class="inked">${W(s.family)}${s.name}</span> ${s.ar?j(s.ar,"ar small"):u}</span
        ><span class="state">${ve(t)}${r?` · ${o("step.next")}`:u}</span>
      </summary>
      ${we(e,t,s,n)}
    </details>
  </li>`}function ve(e){if(e.state==="not-yet")return o("step.not-yet");let t=e.state==="learning",n=k(q(t?e.since:e.known)),r=o(t?"rules.since":"rules.known-since",{day:n});return`${o(`step.${e.state}`)} · ${r}`}function we(e,t,n,r){let s=n.rules.map(i=>e.course.c.rules[i]),a=s.length>1;return l`
    ${s.map(i=>l`<p>${a?l`<b>${i.name}. </b>`:u}${i.short}</p>`)}
    ${Se(e,t,n)}
    <p class="quiet">
      ${o("rules.place",{n:r+1})}
      ${b(e.learner.order?o("plan.your-order"):v(e.course.c,t.unit))}
    </p>
    ${t.state==="learning"?se(e,t):u} ${xe(t)}
    <div class="row">
      <a class="button plain" href=${K(n.id)}>${o("rules.lesson")}</a>
      ${s.map(i=>ke(i,a))}
    </div>
    ${m()?Ce(e,t,n,r):u}
  `}function Se(e,t,n){let{units:r}=e.course;if(!n.needs.length)return u;let s=m()?w(r,e.taught,t.unit):[],a=g((s.length?s:n.needs).map(i=>r[i].name));return l`<p class="quiet">
    ${o(s.length?"rules.needs-first":"rules.needs",{rules:a})}
  </p>`}function xe(e){if(e.due<0)return u;let t=A(q(e.due));return l`<p class="quiet" data-t="due">
    ${o(e.state==="due"?"rules.is-due":"rules.due",{day:t})}
  </p>`}var ke=(e,t)=>l`
  <a class="button plain" href="#/lines?rule=${e.id}" data-t="lines-${e.id}"
    >${t?o("rules.lines-of",{rule:e.name}):o("rules.lines")}</a
  >
`;function Ce(e,t,n,r){let s=te(e,t.unit,r);return l`
    ${qe(e,n.rules)}
    <div class="row choice" role="group" aria-label=${o("rules.state")}>
      ${Z.map(a=>Te(t,n,a))}
    </div>
    <div class="row">
      ${ie(t,n,"earlier",s.earlier)} ${ie(t,n,"later",s.later)}
    </div>
  `}var Te=(e,t,n)=>l`
  <button
    class="chip"
    data-t="${t.id}-${n}"
    aria-pressed=${n===e.state||n==="known"&&e.state==="due"}
    @click=${()=>{ee(e.unit,n)}}
  >
    ${o(`step.${n}`)}
  </button>
`,ie=(e,t,n,r)=>l`
  <button
    class="plain"
    data-t="${t.id}-${n}"
    ?disabled=${r<0}
    @click=${()=>{ne(e.unit,r)}}
  >
    ${o(`rules.${n}`)}
  </button>
`;function qe(e,t){let{c:n}=e.course,r=t.map(i=>n.rules[i].id),s=e.sessions.filter(i=>le(i,r).length);if(!s.length)return u;let a=s.slice(-be).reverse();return l`<details class="plan-history opens">
    <summary>${o("rules.history",{n:s.length})}</summary>
    <ul>
      ${a.map(i=>Ee(n,i,le(i,r)))}
    </ul>
  </details>`}var le=(e,t)=>H(e).filter(n=>t.includes(n.rule));function Ee(e,t,n){let{found:r,of:s}=I(n),a=s>0?` · ${o("record.found",{n:r,of:s})}`:"";return l`<li>
    ${k(t.day)}: <a href=${Y(e,t)}>${U(e.surahs,t.from,t.to)}</a>${a}
    · ${o(`outcome.${t.outcome}`)}
  </li>`}function Oe(e){let t=J();return l`
    <main class="rules">
      <h1 tabindex="-1">${o("nav.rules")}</h1>
      ${t?Le(t,!!m(e)):l`<p role="status">
              ${o(e.course==="failed"?"today.no-lines":"rules.looking")}
            </p>`}
    </main>
  `}function Le(e,t){let n=e.reader.order.map(a=>e.standing(a)),r=n.filter(a=>a.known>=0).length,s=e.reader.order.find(a=>!e.taught[a]);return l`
    <p class="quiet" data-t="count">${o("rules.known",{n:r,of:n.length})}</p>
    ${t?ae(e):u}
    <ol class="ladder">
      ${z(n,a=>a.unit,(a,i)=>ue(e,a,i,a.unit===s))}
    </ol>
    ${t?oe(e):u}
  `}var Ct={title:()=>o("nav.rules"),view:Oe,enter:()=>{_().catch(()=>{})}};export{Ct as rules};
