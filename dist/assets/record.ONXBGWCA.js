import{a as A,b as N,c as q}from"./chunk.SROMD2EF.js";import{a as M}from"./chunk.KHREQIDH.js";import{a as O}from"./chunk.REU32BFX.js";import"./chunk.APPKMSLV.js";import{a as h}from"./chunk.MMYUXHSV.js";import{a as d}from"./chunk.P4TWWTJR.js";import{g as y,i as $}from"./chunk.ZZZOJVYT.js";import{A as k,B as S,G as b}from"./chunk.6M4S66JV.js";import{e as T}from"./chunk.F2Z7EUMU.js";import"./chunk.ABXU77RL.js";import{a as n,c as i,o as L}from"./chunk.JW3C4FA3.js";import{c as o,d as f,e as g,i as p,k as u,m as E,n as v,t as w}from"./chunk.XR2DP2R4.js";async function I(t){let e=t.currentTarget,r=e.files?.[0];r&&await q(r),e.value=""}var F=({damaged:t})=>n`
  <section class="card backup">
    <h2>${o("backup.title")}</h2>
    <p>${o("backup.what")}</p>
    ${t>0?n`<p class="quiet" data-t="aside">${o("backup.aside",{n:t})}</p>`:i}
    <div class="row">
      <button class="big" data-t="backup" @click=${()=>{N()}}>${o("backup.save")}</button>
      <label for="restore" class="button big">${o("backup.restore")}</label>
      <input
        type="file"
        accept=".json,application/json"
        id="restore"
        class="hidden-file"
        data-t="restore"
        @change=${e=>{I(e)}}
      />
    </div>
  </section>
`;function R(t){let{rules:e,surahs:r}=p().catalogue,s=e.find(l=>l.id===t.rule),a=w({rule:s?.id??"",from:t.from,to:t.to}),m=l=>{M(l.currentTarget,()=>B(t))};return n`<li data-t="session">
    <div>
      <p>
        <b class=${s?"inked":i} .style=${s?y(s.family):""}
          >${s?$(s.family):i}${s?.name??(t.rule||o("record.reading"))}</b
        >
      </p>
      <p class="quiet"><a href=${a}>${T(r,t.from,t.to)}</a>${P(t)}</p>
    </div>
    <button
      class="plain"
      data-t="remove"
      aria-label=${o("record.remove-this",{day:f(t.day)})}
      @click=${m}
    >
      ${o("record.remove")}
    </button>
  </li>`}function P(t){let e=t.found+t.missed,r=t.rule&&e>0?` · ${o("record.found",{n:t.found,of:e})}`:"";return` · ${o(`outcome.${t.outcome}`)}${r}`}async function B(t){let e=A(t.id);if(!await b(()=>e.then(()=>S(t.id))))return!1;let r=await e,s=r&&{label:o("undo"),run:()=>{b(()=>k(r))}};return u({notice:{text:o("record.removed"),...s&&{action:s}}}),!0}function j(t){let e=new Map,r=(s,a)=>s.reduce((m,l)=>m+a(l),0);for(let s of t){if(!s.rule)continue;let a=e.get(s.rule);a?a.push(s):e.set(s.rule,[s])}return[...e].map(([s,a])=>{let m=a.slice(0,2),l=c=>c.found+c.missed;return{rule:s,sessions:a.length,days:new Set(a.map(c=>c.day)).size,found:r(a,c=>c.found),of:r(a,l),lastFound:r(m,c=>c.found),lastOf:r(m,l),day:a[0].day}})}function D(t){let e=j(t);return e.length?n`
    <details class="by-rule opens" data-t="by-rule" open>
      <summary><h2>${o("record.by-rule")}</h2></summary>
      <ul class="plan-bars">
        ${d(e,r=>r.rule,C)}
      </ul>
    </details>
  `:i}function C(t){let e=p().catalogue.rules.find(r=>r.id===t.rule);return n`<li data-t="total-${t.rule}" .style=${e?y(e.family):""}>
    <a href="#/rules"
      ><b class=${e?"inked":""}
        >${e?$(e.family):i}${e?.name??t.rule}</b
      ></a
    >
    ${t.of>0?J(t):i}
    <p class="quiet">
      ${`${o("record.sessions",{n:t.sessions})} ${o("record.on-days",{n:t.days})}, `}<span
        class="date"
        >${o("record.last-day",{day:g(t.day)})}</span
      >${K(t)}
    </p>
  </li>`}var J=({found:t,of:e})=>n`
  <span class="plan-figure">${o("record.found",{n:t,of:e})}</span>
  <span class="plan-bar" aria-hidden="true"
    ><span .style=${`inline-size:${Math.round(100*t/e)}%`}></span
  ></span>
`,K=t=>t.sessions>2&&t.lastOf>0?` · ${o("record.lately",{n:t.lastFound,of:t.lastOf,last:2})}`:i;var G=50,Q=t=>n`
  <main class="record">${t.closed?O(t.closed):U(t)}</main>
`;function U(t){let e=E(t),r=e?v(e.id):[];return n`
    <h1 tabindex="-1">${o("record.title",{child:L(e)})}</h1>
    ${r.length?i:n`<p class="empty" data-t="empty">${o("record.empty")}</p>`}
    ${h([r],()=>D(r))} ${h([r,t.listed],()=>V(r,t.listed))}
    ${r.length>t.listed?Y(r.length-t.listed):i} ${F(t)}
  `}var V=(t,e)=>d(W(t.slice(0,e)),([r])=>r,X);function W(t){let e=new Map;for(let r of t){let s=e.get(r.day);s?s.push(r):e.set(r.day,[r])}return[...e]}var X=([t,e])=>n`
  <section>
    <h2>${f(t)}</h2>
    <ul class="sessions">
      ${d(e,r=>r.id,R)}
    </ul>
  </section>
`,Y=t=>n`
  <button
    class="plain"
    data-t="more"
    @click=${()=>u({listed:p().listed+G})}
  >
    ${o("record.more",{n:t})}
  </button>
`,Lt={title:()=>o("nav.record"),view:Q,enter:()=>u({listed:G})};export{Lt as record};
