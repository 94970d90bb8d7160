import{a as j,b as q,c as M}from"./chunk.EVS3ONGE.js";import{a as S}from"./chunk.RAJEIFQJ.js";import"./chunk.APPKMSLV.js";import{a as f}from"./chunk.4MBP4JSQ.js";import{a as N}from"./chunk.3D77W5K2.js";import{a as c}from"./chunk.ZHFQYOYG.js";import{g as m,i as d}from"./chunk.CLYPCFEQ.js";import{B as v,C as E,H as u}from"./chunk.RCYS5ULD.js";import"./chunk.U4LIOG5F.js";import{a as y,b as $,c as h,d as O}from"./chunk.LE5K7YXS.js";import{e as w}from"./chunk.SBHWFWE5.js";import"./chunk.ABXU77RL.js";import{a,c as n,o as T}from"./chunk.A6UYY2CG.js";import{d as r,e as p,f as b,j as i,l,o as g,p as k}from"./chunk.S3BIYIDD.js";import"./chunk.YE24VLP2.js";async function B(t){let e=t.currentTarget,o=e.files?.[0];o&&await M(o),e.value=""}var A=({damaged:t})=>a`
  <section class="card backup">
    <h2>${r("backup.title")}</h2>
    <p>${r("backup.what")}</p>
    ${t>0?a`<p class="quiet" data-t="aside">${r("backup.aside",{n:t})}</p>`:n}
    <div class="row">
      <button class="big" data-t="backup" @click=${()=>{q()}}>${r("backup.save")}</button>
      <label for="restore" class="button big">${r("backup.restore")}</label>
      <input
        type="file"
        accept=".json,application/json"
        id="restore"
        class="hidden-file"
        data-t="restore"
        @change=${e=>{B(e)}}
      />
    </div>
  </section>
`;function L(t){let{catalogue:e}=i();return a`<li data-t="session">
    <div>
      <p>${D(t)}</p>
      <p class="quiet">
        <a href=${N(e,t)}>${w(e.surahs,t.from,t.to)}</a
        >${I(t)}
      </p>
    </div>
    <button
      class="plain"
      data-t="remove"
      aria-label=${r("record.remove-this",{day:p(t.day)})}
      @click=${()=>{C(t)}}
    >
      ${r("record.remove")}
    </button>
  </li>`}function D(t){let e=$(t);return e.length?e.map((o,s)=>[s?" · ":n,F(o),e.length>1?G(o):n]):a`<b>${r("record.reading")}</b>`}function F({rule:t}){let e=i().catalogue.rules.find(o=>o.id===t);return e?a`<b class="inked" .style=${m(e.family)}>${d(e.family)}${e.name}</b>`:a`<b>${t}</b>`}function G(t){let{found:e,of:o}=h([t]);return o?` ${r("record.of",{n:e,of:o})}`:n}var I=t=>[r(`outcome.${t.outcome}`),t.paper?r("record.on-paper"):"",P(t)].filter(Boolean).map(e=>` · ${e}`).join("");function P(t){let e=$(t),{found:o,of:s}=h(e);return t.looked!==void 0&&t.looked<o?r("record.looked",{looked:t.looked,n:o,of:s}):s&&e.length===1?r("record.found",{n:o,of:s}):""}async function C(t){let e=j(t.id);if(!await u(()=>e.then(()=>E(t.id))))return;let o=await e,s=o&&{label:r("undo"),run:()=>{u(()=>v(o))}};l({notice:{text:r("record.removed"),...s&&{action:s}}})}function R(t){let e=O(t);return e.length?a`
    <details class="by-rule opens" data-t="by-rule" open>
      <summary><h2>${r("record.by-rule")}</h2></summary>
      <ul class="plan-bars">
        ${c(e,o=>o.rule,J)}
      </ul>
    </details>
  `:n}function J(t){let e=i().catalogue.rules.find(o=>o.id===t.rule);return a`<li data-t="total-${t.rule}" .style=${e?m(e.family):""}>
    <a href="#/rules"
      ><b class=${e?"inked":""}
        >${e?d(e.family):n}${e?.name??t.rule}</b
      ></a
    >
    ${t.of>0?K(t):n}
    <p class="quiet">
      ${`${r("record.sessions",{n:t.sessions})} ${r("record.on-days",{n:t.days})}, `}<span
        class="date"
        >${r("record.last-day",{day:b(t.day)})}</span
      >${Q(t)}
    </p>
  </li>`}var K=({found:t,of:e})=>a`
  <span class="plan-figure">${r("record.found",{n:t,of:e})}</span>
  <span class="plan-bar" aria-hidden="true"
    ><span .style=${`inline-size:${Math.round(100*t/e)}%`}></span
  ></span>
`,Q=t=>t.sessions>y&&t.lastOf>0?` · ${r("record.lately",{n:t.lastFound,of:t.lastOf,last:y})}`:n;var z=50,U=t=>a`
  <main class="record">${t.closed?S(t.closed):V(t)}</main>
`;function V(t){let e=g(t),o=e?k(e.id):[];return a`
    <h1 tabindex="-1">${r("record.title",{child:T(e)})}</h1>
    ${o.length?n:a`<p class="empty" data-t="empty">${r("record.empty")}</p>`}
    ${f([o],()=>R(o))} ${f([o,t.listed],()=>W(o,t.listed))}
    ${o.length>t.listed?Z(o.length-t.listed):n} ${A(t)}
  `}var W=(t,e)=>c(X(t.slice(0,e)),([o])=>o,Y);function X(t){let e=new Map;for(let o of t){let s=e.get(o.day);s?s.push(o):e.set(o.day,[o])}return[...e]}var Y=([t,e])=>a`
  <section>
    <h2>${p(t)}</h2>
    <ul class="sessions">
      ${c(e,o=>o.id,L)}
    </ul>
  </section>
`,Z=t=>a`
  <button
    class="plain"
    data-t="more"
    @click=${()=>l({listed:i().listed+z})}
  >
    ${r("record.more",{n:t})}
  </button>
`,jt={title:()=>r("nav.record"),view:U,enter:()=>l({listed:z})};export{jt as record};
