//# allFunctionsCalledOnLoad
import{a as wt}from"./chunk.CRAWD2MM.js";import"./chunk.5ENDEJPP.js";import{a as $t,b as D,c as ht,d as O,g as gt,h as vt,i as bt,j as kt,k as yt,l as St,m as y}from"./chunk.J74ADKTG.js";import"./chunk.VGRQ5E5B.js";import{a as Lt}from"./chunk.HYOI6S4G.js";import{a as xt}from"./chunk.OLGPCF3F.js";import{a as pt,b as ct,c as lt,e as mt,f as dt,g as k,h as ft,j as ut}from"./chunk.274Z3TRZ.js";import{a as ot,b as rt}from"./chunk.ZN66SSCI.js";import{g as it,i as st}from"./chunk.LRKQAVGI.js";import{a as at}from"./chunk.KUMKDYU5.js";import{a as et}from"./chunk.QP5HBOZL.js";import{d as T}from"./chunk.MMVXLLX2.js";import{a as H}from"./chunk.SZWTVXW4.js";import"./chunk.SMX76BLO.js";import"./chunk.FR5VNLUN.js";import{Ca as a,Fa as p,Gb as l,Lb as B,Oa as g,Pa as $,Ra as V,Sa as j,Ua as b,Ub as nt,Wa as q,Ya as E,Z as u,_ as Y,cb as J,d as o,f as S,m as f,o as c,q as w,qb as Q,r as L,s as z,sb as d,t as x,u as _,ua as C,ub as X,vb as Z,xa as m,y as G,zb as tt}from"./chunk.YRF4DGAD.js";var jt=2,Jt=["ios","mac","android","android-firefox"],Qt=t=>t.sessions.length>=jt&&!t.settings.noHome&&!!t.safety&&!t.safety.quiet&&!y(t)&&!(t.notice??t.newer??t.reading)&&t.kept&&t.offline.kind==="ready"&&!ht()&&(!!t.install||Jt.includes(D())),Tt=t=>a`${Qt(t)?Xt(t):p}`,Xt=t=>a`
  <section class="card" aria-label=${o("safe.home")} data-t="home">
    <p>${o("safe.home-why")}</p>
    ${t.install?p:a`<p class="quiet">${o(`home.${D()}`)}</p>`}
    <div class="row">
      ${I(t)}
      <button class="plain" data-t="home-no" @click=${P}>${o("safe.home-no")}</button>
    </div>
  </section>
`,P=()=>{$({noHome:!0})},I=t=>t.install?a`<button class="big" data-t="safe-install" @click=${()=>{vt()}}>
        ${o("safe.install")}
      </button>`:p;function qt(t){let e=D();return a`
    <details class="opens" data-t="safe-home" ?open=${t}>
      <summary>${o("safe.home")}</summary>
      <p>${o(`home.${e}`)}</p>
      <details class="opens quiet" data-t="safe-others">
        <summary>${o("safe.others")}</summary>
        ${$t.filter(r=>r!==e).map(r=>a`<p>${o(`home.${r}`)}</p>`)}
      </details>
    </details>
  `}var Et=t=>a`
  <section class="card" data-t="safe-panel">
    <h2>${o("safe.title")}</h2>
    <p data-t="safe-kept" .style=${"min-block-size:3em"}>${Dt(t)}</p>
    <p class="quiet" data-t="safe-backed">${oe(t)}</p>
    <div class="row">${Ot()} ${It(t)} ${I(t)}</div>
    ${Nt(t,t.safety?.kept==="week")}
  </section>
`,Zt={view:t=>a`${y(t)?te(t):Tt(t)}`,leave(){y(f())&&kt()}},te=t=>a`
  <section class="card" aria-label=${o("safe.title")} data-t="safe">
    <p>${Dt(t)}</p>
    ${t.safety?.question?p:Nt(t,!1)}
    <div class="row">
      ${It(t)} ${I(t)} ${St(t)?Ot():p}
      <button class="plain" data-t="safe-later" @click=${bt}>${o("safe.later")}</button>
    </div>
  </section>
`;async function ee(){addEventListener("appinstalled",P),c({keeping:Zt}),await O()}var Dt=({safety:t})=>t&&o(`safe.${t.question?"question":t.kept}`);function oe(t){let{backed:e}=t.settings;return e?o("safe.backed",{n:yt(t),day:S(g(new Date(e)))}):o("safe.never")}var Ot=()=>a`
  <button class="big" data-t="safe-backup" @click=${()=>{T()}}>${o("backup.save")}</button>
`,It=({safety:t})=>t?.question?a`<button class="big" data-t="safe-ask" @click=${()=>{gt()}}>
        ${o("safe.ask")}
      </button>`:p;function Nt({safety:t},e){return t?.kept==="file"?re():t?.kept==="installed"?p:qt(e)}var re=()=>a`
  <details class="opens" data-t="safe-file">
    <summary>${o("safe.file-what")}</summary>
    <p>${o("safe.file-newer")}</p>
    <p>${o("safe.file-links")}</p>
    <p><a href=${q("about.html#this-file")}>${o("safe.file-more")}</a></p>
  </details>
`;var ae=["once","every","never"],ne=t=>{$({counting:t})},Ut=({settings:t})=>a`
  <section class="card">
    ${d(o("learner.counting"),"counting",ae,t.counting??"once",e=>o(`learner.counting-${e}`),ne)}
    <p class="quiet">${o("learner.counting-what")}</p>
  </section>
`;function K(t,e,r,n){if(!_(r))return"no-date";if(r>n)return"future";let s=t.map(i=>({...i,[e]:e==="known"&&!i.known?"":r}));return s.some(i=>i.known&&i.known<i.since)?"order":s}var Ct=(t,e)=>a`${et([t.catalogue,t.taught,e.id],()=>ie(t,e))}`;function ie(t,e){let r=se(t,e);return a`
    <section class="card dates" data-t="dates">
      <h2>${o("dates.title")}</h2>
      <p class="quiet">${o(r.length?"dates.what":"dates.none")}</p>
      <ul>
        ${r.map(pe)}
      </ul>
      <p><a href="#/rules" data-t="to-rules">${o("dates.rules")}</a></p>
    </section>
  `}function se({catalogue:t},e){let r=x(e.id);return at(t).map(n=>{let s=n.rules.map(i=>t.rules[i].id);return{unit:n,entries:r.filter(i=>s.includes(i.rule))}}).filter(n=>n.entries.length).sort((n,s)=>n.entries[0].since<s.entries[0].since?1:-1)}function pe({unit:t,entries:e}){let[r]=e;return a`<li .style=${it(t.family)}>
    <p class="inked">${st(t.family)}${t.name}</p>
    <div class="fields">
      ${At(t,e,"since",r.since)}
      ${r.known?At(t,e,"known",r.known):p}
    </div>
  </li>`}function At(t,e,r,n){let s=`${r}-${t.id}`,i=({target:A})=>{let v=K(e,r,A.value,g());typeof v!="string"&&ce(t,e,v)},U=({target:A})=>{let v=A,M=K(e,r,v.value,g());typeof M=="string"&&(v.value=n,c({notice:{text:o(`dates.${M}`),name:"date"}}))};return a`<div>
    <label for=${s}>${o(`dates.${r}`)}<span class="hidden">: ${t.name}</span></label>
    <input
      id=${s}
      type="date"
      max=${g()}
      .value=${Lt(n)}
      data-t=${s}
      @change=${i}
      @blur=${U}
    />
  </div>`}async function ce(t,e,r){let[{learner:n}]=e,s=e.map(U=>U.rule);if(!await m(()=>C(n,s,r)))return;let i=()=>m(()=>C(n,s,e));E(o("dates.changed",{rule:t.name}),i)}function Ht(t){let e=t.load??"few",{first:r,later:n}=rt[e],s=i=>{m(()=>u(t.id,{load:i}))};return a`
    <section class="card">
      ${d(o("load.title"),"load",ot,e,i=>o(`load.${i}`),s)}
      <p class="quiet" data-t="load-what">
        ${o("load.what",{n:3,a:r[0],b:r[1],c:n[0],d:n[1]})}
      </p>
    </section>
  `}var F=t=>{$(t)};function Kt(t){let{rules:e}=t.catalogue;return a`
    <section class="card looks">
      <h2>${o("looks.title")}</h2>
      ${w(t).length>1?a`<p class="quiet" data-t="looks-own">
              ${o("looks.own",{child:l(L(t))})}
            </p>`:p}
      ${Bt(t,"size",.7,1.8)} ${Bt(t,"spacing",.4,2.5)} ${fe(t)}
      ${Pt(t,"theme",["auto","light","dark"])} ${de(t)}
      <h2>${o("looks.counts")}</h2>
      <p class="quiet">${o("looks.counts-what")}</p>
      ${G.map(r=>Pt(t,r,J(e,r)))}
    </section>
  `}var Bt=(t,e,r,n)=>a`
  <label for=${e}>${o(`looks.${e}`)}</label>
  <input
    id=${e}
    type="range"
    min=${r}
    max=${n}
    step="0.1"
    .value=${String(t.settings[e])}
    data-t=${e}
    @input=${s=>F({[e]:Number(s.target.value)})}
  />
`,Pt=(t,e,r)=>{let n=s=>typeof s=="number"?String(s):o(`looks.theme.${s}`);return d(o(`looks.${e}`),e,r,t.settings[e],n,s=>F({[e]:s}))},de=({settings:t})=>{let e=n=>o(`looks.large.${n}`),r=n=>F({large:n==="yes"});return d(o("looks.large"),"large",["no","yes"],t.large?"yes":"no",e,r)},fe=({sample:t})=>t==="failed"?p:a`<p class="text preview" lang="ar" dir="rtl" .textContent=${t?.text??""}></p>`;async function Ft(){let{sample:t,catalogue:e}=f();if(t&&t!=="failed")return;let r={s:1,a:1},[n]=await nt(e,r,r).catch(()=>[]);c({sample:n??"failed"})}async function Rt(t){await Wt(t,new Date().toISOString())&&(await zt(t),E(o("people.archived",{child:l(t)}),()=>R(t)))}async function R(t){await Wt(t,void 0)&&await b(t.id)}var Wt=(t,e)=>m(()=>u(t.id,{archived:e}));async function Mt(t){await m(()=>Y(t.id))&&(await zt(t),c({notice:{text:o("people.removed",{child:l(t)})}}))}async function zt({id:t}){if(f().settings.learner!==t)return;let[e]=ct(w(),f().sessions,"read");await b(e?.id??"")}function _t(t,e){let r=ft(t);return e?a`
    <section class="card people">
      ${r.length>1?[$e(r,e),he(t)]:p}
      <div class="row">${ut(t)}</div>
      ${xt(t)}
    </section>
  `:ue(t)}var ue=t=>a`
  <section class="card">
    <p>${o("people.none")}</p>
    <a class="button main" href="#/today">${o("nav.today")}</a>
  </section>
  ${W(t)}
`,$e=(t,e)=>a`
  <fieldset class="choice">
    <legend>${o("people.who")}</legend>
    <div class="row">
      ${B(t,r=>r.id,r=>a`<button
            type="button"
            class="chip"
            data-t="learner-${r.id}"
            aria-pressed=${r.id===e.id}
            @click=${()=>{b(r.id)}}
          >
            ${k(r)}<bdi>${l(r)}</bdi>
          </button>`)}
    </div>
  </fieldset>
`,he=({settings:t})=>d(o("people.order"),"sort",pt,t.sort??"read",e=>o(`people.order-${e}`),e=>{$({sort:e})});function W(t){let e=t.learners.filter(r=>r.archived);return e.length?a`
    <details class="card opens" data-t="archive">
      <summary><h2>${o("people.archived-list",{n:e.length})}</h2></summary>
      <ul class="sessions">
        ${B(e,r=>r.id,ge)}
      </ul>
    </details>
  `:p}var ge=t=>a`
  <li>
    <p class="who">
      ${k(t)}<span
        ><bdi>${l(t)}</bdi>
        <span class="quiet"
          >${o("people.archived-since",{day:S(t.archived.slice(0,10))})}</span
        ></span
      >
    </p>
    <div class="row">
      <button
        class="plain"
        data-t="back-${t.id}"
        aria-label=${o("people.back-child",{child:l(t)})}
        @click=${()=>{R(t)}}
      >
        ${o("people.back")}
      </button>
      <button
        class="plain"
        data-t="remove-${t.id}"
        aria-label=${o("people.remove-child",{child:l(t)})}
        @click=${()=>c({removing:t})}
      >
        ${o("people.remove")}
      </button>
    </div>
  </li>
`;var Gt=(t,e)=>a`
  <section class="card">
    <label for="nickname">${o("people.name")}</label>
    ${Q(e.id,be(e))} ${ke(t,e)}
    <p class="quiet below">${o("people.archive-what")}</p>
    <div class="row">
      <button class="plain" data-t="archive-learner" @click=${()=>{Rt(e)}}>
        ${o("people.archive")}
      </button>
      <button class="plain" data-t="remove-learner" @click=${()=>c({removing:e})}>
        ${o("people.remove")}
      </button>
    </div>
  </section>
`;function be(t){let e=({target:r})=>{let n=r;n.value=j(n.value),m(()=>u(t.id,{name:n.value}))};return a`<input
    id="nickname"
    .value=${t.name}
    maxlength=${V}
    autocomplete="off"
    placeholder=${o("child")}
    data-t="nickname"
    @change=${e}
  />`}function ke({learners:t},e){let r=lt(e,t),n=s=>{m(()=>u(e.id,{colour:s}))};return a`
    <fieldset class="choice colours">
      <legend>${o("people.colour")}</legend>
      <div class="row">
        ${Array.from({length:8},(s,i)=>a`<button
              type="button"
              class="plain"
              data-t="colour-${i}"
              aria-label=${o("people.colour-n",{n:i+1})}
              aria-pressed=${i===r}
              @click=${()=>n(i)}
            >
              <span class="disc" .style=${dt(i)}>${mt(l(e))}</span>
            </button>`)}
      </div>
    </fieldset>
  `}var ye=["forwards","backwards"];function Yt({catalogue:t},e){let r=i=>{m(()=>u(e.id,i))},n=e.direction??"forwards",s=i=>r({direction:i});return a`
    <section class="card">
      <h2>${o("place.title")}</h2>
      <p class="quiet">${o("place.what")}</p>
      ${tt(t,e.place,i=>r({place:i}))}
      ${d(o("place.direction"),"direction",ye,n,i=>o(`place.${i}`),s)}
    </section>
  `}function Vt({notice:t},e){let r=z(e.id).length,n=x(e.id).length,s=i=>{H(i),Mt(e)};return a`
    <dialog
      class="asks"
      data-t="confirm"
      aria-labelledby="sure"
      @close=${()=>c({removing:void 0})}
    >
      <h2 class="who" id="sure">
        ${k(e)}<span>${o("people.sure",{child:l(e)})}</span>
      </h2>
      <p>${o("people.goes")}</p>
      <ul data-t="goes">
        ${r?a`<li>${o("people.goes-sessions",{n:r})}</li>`:p}
        ${n?a`<li>${o("people.goes-rules",{n})}</li>`:p}
        <li>${o("people.goes-rest")}</li>
      </ul>
      <p class="quiet" role="status">${t?.text}</p>
      <div class="row">
        <button class="big" data-t="keep" @click=${H}>${o("people.keep")}</button>
        <button class="big" data-t="save-first" @click=${()=>{T()}}>
          ${o("people.backup-first")}
        </button>
        <button class="plain" data-t="confirm-remove" @click=${s}>
          ${o("people.remove")}
        </button>
      </div>
    </dialog>
  `}var Se=()=>a`<p>${o("offline.ready")}</p>`;function we(t){let e=L(t);return a`
    <main class="learner">
      ${t.closed?X(t.closed):a`<h1 tabindex="-1">${o("nav.learner")}</h1>
              ${_t(t,e)}`}
      ${e?[Gt(t,e),Yt(t,e),Ct(t,e),Ht(e)]:p} ${Kt(t)} ${Ut(t)}
      <div class="card">${wt(t)}</div>
      <section class="card">
        <h2>${o("print.on-paper")}</h2>
        <p class="quiet">${o("print.on-paper-what")}</p>
        <a class="button big" href="#/print" data-t="to-print">${o("print.title")}</a>
      </section>
      ${t.closed?p:Et(t)} ${e?W(t):p} ${Z(t.offline,Se())}
      <p class="quiet">${o("caution")} <a href=${q("about.html")}>${o("nav.about")}</a></p>
      ${t.removing?Vt(t,t.removing):p}
    </main>
  `}var Tr={title:()=>o("nav.learner"),view:we,enter(){Ft(),O()},leave(){let{removing:t,adding:e}=f();(t||e)&&c({removing:void 0,adding:!1})}};export{Tr as learner,ee as sayKept};
