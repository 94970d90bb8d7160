import{a as Hr,b as Ar,c as Ot,d as Cr,e as Ir,f as b,g as Dr,h as Nr,i as se,j as qr,k as Br,l as At}from"./chunk.ZOTFDGBQ.js";import{a as zr}from"./chunk.TWD3TNZW.js";import{a as mr}from"./chunk.YWDTK4BI.js";import{e as dr}from"./chunk.FQKUSJ4B.js";import{a as sr,c as cr}from"./chunk.APPKMSLV.js";import{a as ur,b as hr,c as gr,d as wr,e as q,f as Mt,g as br}from"./chunk.E4I625RD.js";import{a as pr,b as st,c as fr}from"./chunk.TX2AM5FN.js";import{b as Rr}from"./chunk.3B5LX3MQ.js";import{a as Tt}from"./chunk.4MBP4JSQ.js";import{a as or}from"./chunk.JG3ILKLC.js";import{a as Ht}from"./chunk.4RNP4JMQ.js";import{a as Mr}from"./chunk.7P5GCF4H.js";import{a as oe,b as Tr,c as at,g as it,h as Or,i as B}from"./chunk.CLYPCFEQ.js";import{A as tr,H as re,a as Ue,c as Xe,r as Pt,s as Ye,t as Je,z as Qe}from"./chunk.RCYS5ULD.js";import"./chunk.U4LIOG5F.js";import{a as yr,b as vr}from"./chunk.XWG3HUNR.js";import{p as $r,v as Er,x as Lr}from"./chunk.6WKKIGEP.js";import"./chunk.LE5K7YXS.js";import"./chunk.C2CM5TJ3.js";import{a as S,b as ar,c as ir,d as N,e as Et}from"./chunk.SBHWFWE5.js";import{a as lr}from"./chunk.ABXU77RL.js";import{a as kr,e as xr,f as Pr,g as Sr}from"./chunk.E6OLOVED.js";import{a as l,c as m,d as St,e as er,f as ne,g as rr,h as nr,n as Lt,o as Y,p as J}from"./chunk.A6UYY2CG.js";import{A as M,B as X,C as Ze,D as j,c as Fe,d as i,h as D,j as h,l as y,m as V,o as Z,q as xt,r as G,v as x}from"./chunk.S3BIYIDD.js";import{a as To}from"./chunk.YE24VLP2.js";function Ct(t,e){let r=new Date().toISOString();return{id:Xe(),learner:t,at:X(e),lines:e,phase:hr(e),marks:[],stops:[],helped:!1,started:r,updated:r}}function Rt(t,e){let r=(n,o)=>e[n]?.words[o];return{...t,marks:t.marks.filter(n=>r(n.v,n.w)?.letters[n.l]),stops:t.stops.filter(([n,o])=>r(n,o))}}var Oo=2e3,Ho=3,ct=0,It=0,ae=!1,_r="";function Vr(){It>=Ho?ae=!0:ie(),clearTimeout(ct),ct=window.setTimeout(Q,Oo)}function ie(t=!1){ae=!1;let e=h().practice?.draft;if(!e||e.id===_r)return;let{sessions:r,learners:n}=h();r.some(o=>o.id===e.id)||(e.learner?!n.some(o=>o.id===e.learner):n.length)||(It++,(t?Ye:Je)(e).catch(()=>y({kept:!1})).finally(()=>{It--,ae&&ie()}))}var Q=()=>Kr(!0),ce=()=>Kr(!1);function Kr(t){ct&&(clearTimeout(ct),ct=0,ie(t))}var lt=t=>{_r=t};async function Dt(){let t=h().practice?.draft;if(!t)return;let e=await Pt(t.learner,t.at).catch(()=>{}),r=h().practice;!e||!r||r.draft!==t||It||JSON.stringify(e)===JSON.stringify(t)||y({practice:{...r,draft:Rt(e,r.verses),history:[]}})}var d=()=>h().practice,Ao=t=>t?new Set(xt(t).map(e=>e.rule)):"all",Gr=(t,e)=>wr(t,ur(e.lines),Ao(e.learner)),le=t=>t.pencils.flatMap(e=>e.rules);function jr(t,e,r,n){lt("");let o=Gr(t,n),s={draft:n,verses:e,basmala:r,pencils:o,hand:o[0]?.id??"",history:[],open:void 0,apart:[],opening:!0,elsewhere:!1,say:"",...pe};y({practice:s})}var pe={caret:void 0,explained:void 0,stroke:void 0,ask:!1,drawer:!1,case:!1,answer:!1};function Fr(){Q(),y({practice:void 0})}function g(t){let e=d();if(!e)return;let r={...e,opening:!1,...t};y({practice:r}),r.draft!==e.draft&&Vr()}function L(t,e={}){let r=d(),n=new Date().toISOString();r&&!r.elsewhere&&g({draft:Ue(r.draft,{...t,updated:n}),...e})}var pt=({history:t,draft:e})=>{let{marks:r,stops:n,lengths:o}=e;return[...t,{marks:r,stops:n,...o&&{lengths:o}}]},k=t=>new Hr(t.verses,t.draft.stops),T=t=>t.pencils.find(e=>e.id===t.hand),z=t=>!!t.hand&&t.hand!==x,dt=t=>t.draft.phase==="find"&&!t.ask&&!t.elsewhere&&z(t),tt=t=>t.draft.phase!=="find"||t.hand===x;function Ur(){let t=d(),e=t?.history.at(-1);!t||!e||L({lengths:void 0,...e},{history:t.history.slice(0,-1)})}function Zr(t,e){let r=d();if(!r||!tt(r))return;let n=k(r);n.set(t,e,!n.after(t,e)),L({stops:n.moved()},{history:pt(r)})}function de(t){let e=d();if(!e)return;let r=t??Ct(e.draft.learner,e.draft.lines);g({draft:r,history:[],apart:[],...pe})}function Xr(t){let e=d();if(!e)return;let{rule:r,from:n,to:o}=e.draft.lines,s={rule:r,...t.length&&{also:t},from:n,to:o},a={...e.draft,lines:s},c=Gr(h().catalogue,a),p=c.find(w=>!e.pencils.some(I=>I.id===w.id)),u=c.some(w=>w.id===e.hand)?e.hand:c[0]?.id??"",f=c.length?e.pencils.length?e.draft.phase:"find":"read";L({lines:s,phase:f},{pencils:c,hand:p?.id??u}),y({route:{name:"lines",lines:s}})}var et=t=>h().learners.find(e=>e.id===t.draft.learner);function W(t,e={},r={}){L({...e,phase:t},{...pe,caret:d()?.caret,...r}),Q()}function Yr(){let t=d();t&&L({helped:!0},{answer:!t.answer})}var E=(t,e,r=t.hand)=>t.draft.marks.find(n=>G(n,e)&&q(n,t.draft.lines)===r),Jr=(t,{v:e,w:r,l:n},o)=>t.hand===t.draft.lines.rule?{v:e,w:r,l:n,count:o}:{v:e,w:r,l:n,count:o,pencil:t.hand};function me(t,e){let r=d(),n=t.at(-1);if(!r||!n||!z(r))return;let o=t.filter(c=>!!E(r,c)!==e);if(!o.length)return;let s=new Set(o.map(c=>E(r,c))),a=e?[...r.draft.marks,...o.map(c=>Jr(r,c,0))]:r.draft.marks.filter(c=>!s.has(c));L({marks:a},{caret:n,history:pt(r)})}var fe=(t,e)=>me([t],e);function rt(t){let{settings:e,catalogue:r}=h(),n=T(t),o=e.counting??"once",s=n&&o!=="never"?br(r.rules,n,e):[];return{how:s.length?s.length===1&&o==="once"?"all":"each":"none",lengths:s}}function ue(t,e){let r=d();if(!r||!z(r))return;let n=E(r,t),o=r.draft.marks.filter(s=>s!==n);L({marks:[...o,Jr(r,t,n?.count===e?0:e)]},{caret:t,history:pt(r)})}function Qr(t){let e=d();if(!e)return;let{[e.hand]:r,...n}=e.draft.lengths??{},o=r===t?n:{...n,[e.hand]:t};L({lengths:o},{history:pt(e)})}function mt(t){let e=d();if(!e)return;if(e.draft.phase!=="find"||e.ask)return g({explained:t,caret:t});let r=!!e.caret&&G(e.caret,t);rt(e).how==="each"&&E(e,t)&&!r?g({caret:t}):fe(t,!E(e,t))}var ft=({marks:t,lengths:e,lines:r})=>t.map(n=>{let o=e?.[q(n,r)];return o&&!n.count?{...n,count:o}:n}),Nt;function O(t){let{settings:e,catalogue:r}=h(),n=[t.draft,t.verses,t.pencils,e,r];return(!Nt||n.some((o,s)=>o!==Nt.of[s]))&&(Nt={of:n,all:Co(t)}),Nt.all}function Co(t){let e=V(),r=ft(t.draft),n=k(t);return t.pencils.filter(o=>o.id!==x).map(o=>{let s=r.filter(a=>q(a,t.draft.lines)===o.id);return{pencil:o,...Cr(t.verses,o.rules,s,n,e)}})}var F=t=>t.found.filter(e=>!e.e.unwritten),nt=t=>F(t).length+t.missed.length;function qt(t){let e=r=>t.reduce((n,o)=>n+r(o),0);return{found:e(r=>F(r).length),of:e(nt)}}function Bt(t,e){let r=new Map,n=o=>r.set(o,(r.get(o)??0)+1);for(let o of e){for(let s of o.missed)n(s.v);if(t.draft.paper)for(let s of F(o))n(s.v)}return new Map([...r].sort(([o],[s])=>o-s))}var H=({draft:t})=>t.phase==="check"&&t.told==="some";function tn(){let t=d();if(!t)return;let{phase:e}=t.draft;e==="find"?Ro(t):e==="check"?W("read"):e==="read"&&W("done")}function Ro(t){let e=O(t),r=qt(e),o=r.found===r.of&&e.every(s=>!s.extra.length&&!s.beside.length)||t.draft.told==="all"?"all":"some";W("check",{told:o,looked:t.draft.looked??r.found})}var en=()=>W("check",{told:"all"});function he(){let t=d();if(!t)return;let e=O(t),r=qt(e),n=t.draft.told==="all"&&r.found<r.of,o=e.flatMap(s=>[...s.beside,...s.extra.map(a=>a.mark)]);W("find",{paper:void 0,...n&&{helped:!0}},{apart:o})}var rn=()=>W("check",{paper:{},told:"some"});function nn(t){let r=t.pencils.length>0?["find","check","read","done"]:["read","done"];return r[r.indexOf(t.draft.phase)-1]}var No=["always","join","stop","start"],qo=t=>t>=1611&&t<=1618||t===1761||t>=2288&&t<=2290,Bo=t=>!t.letters.some(e=>e.rune===1648||e.marks.some(qo));function zo(t,e,r,n){return[t.details[r.detail]?.id,r.unwritten&&"unwritten",Bo(e)&&"opening",No[r.when],n?.rune.toString(16).padStart(4,"0")].filter(o=>typeof o=="string"&&o!=="")}function ut(t,e,r,n){let o=t.rules[n.rule],s=Ar(e,r,n),a=s&&N(e,s),c=e[r].words[n.w],p=c.letters[n.l],u=zo(t,c,n,a).find(f=>o.cases?.[f]);return Fe(u?o.cases[u]:o.why,{letter:S(p),cause:a?S(a):i("explain.next"),count:st(o,n,t.settings).want})}function on(t,e,r,n,o){let s=N(e,n),a=ar(s),c=e[n.v].events.filter(f=>f.w===n.w&&f.l===n.l&&r.holds(n.v,f)),p={title:S(s),facts:[a?i("explain.marks",{marks:a}):i("explain.bare")],rules:[],later:[]};e[n.v].words[n.w].lined&&p.facts.push(i("explain.lined"));let u=(f,w)=>t.rules[w.rule].role===f;c.some(f=>u("silent",f)&&f.when!==3)&&p.facts.push(i("explain.silent")),c.some(f=>u("long",f))&&p.facts.push(i("explain.long")),c.some(f=>u("ending",f))&&p.facts.push(i("explain.stop"));for(let f of c){let w=t.rules[f.rule];o.has(w.id)?p.rules.push({rule:w,why:ut(t,e,n.v,f),detail:t.details[f.detail]?.text??"",held:st(w,f,t.settings).want}):p.later.includes(w)||p.later.push(w)}return p}var ht=t=>({name:t,colour:`var(--${t})`,sign:t});function _(t){let{taught:e,catalogue:r}=h(),n=e.filter(o=>o.learner===t.draft.learner).map(o=>o.rule);return new Set([...n,...le(t).map(o=>r.rules[o].id)])}var ge=(t,e)=>({v:t.v,w:t.w,l:t.l,...e}),sn=(t,e)=>Ot(t.verses,e,k(t)).map(r=>oe(r,at(h().catalogue.rules[r.e.rule].family)));function ot(t){let{phase:e,lines:r}=t.draft;return t.answer?an(sn(t,le(t))):e==="find"?an(Wo(t)):e==="check"?Vo(t):sn(t,Rr(h().catalogue,r.rule,_(t)))}function Wo(t){let{marks:e,lines:r}=t.draft;return[...t.pencils].sort((o,s)=>+(s.id===t.hand)-+(o.id===t.hand)).flatMap(({id:o,family:s})=>e.filter(a=>q(a,r)===o).map(a=>ge(a,_o(t,a)?ht("extra"):at(s))))}var _o=(t,e)=>t.apart.some(r=>Mt(r,e));function an(t){let e=new Map;return t.map(r=>{let n=`${r.v}.${r.w}.${r.l}`,o=e.get(n)??0;return e.set(n,o+1),o?{...r,under:o}:r})}function Vo(t){let e=O(t),r=(n,o)=>n.map(s=>oe(s,o));return[...e.flatMap(n=>r(n.found,ht("found"))),...e.flatMap(n=>n.alike.map(o=>ge(o.mark,ht("found")))),...H(t)?[]:e.flatMap(n=>r(n.missed,ht("missed"))),...e.flatMap(n=>[...n.beside,...n.extra.map(o=>o.mark)]).map(n=>ge(n,ht("extra")))]}function gt(t,e,r,n){if(!r.length)return m;let o=e==="alike"?"found":e,s=e==="missed"&&t.draft.paper?"places":e;return l`<details class="told ${e}" ?open=${n} data-t=${e}>
    <summary>${Or(o,`var(--${o})`)}${i(`told.${s}`,{n:r.length})}</summary>
    ${we(t,o,r)}
  </details>`}var we=(t,e,r)=>l`
  <ul>
    ${[...j(r,n=>n.words)].map(([n,o])=>Ko(t,e,n,o))}
  </ul>
`,Ko=(t,e,r,n)=>l`
  <li class=${e}>
    <div class="word-links" dir="rtl">${n.map(o=>Go(t,o.at))}</div>
    <p>${r}</p>
  </li>
`;function Go(t,e){let r=t.verses[e.v],n=r.words[e.w].text,o=S(N(t.verses,e)),s=()=>g({explained:e,caret:e});return l`<button
    class="word-link"
    data-t="told-${e.v}-${e.w}-${e.l}"
    @click=${s}
    aria-label=${i("told.show",{letter:o,word:n,a:r.a})}
  >
    ${Lt(n)}
  </button>`}var cn=(t,e)=>l`
  <section class="card on-paper" data-t="on-paper">
    ${e.filter(nt).map(r=>jo(t,r))}
    <p>${i("paper.verses")}</p>
    <ul class="hides">
      ${[...Bt(t,e)].map(([r,n])=>l`<li>${i("drawer.in-verse",{a:t.verses[r].a,n})}</li>`)}
    </ul>
    <p class="quiet">${i("paper.free")}</p>
  </section>
`;function jo(t,e){let r=nt(e),n=`paper-${e.pencil.id}`,o=t.draft.paper?.[e.pencil.id],s=a=>Fo(t,e.pencil.id,a.target.value,r);return l`<div class="field">
    <label for=${n}>${B(e.pencil.family)}${i("paper.found",{rule:e.pencil.name})}</label>
    <input
      id=${n}
      type="number"
      inputmode="numeric"
      min="0"
      max=${r}
      .value=${o===void 0?"":String(o)}
      data-t=${n}
      @change=${s}
    />
    <span class="quiet" aria-live="polite"
      >${o===void 0?m:i(o<r?"paper.left":"paper.all",{n:r-o,of:r})}</span
    >
  </div>`}function Fo(t,e,r,n){let{[e]:o,...s}=t.draft.paper??{},a=Math.round(Number(r)),p=r.trim()!==""&&Number.isFinite(a)?{...s,[e]:Math.min(n,Math.max(0,a))}:s;L({paper:p})}function pn(t){let e=k(t),r=Zo(t),n=(s,a)=>t.verses[s].words[a].letters.length-1,o=s=>t.verses.flatMap((a,c)=>a.words.flatMap((p,u)=>e.after(c,u)===s&&(s||e.movable(c,u))?[{at:{v:c,w:u,l:n(c,u)},words:Xo(t,c,u,f=>r(f)&&e.holds(c,f))}]:[]));return l`<section class="told stops" data-t="stops">
    ${ln(t,"told.stop-here",o(!0))} ${ln(t,"told.read-on",o(!1))}
  </section>`}var ln=(t,e,r)=>r.length?l`<h2>${i(e)}</h2>
        ${we(t,"stops",r)}`:m;function Zo(t){let{catalogue:e}=h(),r=gr(e),n=_(t);return o=>{let s=e.rules[o.rule];return s.family===r||n.has(s.id)&&o.when===2&&!o.before}}function Xo(t,e,r,n){let o=V(),a=t.verses[e].events.filter(c=>c.w===r&&n(c)).flatMap(c=>[ut(o,t.verses,e,c),o.details[c.detail]?.text??""]);return[...new Set(a.filter(Boolean))].join(" ")||i("told.no-change")}function zt(t){if(t.pencils.every(s=>s.id===x))return i("told.stops");let e=O(t),{found:r,of:n}=qt(e),o=e.reduce((s,a)=>s+a.extra.length,0);return n===0?i(o?"told.none-marked":"told.none"):t.draft.paper?i("told.on-paper",{n}):r===n?i(o?"told.all-extra":"told.all",{n:o||n,of:n}):H(t)?[i("told.so-far",{n:r}),...Jo(t,e)].join(" "):Yo(t,r,n)}function Yo(t,e,r){let{looked:n}=t.draft;return n!==void 0&&n<e?i("told.looked",{looked:n,n:e,of:r}):i("told.some",{n:e,of:r})}function Jo(t,e){return[...j([...Bt(t,e)],([,r])=>r)].map(([r,n])=>{let o=D(n.map(([s])=>String(t.verses[s].a)));return i(n.length>1?"told.hide-each":"told.hides",{a:o,n:r})})}function dn(t){let e=O(t);return t.draft.paper&&t.draft.told!=="all"?cn(t,e):l`
    ${e.length>1?Qo(e):m}
    ${H(t)?m:gt(t,"missed",ts(t,e),!0)}
    ${gt(t,"extra",ns(t,e),!0)} ${gt(t,"alike",as(t,e),!0)}
    ${gt(t,"found",es(t,e),!1)}
    ${t.pencils.some(r=>r.id===x)?pn(t):m}
  `}var Qo=t=>l`
  <ul class="by-pencil" data-t="by-pencil">
    ${t.map(e=>l`<li>
          ${B(e.pencil.family)}${i("told.by-pencil",{pencil:e.pencil.name,found:F(e).length,n:nt(e)})}
        </li>`)}
  </ul>
`,mn=(t,e)=>({at:{v:t.v,w:t.e.w,l:t.e.l},words:e}),fn=(t,e)=>ut(V(),t.verses,e.v,e.e),ts=(t,e)=>e.flatMap(r=>r.missed).map(r=>mn(r,fn(t,r))),es=(t,e)=>e.flatMap(r=>r.found).map(r=>mn(r,[rs(r),fn(t,r)].filter(Boolean).join(" "))),rs=t=>t.count==="none"?"":i(`told.count-${t.count}`,{n:t.mark.count,want:t.want}),ns=(t,e)=>e.flatMap(r=>[...r.beside.map(n=>({at:n,words:i("told.near")})),...r.extra.map(n=>({at:n.mark,words:ss(t,r,n)}))]),os=(t,e)=>S(N(t.verses,e)),ss=(t,e,{mark:r,other:n})=>i(n?"told.other-stop":"told.extra-why",{letter:os(t,r),rule:e.pencil.name}),as=(t,e)=>e.flatMap(r=>r.alike.map(n=>({at:n.mark,words:is(t,r,n)})));function is(t,e,{mark:r,v:n,e:o}){let{rules:s}=h().catalogue,a=s[o.rule],c=e.pencil.rules.map(C=>s[C]),{sound:p}=c.find(C=>C===a||C.alike?.includes(a.id))??a,u=p?i("told.alike-sound",{sound:p}):i("told.alike-yes"),w=G(r,{v:n,w:o.w,l:o.l})?"":a.onCause??"",I=i(_(t).has(a.id)?"told.alike-named":"told.alike-later",{rule:a.name});return[u,w,e.pencil.rules.includes(o.rule)?"":I].filter(Boolean).join(" ")}var cs=20;function un(t){if(t.id===x)return i("case.stops");let e=h().catalogue.rules.find(r=>r.id===t.id);return e&&e.name.length>cs?e.tr:t.name}function be(t){let[e,...r]=t.pencils;return e?r.length?l`<div class="hands" role="group" aria-label=${i("case.hand")} data-t="pencil">
    ${t.pencils.map(n=>l`<button
          class="chip"
          .style=${it(n.family)}
          aria-pressed=${n.id===t.hand}
          data-t="hand-${n.id}"
          @click=${o=>ls(n,o.currentTarget)}
        >
          ${B(n.family)}${un(n)}
        </button>`)}
  </div>`:l`<span class="pencil" .style=${it(e.family)} data-t="pencil"
      >${B(e.family)}${un(e)}</span
    >`:m}function ls({id:t},e){g({hand:t,caret:void 0}),e.scrollIntoView({inline:"center",block:"nearest",behavior:Ht()})}var ye=t=>l`
  <button
    class="plain opener"
    data-t="case"
    aria-expanded=${t.case}
    aria-controls="case"
    aria-label=${i("case.title")}
    title=${i("case.title")}
    @click=${()=>g({case:!t.case,drawer:!1})}
  >
    +
  </button>
`,hn=t=>l`<div class="case" id="case" role="group" aria-label=${i("case.title")} data-t="pencils">
    <p class="quiet">${i("case.what")}</p>
    ${Ir(h().catalogue,{...t.draft.lines,name:"pencil",rules:_(t),choose:ps})}
  </div>`;function ps(t){Xr(t);let e=d();e&&history.replaceState(history.state,"",M(e.draft.lines))}function A(t){let e=d()?.say===t;g({say:e?`${t} `:t})}function Wt(){let t=d();Ur();let e=d();t&&e&&t.draft!==e.draft&&A(i("say.undone",{what:[...ds(t,e),...ms(t,e),...fs(t,e)].join("; ")}))}function _t(t,e){let r=d();if(!r||r.elsewhere)return;let n=k(r);if(!n.movable(t,e))return A(i("stop.none"));if(!tt(r))return A(i("stop.stays"));Zr(t,e),A(i(n.after(t,e)?"stop.reads-on":"stop.stops"))}var ve=(t,e)=>t.find(r=>Mt(r,e));function ds(t,e){let r=p=>S(N(e.verses,p)),n=t.draft.marks,o=e.draft.marks,s=n.filter(p=>!ve(o,p)).map(r),a=o.filter(p=>!ve(n,p)).map(r),c=o.filter(p=>(ve(n,p)??p).count!==p.count);return[...s.length?[i("say.unmarked",{n:s.length,letters:D(s)})]:[],...a.length?[i("say.marked-again",{n:a.length,letters:D(a)})]:[],...c.map(p=>i(p.count?"say.counted":"say.uncounted",{letter:r(p),n:p.count}))]}function ms({draft:{lengths:t={}}},e){let r=e.draft.lengths??{};return e.pencils.filter(({id:n})=>t[n]!==r[n]).map(({id:n,name:o})=>i(r[n]?"say.counted":"say.uncounted",{letter:o,n:r[n]??0}))}function fs(t,e){let[r,n]=[k(t),k(e)];return[...new Map([...t.draft.stops,...e.draft.stops].map(([s,a])=>[`${s}.${a}`,[s,a]])).values()].filter(([s,a])=>r.after(s,a)!==n.after(s,a)).map(([s,a])=>{let c=e.verses[s],p=i(n.after(s,a)?"stop.stops":"stop.reads-on");return i(a===c.words.length-1?"stop.end":"stop.sign",{a:c.a,what:p})})}function wn(t){let{how:e,lengths:r}=rt(t);return e==="none"?m:e==="all"?us(t,r[0]):hs(t,r)}var us=(t,e)=>l`
  <div class="counts" role="group" aria-label=${i("count.label")}>
    <span class="quiet">${i("count.all")}</span>
    ${bn(e,t.draft.lengths?.[t.hand]===e,()=>vn(t,e))}
  </div>
`;function hs(t,e){let r=t.caret,n=r&&E(t,r);return l`<div class="counts" role="group" aria-label=${i("count.label")}>
    <span class="quiet">${i(n?"count.here":"count.first")}</span>
    ${e.map(o=>bn(o,n?.count===o,()=>r&&ue(r,o),!n))}
    <button
      class="chip"
      data-t="unmark"
      ?disabled=${!n}
      aria-label=${i("count.unmark")}
      title=${i("count.unmark")}
      @click=${()=>r&&fe(r,!1)}
    >
      ×
    </button>
  </div>`}var bn=(t,e,r,n=!1)=>l`
  <button class="chip" data-t="count-${t}" ?disabled=${n} aria-pressed=${e} @click=${r}>
    ${t}
  </button>
`;function yn(t,e){let{how:r,lengths:n}=rt(t);if(r==="none")return gn(i("count.none"));if(!n.includes(e)){let o=D(n.map(String));return gn(i("count.refused",{n:e,list:o}))}return r==="each"&&t.caret?ue(t.caret,e):vn(t,e),r==="each"}function vn(t,e){Qr(e);let r=T(t)?.name??"",n=d()?.draft.lengths?.[t.hand];A(i(n?"say.counted":"say.uncounted",{letter:r,n:e}))}function gn(t){return A(t),y({notice:{text:t}}),!1}var $e=()=>requestAnimationFrame(()=>{let t=document.querySelector("[data-t=task]");t&&(document.querySelector(".bar")?.scrollTo({left:0}),scrollTo({top:0,behavior:Ht()}),t.focus({preventScroll:!0}))}),Vt=t=>()=>{t();let e=d();if(!e)return;let{phase:r}=e.draft,n=i("say.step",{step:i(`say.step-${r}`)});A(r==="check"?`${n} ${zt(e)}`:n),$e()},Kt=Vt(tn),$n=Vt(he),kn=Vt(rn),Gt=Vt(()=>{let t=d(),e=t&&nn(t);e==="find"?he():e&&W(e)});function xn(t){let{phase:e}=t.draft,r=e==="find",n=t.pencils.length>1;return l`<div class="bar">
    ${t.case?hn(t):m} ${r&&!t.drawer?wn(t):m}
    ${r&&n&&!t.drawer?be(t):m}
    <div class="tools">${gs[e](t)}</div>
  </div>`}var gs={find:t=>l`
    ${t.pencils.length>1?m:be(t)} ${ye(t)}
    <button class="plain" data-t="undo" ?disabled=${!t.history.length} @click=${Wt}>
      ${i("lines.undo")}
    </button>
    ${jt("find")}
  `,check:ws,read:t=>l` ${t.pencils.length?Pn():ye(t)} ${jt("read")} `,done:()=>m},jt=t=>l`
  <button class="main" data-t="next" @click=${Kt}>${i(`lines.next.${t}`)}</button>
`,Pn=()=>l`
  <button class="plain" data-t="step-back" @click=${Gt}>${i("lines.step-back")}</button>
`;function ws(t){let e=l`<button class="plain" data-t="show-all" @click=${en}>
    ${i("lines.show-all")}
  </button>`,r=n=>l`<button class=${n} data-t="again" @click=${$n}>
      ${i(H(t)?"lines.again":"lines.mark-again")}
    </button>`;return t.draft.paper?l`${Pn()} ${H(t)?e:m} ${jt("check")}`:H(t)?l`${e} ${r("main")}`:l`${r("plain")} ${jt("check")}`}var Sn=t=>l`
  <div class="drawer">
    <button
      class="handle"
      data-t="drawer"
      aria-expanded=${t.drawer}
      aria-controls="help"
      @click=${()=>g({drawer:!t.drawer,case:!1})}
    >
      ${i("drawer.title")}
    </button>
    <div id="help" class="help" ?hidden=${!t.drawer}>${t.drawer?bs(t):m}</div>
  </div>
`;function bs(t){let{phase:e}=t.draft,r=e==="find",n=Y(et(t));return l`
    <p>${i(`drawer.say.${ys(t)}`,{child:n})}</p>
    ${r?vs(t).map(o=>$s(o,n)):m} ${r?Ps(t):m}
    <div class="row">
      ${r&&z(t)?Ss(t.answer):m}
      ${r?Es(t.ask):m}
    </div>
    ${t.pencils.some(o=>o.id===x)||e==="read"?ks():m}
    <p class="quiet">${i("drawer.caution")}</p>
    <p class="quiet keys">${i("drawer.keys")}</p>
  `}function ys({draft:{phase:t,told:e,paper:r}}){return t!=="check"?t:r?"paper":e==="some"?"look":"check"}var vs=t=>{let e=T(t)?.rules??[];return e.length===1?[h().catalogue.rules[e[0]]]:[]},$s=(t,e)=>l`
  <p>${t.short}</p>
  ${t.stuck?l`<p data-t="stuck">${i("drawer.stuck",{child:e})} <q>${t.stuck}</q></p>`:m}
`,ks=()=>l`<p class="quiet">${i("drawer.stops")}</p>`;function xs(t){let e=Ot(t.verses,T(t)?.rules??[],k(t));return t.verses.map((r,n)=>({a:r.a,n:e.filter(o=>o.v===n).length})).filter(r=>r.n)}function Ps(t){if(!z(t))return m;let e=xs(t),r=e.reduce((s,a)=>s+a.n,0),n=e.map(s=>i("drawer.in-verse",s)).join(" · "),o=e.reduce((s,a)=>a.n>s.n?a:s,e[0]??{a:0,n:0});return l`<p data-t="hint">
    ${r?`${i("drawer.places",{n:r})} ${n}.`:i("drawer.no-places")}
    ${r?l`<q>${i("drawer.hint",{a:o.a,n:o.n})}</q>`:m}
  </p>`}var Ss=t=>l`
  <button class="plain" data-t="answer" aria-pressed=${t} @click=${Yr}>
    ${i(t?"drawer.hide":"drawer.show")}
  </button>
`,Es=t=>l`
  <button
    class="plain"
    data-t="ask"
    aria-pressed=${t}
    @click=${()=>g({ask:!t,drawer:t})}
  >
    ${i(t?"drawer.mark":"drawer.ask")}
  </button>
`;function En(t,e){let{also:r}=t.lines,n=t.paper?e.flatMap(a=>Ls(a,t.paper)):Ln(e),o=n.find(a=>a.rule===t.lines.rule),s=n.filter(a=>a!==o);return{found:o?.found??0,missed:o?.missed??0,extra:t.paper?0:e.reduce((a,c)=>a+c.extra,0),...s.length&&{also:s},...r?.length&&{pencils:r},...t.paper?{paper:!0}:t.looked!==void 0&&{looked:t.looked}}}function Ln(t){let e=new Map,r=n=>{let o=e.get(n)??{rule:n,found:0,missed:0};return e.set(n,o),o};for(let n of t){for(let o of n.found)r(o).found++;for(let o of n.missed)r(o).missed++}return[...e.values()]}function Ls({pencil:t,found:e,missed:r},n){let o=[...e,...r],s=n[t],a=[...new Set(o)];return s===void 0||s<o.length&&a.length>1?a.map(c=>({rule:c,found:0,missed:0})):Ln([{found:o.slice(0,s),missed:o.slice(s)}])}var ke=new Set;async function Mn(t,e,r){return ke.has(t.id)?!0:(ke.add(t.id),Ms(),Ts(t,e,r).finally(()=>ke.delete(t.id)))}function Ms(){let t=e=>{e.detail>1&&(e.preventDefault(),e.stopPropagation())};addEventListener("click",t,!0),setTimeout(()=>removeEventListener("click",t,!0),700)}async function Ts(t,e,r){let n=h().catalogue,o=h().learners.find(P=>P.id===t.learner),s=new Date().toISOString(),{id:a,lines:c,stops:p,helped:u}=t,f={id:a,learner:t.learner,day:lr(),at:s,rule:c.rule,from:c.from,to:c.to,marks:ft(t),stops:p,...En(t,e),helped:u,outcome:r},w=Lr(),I=w?.learner.id===t.learner?w:void 0,C=o?.place??c.from,Ke=I?vr(I,c):yr(n,c.to,o?.direction)??C,Ge=new Set(xt(t.learner).map(P=>P.rule)),So=n.rules.findIndex(P=>P.id===c.rule),Eo=$r(n).find(P=>P.rules.includes(So))?.rules.map(P=>n.rules[P].id)??[c.rule],je=!c.rule||Ge.has(c.rule)?[]:Eo.filter(P=>!Ge.has(P)).map(P=>({learner:t.learner,rule:P,since:f.day,known:""}));if(!await re(()=>Qe(f,t.at,Ke,je)))return!1;location.hash="#/today";let Lo=h().sessions.some(P=>P.id===a),Mo={label:i("undo"),run:()=>{Os(t,{was:C,now:Ke},je)}};return y({notice:Lo?{text:i("end.saved"),action:Mo}:{text:i("end.gone"),hold:!0}}),!0}async function Os(t,e,r){await re(()=>tr({...t,updated:new Date().toISOString()},e,r))&&(location.hash=M(t.lines))}var Hs=["alone","some","much"];async function As(t,e){lt(t.draft.id),await Mn(t.draft,Cs(t),e)||lt("")}function Cs(t){let{rules:e}=h().catalogue,r=n=>n.map(o=>e[o.e.rule].id);return O(t).map(n=>({pencil:n.pencil.id,found:r(F(n)),missed:r(n.missed),extra:n.extra.length}))}function Tn(t){let e=et(t),r=n=>l`
    <button
      class=${n==="alone"?"main":"big"}
      data-t="outcome-${n}"
      @click=${()=>{As(t,n)}}
    >
      ${i(`outcome.${n}`)}
    </button>
  `;return l`<div class="card" data-t="end">
    ${e?l`<h2>${i("end.title",{child:Y(e)})}</h2>
            ${t.draft.helped?l`<p class="quiet">${i("end.helped")}</p>`:m}
            <div class="stack">${Hs.map(r)}</div>`:Rs()}
    <button class="plain" data-t="step-back" @click=${Gt}>${i("end.back")}</button>
  </div>`}var Rs=()=>l`
  <form class="stack" data-t="end-learner" @submit=${Is}>
    <p>${i("end.no-learner")}</p>
    ${mr("end-name")}
    <button class="main" data-t="end-begin">${i("first.begin")}</button>
  </form>
`;async function Is(t){t.preventDefault(),await dr(t.currentTarget.querySelector("input").value);let e=Z();e&&L({learner:e.id})}var xe;function wt(t=!1){bt();let e=d();if(!e||!navigator.locks)return;let r=new AbortController;xe=()=>r.abort(),Ds(`${e.draft.learner} ${X(e.draft.lines)}`,r.signal,t)}function bt(){xe?.(),xe=void 0}async function Ds(t,e,r){let n=()=>(On(!1),new Promise(s=>e.addEventListener("abort",()=>s()))),o=r?{steal:r}:{ifAvailable:!0};for(;!e.aborted;)await navigator.locks.request(t,o,s=>s?n():void 0).catch(()=>{}),e.aborted||On(!0),o={signal:e}}function On(t){let e=d();e&&e.elsewhere!==t&&g({elsewhere:t})}var Hn=()=>l`
  <div class="elsewhere" role="status" data-t="elsewhere">
    <p>${i("lines.elsewhere")}</p>
    <button class="main" data-t="take-over" @click=${Ns}>${i("lines.take-over")}</button>
  </div>
`;async function Ns(){await Dt(),wt(!0)}var yt=(t,e)=>{let r=t._$AN;if(r===void 0)return!1;for(let n of r)n._$AO?.(e,!1),yt(n,e);return!0},Ft=t=>{let e,r;do{if((e=t._$AM)===void 0)break;r=e._$AN,r.delete(t),t=e}while(r?.size===0)},An=t=>{for(let e;e=t._$AM;t=e){let r=e._$AN;if(r===void 0)e._$AN=r=new Set;else if(r.has(t))break;r.add(t),zs(e)}};function qs(t){this._$AN!==void 0?(Ft(this),this._$AM=t,An(this)):this._$AM=t}function Bs(t,e=!1,r=0){let n=this._$AH,o=this._$AN;if(o!==void 0&&o.size!==0)if(e)if(Array.isArray(n))for(let s=r;s<n.length;s++)yt(n[s],!1),Ft(n[s]);else n!=null&&(yt(n,!1),Ft(n));else yt(this,t)}var zs=t=>{t.type==er.CHILD&&(t._$AP??=Bs,t._$AQ??=qs)},Ut=class extends rr{constructor(){super(...arguments),this._$AN=void 0}_$AT(e,r,n){super._$AT(e,r,n),An(this),this.isConnected=e._$AU}_$AO(e,r=!0){e!==this.isConnected&&(this.isConnected=e,e?this.reconnected?.():this.disconnected?.()),r&&(yt(this,e),Ft(this))}setValue(e){if(nr(this._$Ct))this._$Ct._$AI(e,this);else{let r=[...this._$Ct._$AH];r[this._$Ci]=e,this._$Ct._$AI(r,this,0)}}disconnected(){}reconnected(){}};var Pe=new WeakMap,Cn=ne(class extends Ut{render(t){return m}update(t,[e]){let r=e!==this.G;return r&&this.rt(void 0),(r||this.lt!==this.ct)&&(this.G=e,this.ht=t.options?.host,this.rt(this.ct=t.element)),m}rt(t){if(this.G!==void 0)if(this.isConnected||(t=void 0),typeof this.G=="function"){let e=this.ht??globalThis,r=Pe.get(e);r===void 0&&(r=new WeakMap,Pe.set(e,r)),r.get(this.G)!==void 0&&this.G.call(this.ht,void 0),r.set(this.G,t),t!==void 0&&this.G.call(this.ht,t)}else this.G.value=t}get lt(){return typeof this.G=="function"?Pe.get(this.ht??globalThis)?.get(this.G):this.G?.value}disconnected(){this.lt===this.ct&&this.rt(void 0)}reconnected(){this.rt(this.ct)}});function Rn(t,e){let r=t.at(-1);return r===void 0||e-r>2500||e<r?[e]:e-r<100?[...t]:[...t,e].slice(-9)}function In(t){let e=t.slice(1).map((n,o)=>n-t[o]).sort((n,o)=>n-o);if(!e.length)return;let r=e.length>>1;return Dn(e.length%2?e[r]:(e[r-1]+e[r])/2)}function Se(t){let e=t===null||t.trim()===""?NaN:Number(t);return Number.isFinite(e)?Dn(e):600}var Ee=(t,e)=>Array.from({length:t},(r,n)=>n*e),Dn=t=>Math.min(1500,Math.max(250,Math.round(t)));var Bn="sutur-pace";function Le(t,e,r){let n=matchMedia("(prefers-reduced-motion: reduce)"),o=n.matches,s=R("ul","beat-lengths");s.append(...e.map(p=>Ws(p,o)));let a=R("p","",o?r.still:r.hint);t.replaceChildren(a,...o?[]:[Vs(r)],s);let c=()=>t.isConnected&&Le(t,e,r);n.addEventListener("change",c,{once:!0})}function Ws(t,e){let r=R("span","beat-dots");r.ariaHidden="true",r.append(...Ee(t.counts,1).map(a=>R("i","",String(a+1))));let n=[R("span","beat-name",t.name)," ",r],o=R("li");if(o.dataset.counts=String(t.counts),e)return o.append(...n),o;let s=R("button");return s.type="button",s.append(...n),s.addEventListener("click",()=>_s(r)),o.append(s),o}var Nn=[];function _s(t){Nn.forEach(clearTimeout),document.querySelectorAll(".beat-dots .on").forEach(n=>n.classList.remove("on"));let e=Wn();t.style.setProperty("--count",`${e}ms`),t.offsetWidth;let r=[...t.children];Nn=Ee(r.length,e).map((n,o)=>setTimeout(()=>r[o].classList.add("on"),n))}function Vs(t){let e=R("p","beat-pad"),r=R("button","big",t.tap);r.type="button";let n=R("span","beat-pace",qn(t,Wn()));n.role="status";let o=[];return r.addEventListener("click",s=>{o=Rn(o,s.timeStamp);let a=In(o);a&&Ks(a),n.textContent=a?qn(t,a):t.more}),e.append(r," ",n),e}var qn=(t,e)=>t.pace((e/1e3).toFixed(1)),zn;function Wn(){try{return zn??Se(localStorage.getItem(Bn))}catch{return Se(null)}}function Ks(t){zn=t;try{localStorage.setItem(Bn,String(t))}catch{}}function R(t,e="",r=""){let n=document.createElement(t);return e&&(n.className=e),r&&(n.textContent=r),n}var Vn=t=>l`
  <section class="panel" ?hidden=${!t.explained} aria-live="polite" data-t="letter">
    ${t.explained?Gs(t,t.explained):m}
  </section>
`,Me=null,_n=!1;function Kn(t){t.explained&&!_n&&(Me=document.activeElement),_n=!!t.explained}function Te(){return d()?.explained?(g({explained:void 0,ask:!1}),(Me?.isConnected&&Me.closest(".word-link")||document.querySelector("[data-t=passage]"))?.focus({preventScroll:!0}),!0):!1}function Gs(t,e){let r=on(V(),t.verses,k(t),e,_(t)),n=t.verses[e.v].words[e.w].text;return l`
    <div class="row">
      <h2 data-t="letter-name">${r.title}</h2>
      ${Lt(n,"ar small")}
      <button class="plain" data-t="letter-close" @click=${Te}>
        ${i("explain.close")}
      </button>
    </div>
    ${r.facts.map(o=>l`<p>${o}</p>`)}
    ${r.rules.map(({rule:o,why:s,detail:a})=>l`<p class="rule-why" .style=${it(o.family)}>
          ${B(o.family)}${Gn(t,o,l`<b>${o.name}</b>`)} ${s} ${a}
        </p>`)}
    ${js(r.rules)} ${r.later.length?Us(t,r.later):m}
  `}function js(t){let e=t.filter(n=>n.held).map(n=>({name:i("beat.length",{rule:n.rule.name,n:n.held}),counts:n.held}));if(!e.length)return m;let r=n=>{n&&Le(n,e,Fs())};return l`<details class="opens" data-t="count-along">
    <summary>${i("beat.title")}</summary>
    ${Tt(e.map(n=>n.name),()=>l`<div class="beat" ${Cn(r)}></div>`)}
  </details>`}var Fs=()=>({hint:i("beat.hint"),still:i("beat.still"),tap:i("beat.tap"),more:i("beat.more"),pace:t=>i("beat.pace",{seconds:t})}),Us=(t,e)=>l`
  <p class="quiet" data-t="later">${i("explain.later")}</p>
  <p class="quiet" data-t="later-lessons">
    ${i("explain.ahead")} ${e.map((r,n)=>[n?" · ":"",Gn(t,r,r.name)])}
  </p>
`,Gn=(t,e,r)=>{let n=M(t.draft.lines);return l`<a href="${Mr(e.lesson)}${n}" data-t="lesson-${e.id}">${r}</a>`};async function jn(t){if(navigator.share&&matchMedia("(pointer: coarse)").matches)try{return await navigator.share({url:t}),"sent"}catch(e){if(e.name==="AbortError")return"sent"}try{return await navigator.clipboard.writeText(t),"copied"}catch{return"shown"}}var Fn=(t,e)=>l`
  <details class="menu" data-t="menu" @focusout=${Ys}>
    <summary class="button plain">${i("menu.title")}</summary>
    <div class="menu-list">
      <a class="button plain" href="#/lines" data-t="choose">${i("menu.choose")}</a>
      <button class="plain" data-t="share" @click=${Oe(()=>{Qs(e)})}>
        ${i("menu.share")}
      </button>
      ${t.practice&&Zs(t.practice)?l`<button class="plain" data-t="on-paper" @click=${Oe(kn)}>
              ${i("menu.paper")}
            </button>`:m}
      <button class="plain" data-t="restart" @click=${Oe(Js)}>${i("menu.restart")}</button>
      <a class="button plain" href=${Xs(e)} data-t="print">${i("menu.print")}</a>
    </div>
  </details>
`,Zs=t=>t.draft.phase==="find"&&t.pencils.some(e=>e.id!==x),Xs=t=>`#/print?sheet=practice&${Ze(t)}`,Oe=t=>()=>{He(),t()};function He(){let t=document.querySelector(".menu[open]");return t?(t.open=!1,t.querySelector("summary").focus({preventScroll:!0}),!0):!1}function Ys(t){let e=t.currentTarget;t.relatedTarget&&!e.contains(t.relatedTarget)&&(e.open=!1)}function Js(){let t=d()?.draft;if(de(),$e(),!t)return;let e=()=>{d()?.draft.at===t.at&&de(t)};y({notice:{text:i("menu.restarted"),action:{label:i("undo"),run:e}}})}async function Qs(t){let e=new URL(M(t),location.href).href,r=await jn(e);r==="copied"&&y({notice:{text:i("share.copied")}}),r==="shown"&&y({notice:{text:i("share.shown",{url:e}),hold:!0}})}var Un=()=>!document.querySelector("dialog[open]")&&(He()||Te()||ta());function ta(){let t=d();if(!t?.drawer&&!t?.case)return!1;g({drawer:!1,case:!1});let e=t.drawer?"[data-t=drawer]":"[data-t=case]";return document.querySelector(e)?.focus({preventScroll:!0}),!0}var Zn=-1/0;for(let t of["pointerdown","pointerup"])addEventListener(t,e=>Zn=e.timeStamp,!0);var Zt=t=>t.timeStamp-Zn<1e3;var Xn=10;function Yn(t){let e=t.target,r=e.closest(".bar"),n=r?.querySelector(".main");!r||!n||e===n||Zt(t)||requestAnimationFrame(()=>setTimeout(()=>{let o=e.getBoundingClientRect(),s=o.left-r.getBoundingClientRect().left-Xn,a=o.right+Xn-n.getBoundingClientRect().left;r.scrollLeft+=s<0?s:Math.max(0,Math.min(a,s))}))}var vt=0;async function Jn(t){let e=++vt,{catalogue:r}=h(),n=Z()?.id??"",o=Pt(n,X(t)).catch(()=>{});try{let[s,a,c]=await Promise.all([xr(r,t.from,t.to),Pr(r,t.from,t.to),o]);if(e!==vt)return;jr(r,s,a,c?Rt(ea(c,t),s):Ct(n,t)),ra(),wt(),addEventListener("pagehide",bt),addEventListener("pageshow",Qn),requestAnimationFrame(()=>setTimeout(()=>g({}))),setTimeout(()=>{e===vt&&Er().catch(()=>{})},2e3)}catch(s){if(!(s instanceof kr))throw s;e===vt&&y({unreadable:s.code})}}function ea(t,{also:e=[]}){let r=[...new Set([...t.lines.also??[],...e])];return r.length?{...t,lines:{...t.lines,also:r}}:t}function ra(){let t=d()?.draft.lines;!t||M(t)===location.hash||(history.replaceState(history.state,"",M(t)),y({route:{name:"lines",lines:t}}))}var Qn=t=>{t.persisted&&wt()};function to(){vt++,removeEventListener("pagehide",bt),removeEventListener("pageshow",Qn),bt(),Fr()}var na=40;function eo(t,e,r){let n=t.el.getBoundingClientRect();return{side:Math.max(n.left-e,0,e-n.right),line:Math.max(n.top-r,0,r-n.bottom)}}function ro(t,e,r,n){let{left:o,right:s}=b.across(t,e),a=Math.max(o-r,0,r-s),c=J(t.word,e);if(!c&&!J(t.word,e+1))return a;let p=b.base(t)-n-b.crown(t,c?e:e+1)*b.em(t);return Math.hypot(a,Math.max(c?-p:p,0))}function oa(t,e,r){let n=document.elementsFromPoint(e,r).find(c=>c.matches(".w")),o=n&&t.word(Number(n.dataset.v),Number(n.dataset.w));if(o?.el===n&&o)return o;let s,a=na;for(let c of t.shown){let{side:p,line:u}=eo(c,e,r),f=Math.hypot(p,u);f<a&&(a=f,s=c)}return s}function K(t,e,r){let n=oa(t,e,r);if(!n)return;let o=0,s=1/0;return n.word.letters.forEach((a,c)=>{let{left:p,right:u}=b.across(n,c),f=ro(n,c,e,r)+Math.abs((p+u)/2-e)/1e4;f<s&&(s=f,o=c)}),{v:n.v,w:n.w,l:o}}function Xt(t,e,r,n,o){let s=1/0;for(let a of t.shown){let{side:c,line:p}=eo(a,r,n);if(Math.hypot(c,p)>=o)continue;let u=a.v===e.v&&a.w===e.w;a.word.letters.forEach((f,w)=>{u&&w===e.l||(s=Math.min(s,Math.hypot(p,ro(a,w,r,n))))})}return s<o?s:1/0}var sa=450,aa=8,ia=5,Ce=t=>t==="touch"?8:2.5,ca=1e3,no=t=>!!t.target.closest("button"),Ae=class{constructor(e,r,n){this.el=e;this.sheet=r;this.on=n}el;sheet;on;id=-1;from={x:0,y:0};x=0;y=0;timer=0;moving=!1;stroke=!1;lifted=-1/0;down=e=>{e.button!==0||this.id>=0||no(e)||(this.id=e.pointerId,this.x=e.clientX,this.y=e.clientY,this.from={x:this.x,y:this.y},this.moving=!1,this.timer=window.setTimeout(this.held,sa))};held=()=>{let e=K(this.sheet,this.x,this.y);this.end(),e&&this.on.hold(e.v,e.w)};move=e=>{if(e.pointerId!==this.id)return;let r=Math.hypot(e.clientX-this.x,e.clientY-this.y);if(!(!this.moving&&(r<aa||!this.begin(e)))){for(let n=1,o=Math.ceil(r/ia);n<=o;n++){let s=this.x+(e.clientX-this.x)*n/o,a=this.y+(e.clientY-this.y)*n/o,c=this.stroke&&K(this.sheet,s,a);c&&this.on.pass(c)}this.x=e.clientX,this.y=e.clientY}};begin(e){clearTimeout(this.timer);let r=Math.abs(e.clientY-this.y)>Math.abs(e.clientX-this.x);if(e.pointerType==="touch"&&r)return this.end(),!1;this.moving=!0,this.el.setPointerCapture(this.id);let n=K(this.sheet,this.x,this.y);return this.stroke=!!n&&this.on.begin(n),!0}up=e=>{e.pointerId===this.id&&(this.end(),this.lifted=e.timeStamp,this.moving?this.stroke&&!this.on.lift()&&this.tap(this.from.x,this.from.y,e.pointerType):this.tap(e.clientX,e.clientY,e.pointerType))};tap(e,r,n){let o=K(this.sheet,e,r);o&&this.on.tap(o,Xt(this.sheet,o,e,r,Ce(n))<1/0)}cancel=e=>{e.pointerId===this.id&&(this.end(),this.on.drop())};end=()=>{clearTimeout(this.timer),this.id=-1};click=e=>{if(e.detail!==0||e.timeStamp-this.lifted<=ca||no(e))return;let r=e.target.closest(".w"),n=r?{v:Number(r.dataset.v),w:Number(r.dataset.w)}:K(this.sheet,e.clientX,e.clientY);n&&this.on.hold(n.v,n.w)}};function oo(t,e,r){let n=new Ae(t,e,r);t.addEventListener("pointerdown",n.down),t.addEventListener("pointermove",n.move),t.addEventListener("pointerup",n.up),t.addEventListener("pointercancel",n.cancel),t.addEventListener("click",n.click),t.addEventListener("selectstart",o=>o.preventDefault()),t.addEventListener("contextmenu",o=>{o.pointerType!=="mouse"&&o.preventDefault()})}var la=matchMedia("(forced-colors: active)");function pa(t,e){let r=t.dataset.ink?.split(" ")??[],n=[...e].filter(o=>!r.includes(o));n.length&&(t.dataset.ink=[...r,...n].join(" "))}function da(t,e,{shapes:r,again:n},o){let s=e.map(c=>`${c.l} ${c.name} ${c.under??""}`).join()+(e.length&&!o?"plain":"");if(s===(t.key??"")||(t.key=s,t.bits?.remove(),delete t.bits,Br(t.el,e),!e.length))return;let a=t.el.getBoundingClientRect().width/b.em(t);t.bits=qr(t.word,r,o?n:[],{edge:a,slot:c=>b.slot(t,c),crown:c=>b.crown(t,c),top:c=>b.top(t,c)}),t.el.append(t.bits)}function ma(t,{from:e,to:r}){let n=new Range;return n.setStart(t,e),n.setEnd(t,r),n}function Yt(t,e,r,n="lines"){let o=new Map,s=new Map,a=Dr&&!la.matches;for(let c of r){let p=t.word(c.v,c.w),u=p&&o.get(p);u?u.push(c):p&&o.set(p,[c])}for(let c of t.shown){let p=o.get(c)??[],u=Tr(c.word,p);if(da(c,p,u,a),a)for(let f of u.ranges)Nr(s,f.name,ma(c.node,f))}pa(e,s.keys()),se(n,s)}var Jt=(t="lines")=>se(t,new Map);var Re={};To(Re,{begin:()=>fa,drop:()=>so,lift:()=>ha,pass:()=>ua});function fa(t){let e=d();return!e||!dt(e)?!1:(g({stroke:{letters:[t],on:!E(e,t)}}),!0)}function ua(t){let e=d()?.stroke,r=e?.letters[0];if(!r||r.v!==t.v||r.w!==t.w)return;let n=e.letters.findIndex(s=>s.l===t.l);if(n===e.letters.length-1)return;let o=n<0?[...e.letters,t]:e.letters.slice(0,n+1);g({stroke:{...e,letters:o}})}function ha(){let t=d()?.stroke;return so(),!t||t.letters.length<2?!1:(me(t.letters,t.on),!0)}function so(){d()?.stroke&&g({stroke:void 0})}var ga=["found","missed","extra"],ao=t=>ga.find(e=>e===t),io=t=>zr(h().catalogue.families.find(e=>`f-${e.id}`===t)?.id??"");function Ie(t,e,r){let n=ao(r);return n?i(`said.${n}`):t.draft.phase!=="find"||t.answer?io(r):e.some(s=>s.name!==r&&!ao(s.name))?i("said.marked-as",{family:io(r)}):i("said.marked")}function Qt(t,e,r,n){let o=e.filter(a=>G(a,n)),s=new Set(o.map(a=>Ie(t,e,a.name)));return[ir(r.letters[n.l]),...s].join(", ")}function wa(t,e){let r=S(t.letters[e]);return t.letters.some((o,s)=>s!==e&&S(o)===r)?i("said.nth",{letter:r,i:e+1}):r}function ba(t,e,r,n){let o=[...j(n,s=>s.name)].map(([s,a])=>{let c=fr(a.map(u=>u.l)).map(u=>wa(r,u)),p=s==="found"||s==="missed"||Ie(t,e,s)===i("said.marked");return i(p?"said.letters":"said.on",{how:Ie(t,e,s),letters:D(c)})});return i("said.word",{word:r.text,told:o.join(", ")})}function co(t,e,r){let n=j(r,o=>`${o.v}.${o.w}`);for(let{v:o,w:s,el:a,word:c}of e.shown){let p=n.get(`${o}.${s}`);p?a.setAttribute("aria-label",ba(t,r,c,p)):a.removeAttribute("aria-label")}}function lo(t,e,r){let n=e.w+r;if(t[e.v].words[n])return{v:e.v,w:n,l:0};let o=e.v+r,s=t[o];return s?{v:o,w:r>0?0:s.words.length-1,l:0}:void 0}function De(t,e,r){let n=e.l+r;if(t[e.v].words[e.w].letters[n])return{...e,l:n};let o=lo(t,e,r);return o?r>0?o:{...o,l:t[o.v].words[o.w].letters.length-1}:e}var Ne=(t,e,r)=>lo(t,e,r)??e;function qe(t,e,r){let n=t.word(e.v,e.w);if(!n)return e;let o=b.box(n,e.l),s=(o.left+o.right)/2,a=e,c=1/0,p=0;for(let u of r>0?t.shown:[...t.shown].reverse()){let f=u.el.getBoundingClientRect();if(r>0?f.top<o.bottom:f.bottom>o.top)continue;if(p&&Math.abs(f.top-p)>f.height/2)break;p=f.top;let w=Math.max(f.left-s,0,s-f.right);w<c&&(c=w,a={v:u.v,w:u.w,l:0})}return a}var Be={v:0,w:0,l:0};function mo(t,e,r){t.addEventListener("focus",n=>{Zt(n)||po(t,e,d()?.caret??Be)}),t.addEventListener("focusout",n=>{t.contains(n.relatedTarget)||(t.tabIndex=0,r())}),t.addEventListener("keydown",n=>{let o=d();if(!o||n.target.closest("button"))return;let s=o.caret??Be,a=n.ctrlKey||n.altKey||n.metaKey,c=ya(o,e,s,n.key,a);if(c)po(t,e,c);else if(a||!va(o,s,n.key,n.repeat))return;n.preventDefault()})}function po(t,e,r){let n=e.word(r.v,r.w);for(let o of e.shown)o.el.tabIndex=-1;n?.el.focus({preventScroll:!0}),n?.el.scrollIntoView({block:"nearest"}),n&&(n.el.tabIndex=0),t.tabIndex=-1,g({caret:r}),ze()}function ya(t,e,r,n,o){let{verses:s}=t,a=o?s.length-1:r.v;switch(n){case"ArrowLeft":return o?Ne(s,r,1):De(s,r,1);case"ArrowRight":return o?Ne(s,r,-1):De(s,r,-1);case"ArrowDown":return qe(e,r,1);case"ArrowUp":return qe(e,r,-1);case"Home":return o?Be:{v:r.v,w:0,l:0};case"End":return{v:a,w:s[a].words.length-1,l:0};default:return}}function va(t,e,r,n){let o=t.draft.phase==="find"&&z(t);if(r===" "||r==="Enter"){if(n)return!0;mt(e),ze()}else if(r==="n")Kt();else if(/^[1-9]$/.test(r)&&o)t.caret||g({caret:e}),yn(d()??t,Number(r))&&ze();else if(r==="e")g({explained:e});else if(r==="o")g({open:{v:e.v,w:e.w}});else if(r==="s")_t(e.v,e.w);else return!1;return!0}function ze(){let t=d();t?.caret&&A($a(t,t.caret))}function $a(t,e){let r=t.verses[e.v].words[e.w],n=Qt(t,ot(t),r,e),o=i("say.letter",{letter:n,i:e.l+1,n:r.letters.length}),s=E(t,e),a=s&&(s.count||t.draft.lengths?.[t.hand]);return a?`${o} ${i("say.count",{n:a})}`:o}function fo(t,e,r){let n=[...ka(t),...xa(t,e),...Pa(t),...Sa(t)],o=n.length?r.getBoundingClientRect():void 0;St(n.map(s=>{let a=e.word(s.at.v,s.at.w);if(!a||!o)return;let c=b.box(a,s.at.l),p=[`left:${c.left-o.left}px`,`top:${c.top-o.top}px`,`width:${c.right-c.left}px`,`height:${c.bottom-c.top}px`].join(";");return l`<span class=${s.cls} .style=${p}>${s.words}</span>`}),r)}function ka(t){let{phase:e}=t.draft,{settings:r,catalogue:n}=h(),o=new Set(t.pencils.map(a=>a.id));return e==="find"&&!t.answer?ft(t.draft).filter(a=>a.count&&o.has(q(a,t.draft.lines))).map(a=>({at:a,cls:"count",words:String(a.count)})):!(t.answer||e==="check")||r.counting==="never"?[]:O(t).flatMap(a=>[...a.found,...H(t)?[]:a.missed]).flatMap(({v:a,e:c})=>{let p=st(n.rules[c.rule],c,r).want;return p?[{at:{v:a,w:c.w,l:c.l},cls:"count",words:String(p)}]:[]})}function xa(t,e){let r=t.caret;if(!r)return[];let n=e.word(r.v,r.w)?.el.matches(":focus-visible"),o=t.draft.phase==="find"&&!t.answer&&rt(t).how==="each";return n||o&&E(t,r)?[{at:r,cls:"caret"}]:[]}var Pa=t=>t.explained?[{at:t.explained,cls:"asked"}]:[],Sa=({stroke:t})=>t?.letters.map(e=>({at:e,cls:t.on?"stroke":"stroke off"}))??[];var uo=10;function ho(t,e,r){let n=b.box(t,e),o=w=>`${b.base(t)-w*b.em(t)-r.top}px`,s=J(t.word,e+1)?o(b.crown(t,e+1)):"-.4em",a=J(t.word,e)?`calc(100% - ${o(b.crown(t,e))})`:"-.4em",c=`left:${r.left-n.left+uo}px;width:${r.width}px`,p=`clip-path:inset(${s} ${r.right-n.right}px ${a} ${n.left-r.left}px)`,u=`width:${n.right-n.left+2*uo}px;height:${r.height}px`,{text:f}=t.word;return l`<span class="slice" .style=${u} aria-hidden="true"
    ><span class="slice-word" lang="ar" .style=${c} .textContent=${f}></span
    ><span class="slice-word ink" lang="ar" .style=${`${c};${p}`} .textContent=${f}></span
  ></span>`}function go(t){let e=t.verses[t.v].words[t.w],r=document.createElement("dialog"),n=new b,o=[];r.className="zoom",r.ariaLabel=t.label,r.dataset.t="zoom",r.style.setProperty("--pencil",t.look.colour),r.setAttribute("aria-describedby","zoom-hint");let s=w=>La(t,n,r,w),a=()=>St(Ea(t,e,o,s,()=>r.close()),r);a(),n.add(t.v,t.w,r.querySelector(".w"),t.verses),r.addEventListener("close",()=>{Jt("zoom"),removeEventListener("resize",u),r.remove(),t.closed()}),Ca(r),document.body.append(r),r.showModal();let c=n.word(t.v,t.w),p=c.el.getBoundingClientRect();o=e.letters.map((w,I)=>ho(c,I,p));let u=()=>Ta(r);u(),addEventListener("resize",u);let f=()=>{a();let w=e.letters.flatMap((I,C)=>t.marked(C)?[{v:t.v,w:t.w,l:C,...t.look}]:[]);Yt(n,r,w,"zoom")};return f(),We(r,0)?.focus({preventScroll:!0}),{close:()=>r.close(),update:f}}var Ea=(t,e,r,n,o)=>l`
  <div class="zoom-word" dir="rtl">
    <span
      class="w${At([e],0)}"
      lang="ar"
      data-t="zoom-word"
      .textContent=${e.text}
      @click=${n}
    ></span>
  </div>
  <p class="quiet" id="zoom-hint" data-t="zoom-hint">${t.hint}</p>
  <div class="zoom-letters" dir="rtl" data-t="zoom-letters" @keydown=${Aa}>
    ${Oa(t,e,r)}
  </div>
  <button class="main" data-t="zoom-close" @click=${o}>${i("zoom.close")}</button>
`,We=(t,e)=>t.querySelector(`[data-t=zoom-letter-${e}]`);function La(t,e,r,n){let{clientX:o,clientY:s}=n,a=K(e,o,s);if(!a)return;let c=Ce(n.pointerType??"touch");if(Xt(e,a,o,s,c)===1/0)return t.choose(a.l);r.querySelector(".near")?.classList.remove("near"),We(r,a.l)?.classList.add("near"),We(r,a.l)?.focus()}var Ma=.35;function Ta(t){let e=t.querySelector(".zoom-word");t.style.setProperty("--fit","1");let r=e.querySelector(".w").getBoundingClientRect(),n=Math.min(1,e.clientWidth/r.width,Ma*innerHeight/r.height);t.style.setProperty("--fit",String(n))}function Oa(t,e,r){let n=t.said();return r.map((o,s)=>Ha(t,e.letters[s],s,o,n[s]))}var Ha=(t,e,r,n,o)=>l`
  <button
    class="zoom-letter"
    data-t="zoom-letter-${r}"
    aria-label=${o}
    aria-pressed=${t.marked(r)??m}
    @click=${()=>t.choose(r)}
  >
    ${n}<span
      class="zoom-name"
      aria-hidden="true"
      lang=${document.documentElement.lang}
      dir="auto"
      >${S(e)}</span
    >
  </button>
`;function Aa(t){let e=t.key==="ArrowLeft"?1:t.key==="ArrowRight"?-1:0,r=[...t.currentTarget.querySelectorAll(".zoom-letter")];e&&r[r.indexOf(document.activeElement)+e]?.focus()}function Ca(t){let e=!1,r=()=>{e=!0},n=o=>{e||o.detail===0||(o.stopPropagation(),o.preventDefault())};t.addEventListener("pointerdown",r,!0),t.addEventListener("click",n,!0),t.addEventListener("click",o=>{let s=t.getBoundingClientRect(),a=o.clientY>=s.top&&o.clientY<=s.bottom&&o.clientX>=s.left&&o.clientX<=s.right;o.target===t&&!a&&t.close()})}var $t,te="";function wo(t,e){let r=d(),{large:n,toldLarge:o}=h().settings;if(!r||!dt(r)||!(e||n))return mt(t);let s=!n&&!o;g({open:{v:t.v,w:t.w,once:!0,why:s}}),s&&pr({toldLarge:!0})}function bo(t){let e=t.open?`${t.open.v}.${t.open.w}`:"";if(e===te)return $t?.update();let r=$t;te=e,$t=void 0,r?.close(),t.open&&($t=Ra(t,t.open,e))}function Ra(t,{v:e,w:r,once:n,why:o},s){let a=dt(t);return go({verses:t.verses,v:e,w:r,label:i("zoom.title"),hint:i(o?"zoom.why":"zoom.hint"),look:at(T(t)?.family??""),said(){let c=d()??t,p=ot(c),u=t.verses[e].words[r];return u.letters.map((f,w)=>Qt(c,p,u,{v:e,w:r,l:w}))},marked:c=>a?!!E(d()??t,{v:e,w:r,l:c}):void 0,choose:c=>{mt({v:e,w:r,l:c}),(!a||n)&&g({open:void 0})},closed:()=>{te===s&&(te="",$t=void 0,g({open:void 0}))}})}var U,ee;function kt(){let t=d(),e=document.querySelector("[data-t=passage]");if(!t||!e)return;(U?.el!==e||U.verses!==t.verses)&&Ia(e,t);let r=ot(t);Yt(U.sheet,e,r),co(t,U.sheet,r),fo(t,U.sheet,e.querySelector(".layer"))}function Ia(t,e){let r=new b;for(let o of t.querySelectorAll(".w"))r.add(Number(o.dataset.v),Number(o.dataset.w),o,e.verses);U={el:t,verses:e.verses,sheet:r},Da(t,r),mo(t,r,kt),r.whenFont(t.textContent,kt);let n="";ee?.disconnect(),ee=new ResizeObserver(([o])=>{let s=`${o.contentRect.width} ${o.contentRect.height}`;n&&n!==s&&kt(),n=s}),ee.observe(t)}function Da(t,e){oo(t,e,{tap:wo,...Re,hold:(r,n)=>g({open:{v:r,w:n}})})}function yo(){ee?.disconnect(),U=void 0,Jt()}var Na=new Intl.NumberFormat("ar-u-nu-arab",{useGrouping:!1});function vo(t){let{from:e,to:r}=t.draft.lines;return l`<div
    class="sheet"
    data-ink=${qa(t)}
    role="application"
    tabindex="0"
    data-t="passage"
    aria-describedby="keys-help"
    aria-label=${Et(h().catalogue.surahs,e,r)}
  >
    <div class="text" lang="ar" dir="rtl">
      ${Tt([t.verses,t.draft.stops,tt(t)],()=>Ba(t))}
    </div>
    <div class="glass" aria-hidden="true"></div>
    <div class="layer" aria-hidden="true"></div>
  </div>`}var qa=t=>[...new Set(t.pencils.map(e=>`f-${e.family}`))].join(" ")||m;function Ba(t){let e=k(t);return t.verses.map((r,n)=>l`${za(t,r,n)}<span
          class="verse"
          data-t="verse-${r.s}-${r.a}"
          data-ref="${r.s}:${r.a}"
          >${Wa(r).map((o,s)=>[s?" ":m,_a(o,r,n,e)])}</span
        > `)}function za(t,e,r){let{from:n,to:o}=t.draft.lines,s=n.s!==o.s&&(e.a===1||r===0),a=t.basmala&&e.a===1&&Sr(e.s),c=h().catalogue.surahs[e.s-1].ar;return[s?l`<span class="surah">${c}</span>`:m,a?l`<span class="basmala" data-t="basmala">${t.basmala}</span>`:m]}function Wa(t){let e=[];return t.words.forEach((r,n)=>{let o=e.at(-1);r.lined&&o?.lined?o.words.push(n):e.push({lined:!!r.lined,words:[n]})}),e}function _a(t,e,r,n){let o=t.words.map((s,a)=>[a?" ":m,Va(e,r,s,n)]);return t.lined?l`<span role="group" aria-label=${i("lines.lined")}>${o}</span>`:o}function Va(t,e,r,n){let o=r===t.words.length-1,s=Ka(t.words,e,r);return!o&&!n.movable(e,r)?s:l`<span class="with-stop">${s}${ja(t,e,r,n)}</span>`}var Ka=(t,e,r)=>l`<span
    class="w${At(t,r)}"
    role="button"
    tabindex="-1"
    data-v=${e}
    data-w=${r}
    .textContent=${t[r].text}
  ></span>`,Ga=t=>l`${Na.format(t)}<span class="latin" lang="en">${t}</span>`;function ja(t,e,r,n){let o=r===t.words.length-1&&!t.open,s=i(n.after(e,r)?"stop.stops":"stop.reads-on");return l`<button
    class=${o?"stop end":"stop"}
    ?disabled=${!n.movable(e,r)}
    data-t="stop-${t.s}-${t.a}-${r}"
    aria-pressed=${n.after(e,r)}
    aria-disabled=${tt(d())?m:"true"}
    aria-label=${i(o?"stop.end":"stop.sign",{a:t.a,what:s})}
    title=${s}
    @click=${()=>_t(e,r)}
  >
    ${o?Ga(t.a):m}
  </button>`}var Ve=t=>t.name==="lines"?t.lines:void 0;function Po(t){let e=Ve(t.route);return e?Et(t.catalogue.surahs,e.from,e.to):""}function Fa(t){let e=t.practice,r=e&&!e.opening;return l`
    <main class="lines" data-phase=${e?.draft.phase??""}>
      <header class="row">
        <a class="button plain" href="#/today" data-t="back">${i("lines.back")}</a>
        <div class="title">
          <h1 tabindex="-1">${Po(t)}</h1>
          ${Za(t)}
        </div>
        ${Fn(t,Ve(t.route))}
      </header>
      <p class="task" tabindex="-1" data-t="task">${e?Xa(e):m}</p>
      <div class="hold" ?hidden=${e?.draft.phase==="done"}>
        ${e?vo(e):Ja(t.unreadable)}
      </div>
      <div class="after">${r?Ya(e):m}</div>
      <div class="thumb" @focusin=${Yn}>${r?Ua(e):m}</div>
      <p class="hidden" aria-live="assertive" aria-atomic="true" data-t="speech">
        ${or(e?.say,e?.say??"")}
      </p>
      <p class="hidden" id="keys-help">${i("drawer.keys")}</p>
    </main>
  `}var Ua=t=>t.elsewhere?Hn():[Vn(t),xn(t),Sn(t)];function Za(t){let e=t.practice?et(t.practice):Z(t);return e?l`<bdi class="quiet" data-t="whose">${Y(e)}</bdi>`:m}function Xa(t){let{phase:e}=t.draft;if(t.ask)return i("lines.asking");if(e==="check")return zt(t);if(e!=="find")return i(`lines.task.${t.pencils.length?"":"plain-"}${e}`);let r=T(t);return r?.id===x?i("lines.task.stops"):i("lines.task.find",{rule:r?.name??""})}function Ya(t){return t.draft.phase==="done"?Tn(t):t.draft.phase==="check"?dn(t):m}var Ja=t=>t?l`<div class="card" role="alert" data-t="text-error">
        <p>${i(`error.${t}`)}</p>
        <button class="main" @click=${sr}>${i("error.again")}</button>
        ${cr()}
      </div>`:l`<p class="quiet">${i("lines.loading")}</p>`;function $o(t){t.key==="Escape"&&Un()&&t.preventDefault(),!(!(t.ctrlKey||t.metaKey)||t.shiftKey||t.key.toLowerCase()!=="z")&&d()?.draft.phase==="find"&&(t.preventDefault(),Wt())}var ko=()=>{document.hidden&&Q()},xo=new ResizeObserver(([t])=>{let e=t.borderBoxSize[0].blockSize;setTimeout(()=>document.documentElement.style.setProperty("--thumb",`${e+8}px`))}),_e=0,om={title:Po,view:Fa,enter(t){_e=h().draftWrites,addEventListener("keydown",$o),addEventListener("pagehide",ce),document.addEventListener("visibilitychange",ko),Jn(Ve(t))},drawn(t){let e=t.practice;e&&(xo.observe(document.querySelector(".thumb")),t.draftWrites!==_e&&Dt(),_e=t.draftWrites,bo(e),Kn(e),kt())},leave(){removeEventListener("keydown",$o),removeEventListener("pagehide",ce),document.removeEventListener("visibilitychange",ko),to(),yo(),xo.disconnect(),y({unreadable:void 0}),setTimeout(()=>document.documentElement.style.removeProperty("--thumb"))}};export{om as lines};
