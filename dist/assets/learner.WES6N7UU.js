//# allFunctionsCalledOnLoad
import{a as Tt}from"./chunk.H3NSAEQD.js";import"./chunk.KBVAMGSF.js";import{a as vt,b as I,c as bt,d as N,g as kt,h as yt,i as St,j as wt,k as Lt,l as xt,m as w}from"./chunk.AR37SOLR.js";import"./chunk.6IXUHZWD.js";import{a as Et}from"./chunk.AK3QRE62.js";import{a as qt}from"./chunk.Z2KYQVY2.js";import{a as mt,b as dt,c as ft,e as ut,f as $t,g as S,h as ht,j as gt}from"./chunk.SY3C5SWB.js";import{a as nt,b as it}from"./chunk.ZN66SSCI.js";import{g as ct,i as lt}from"./chunk.NG2N4OGR.js";import{a as st}from"./chunk.KUMKDYU5.js";import{a as at}from"./chunk.BUJT5NJZ.js";import{d as q}from"./chunk.AUQZJPEM.js";import{a as P}from"./chunk.SZWTVXW4.js";import"./chunk.JH4WJHGB.js";import"./chunk.FR5VNLUN.js";import{Ca as a,Ea as J,Fa as p,Gb as l,Lb as K,Oa as v,Pa as $,Ra as Q,Sa as X,Ua as y,Ub as pt,Wa as D,Ya as O,Z as u,_ as j,cb as Z,d as o,f as L,m as f,o as c,q as x,qb as tt,r as T,s as G,sb as d,t as E,u as Y,ua as B,ub as et,vb as ot,xa as m,y as V,zb as rt}from"./chunk.TZYIGFUF.js";var Xt=2,Zt=["ios","mac","android","android-firefox"],te=t=>t.sessions.length>=Xt&&!t.settings.noHome&&!!t.safety&&!t.safety.quiet&&!w(t)&&!(t.notice??t.newer??t.reading)&&t.kept&&t.offline.kind==="ready"&&!bt()&&(!!t.install||Zt.includes(I())),Dt=t=>a`${te(t)?ee(t):p}`,ee=t=>a`
  <section class="card" aria-label=${o("safe.home")} data-t="home">
    <p>${o("safe.home-why")}</p>
    ${t.install?p:a`<p class="quiet">${o(`home.${I()}`)}</p>`}
    <div class="row">
      ${C(t)}
      <button class="plain" data-t="home-no" @click=${F}>${o("safe.home-no")}</button>
    </div>
  </section>
`,F=()=>{$({noHome:!0})},C=t=>t.install?a`<button class="big" data-t="safe-install" @click=${()=>{yt()}}>
        ${o("safe.install")}
      </button>`:p;function Ot(t){let e=I();return a`
    <details class="opens" data-t="safe-home" ?open=${t}>
      <summary>${o("safe.home")}</summary>
      <p>${o(`home.${e}`)}</p>
      <details class="opens quiet" data-t="safe-others">
        <summary>${o("safe.others")}</summary>
        ${vt.filter(r=>r!==e).map(r=>a`<p>${o(`home.${r}`)}</p>`)}
      </details>
    </details>
  `}var It=t=>a`
  <section class="card" data-t="safe-panel">
    <h2>${o("safe.title")}</h2>
    <p data-t="safe-kept" .style=${"min-block-size:3em"}>${Nt(t)}</p>
    <p class="quiet" data-t="safe-backed">${ne(t)}</p>
    <div class="row">${Ct()} ${Ht(t)} ${C(t)}</div>
    ${Ut(t,t.safety?.kept==="week")}
  </section>
`,oe={view:t=>a`${w(t)?re(t):Dt(t)}`,leave(){w(f())&&wt()}},re=t=>a`
  <section class="card" aria-label=${o("safe.title")} data-t="safe">
    <p>${Nt(t)}</p>
    ${t.safety?.question?p:Ut(t,!1)}
    <div class="row">
      ${Ht(t)} ${C(t)} ${xt(t)?Ct():p}
      <button class="plain" data-t="safe-later" @click=${St}>${o("safe.later")}</button>
    </div>
  </section>
`;async function ae(){addEventListener("appinstalled",F),c({keeping:oe}),await N()}var Nt=({safety:t})=>t&&o(`safe.${t.question?"question":t.kept}`);function ne(t){let{backed:e}=t.settings;return e?o("safe.backed",{n:Lt(t),day:L(v(new Date(e)))}):o("safe.never")}var Ct=()=>a`
  <button class="big" data-t="safe-backup" @click=${()=>{q()}}>${o("backup.save")}</button>
`,Ht=({safety:t})=>t?.question?a`<button class="big" data-t="safe-ask" @click=${()=>{kt()}}>
        ${o("safe.ask")}
      </button>`:p;function Ut({safety:t},e){return t?.kept==="file"?ie():t?.kept==="installed"?p:Ot(e)}var ie=()=>a`
  <details class="opens" data-t="safe-file">
    <summary>${o("safe.file-what")}</summary>
    <p>${o("safe.file-newer")}</p>
    <p>${o("safe.file-links")}</p>
    <p><a href=${D("about.html#this-file")}>${o("safe.file-more")}</a></p>
  </details>
`;var se=["once","every","never"],pe=t=>{$({counting:t})},At=({settings:t})=>a`
  <section class="card">
    ${d(o("learner.counting"),"counting",se,t.counting??"once",e=>o(`learner.counting-${e}`),pe)}
    <p class="quiet">${o("learner.counting-what")}</p>
  </section>
`;function M(t,e,r,n){if(!Y(r))return"no-date";if(r>n)return"future";let s=t.map(i=>({...i,[e]:e==="known"&&!i.known?"":r}));return s.some(i=>i.known&&i.known<i.since)?"order":s}var Pt=(t,e)=>a`${at([t.catalogue,t.taught,e.id],()=>ce(t,e))}`;function ce(t,e){let r=le(t,e);return a`
    <section class="card dates" data-t="dates">
      <h2>${o("dates.title")}</h2>
      <p class="quiet">${o(r.length?"dates.what":"dates.none")}</p>
      <ul>
        ${r.map(me)}
      </ul>
      <p><a href="#/rules" data-t="to-rules">${o("dates.rules")}</a></p>
    </section>
  `}function le({catalogue:t},e){let r=E(e.id);return st(t).map(n=>{let s=n.rules.map(i=>t.rules[i].id);return{unit:n,entries:r.filter(i=>s.includes(i.rule))}}).filter(n=>n.entries.length).sort((n,s)=>n.entries[0].since<s.entries[0].since?1:-1)}function me({unit:t,entries:e}){let[r]=e;return a`<li .style=${ct(t.family)}>
    <p class="inked">${lt(t.family)}${t.name}</p>
    <div class="fields">
      ${Bt(t,e,"since",r.since)}
      ${r.known?Bt(t,e,"known",r.known):p}
    </div>
  </li>`}var b,de=t=>b?.id===t&&b===document.activeElement;function Bt(t,e,r,n){let s=`${r}-${t.id}`,i=async({target:A})=>{let g=b=A,{value:k}=g,_=M(e,r,k,v());typeof _!="string"&&(await fe(t,e,_),b===g&&g.value===k&&(b=void 0))},U=({target:A})=>{let g=A;b=void 0;let k=M(e,r,g.value,v());typeof k=="string"&&(g.value=n,c({notice:{text:o(`dates.${k}`),name:"date"}}))};return a`<div>
    <label for=${s}>${o(`dates.${r}`)}<span class="hidden">: ${t.name}</span></label>
    <input
      id=${s}
      type="date"
      max=${v()}
      .value=${de(s)?J:Et(n)}
      data-t=${s}
      @change=${i}
      @blur=${U}
    />
  </div>`}async function fe(t,e,r){let[{learner:n}]=e,s=e.map(U=>U.rule);if(!await m(()=>B(n,s,r)))return;let i=()=>m(()=>B(n,s,e));O(o("dates.changed",{rule:t.name}),i)}function Kt(t){let e=t.load??"few",{first:r,later:n}=it[e],s=i=>{m(()=>u(t.id,{load:i}))};return a`
    <section class="card">
      ${d(o("load.title"),"load",nt,e,i=>o(`load.${i}`),s)}
      <p class="quiet" data-t="load-what">
        ${o("load.what",{n:3,a:r[0],b:r[1],c:n[0],d:n[1]})}
      </p>
    </section>
  `}var R=t=>{$(t)};function Rt(t){let{rules:e}=t.catalogue;return a`
    <section class="card looks">
      <h2>${o("looks.title")}</h2>
      ${x(t).length>1?a`<p class="quiet" data-t="looks-own">
              ${o("looks.own",{child:l(T(t))})}
            </p>`:p}
      ${Ft(t,"size",.7,1.8)} ${Ft(t,"spacing",.4,2.5)} ${ge(t)}
      ${Mt(t,"theme",["auto","light","dark"])} ${he(t)}
      <h2>${o("looks.counts")}</h2>
      <p class="quiet">${o("looks.counts-what")}</p>
      ${V.map(r=>Mt(t,r,Z(e,r)))}
    </section>
  `}var Ft=(t,e,r,n)=>a`
  <label for=${e}>${o(`looks.${e}`)}</label>
  <input
    id=${e}
    type="range"
    min=${r}
    max=${n}
    step="0.1"
    .value=${String(t.settings[e])}
    data-t=${e}
    @input=${s=>R({[e]:Number(s.target.value)})}
  />
`,Mt=(t,e,r)=>{let n=s=>typeof s=="number"?String(s):o(`looks.theme.${s}`);return d(o(`looks.${e}`),e,r,t.settings[e],n,s=>R({[e]:s}))},he=({settings:t})=>{let e=n=>o(`looks.large.${n}`),r=n=>R({large:n==="yes"});return d(o("looks.large"),"large",["no","yes"],t.large?"yes":"no",e,r)},ge=({sample:t})=>t==="failed"?p:a`<p class="text preview" lang="ar" dir="rtl" .textContent=${t?.text??""}></p>`;async function Wt(){let{sample:t,catalogue:e}=f();if(t&&t!=="failed")return;let r={s:1,a:1},[n]=await pt(e,r,r).catch(()=>[]);c({sample:n??"failed"})}async function zt(t){await _t(t,new Date().toISOString())&&(await Yt(t),O(o("people.archived",{child:l(t)}),()=>W(t)))}async function W(t){await _t(t,void 0)&&await y(t.id)}var _t=(t,e)=>m(()=>u(t.id,{archived:e}));async function Gt(t){await m(()=>j(t.id))&&(await Yt(t),c({notice:{text:o("people.removed",{child:l(t)})}}))}async function Yt({id:t}){if(f().settings.learner!==t)return;let[e]=dt(x(),f().sessions,"read");await y(e?.id??"")}function Vt(t,e){let r=ht(t);return e?a`
    <section class="card people">
      ${r.length>1?[be(r,e),ke(t)]:p}
      <div class="row">${gt(t)}</div>
      ${qt(t)}
    </section>
  `:ve(t)}var ve=t=>a`
  <section class="card">
    <p>${o("people.none")}</p>
    <a class="button main" href="#/today">${o("nav.today")}</a>
  </section>
  ${z(t)}
`,be=(t,e)=>a`
  <fieldset class="choice">
    <legend>${o("people.who")}</legend>
    <div class="row">
      ${K(t,r=>r.id,r=>a`<button
            type="button"
            class="chip"
            data-t="learner-${r.id}"
            aria-pressed=${r.id===e.id}
            @click=${()=>{y(r.id)}}
          >
            ${S(r)}<bdi>${l(r)}</bdi>
          </button>`)}
    </div>
  </fieldset>
`,ke=({settings:t})=>d(o("people.order"),"sort",mt,t.sort??"read",e=>o(`people.order-${e}`),e=>{$({sort:e})});function z(t){let e=t.learners.filter(r=>r.archived);return e.length?a`
    <details class="card opens" data-t="archive">
      <summary><h2>${o("people.archived-list",{n:e.length})}</h2></summary>
      <ul class="sessions">
        ${K(e,r=>r.id,ye)}
      </ul>
    </details>
  `:p}var ye=t=>a`
  <li>
    <p class="who">
      ${S(t)}<span
        ><bdi>${l(t)}</bdi>
        <span class="quiet"
          >${o("people.archived-since",{day:L(t.archived.slice(0,10))})}</span
        ></span
      >
    </p>
    <div class="row">
      <button
        class="plain"
        data-t="back-${t.id}"
        aria-label=${o("people.back-child",{child:l(t)})}
        @click=${()=>{W(t)}}
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
`;var jt=(t,e)=>a`
  <section class="card">
    <label for="nickname">${o("people.name")}</label>
    ${tt(e.id,we(e))} ${Le(t,e)}
    <p class="quiet below">${o("people.archive-what")}</p>
    <div class="row">
      <button class="plain" data-t="archive-learner" @click=${()=>{zt(e)}}>
        ${o("people.archive")}
      </button>
      <button class="plain" data-t="remove-learner" @click=${()=>c({removing:e})}>
        ${o("people.remove")}
      </button>
    </div>
  </section>
`;function we(t){let e=({target:r})=>{let n=r;n.value=X(n.value),m(()=>u(t.id,{name:n.value}))};return a`<input
    id="nickname"
    .value=${t.name}
    maxlength=${Q}
    autocomplete="off"
    placeholder=${o("child")}
    data-t="nickname"
    @change=${e}
  />`}function Le({learners:t},e){let r=ft(e,t),n=s=>{m(()=>u(e.id,{colour:s}))};return a`
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
              <span class="disc" .style=${$t(i)}>${ut(l(e))}</span>
            </button>`)}
      </div>
    </fieldset>
  `}var xe=["forwards","backwards"];function Jt({catalogue:t},e){let r=i=>{m(()=>u(e.id,i))},n=e.direction??"forwards",s=i=>r({direction:i});return a`
    <section class="card">
      <h2>${o("place.title")}</h2>
      <p class="quiet">${o("place.what")}</p>
      ${rt(t,e.place,i=>r({place:i}))}
      ${d(o("place.direction"),"direction",xe,n,i=>o(`place.${i}`),s)}
    </section>
  `}function Qt({notice:t},e){let r=G(e.id).length,n=E(e.id).length,s=i=>{P(i),Gt(e)};return a`
    <dialog
      class="asks"
      data-t="confirm"
      aria-labelledby="sure"
      @close=${()=>c({removing:void 0})}
    >
      <h2 class="who" id="sure">
        ${S(e)}<span>${o("people.sure",{child:l(e)})}</span>
      </h2>
      <p>${o("people.goes")}</p>
      <ul data-t="goes">
        ${r?a`<li>${o("people.goes-sessions",{n:r})}</li>`:p}
        ${n?a`<li>${o("people.goes-rules",{n})}</li>`:p}
        <li>${o("people.goes-rest")}</li>
      </ul>
      <p class="quiet" role="status">${t?.text}</p>
      <div class="row">
        <button class="big" data-t="keep" @click=${P}>${o("people.keep")}</button>
        <button class="big" data-t="save-first" @click=${()=>{q()}}>
          ${o("people.backup-first")}
        </button>
        <button class="plain" data-t="confirm-remove" @click=${s}>
          ${o("people.remove")}
        </button>
      </div>
    </dialog>
  `}var Te=()=>a`<p>${o("offline.ready")}</p>`;function Ee(t){let e=T(t);return a`
    <main class="learner">
      ${t.closed?et(t.closed):a`<h1 tabindex="-1">${o("nav.learner")}</h1>
              ${Vt(t,e)}`}
      ${e?[jt(t,e),Jt(t,e),Pt(t,e),Kt(e)]:p} ${Rt(t)} ${At(t)}
      <div class="card">${Tt(t)}</div>
      <section class="card">
        <h2>${o("print.on-paper")}</h2>
        <p class="quiet">${o("print.on-paper-what")}</p>
        <a class="button big" href="#/print" data-t="to-print">${o("print.title")}</a>
      </section>
      ${t.closed?p:It(t)} ${e?z(t):p} ${ot(t.offline,Te())}
      <p class="quiet">${o("caution")} <a href=${D("about.html")}>${o("nav.about")}</a></p>
      ${t.removing?Qt(t,t.removing):p}
    </main>
  `}var Or={title:()=>o("nav.learner"),view:Ee,enter(){Wt(),N()},leave(){let{removing:t,adding:e}=f();(t||e)&&c({removing:void 0,adding:!1})}};export{Or as learner,ae as sayKept};
