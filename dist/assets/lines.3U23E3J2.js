//# allFunctionsCalledOnLoad
import{a as qr}from"./chunk.BWWUATOI.js";import{$ as Qt,A as Or,B as rt,C as Hr,D as bt,E as kt,F as _,G as xt,H as ot,I as Cr,J as Pt,K as H,L as Rr,M as Ir,N as Zt,O as Dr,P as Nr,Q as R,R as I,T as B,U as Lt,V as zr,W as St,X as D,Y as Tt,Z as Xt,_ as Yt,a as yr,aa as Wr,b as $r,c as wr,d as jt,e as K,f as wt,g as d,h as kr,i as xr,j as Pr,k as h,l as C,m as j,n as O,o as J,p as tt,q as Ut,r as Er,s as U,t as Lr,u as Sr,v as S,w as Tr,x as Mr,y as et,z as Vt}from"./chunk.A4NKDQOT.js";import{b as br,c as Ar,e as Br}from"./chunk.IRDW5HWH.js";import{e as hr,f as gr}from"./chunk.AR37SOLR.js";import{a as vr}from"./chunk.6IXUHZWD.js";import{a as Et}from"./chunk.VQSIRTZ7.js";import{a as lr}from"./chunk.DPTGSEAY.js";import{a as er,b as rr}from"./chunk.P6PE5TZN.js";import{a as V,b as Z}from"./chunk.DRL2FVH7.js";import{f as b}from"./chunk.QXOMR7TY.js";import"./chunk.23NKZ6VE.js";import{g as $t,i as dr,j as fr,k as ur}from"./chunk.SY3C5SWB.js";import{s as sr,u as ar,v as cr}from"./chunk.VB4DZK4W.js";import"./chunk.ZN66SSCI.js";import{c as mr,g as Q,h as pr,i as M}from"./chunk.NG2N4OGR.js";import{a as or}from"./chunk.KUMKDYU5.js";import{b as _r}from"./chunk.OXJ272IV.js";import{a as tr}from"./chunk.BUJT5NJZ.js";import{b as Be,c as vt}from"./chunk.SZWTVXW4.js";import"./chunk.I6UDG63Q.js";import"./chunk.JH4WJHGB.js";import"./chunk.FR5VNLUN.js";import{A as ft,Ab as k,Bb as Xe,Ca as l,Cb as Ye,Db as z,Eb as Qe,Fa as m,Ga as F,Gb as L,H as x,Ha as ut,Hb as yt,Ia as Gt,Lb as Je,Mb as nr,Oa as qe,Ob as Kt,P as He,Pa as ze,Q as Ae,R as P,S as Ce,T as Re,U as Ie,Ua as ht,Va as _e,Wb as ir,Ya as gt,a as mn,ab as Y,bb as We,c as Le,d as s,fb as Ge,g as A,h as Se,ha as q,i as Te,ib as Fe,lb as Ke,m as u,ma as De,mb as Ft,na as Ne,nb as je,o as w,ob as Ue,p as G,q as Me,qb as Ve,r as E,t as Oe,wb as Ze,xa as Wt,z as dt}from"./chunk.TZYIGFUF.js";var pn=["found","missed","extra"],Gr=t=>pn.find(e=>e===t),Fr=t=>vr(u().catalogue.families.find(e=>`f-${e.id}`===t)?.id??"");function Jt(t,e,{name:r,key:o}){let n=Gr(r);if(n)return s(`said.${n}`);let i=o&&t.pencils.find(c=>c.key===o)?.name;return t.draft.phase!=="find"||t.answer?i||Fr(r):i||e.some(c=>c.name!==r&&!Gr(c.name))?s("said.marked-as",{family:i||Fr(r)}):s("said.marked")}function Mt(t,e,r,o){let n=e.filter(a=>ft(a,o)),i=new Set(n.map(a=>Jt(t,e,a)));return[Ye(r.letters[o.l]),...i].join(", ")}function dn(t,e){let r=k(t.letters[e]);return t.letters.some((n,i)=>i!==e&&k(n)===r)?s("said.nth",{letter:r,i:e+1}):r}function fn(t,e,r,o){let n=[...q(o,i=>`${i.name} ${i.key}`).values()].map(i=>{let[a]=i,{name:c}=a,p=We(i.map(f=>f.l)).map(f=>dn(r,f)),g=c==="found"||c==="missed"||Jt(t,e,a)===s("said.marked");return s(g?"said.letters":"said.on",{how:Jt(t,e,a),letters:A(p)})});return s("said.word",{word:r.text,told:n.join(", ")})}function Ot(t,e,r){let o=q(r,n=>`${n.v}.${n.w}`);for(let{v:n,w:i,el:a,word:c}of e.shown){let p=o.get(`${n}.${i}`);p?a.setAttribute("aria-label",fn(t,r,c,p)):a.removeAttribute("aria-label")}}var te;function nt(t=!1){it();let e=d();if(!e||!navigator.locks)return;let r=new AbortController;te=()=>r.abort(),un(`${e.draft.learner} ${Re(e.draft.lines)}`,r.signal,t)}function it(){te?.(),te=void 0}async function un(t,e,r){let o=()=>(Kr(!1),new Promise(i=>e.addEventListener("abort",()=>i()))),n=r?{steal:r}:{ifAvailable:!0};for(;!e.aborted;)await navigator.locks.request(t,n,i=>i?o():void 0).catch(()=>{}),e.aborted||Kr(!0),n={signal:e}}function Kr(t){let e=d();e&&e.elsewhere!==t&&h({elsewhere:t})}var X=0;async function ee(t){let e=++X,{catalogue:r}=u(),o=E()?.id??"";try{let n=await bt(r,o,t);if(e!==X)return;kr(re(n,o,t)),gn(o),vn(),addEventListener("pagehide",it),addEventListener("pageshow",Ur),ut(()=>{e===X&&(h({}),nt())}),setTimeout(()=>{e===X&&(sr().catch(()=>{}),ir(r).catch(()=>{}))},2e3)}catch(n){if(!(n instanceof nr))throw n;e===X&&w({unreadable:n.code})}}function re({draft:t,...e},r,o){let n=t?$r(hn(t,o),e.verses):yr(r,o);return xr({...e,draft:n})}function hn(t,{also:e=[]}){let r=[...new Set([...t.lines.also??[],...e])];return r.length?{...t,lines:{...t.lines,also:r}}:t}function gn(t){let{together:e}=u();e.length&&(w({together:[]}),C({together:e.filter(r=>r!==t)},{opening:!0}))}async function jr(t){let e=d()?.draft.lines,{route:r}=u();r.name==="lines"&&(oe(),await ht(t),u().route===r&&ee(e??r.lines))}function vn(){let t=d()?.draft.lines;!t||P(t)===location.hash||(history.replaceState(history.state,"",P(t)),w({route:{name:"lines",lines:t}}))}var Ur=t=>{t.persisted&&nt()};function oe(){X++,removeEventListener("pagehide",it),removeEventListener("pageshow",Ur),it(),Pr()}var Vr=!1;async function Zr(t,e){let r=E()?.id??"",o=await bt(u().catalogue,r,e);if(Vr)return;Vr=!0;let n=re(o,r,e),i=document.createElement("div");i.className="screen",i.style.cssText="position:fixed;inset:0;visibility:hidden";for(let p of[!0,!1]){if(await Gt(),u().route.name==="lines")return;let g={name:"lines",lines:e};F(t({...u(),route:g,practice:{...n,opening:p}}),i)}await Gt(),document.body.append(i),i.getBoundingClientRect();let a=b.of(i,n.verses),c=I(n);V(a,i,c,"ahead"),Ot(n,a,c),Z("ahead"),i.remove()}var $n=["always","join","stop","start"],wn=t=>t>=1611&&t<=1618||t===1761||t>=2288&&t<=2290,bn=t=>!t.letters.some(e=>e.rune===1648||e.marks.some(wn));function kn(t,e,r,o){return[t.details[r.detail]?.id,r.unwritten&&"unwritten",bn(e)&&"opening",$n[r.when],o?.rune.toString(16).padStart(4,"0")].filter(n=>typeof n=="string"&&n!=="")}function st(t,e,r,o){let n=t.rules[o.rule],i=br(e,r,o),a=i&&z(e,i),c=e[r].words[o.w],p=c.letters[o.l],g=kn(t,c,o,a).find(f=>n.cases?.[f]);return Le(g?n.cases[g]:n.why,{letter:k(p),cause:a?k(a):s("explain.next"),count:Y(n,o,t.settings).want})}function Xr(t,e,r,o,n){let i=z(e,o),a=Xe(i),c=e[o.v].events.filter(f=>f.w===o.w&&f.l===o.l&&r.holds(o.v,f)),p={title:k(i),facts:[a?s("explain.marks",{marks:a}):s("explain.bare")],rules:[],later:[]};e[o.v].words[o.w].lined&&p.facts.push(s("explain.lined"));let g=(f,v)=>t.rules[v.rule].role===f;c.some(f=>g("silent",f)&&f.when!==3)&&p.facts.push(s("explain.silent")),c.some(f=>g("long",f))&&p.facts.push(s("explain.long")),c.some(f=>g("ending",f))&&p.facts.push(s("explain.stop"));for(let f of c){let v=t.rules[f.rule];n.has(v.id)?p.rules.push({rule:v,why:st(t,e,o.v,f),detail:t.details[f.detail]?.text??"",held:Y(v,f,t.settings).want}):p.later.includes(v)||p.later.push(v)}return p}function at(t,e,r,o){if(!r.length)return m;let n=e==="alike"?"found":e,i=e==="missed"&&t.draft.paper?"places":e;return l`<details class="told ${e}" ?open=${o} data-t=${e}>
    <summary>${pr(n,`var(--${n})`)}${s(`told.${i}`,{n:r.length})}</summary>
    ${ne(t,n,r)}
  </details>`}var ne=(t,e,r)=>l`
  <ul>
    ${[...q(r,o=>o.words)].map(([o,n])=>xn(t,e,o,n))}
  </ul>
`,xn=(t,e,r,o)=>l`
  <li class=${e}>
    <div class="word-links" dir="rtl">${o.map(n=>Pn(t,n.at))}</div>
    <p>${r}</p>
  </li>
`;function Pn(t,e){let r=t.verses[e.v],o=r.words[e.w].text,n=k(z(t.verses,e)),i=()=>h({explained:e,caret:e});return l`<button
    class="word-link"
    data-t="told-${e.v}-${e.w}-${e.l}"
    @click=${i}
    aria-label=${s("told.show",{letter:n,word:o,a:r.a})}
  >
    ${yt(o)}
  </button>`}var Yr=(t,e)=>l`
  <section class="card on-paper" data-t="on-paper">
    ${e.filter(ot).map(r=>En(t,r))}
    <p>${s("paper.verses")}</p>
    <ul class="hides">
      ${[...Pt(t,e)].map(([r,o])=>l`<li>${s("drawer.in-verse",{a:t.verses[r].a,n:o})}</li>`)}
    </ul>
    <p class="quiet">${s("paper.free")}</p>
  </section>
`;function En(t,e){let r=ot(e),o=`paper-${e.pencil.id}`,n=t.draft.paper?.[e.pencil.id],i=a=>Ln(t,e.pencil.id,a.target.value,r);return l`<div class="field">
    <label for=${o}>${M(e.pencil.family)}${s("paper.found",{rule:e.pencil.name})}</label>
    <input
      id=${o}
      type="number"
      inputmode="numeric"
      min="0"
      max=${r}
      .value=${n===void 0?"":String(n)}
      data-t=${o}
      @change=${i}
    />
    <span class="quiet" aria-live="polite"
      >${n===void 0?m:s(n<r?"paper.left":"paper.all",{n:r-n,of:r})}</span
    >
  </div>`}function Ln(t,e,r,o){let{[e]:n,...i}=t.draft.paper??{},a=Math.round(Number(r)),p=r.trim()!==""&&Number.isFinite(a)?{...i,[e]:Math.min(o,Math.max(0,a))}:i;C({paper:p})}function Jr(t){let e=j(t),r=Tn(t),o=(i,a)=>t.verses[i].words[a].letters.length-1,n=i=>t.verses.flatMap((a,c)=>a.words.flatMap((p,g)=>e.after(c,g)===i&&(i||e.movable(c,g))?[{at:{v:c,w:g,l:o(c,g)},words:Mn(t,c,g,f=>r(f)&&e.holds(c,f))}]:[]));return l`<section class="told stops" data-t="stops">
    ${Qr(t,"told.stop-here",n(!0))} ${Qr(t,"told.read-on",n(!1))}
  </section>`}var Qr=(t,e,r)=>r.length?l`<h2>${s(e)}</h2>
        ${ne(t,"stops",r)}`:m;function Tn(t){let{catalogue:e}=u(),r=Ge(e),o=R(t);return n=>{let i=e.rules[n.rule];return i.family===r||o.has(i.id)&&n.when===2&&!n.before}}function Mn(t,e,r,o){let n=G(),a=t.verses[e].events.filter(c=>c.w===r&&o(c)).flatMap(c=>[st(n,t.verses,e,c),n.details[c.detail]?.text??""]);return[...new Set(a.filter(Boolean))].join(" ")||s("told.no-change")}function Ht(t){if(t.pencils.every(i=>i.id===x))return s("told.stops");let e=_(t),{found:r,of:o}=Cr(e),n=e.reduce((i,a)=>i+a.extra.length,0);return o===0?s(n?"told.none-marked":"told.none"):t.draft.paper?s("told.on-paper",{n:o}):r===o?s(n?"told.all-extra":"told.all",{n:n||o,of:o}):H(t)?[s("told.so-far",{n:r}),...Hn(t,e)].join(" "):On(t,r,o)}function On(t,e,r){let{looked:o}=t.draft;return o!==void 0&&o<e?s("told.looked",{looked:o,n:e,of:r}):s("told.some",{n:e,of:r})}function Hn(t,e){return[...q([...Pt(t,e)],([,r])=>r)].map(([r,o])=>{let n=A(o.map(([i])=>String(t.verses[i].a)));return s(o.length>1?"told.hide-each":"told.hides",{a:n,n:r})})}function to(t){let e=_(t);return t.draft.paper&&t.draft.told!=="all"?Yr(t,e):l`
    ${e.length>1?An(e):m}
    ${H(t)?m:at(t,"missed",Cn(t,e),!0)}
    ${at(t,"extra",Dn(t,e),!0)} ${at(t,"alike",zn(t,e),!0)}
    ${at(t,"found",Rn(t,e),!1)}
    ${t.pencils.some(r=>r.id===x)?Jr(t):m}
  `}var An=t=>l`
  <ul class="by-pencil" data-t="by-pencil">
    ${t.map(e=>l`<li>
          ${M(e.pencil.family)}${s("told.by-pencil",{pencil:e.pencil.name,found:xt(e).length,n:ot(e)})}
        </li>`)}
  </ul>
`,eo=(t,e)=>({at:{v:t.v,w:t.e.w,l:t.e.l},words:e}),ro=(t,e)=>st(G(),t.verses,e.v,e.e),Cn=(t,e)=>e.flatMap(r=>r.missed).map(r=>eo(r,ro(t,r))),Rn=(t,e)=>e.flatMap(r=>r.found).map(r=>eo(r,[In(r),ro(t,r)].filter(Boolean).join(" "))),In=t=>t.count==="none"?"":s(`told.count-${t.count}`,{n:t.mark.count,want:t.want}),Dn=(t,e)=>e.flatMap(r=>[...r.beside.map(o=>({at:o,words:s("told.near")})),...r.extra.map(o=>({at:o.mark,words:qn(t,r,o)}))]),Nn=(t,e)=>k(z(t.verses,e)),qn=(t,e,{mark:r,other:o})=>s(o?"told.other-stop":"told.extra-why",{letter:Nn(t,r),rule:e.pencil.name}),zn=(t,e)=>e.flatMap(r=>r.alike.map(o=>({at:o.mark,words:_n(t,r,o)})));function _n(t,e,{mark:r,v:o,e:n}){let{rules:i}=u().catalogue,a=i[n.rule],c=e.pencil.rules.map(N=>i[N]),{sound:p}=c.find(N=>N===a||N.alike?.includes(a.id))??a,g=p?s("told.alike-sound",{sound:p}):s("told.alike-yes"),v=ft(r,{v:o,w:n.w,l:n.l})?"":a.onCause??"",pt=s(R(t).has(a.id)?"told.alike-named":"told.alike-later",{rule:a.name});return[g,v,e.pencil.rules.includes(n.rule)?"":pt].filter(Boolean).join(" ")}var Bn=20;function oo(t){if(t.id===x)return s("case.stops");let e=u().catalogue.rules.find(r=>r.id===t.id);return e&&e.name.length>Bn?e.tr:t.name}function ie(t){let[e,...r]=t.pencils;return e?r.length?l`<div class="hands" role="group" aria-label=${s("case.hand")} data-t="pencil">
    ${t.pencils.map(o=>l`<button
          class="chip"
          .style=${Q(o.family)}
          aria-pressed=${o.id===t.hand}
          data-t="hand-${o.id}"
          @click=${n=>Wn(o,n.currentTarget)}
        >
          ${M(o.family,o.key)}${oo(o)}
        </button>`)}
  </div>`:l`<span class="pencil" .style=${Q(e.family)} data-t="pencil"
      >${M(e.family)}${oo(e)}</span
    >`:m}function Wn({id:t},e){h({hand:t,caret:void 0}),e.scrollIntoView({inline:"center",block:"nearest",behavior:Et()})}var se=t=>l`
  <button
    class="plain opener"
    data-t="case"
    aria-expanded=${t.case}
    aria-controls="case"
    aria-label=${s("case.title")}
    title=${s("case.title")}
    @click=${()=>h({case:!t.case,drawer:!1})}
  >
    +
  </button>
`,no=t=>l`<div class="case" id="case" role="group" aria-label=${s("case.title")} data-t="pencils">
    <p class="quiet">${s("case.what")}</p>
    ${qr(u().catalogue,{...t.draft.lines,name:"pencil",rules:R(t),choose:Gn})}
  </div>`;function Gn(t){Er(t);let e=d();e&&history.replaceState(history.state,"",P(e.draft.lines))}function so(t){let{how:e,lengths:r}=et(t);return e==="none"?m:e==="all"?Fn(t,r[0]):Kn(t,r)}var Fn=(t,e)=>l`
  <div class="counts" role="group" aria-label=${s("count.label")}>
    <span class="quiet">${s("count.all")}</span>
    ${ao(e,t.draft.lengths?.[t.hand]===e,()=>lo(t,e))}
  </div>
`;function Kn(t,e){let r=t.caret,o=r&&S(t,r);return l`<div class="counts" role="group" aria-label=${s("count.label")}>
    <span class="quiet">${s(o?"count.here":"count.first")}</span>
    ${e.map(n=>ao(n,o?.count===n,()=>r&&Vt(r,n),!o))}
    <button
      class="chip"
      data-t="unmark"
      ?disabled=${!o}
      aria-label=${s("count.unmark")}
      title=${s("count.unmark")}
      @click=${()=>r&&Mr(r,!1)}
    >
      ×
    </button>
  </div>`}var ao=(t,e,r,o=!1)=>l`
  <button class="chip" data-t="count-${t}" ?disabled=${o} aria-pressed=${e} @click=${r}>
    ${t}
  </button>
`;function co(t,e){let{how:r,lengths:o}=et(t);if(r==="none")return io(s("count.none"));if(!o.includes(e)){let n=A(o.map(String));return io(s("count.refused",{n:e,list:n}))}return r==="each"&&t.caret?Vt(t.caret,e):lo(t,e),r==="each"}function lo(t,e){Or(e);let r=O(t)?.name??"",o=d()?.draft.lengths?.[t.hand];B(s(o?"say.counted":"say.uncounted",{letter:r,n:e}))}function io(t){return B(t),w({notice:{text:t}}),!1}var ae=()=>requestAnimationFrame(()=>{let t=document.querySelector("[data-t=task]");t&&(document.querySelector(".bar")?.scrollTo({left:0}),scrollTo({top:0,behavior:Et()}),t.focus({preventScroll:!0}))}),At=t=>()=>{t();let e=d();if(!e)return;let{phase:r}=e.draft,o=s("say.step",{step:s(`say.step-${r}`)});B(r==="check"?`${o} ${Ht(e)}`:o),ae()},Ct=At(Rr),mo=At(Zt),po=At(Dr),Rt=At(()=>{let t=d(),e=t&&Nr(t);e==="find"?Zt():e&&Lr(e)});function fo(t){let{phase:e}=t.draft,r=e==="find",o=t.pencils.length>1;return l`<div class="bar">
    ${t.case?no(t):m} ${r&&!t.drawer?so(t):m}
    ${r&&o&&!t.drawer?ie(t):m}
    <div class="tools">${jn[e](t)}</div>
  </div>`}var jn={find:t=>l`
    ${t.pencils.length>1?m:ie(t)} ${se(t)}
    <button class="plain" data-t="undo" ?disabled=${!t.history.length} @click=${Lt}>
      ${s("lines.undo")}
    </button>
    ${It("find")}
  `,check:Un,read:t=>l` ${t.pencils.length?uo():se(t)} ${It("read")} `,done:()=>m},It=t=>l`
  <button class="main" data-t="next" @click=${Ct}>${s(`lines.next.${t}`)}</button>
`,uo=()=>l`
  <button class="plain" data-t="step-back" @click=${Rt}>${s("lines.step-back")}</button>
`;function Un(t){let e=l`<button class="plain" data-t="show-all" @click=${Ir}>
    ${s("lines.show-all")}
  </button>`,r=o=>l`<button class=${o} data-t="again" @click=${mo}>
      ${s(H(t)?"lines.again":"lines.mark-again")}
    </button>`;return t.draft.paper?l`${uo()} ${H(t)?e:m} ${It("check")}`:H(t)?l`${e} ${r("main")}`:l`${r("plain")} ${It("check")}`}var ho=t=>l`
  <div class="drawer">
    <button
      class="handle"
      data-t="drawer"
      aria-expanded=${t.drawer}
      aria-controls="help"
      @click=${()=>h({drawer:!t.drawer,case:!1})}
    >
      ${s("drawer.title")}
    </button>
    <div id="help" class="help" ?hidden=${!t.drawer}>${t.drawer?Vn(t):m}</div>
  </div>
`;function Vn(t){let{phase:e}=t.draft,r=e==="find",o=L(U(t));return l`
    <p>${s(`drawer.say.${Zn(t)}`,{child:o})}</p>
    ${r?Xn(t).map(n=>Yn(n,o)):m} ${r?ti(t):m}
    <div class="row">
      ${r&&J(t)?ei(t.answer):m}
      ${r?ri(t.ask):m}
    </div>
    ${t.pencils.some(n=>n.id===x)||e==="read"?Qn():m}
    <p class="quiet">${s("drawer.caution")}</p>
    <p class="quiet keys">${s("drawer.keys")}</p>
  `}function Zn({draft:{phase:t,told:e,paper:r}}){return t!=="check"?t:r?"paper":e==="some"?"look":"check"}var Xn=t=>{let e=O(t)?.rules??[];return e.length===1?[u().catalogue.rules[e[0]]]:[]},Yn=(t,e)=>l`
  <p>${t.short}</p>
  ${t.stuck?l`<p data-t="stuck">${s("drawer.stuck",{child:e})} <q>${t.stuck}</q></p>`:m}
`,Qn=()=>l`<p class="quiet">${s("drawer.stops")}</p>`;function Jn(t){let e=Ar(t.verses,O(t)?.rules??[],j(t));return t.verses.map((r,o)=>({a:r.a,n:e.filter(n=>n.v===o).length})).filter(r=>r.n)}function ti(t){if(!J(t))return m;let e=Jn(t),r=e.reduce((i,a)=>i+a.n,0),o=e.map(i=>s("drawer.in-verse",i)).join(" · "),n=e.reduce((i,a)=>a.n>i.n?a:i,e[0]??{a:0,n:0});return l`<p data-t="hint">
    ${r?`${s("drawer.places",{n:r})} ${o}.`:s("drawer.no-places")}
    ${r?l`<q>${s("drawer.hint",{a:n.a,n:n.n})}</q>`:m}
  </p>`}var ei=t=>l`
  <button class="plain" data-t="answer" aria-pressed=${t} @click=${Sr}>
    ${s(t?"drawer.hide":"drawer.show")}
  </button>
`,ri=t=>l`
  <button
    class="plain"
    data-t="ask"
    aria-pressed=${t}
    @click=${()=>h({ask:!t,drawer:t})}
  >
    ${s(t?"drawer.mark":"drawer.ask")}
  </button>
`;function ce(t,e){let{also:r}=t.lines,o=t.paper?e.flatMap(a=>oi(a,t.paper)):vo(e),n=o.find(a=>a.rule===t.lines.rule),i=o.filter(a=>a!==n);return{found:n?.found??0,missed:n?.missed??0,extra:t.paper?0:e.reduce((a,c)=>a+c.extra,0),...i.length&&{also:i},...r?.length&&{pencils:r},...t.paper?{paper:!0}:t.looked!==void 0&&{looked:t.looked}}}function go(t,e){let{paper:r,...o}=ce({...t,paper:{}},e);return{...o,together:!0}}function vo(t){let e=new Map,r=o=>{let n=e.get(o)??{rule:o,found:0,missed:0};return e.set(o,n),n};for(let o of t){for(let n of o.found)r(n).found++;for(let n of o.missed)r(n).missed++}return[...e.values()]}function oi({pencil:t,found:e,missed:r},o){let n=[...e,...r],i=o[t],a=[...new Set(n)];return i===void 0||i<n.length&&a.length>1?a.map(c=>({rule:c,found:0,missed:0})):vo([{found:n.slice(0,i),missed:n.slice(i)}])}function le(t,e,r){let{lines:o,stops:n,helped:i}=t;return{learner:e,day:qe(),at:new Date().toISOString(),rule:o.rule,from:o.from,to:o.to,marks:kt(t),stops:n,helped:i,outcome:r,...ii(t)}}var yo=(...t)=>({...le(...t),marks:[]}),ni=60;function ii({started:t}){let e=Math.round((Date.now()-Date.parse(t))/6e4);return e>=0&&e<=ni?{minutes:Math.max(1,e)}:{}}function me(t){let{catalogue:e,learners:r}=u(),{learner:o,from:n,to:i}=t,a=r.find(v=>v.id===o),c=cr(),p=c?.learner.id===o?c:a&&ar(a),g=a?.place??n,f=p?rr(p,{from:n,to:i}):er(e,i,a?.direction)??g;return{place:{was:g,now:f},added:si(t)}}function si({learner:t,rule:e,day:r}){let{catalogue:o}=u(),n=new Set(Oe(t).map(c=>c.rule));if(!e||n.has(e))return[];let i=o.rules.findIndex(c=>c.id===e);return(or(o).find(c=>c.rules.includes(i))?.rules.map(c=>o.rules[c].id)??[e]).filter(c=>!n.has(c)).map(c=>({learner:t,rule:c,since:r,known:""}))}var pe=new Set,$o=(t,e,r)=>bo(t,()=>{let o={id:t.id,...le(t,t.learner,r),...ce(t,e)};return[{session:o,...me(o)}]}),wo=(t,e,r)=>bo(t,()=>r.map(([o,n])=>{let a={id:o===t.learner?t.id:`${t.id}-${o}`.slice(0,64),...yo(t,o,n),...go(t,e)};return{session:a,...me(a)}}));async function bo(t,e){return pe.has(t.id)?!0:(pe.add(t.id),ai(),ci(t,e()).finally(()=>pe.delete(t.id)))}function ai(){let t=e=>{e.detail>1&&(e.preventDefault(),e.stopPropagation())};addEventListener("click",t,!0),setTimeout(()=>removeEventListener("click",t,!0),700)}async function ci(t,e){if(!await Wt(()=>De(t,e)))return!1;location.hash=`#/${u().home}`;let r=u().sessions.filter(o=>e.some(n=>n.session.id===o.id)).length;return r?li(t,e,r):w({notice:{text:s("end.gone"),hold:!0}}),!0}function li(t,e,r){let o=t.together?.length?s("end.saved-each",{n:r}):pi(),n={label:s("nav.send"),run:()=>mi(t.id)},i=r===1&&!t.together?.length;gt(o,()=>di(t,e),i?{more:n}:{}),gr()}function mi(t){w({notice:void 0}),location.hash=Ae(t)}var pi=()=>s(u().sessions.length===1&&hr()?"end.saved-first":"end.saved");async function di(t,e){let r={...t,updated:new Date().toISOString()};await Wt(()=>Ne(r,e))&&(E()?.id!==t.learner&&await ht(t.learner),location.hash=P(t.lines))}function Dt({draft:{learner:t,together:e=[]}}){let r=Me();return e.flatMap(o=>r.find(n=>n.id===o&&o!==t)??[])}var fi=[...dt,"away"];function ko(t,e,r){let o=e.filter(i=>t.answers[i.id]),n=o.filter(i=>t.answers[i.id]!=="away").length;return l`
    <h2>${s("end.together")}</h2>
    <ul class="each">
      ${Je(e,i=>i.id,i=>ui(t,i))}
    </ul>
    <div class="stack">
      <button
        class="main"
        data-t="keep-each"
        ?disabled=${!n||o.length<e.length}
        @click=${()=>{hi(t,e,r)}}
      >
        ${s("end.keep",{n})}
      </button>
    </div>
  `}var ui=(t,e)=>l`
  <li data-t="each">
    <p class="who">${$t(e)}<bdi>${L(e)}</bdi></p>
    <div class="row choice" role="group" aria-label=${L(e)}>
      ${fi.map(r=>l`<button
            class="chip"
            data-t="${r}-${e.id}"
            aria-pressed=${t.answers[e.id]===r}
            @click=${()=>h({answers:{...t.answers,[e.id]:r}})}
          >
            ${r==="away"?s("end.away"):s(`outcome.${r}`)}
          </button>`)}
    </div>
  </li>
`;async function hi(t,e,r){let o=e.flatMap(n=>{let i=t.answers[n.id];return i&&i!=="away"?[[n.id,i]]:[]});K(t.draft.id),await wo(t.draft,r,o)||K("")}async function gi(t,e){K(t.draft.id),await $o(t.draft,xo(t),e)||K("")}function xo(t){let{rules:e}=u().catalogue,r=o=>o.map(n=>e[n.e.rule].id);return _(t).map(o=>({pencil:o.pencil.id,found:r(xt(o)),missed:r(o.missed),extra:o.extra.length}))}function Po(t){let e=U(t),r=e?Dt(t):[],o=n=>l`
    <button
      class=${n==="alone"?"main":"big"}
      data-t="outcome-${n}"
      @click=${()=>{gi(t,n)}}
    >
      ${s(`outcome.${n}`)}
    </button>
  `;return l`<div class="card" data-t="end">
    ${e&&r.length?ko(t,[e,...r],xo(t)):e?l`<h2>${s("end.title",{child:L(e)})}</h2>
              ${t.draft.helped?l`<p class="quiet">${s("end.helped")}</p>`:m}
              <div class="stack">${dt.map(o)}</div>`:vi()}
    <button class="plain" data-t="step-back" @click=${Rt}>${s("end.back")}</button>
  </div>`}var vi=()=>l`
  <form class="stack" data-t="end-learner" @submit=${yi}>
    <p>${s("end.no-learner")}</p>
    ${Ze("end-name")}
    <button class="main" data-t="end-begin">${s("first.begin")}</button>
  </form>
`;async function yi(t){t.preventDefault(),await _e(t.currentTarget.querySelector("input").value);let e=E();e&&C({learner:e.id})}var Eo=()=>l`
  <div class="elsewhere" role="status" data-t="elsewhere">
    <p>${s("lines.elsewhere")}</p>
    <button class="main" data-t="take-over" @click=${$i}>${s("lines.take-over")}</button>
  </div>
`;async function $i(){await wt(),nt(!0)}var ct=(t,e)=>{let r=t._$AN;if(r===void 0)return!1;for(let o of r)o._$AO?.(e,!1),ct(o,e);return!0},Nt=t=>{let e,r;do{if((e=t._$AM)===void 0)break;r=e._$AN,r.delete(t),t=e}while(r?.size===0)},Lo=t=>{for(let e;e=t._$AM;t=e){let r=e._$AN;if(r===void 0)e._$AN=r=new Set;else if(r.has(t))break;r.add(t),ki(e)}};function wi(t){this._$AN!==void 0?(Nt(this),this._$AM=t,Lo(this)):this._$AM=t}function bi(t,e=!1,r=0){let o=this._$AH,n=this._$AN;if(n!==void 0&&n.size!==0)if(e)if(Array.isArray(o))for(let i=r;i<o.length;i++)ct(o[i],!1),Nt(o[i]);else o!=null&&(ct(o,!1),Nt(o));else ct(this,t)}var ki=t=>{t.type==Ke.CHILD&&(t._$AP??=bi,t._$AQ??=wi)},qt=class extends je{constructor(){super(...arguments),this._$AN=void 0}_$AT(e,r,o){super._$AT(e,r,o),Lo(this),this.isConnected=e._$AU}_$AO(e,r=!0){e!==this.isConnected&&(this.isConnected=e,e?this.reconnected?.():this.disconnected?.()),r&&(ct(this,e),Nt(this))}setValue(e){if(Ue(this._$Ct))this._$Ct._$AI(e,this);else{let r=[...this._$Ct._$AH];r[this._$Ci]=e,this._$Ct._$AI(r,this,0)}}disconnected(){}reconnected(){}};var de=new WeakMap,So=Ft(class extends qt{render(t){return m}update(t,[e]){let r=e!==this.G;return r&&this.rt(void 0),(r||this.lt!==this.ct)&&(this.G=e,this.ht=t.options?.host,this.rt(this.ct=t.element)),m}rt(t){if(this.G!==void 0)if(this.isConnected||(t=void 0),typeof this.G=="function"){let e=this.ht??globalThis,r=de.get(e);r===void 0&&(r=new WeakMap,de.set(e,r)),r.get(this.G)!==void 0&&this.G.call(this.ht,void 0),r.set(this.G,t),t!==void 0&&this.G.call(this.ht,t)}else this.G.value=t}get lt(){return typeof this.G=="function"?de.get(this.ht??globalThis)?.get(this.G):this.G?.value}disconnected(){this.lt===this.ct&&this.rt(void 0)}reconnected(){this.rt(this.ct)}});function To(t,e){let r=t.at(-1);return r===void 0||e-r>2500||e<r?[e]:e-r<100?[...t]:[...t,e].slice(-9)}function Mo(t){let e=t.slice(1).map((o,n)=>o-t[n]).sort((o,n)=>o-n);if(!e.length)return;let r=e.length>>1;return Ho(e.length%2?e[r]:(e[r-1]+e[r])/2)}function Oo(t){let e=t===null||t.trim()===""?NaN:Number(t);return Number.isFinite(e)?Ho(e):600}var fe=(t,e)=>Array.from({length:t},(r,o)=>o*e),Ho=t=>Math.min(1500,Math.max(250,Math.round(t)));var Ro="sutur-pace";function ue(t,e,r){let o=matchMedia("(prefers-reduced-motion: reduce)"),n=o.matches,i=T("ul","beat-lengths");i.append(...e.map(p=>xi(p,n)));let a=T("p","",n?r.still:r.hint);t.replaceChildren(a,...n?[]:[Ei(r)],i);let c=()=>t.isConnected&&ue(t,e,r);o.addEventListener("change",c,{once:!0})}function xi(t,e){let r=T("span","beat-dots");r.ariaHidden="true",r.append(...fe(t.counts,1).map(a=>T("i","",String(a+1))));let o=[T("span","beat-name",t.name)," ",r],n=T("li");if(n.dataset.counts=String(t.counts),e)return n.append(...o),n;let i=T("button");return i.type="button",i.append(...o),i.addEventListener("click",()=>Pi(r)),n.append(i),n}var Ao=[];function Pi(t){Ao.forEach(clearTimeout),document.querySelectorAll(".beat-dots .on").forEach(o=>o.classList.remove("on"));let e=Do();t.style.setProperty("--count",`${e}ms`),t.offsetWidth;let r=[...t.children];Ao=fe(r.length,e).map((o,n)=>setTimeout(()=>r[n].classList.add("on"),o))}function Ei(t){let e=T("p","beat-pad"),r=T("button","big",t.tap);r.type="button";let o=T("span","beat-pace",Co(t,Do()));o.role="status";let n=[];return r.addEventListener("click",i=>{n=To(n,i.timeStamp);let a=Mo(n);a&&Li(a),o.textContent=a?Co(t,a):t.more}),e.append(r," ",o),e}var Co=(t,e)=>t.pace((e/1e3).toFixed(1)),Io,Do=()=>Io??Oo(Se("device",Ro));function Li(t){Io=t,Te("device",Ro,String(t))}function T(t,e="",r=""){let o=document.createElement(t);return e&&(o.className=e),r&&(o.textContent=r),o}var qo=t=>l`
  <section class="panel" ?hidden=${!t.explained} aria-live="polite" data-t="letter">
    ${t.explained?Si(t,t.explained):m}
  </section>
`,he=null,No=!1;function zo(t){t.explained&&!No&&(he=document.activeElement),No=!!t.explained}function ge(){return d()?.explained?(h({explained:void 0,ask:!1}),(he?.isConnected&&he.closest(".word-link")||document.querySelector("[data-t=passage]"))?.focus({preventScroll:!0}),!0):!1}function Si(t,e){let r=Xr(G(),t.verses,j(t),e,R(t)),o=t.verses[e.v].words[e.w].text;return l`
    <div class="row">
      <h2 data-t="letter-name">${r.title}</h2>
      ${yt(o,"ar small")}
      <button class="plain" data-t="letter-close" @click=${ge}>
        ${s("explain.close")}
      </button>
    </div>
    ${r.facts.map(n=>l`<p>${n}</p>`)}
    ${r.rules.map(({rule:n,why:i,detail:a})=>l`<p class="rule-why" .style=${Q(n.family)}>
          ${M(n.family)}${_o(t,n,l`<b>${n.name}</b>`)} ${i} ${a}
        </p>`)}
    ${Ti(r.rules)} ${r.later.length?Oi(t,r.later):m}
  `}function Ti(t){let e=t.filter(o=>o.held).map(o=>({name:s("beat.length",{rule:o.rule.name,n:o.held}),counts:o.held}));if(!e.length)return m;let r=o=>{o&&ue(o,e,Mi())};return l`<details class="opens" data-t="count-along">
    <summary>${s("beat.title")}</summary>
    ${tr(e.map(o=>o.name),()=>l`<div class="beat" ${So(r)}></div>`)}
  </details>`}var Mi=()=>({hint:s("beat.hint"),still:s("beat.still"),tap:s("beat.tap"),more:s("beat.more"),pace:t=>s("beat.pace",{seconds:t})}),Oi=(t,e)=>l`
  <p class="quiet" data-t="later">${s("explain.later")}</p>
  <p class="quiet" data-t="later-lessons">
    ${s("explain.ahead")} ${e.map((r,o)=>[o?" · ":"",_o(t,r,r.name)])}
  </p>
`,_o=(t,e,r)=>{let o=P(t.draft.lines);return l`<a href=${lr(e.lesson,o)} data-t="lesson-${e.id}">${r}</a>`};var Bo=(t,e)=>l`
  <details class="menu" data-t="menu" @focusout=${vt}>
    <summary class="button plain">${s("menu.title")}</summary>
    <div class="menu-list">
      <a class="button plain" href="#/lines" data-t="choose">${s("menu.choose")}</a>
      ${l`<button class="plain" data-t="share" @click=${ve(()=>{Ri(e)})}>
              ${s("menu.share")}
            </button>`}
      <a class="button plain" href=${He(e)} data-t="give">${s("menu.give")}</a>
      ${t.practice&&Ai(t.practice)?l`<button class="plain" data-t="on-paper" @click=${ve(po)}>
              ${s("menu.paper")}
            </button>`:m}
      <button class="plain" data-t="restart" @click=${ve(Ci)}>${s("menu.restart")}</button>
      <a class="button plain" href=${Ie(e)} data-t="print">${s("menu.print")}</a>
      <a class="button plain" href=${Ce(e)} data-t="shared">${s("menu.shared")}</a>
    </div>
  </details>
`,Ai=t=>t.draft.phase==="find"&&t.pencils.some(e=>e.id!==x),ve=t=>()=>{ye(),t()};function ye(){let t=document.querySelector(".menu[open]");return t&&Be(t),!!t}function Ci(){let t=d()?.draft;Ut(),ae(),t&&gt(s("menu.restarted"),()=>{d()?.draft.at===t.at&&Ut(t)})}async function Ri(t){let e=new URL(P(t),location.href).href,r=await _r(e);r==="copied"&&w({notice:{text:s("share.copied")}}),r==="shown"&&w({notice:{text:s("share.shown",{url:e}),hold:!0}})}var Wo=()=>!document.querySelector("dialog[open]")&&(ye()||ge()||Ii());function Ii(){let t=d();if(!t?.drawer&&!t?.case)return!1;h({drawer:!1,case:!1});let e=t.drawer?"[data-t=drawer]":"[data-t=case]";return document.querySelector(e)?.focus({preventScroll:!0}),!0}var Go=10;function Fo(t){let e=t.target,r=e.closest(".bar"),o=r?.querySelector(".main");!r||!o||e===o||St(t)||ut(()=>{let n=e.getBoundingClientRect(),i=n.left-r.getBoundingClientRect().left-Go,a=n.right+Go-o.getBoundingClientRect().left;r.scrollLeft+=i<0?i:Math.max(0,Math.min(a,i))})}var Di=450,Ni=8,qi=5,we=t=>t==="touch"?8:2.5,zi=1e3,Ko=t=>!!t.target.closest("button"),$e=class{constructor(e,r,o){this.el=e;this.sheet=r;this.on=o}el;sheet;on;id=-1;from={x:0,y:0};x=0;y=0;timer=0;moving=!1;stroke=!1;lifted=-1/0;down=e=>{e.button!==0||this.id>=0||Ko(e)||(this.id=e.pointerId,this.x=e.clientX,this.y=e.clientY,this.from={x:this.x,y:this.y},this.moving=!1,this.timer=window.setTimeout(this.held,Di))};held=()=>{let e=D(this.sheet,this.x,this.y);this.end(),e&&this.on.hold(e.v,e.w)};move=e=>{if(e.pointerId!==this.id)return;let r=Math.hypot(e.clientX-this.x,e.clientY-this.y);if(!(!this.moving&&(r<Ni||!this.begin(e)))){for(let o=1,n=Math.ceil(r/qi);o<=n;o++){let i=this.x+(e.clientX-this.x)*o/n,a=this.y+(e.clientY-this.y)*o/n,c=this.stroke&&D(this.sheet,i,a);c&&this.on.pass(c)}this.x=e.clientX,this.y=e.clientY}};begin(e){clearTimeout(this.timer);let r=Math.abs(e.clientY-this.y)>Math.abs(e.clientX-this.x);if(e.pointerType==="touch"&&r)return this.end(),!1;this.moving=!0,this.el.setPointerCapture(this.id);let o=D(this.sheet,this.x,this.y);return this.stroke=!!o&&this.on.begin(o),!0}up=e=>{e.pointerId===this.id&&(this.end(),this.lifted=e.timeStamp,this.moving?this.stroke&&!this.on.lift()&&this.tap(this.from.x,this.from.y,e.pointerType):this.tap(e.clientX,e.clientY,e.pointerType))};tap(e,r,o){let n=D(this.sheet,e,r);n&&this.on.tap(n,Tt(this.sheet,n,e,r,we(o))<1/0)}cancel=e=>{e.pointerId===this.id&&(this.end(),this.on.drop())};end=()=>{clearTimeout(this.timer),this.id=-1};click=e=>{if(e.detail!==0||e.timeStamp-this.lifted<=zi||Ko(e))return;let r=e.target.closest(".w"),o=r?{v:Number(r.dataset.v),w:Number(r.dataset.w)}:D(this.sheet,e.clientX,e.clientY);o&&this.on.hold(o.v,o.w)}};function jo(t,e,r){let o=new $e(t,e,r);t.addEventListener("pointerdown",o.down),t.addEventListener("pointermove",o.move),t.addEventListener("pointerup",o.up),t.addEventListener("pointercancel",o.cancel),t.addEventListener("click",o.click),t.addEventListener("selectstart",n=>n.preventDefault()),t.addEventListener("contextmenu",n=>{n.pointerType!=="mouse"&&n.preventDefault()})}var be={};mn(be,{begin:()=>_i,drop:()=>Uo,lift:()=>Wi,pass:()=>Bi});function _i(t){let e=d();return!e||!tt(e)?!1:(h({stroke:{letters:[t],on:!S(e,t)}}),!0)}function Bi(t){let e=d()?.stroke,r=e?.letters[0];if(!r||r.v!==t.v||r.w!==t.w)return;let o=e.letters.findIndex(i=>i.l===t.l);if(o===e.letters.length-1)return;let n=o<0?[...e.letters,t]:e.letters.slice(0,o+1);h({stroke:{...e,letters:n}})}function Wi(){let t=d()?.stroke;return Uo(),!t||t.letters.length<2?!1:(Tr(t.letters,t.on),!0)}function Uo(){d()?.stroke&&h({stroke:void 0})}var ke={v:0,w:0,l:0};function Zo(t,e,r){t.addEventListener("focus",o=>{St(o)||Vo(t,e,d()?.caret??ke)}),t.addEventListener("focusout",o=>{t.contains(o.relatedTarget)||(t.tabIndex=0,r())}),t.addEventListener("keydown",o=>{let n=d();if(!n||o.target.closest("button"))return;let i=n.caret??ke,a=o.ctrlKey||o.altKey||o.metaKey,c=Gi(n,e,i,o.key,a);if(c)Vo(t,e,c);else if(a||!Fi(n,i,o.key,o.repeat))return;o.preventDefault()})}function Vo(t,e,r){let o=e.word(r.v,r.w);for(let n of e.shown)n.el.tabIndex=-1;o?.el.focus({preventScroll:!0}),o?.el.scrollIntoView({block:"nearest"}),o&&(o.el.tabIndex=0),t.tabIndex=-1,h({caret:r}),xe()}function Gi(t,e,r,o,n){let{verses:i}=t,a=n?i.length-1:r.v;switch(o){case"ArrowLeft":return n?Yt(i,r,1):Xt(i,r,1);case"ArrowRight":return n?Yt(i,r,-1):Xt(i,r,-1);case"ArrowDown":return Qt(e,r,1);case"ArrowUp":return Qt(e,r,-1);case"Home":return n?ke:{v:r.v,w:0,l:0};case"End":return{v:a,w:i[a].words.length-1,l:0};default:return}}function Fi(t,e,r,o){let n=t.draft.phase==="find"&&J(t);if(r===" "||r==="Enter"){if(o)return!0;rt(e),xe()}else if(r==="n")Ct();else if(/^[1-9]$/.test(r)&&n)t.caret||h({caret:e}),co(d()??t,Number(r))&&xe();else if(r==="e")h({explained:e});else if(r==="o")h({open:{v:e.v,w:e.w}});else if(r==="s")zr(e.v,e.w);else return!1;return!0}function xe(){let t=d();t?.caret&&B(Ki(t,t.caret))}function Ki(t,e){let r=t.verses[e.v].words[e.w],o=Mt(t,I(t),r,e),n=s("say.letter",{letter:o,i:e.l+1,n:r.letters.length}),i=S(t,e),a=i&&(i.count||t.draft.lengths?.[t.hand]);return a?`${n} ${s("say.count",{n:a})}`:n}function Xo(t,e,r){let o=[...ji(t),...Ui(t,e),...Vi(t),...Zi(t)],n=o.length?r.getBoundingClientRect():void 0;F(o.map(i=>{let a=e.word(i.at.v,i.at.w);if(!a||!n)return;let c=b.box(a,i.at.l),p=[`left:${c.left-n.left}px`,`top:${c.top-n.top}px`,`width:${c.right-c.left}px`,`height:${c.bottom-c.top}px`].join(";");return l`<span class=${i.cls} .style=${p}>${i.words}</span>`}),r)}function ji(t){let{phase:e}=t.draft,{settings:r,catalogue:o}=u(),n=new Set(t.pencils.map(a=>a.id));return e==="find"&&!t.answer?kt(t.draft).filter(a=>a.count&&n.has(Fe(a,t.draft.lines))).map(a=>({at:a,cls:"count",words:String(a.count)})):!(t.answer||e==="check")||r.counting==="never"?[]:_(t).flatMap(a=>[...a.found,...H(t)?[]:a.missed]).flatMap(({v:a,e:c})=>{let p=Y(o.rules[c.rule],c,r).want;return p?[{at:{v:a,w:c.w,l:c.l},cls:"count",words:String(p)}]:[]})}function Ui(t,e){let r=t.caret;if(!r)return[];let o=e.word(r.v,r.w)?.el.matches(":focus-visible"),n=t.draft.phase==="find"&&!t.answer&&et(t).how==="each";return o||n&&S(t,r)?[{at:r,cls:"caret"}]:[]}var Vi=t=>t.explained?[{at:t.explained,cls:"asked"}]:[],Zi=({stroke:t})=>t?.letters.map(e=>({at:e,cls:t.on?"stroke":"stroke off"}))??[];var Yo=10;function Qo(t,e,r){let o=b.box(t,e),n=v=>`${b.base(t)-v*b.em(t)-r.top}px`,i=Kt(t.word,e+1)?n(b.crown(t,e+1)):"-.4em",a=Kt(t.word,e)?`calc(100% - ${n(b.crown(t,e))})`:"-.4em",c=`left:${r.left-o.left+Yo}px;width:${r.width}px`,p=`clip-path:inset(${i} ${r.right-o.right}px ${a} ${o.left-r.left}px)`,g=`width:${o.right-o.left+2*Yo}px;height:${r.height}px`,{text:f}=t.word;return l`<span class="slice" .style=${g} aria-hidden="true"
    ><span class="slice-word" lang="ar" data-word=${f} .style=${c}></span
    ><span class="slice-word ink" lang="ar" data-word=${f} .style=${`${c};${p}`}></span
  ></span>`}function Jo(t){let e=t.verses[t.v].words[t.w],r=document.createElement("dialog"),o=new b,n=[];r.className="zoom",r.ariaLabel=t.label,r.dataset.t="zoom",r.style.setProperty("--pencil",t.look.colour),r.setAttribute("aria-describedby","zoom-hint");let i=v=>Yi(t,o,r,v),a=()=>F(Xi(t,e,n,i,()=>r.close()),r);a(),o.add(t.v,t.w,r.querySelector(".w"),t.verses),r.addEventListener("close",()=>{Z("zoom"),removeEventListener("resize",g),r.remove(),t.closed()}),os(r),document.body.append(r),r.showModal();let c=o.word(t.v,t.w),p=c.el.getBoundingClientRect();n=e.letters.map((v,pt)=>Qo(c,pt,p));let g=()=>Ji(r);g(),addEventListener("resize",g);let f=()=>{a();let v=e.letters.flatMap((pt,N)=>t.marked(N)?[{v:t.v,w:t.w,l:N,...t.look}]:[]);V(o,r,v,"zoom")};return f(),Pe(r,0)?.focus({preventScroll:!0}),{close:()=>r.close(),update:f}}var Xi=(t,e,r,o,n)=>l`
  <div class="zoom-word" dir="rtl">
    <span
      class="w${Br([e],0)}"
      lang="ar"
      data-t="zoom-word"
      .textContent=${e.text}
      @click=${o}
    ></span>
  </div>
  <p class="quiet" id="zoom-hint" data-t="zoom-hint">${t.hint}</p>
  <div class="zoom-letters" dir="rtl" data-t="zoom-letters" @keydown=${rs}>
    ${ts(t,e,r)}
  </div>
  <button class="main" data-t="zoom-close" @click=${n}>${s("zoom.close")}</button>
`,Pe=(t,e)=>t.querySelector(`[data-t=zoom-letter-${e}]`);function Yi(t,e,r,o){let{clientX:n,clientY:i}=o,a=D(e,n,i);if(!a)return;let c=we(o.pointerType??"touch");if(Tt(e,a,n,i,c)===1/0)return t.choose(a.l);r.querySelector(".near")?.classList.remove("near"),Pe(r,a.l)?.classList.add("near"),Pe(r,a.l)?.focus()}var Qi=.35;function Ji(t){let e=t.querySelector(".zoom-word");t.style.setProperty("--fit","1");let r=e.querySelector(".w").getBoundingClientRect(),o=Math.min(1,e.clientWidth/r.width,Qi*innerHeight/r.height);t.style.setProperty("--fit",String(o))}function ts(t,e,r){let o=t.said();return r.map((n,i)=>es(t,e.letters[i],i,n,o[i]))}var es=(t,e,r,o,n)=>l`
  <button
    class="zoom-letter"
    data-t="zoom-letter-${r}"
    aria-label=${n}
    aria-pressed=${t.marked(r)??m}
    @click=${()=>t.choose(r)}
  >
    ${o}<span
      class="zoom-name"
      aria-hidden="true"
      lang=${document.documentElement.lang}
      dir="auto"
      >${k(e)}</span
    >
  </button>
`;function rs(t){let e=t.key==="ArrowLeft"?1:t.key==="ArrowRight"?-1:0,r=[...t.currentTarget.querySelectorAll(".zoom-letter")];e&&r[r.indexOf(document.activeElement)+e]?.focus()}function os(t){let e=!1,r=()=>{e=!0},o=n=>{e||n.detail===0||(n.stopPropagation(),n.preventDefault())};t.addEventListener("pointerdown",r,!0),t.addEventListener("click",o,!0),t.addEventListener("click",n=>{let i=t.getBoundingClientRect(),a=n.clientY>=i.top&&n.clientY<=i.bottom&&n.clientX>=i.left&&n.clientX<=i.right;n.target===t&&!a&&t.close()})}var lt,zt="";function tn(t,e){let r=d(),{large:o,toldLarge:n}=u().settings;if(!r||!tt(r)||!(e||o))return rt(t);let i=!o&&!n;h({open:{v:t.v,w:t.w,once:!0,why:i}}),i&&ze({toldLarge:!0})}function en(t){let e=t.open?`${t.open.v}.${t.open.w}`:"";if(e===zt)return lt?.update();let r=lt;zt=e,lt=void 0,r?.close(),t.open&&(lt=ns(t,t.open,e))}function ns(t,{v:e,w:r,once:o,why:n},i){let a=tt(t);return Jo({verses:t.verses,v:e,w:r,label:s("zoom.title"),hint:s(n?"zoom.why":"zoom.hint"),look:mr(O(t)?.family??""),said(){let c=d()??t,p=I(c),g=t.verses[e].words[r];return g.letters.map((f,v)=>Mt(c,p,g,{v:e,w:r,l:v}))},marked:c=>a?!!S(d()??t,{v:e,w:r,l:c}):void 0,choose:c=>{rt({v:e,w:r,l:c}),(!a||o)&&h({open:void 0})},closed:()=>{zt===i&&(zt="",lt=void 0,h({open:void 0}))}})}var W,_t;function mt(){let t=d(),e=document.querySelector("[data-t=passage]");if(!t||!e)return;(W?.el!==e||W.verses!==t.verses)&&is(e,t);let r=I(t);V(W.sheet,e,r),Ot(t,W.sheet,r),Xo(t,W.sheet,e.querySelector(".layer"))}function is(t,e){let r=b.of(t,e.verses);W={el:t,verses:e.verses,sheet:r},ss(t,r),Zo(t,r,mt),r.whenFont(t.textContent,mt);let o="";_t?.disconnect(),_t=new ResizeObserver(([n])=>{let i=`${n.contentRect.width} ${n.contentRect.height}`;o&&o!==i&&mt(),o=i}),_t.observe(t)}function ss(t,e){jo(t,e,{tap:tn,...be,hold:(r,o)=>h({open:{v:r,w:o}})})}function rn(){_t?.disconnect(),W=void 0,Z()}function on(t){let e=t.practice,r=e?U(e):E(t);if(!r)return m;let o=e?Dt(e):[];return o.length?as(t,[r,...o]):dr(t,r,n=>{jr(n)})}var as=(t,e)=>l`
  <details class="menu who several" data-t="switch" @focusout=${vt} @keydown=${ur}>
    <summary class="button plain">
      ${e.map($t)}<bdi data-t="whose">${A(e.map(r=>L(r)))}</bdi>
    </summary>
    <div class="menu-list">
      <button class="plain" data-t="alone" @click=${()=>C({together:void 0})}>
        ${s("together.alone",{child:L(e[0])})}
      </button>
      ${fr(t)}
    </div>
  </details>
`;var Bt=t=>t.name==="lines"?t.lines:void 0;function ln(t){let e=Bt(t.route);return e?Qe(t.catalogue.surahs,e.from,e.to):""}function nn(t){let e=t.practice,r=e&&!e.opening;return l`
    <main class="lines" data-phase=${e?.draft.phase??""}>
      <header class="row">
        <a class="button plain" href="#/${t.home}" data-t="back">${s(`nav.${t.home}`)}</a>
        <div class="title">
          <h1 tabindex="-1">${ln(t)}</h1>
          ${on(t)}
        </div>
        ${Bo(t,Bt(t.route))}
      </header>
      <p class="task" tabindex="-1" data-t="task">${e?ls(e):m}</p>
      <div class="hold" ?hidden=${e?.draft.phase==="done"}>
        ${e?Wr(e):Hr(t.unreadable)}
      </div>
      <div class="after">${r?ms(e):m}</div>
      <div class="thumb" @focusin=${Fo}>${r?cs(e):m}</div>
      <p class="hidden" aria-live="assertive" aria-atomic="true" data-t="speech">
        ${Ve(e?.say,e?.say??"")}
      </p>
      <p class="hidden" id="keys-help">${s("drawer.keys")}</p>
    </main>
  `}var cs=t=>t.elsewhere?Eo():[qo(t),fo(t),ho(t)];function ls(t){let{phase:e}=t.draft;if(t.ask)return s("lines.asking");if(e==="check")return Ht(t);if(e!=="find")return s(`lines.task.${t.pencils.length?"":"plain-"}${e}`);let r=O(t);return r?.id===x?s("lines.task.stops"):s("lines.task.find",{rule:r?.name??""})}function ms(t){return t.draft.phase==="done"?Po(t):t.draft.phase==="check"?to(t):m}function sn(t){t.key==="Escape"&&Wo()&&t.preventDefault(),!(!(t.ctrlKey||t.metaKey)||t.shiftKey||t.key.toLowerCase()!=="z")&&d()?.draft.phase==="find"&&(t.preventDefault(),Lt())}var an=()=>{document.hidden&&wr()},cn=new ResizeObserver(([t])=>{let e=t.borderBoxSize[0].blockSize;setTimeout(()=>document.documentElement.style.setProperty("--thumb",`${e+8}px`))}),Ee=0,lp={title:ln,view:nn,ahead:t=>Zr(nn,Bt(t)),enter(t){Ee=u().draftWrites,addEventListener("keydown",sn),addEventListener("pagehide",jt),document.addEventListener("visibilitychange",an),ee(Bt(t))},drawn(t){let e=t.practice;e&&(cn.observe(document.querySelector(".thumb")),t.draftWrites!==Ee&&wt(),Ee=t.draftWrites,en(e),zo(e),mt())},leave(){removeEventListener("keydown",sn),removeEventListener("pagehide",jt),document.removeEventListener("visibilitychange",an),oe(),rn(),cn.disconnect(),w({unreadable:void 0}),setTimeout(()=>document.documentElement.style.removeProperty("--thumb"))}};export{lp as lines};
