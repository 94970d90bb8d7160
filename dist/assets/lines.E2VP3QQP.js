import{a as Q,b as Ee,c as Se,d as Le,e as Re,f as Oe,g as $t,h as He,i as Ae,j as v,k as tt}from"./chunk.KDABWI4A.js";import{a as C,b as Pe}from"./chunk.UEZBRT4U.js";import{a as ce,c as de}from"./chunk.APPKMSLV.js";import{b as Me}from"./chunk.GOCA65A2.js";import{a as Z}from"./chunk.MMYUXHSV.js";import{a as Te}from"./chunk.4RNP4JMQ.js";import{a as $e}from"./chunk.7P5GCF4H.js";import{a as F,b as xe,c as N,g as j,h as ke,i as J}from"./chunk.ZZZOJVYT.js";import{G as vt,b as te,q,r as ee,s as re,y as ne,z as oe}from"./chunk.6M4S66JV.js";import{a as ue,b as pe}from"./chunk.QJIUZPA5.js";import{p as fe,v as ye,x as be}from"./chunk.T25QC45N.js";import"./chunk.C2CM5TJ3.js";import{a as T,b as le,c as K,d as R,e as X}from"./chunk.F2Z7EUMU.js";import{a as me}from"./chunk.ABXU77RL.js";import{a as he,e as ge,f as we,g as ve}from"./chunk.M2I3IBPU.js";import{a as l,c as p,d as G,e as se,f as yt,g as ae,h as ie,n as U,o as Y,p as bt}from"./chunk.JW3C4FA3.js";import{b as jt,c as a,i as f,k as b,m as Jt,o as Qt,r as wt,t as L}from"./chunk.XR2DP2R4.js";function et(t,e){let r=new Date().toISOString();return{id:te(),learner:t,at:L(e),lines:e,phase:e.rule?"find":"read",marks:[],stops:[],helped:!1,started:r,updated:r}}function rt(t,e){let r=(n,o)=>e[n]?.words[o];return{...t,marks:t.marks.filter(n=>r(n.v,n.w)?.letters[n.l]),stops:t.stops.filter(([n,o])=>r(n,o))}}var Hr=2e3,Ar=3,_=0,nt=0,xt=!1,Ne="";function Ce(){nt>=Ar?xt=!0:kt(),clearTimeout(_),_=window.setTimeout(M,Hr)}function kt(t=!1){xt=!1;let e=f().practice?.draft;if(!e?.learner||e.id===Ne)return;let{sessions:r,learners:n}=f();r.some(o=>o.id===e.id)||n.some(o=>o.id===e.learner)&&(nt++,(t?ee:re)(e).catch(()=>b({kept:!1})).finally(()=>{nt--,xt&&kt()}))}function M(){_&&(clearTimeout(_),_=0,kt(!0))}var z=t=>{Ne=t};async function _e(){let t=f().practice?.draft;if(!t)return;let e=await q(t.learner,t.at).catch(()=>{}),r=f().practice;!e||!r||r.draft!==t||nt||JSON.stringify(e)===JSON.stringify(t)||b({practice:{...r,draft:rt(e,r.verses),history:[]}})}var h=()=>f().practice;function ze(t,e,r,n){z("");let o=t.rules.findIndex(c=>c.id===n.lines.rule),s={draft:n,verses:e,basmala:r,rule:t.rules[o],index:o,history:[],open:void 0,opening:!0,say:"",...Pt};b({practice:s})}var Pt={caret:void 0,explained:void 0,ask:!1,drawer:!1,answer:!1};function Ie(){M(),b({practice:void 0})}function w(t){let e=h();if(!e)return;let r={...e,opening:!1,...t};b({practice:r}),r.draft!==e.draft&&Ce()}function O(t,e={}){let r=h();r&&w({draft:{...r.draft,...t,updated:new Date().toISOString()},...e})}var k=t=>new Se(t.verses,t.draft.stops),S=t=>t.rule?Ee(t.verses,t.index,t.rule,t.draft.marks,k(t),f().settings,f().catalogue.details):{found:[],missed:[],extra:[]},We=(t,e)=>t.v===e.v&&t.w===e.w&&t.l===e.l,$=(t,e)=>t.draft.marks.find(r=>We(r,e));function Et(t,e,r=!0){let n=h();if(!n||!!$(n,t)===e)return;let{marks:o}=n.draft;O({marks:e?[...o,{...t,count:0}]:o.filter(s=>!We(s,t))},{caret:t,history:r?[...n.history,o]:n.history})}function ot(t,e){let r=h();if(!r)return;let n=$(r,t),o=r.draft.marks.filter(s=>s!==n);O({marks:[...o,{...t,count:n?.count===e?0:e}]},{caret:t,history:[...r.history,r.draft.marks]})}function st(){let t=h(),e=t?.history.at(-1);t&&e&&O({marks:e},{history:t.history.slice(0,-1)})}function at(t,e){let r=h();if(!r)return;let n=k(r);n.set(t,e,!n.after(t,e)),O({stops:n.moved()})}function St(t){let e=h();e&&w({draft:t??et(e.draft.learner,e.draft.lines),history:[],...Pt})}var it=t=>f().learners.find(e=>e.id===t.draft.learner);function Lt(t){O({phase:t},{...Pt,caret:h()?.caret}),M()}var Dr={find:"check",check:"read",read:"done",done:"done"};function Ve(){let t=h();t&&t.draft.phase!=="done"&&Lt(Dr[t.draft.phase])}function Be(){let t=h();t&&O({helped:!0},{answer:!t.answer})}function H(t){let e=h();e&&(e.draft.phase==="find"&&!e.ask?Et(t,!$(e,t)):w({explained:t,caret:t}))}var Cr=["always","join","stop","start"],_r=t=>t>=1611&&t<=1618||t===1761||t>=2288&&t<=2290,zr=t=>!t.letters.some(e=>e.rune===1648||e.marks.some(_r));function Ir(t,e,r,n){return[t.details[r.detail]?.id,r.unwritten&&"unwritten",zr(e)&&"opening",Cr[r.when],n?.rune.toString(16).padStart(4,"0")].filter(o=>typeof o=="string"&&o!=="")}function Tt(t,e,r,n){let o=t.rules[n.rule],s=Le(e,r,n),c=s&&R(e,s),i=e[r].words[n.w],d=i.letters[n.l],u=Ir(t,i,n,c).find(m=>o.cases?.[m]);return jt(u?o.cases[u]:o.why,{letter:T(d),cause:c?T(c):a("explain.next"),count:C(o,n,t.settings).want})}function qe(t,e,r,n,o){let s=R(e,n),c=le(s),i=e[n.v].events.filter(m=>m.w===n.w&&m.l===n.l&&r.holds(n.v,m)),d={title:T(s),facts:[c?a("explain.marks",{marks:c}):a("explain.bare")],rules:[],later:[]};e[n.v].words[n.w].lined&&d.facts.push(a("explain.lined"));let u=(m,g)=>t.rules[g.rule].role===m;i.some(m=>u("silent",m)&&m.when!==3)&&d.facts.push(a("explain.silent")),i.some(m=>u("long",m))&&d.facts.push(a("explain.long")),i.some(m=>u("ending",m))&&d.facts.push(a("explain.stop"));for(let m of i){let g=t.rules[m.rule];o.has(g.id)?d.rules.push({rule:g,why:Tt(t,e,n.v,m),detail:t.details[m.detail]?.text??"",held:C(g,m,t.settings).want}):d.later.includes(g)||d.later.push(g)}return d}function Ge(t){let e=S(t),r=e.found.filter(s=>!s.e.unwritten).length,n=r+e.missed.length,o=e.extra.length;return n===0?a(o?"told.none-marked":"told.none"):e.missed.length===0?a(o?"told.all-extra":"told.all",{n:o||n,of:n}):a("told.some",{n:r,of:n,a:t.verses[e.missed[0].v].a})}function Ke(t){let e=S(t),{catalogue:r,settings:n}=f(),o=u=>Tt({...r,settings:n},t.verses,u.v,u.e),s=u=>({v:u.v,w:u.e.w,l:u.e.l}),c=e.missed.map(u=>Rt(t,s(u),"missed",u.near?a("told.near"):"",o(u))),i=e.extra.map(({mark:u,other:m})=>{let g={letter:T(R(t.verses,u)),rule:t.rule.name};return Rt(t,u,"extra",a(m?"told.other-stop":"told.extra-why",g))}),d=e.found.map(u=>Rt(t,s(u),"found",Wr(u),o(u)));return l`
    ${Mt("missed",c,!0)} ${Mt("extra",i,!0)} ${Mt("found",d,!1)}
  `}var Mt=(t,e,r)=>e.length?l`<details class="told ${t}" ?open=${r} data-t=${t}>
        <summary>${ke(t,`var(--${t})`)}${a(`told.${t}`,{n:e.length})}</summary>
        <ul>
          ${e}
        </ul>
      </details>`:p;function Rt(t,e,r,...n){let o=t.verses[e.v];return l`<li class=${r}>
    <button class="word-link" @click=${()=>w({explained:e,caret:e})} aria-label=${a("told.show",{a:o.a})}>
      ${U(o.words[e.w].text)}
    </button>
    <p>${n.filter(Boolean).join(" ")}</p>
  </li>`}var Wr=t=>t.count==="none"?"":a(`told.count-${t.count}`,{n:t.mark.count,want:t.want});function Xe(t){let e=Q(t.verses,[t.index],k(t));return t.verses.map((r,n)=>({a:r.a,n:e.filter(o=>o.v===n).length})).filter(r=>r.n)}var ct=()=>requestAnimationFrame(()=>{let t=document.querySelector("[data-t=task]");t&&(scrollTo({top:0,behavior:Te()}),t.focus({preventScroll:!0}))});function lt(){Ve(),ct()}function dt(t){Lt(t),ct()}var Vr=20;function Ue(t){let{phase:e}=t.draft,r=e==="find"?t.rule:void 0;return l`<div class="bar">
    ${r?.counts.length?qr(t):p}
    <div class="tools">
      ${r?Br(r,t.history.length>0):p}
      ${e==="check"?l`<button class="plain" data-t="again" @click=${()=>dt("find")}>
              ${a("lines.again")}
            </button>`:p}
      ${e==="done"?p:l`<button class="main" data-t="next" @click=${lt}>
              ${a(`lines.next.${e}`)}
            </button>`}
    </div>
  </div>`}var Br=(t,e)=>l`
  <span class="pencil" .style=${j(t.family)} data-t="pencil"
    >${J(t.family)}${t.name.length>Vr?t.tr:t.name}</span
  >
  <button class="plain" data-t="undo" ?disabled=${!e} @click=${st}>
    ${a("lines.undo")}
  </button>
`;function qr(t){let e=t.caret,r=e&&$(t,e);return l`<div class="counts" role="group" aria-label=${a("count.label")}>
    <span class="quiet">${a(r?"count.here":"count.first")}</span>
    ${Pe(f().catalogue.rules).map(n=>l`<button
          class="chip"
          data-t="count-${n}"
          ?disabled=${!r}
          aria-pressed=${r?.count===n}
          @click=${()=>e&&ot(e,n)}
        >
          ${n}
        </button>`)}
  </div>`}var Ye=t=>l`
  <div class="drawer">
    <button
      class="handle"
      data-t="drawer"
      aria-expanded=${t.drawer}
      aria-controls="help"
      @click=${()=>w({drawer:!t.drawer})}
    >
      ${a("drawer.title")}
    </button>
    <div id="help" class="help" ?hidden=${!t.drawer}>${t.drawer?Gr(t):p}</div>
  </div>
`;function Gr(t){let{phase:e}=t.draft,r=t.rule&&(e==="find"||e==="check");return l`
    <p>${a(`drawer.say.${e}`,{child:Y(it(t))})}</p>
    ${t.rule?l`<p>${t.rule.short}</p>`:p} ${e==="find"?Kr(t):p}
    <div class="row">
      ${r?Xr(t.answer):p} ${e==="find"?Ur(t.ask):p}
    </div>
    <p class="quiet">${a("drawer.stops")}</p>
    <p class="quiet">${a("drawer.caution")}</p>
    <p class="quiet keys">${a("drawer.keys")}</p>
  `}function Kr(t){let e=t.rule?Xe(t):[],r=e.reduce((o,s)=>o+s.n,0),n=e.map(o=>a("drawer.in-verse",o)).join(" · ");return l`<p data-t="hint">
    ${r?`${a("drawer.places",{n:r})} ${n}`:a("drawer.no-places")}
  </p>`}var Xr=t=>l`
  <button class="plain" data-t="answer" aria-pressed=${t} @click=${Be}>
    ${a(t?"drawer.hide":"drawer.show")}
  </button>
`,Ur=t=>l`
  <button
    class="plain"
    data-t="ask"
    aria-pressed=${t}
    @click=${()=>w({ask:!t,drawer:t})}
  >
    ${a(t?"drawer.mark":"drawer.ask")}
  </button>
`;var Ot=new Set;async function Ze(t,e,r){return Ot.has(t.id)?!0:(Ot.add(t.id),Yr(),Zr(t,e,r).finally(()=>Ot.delete(t.id)))}function Yr(){let t=e=>{e.detail>1&&(e.preventDefault(),e.stopPropagation())};addEventListener("click",t,!0),setTimeout(()=>removeEventListener("click",t,!0),700)}async function Zr(t,e,r){let n=f().catalogue,o=f().learners.find(y=>y.id===t.learner),s=new Date().toISOString(),{id:c,lines:i,marks:d,stops:u,helped:m}=t,g={id:c,learner:t.learner,day:me(),at:s,rule:i.rule,from:i.from,to:i.to,marks:d,stops:u,found:e.found.filter(y=>!y.e.unwritten).length,missed:e.missed.length,extra:e.extra.length,helped:m,outcome:r},D=be(),Xt=D?.learner.id===t.learner?D:void 0,Ut=o?.place??i.from,Yt=Xt?pe(Xt,i):ue(n,i.to,o?.direction)??Ut,Zt=new Set(Qt(t.learner).map(y=>y.rule)),Tr=n.rules.findIndex(y=>y.id===i.rule),Mr=fe(n).find(y=>y.rules.includes(Tr))?.rules.map(y=>n.rules[y].id)??[i.rule],Ft=!i.rule||Zt.has(i.rule)?[]:Mr.filter(y=>!Zt.has(y)).map(y=>({learner:t.learner,rule:y,since:g.day,known:""}));if(!await vt(()=>ne(g,t.at,Yt,Ft)))return!1;location.hash="#/today";let Rr=f().sessions.some(y=>y.id===c),Or={label:a("undo"),run:()=>{Fr(t,{was:Ut,now:Yt},Ft)}};return b({notice:Rr?{text:a("end.saved"),action:Or}:{text:a("end.gone"),hold:!0}}),!0}async function Fr(t,e,r){await vt(()=>oe({...t,updated:new Date().toISOString()},e,r))&&(location.hash=t.at)}var jr=["alone","some","much"];async function Jr(t,e){z(t.draft.id),await Ze(t.draft,S(t),e)||z("")}function Fe(t){let e=it(t);if(!e)return l`<div class="card">
      <p>${a("end.no-learner")}</p>
      <a class="button main" href="#/today" data-t="end-learner">${a("end.to-today")}</a>
    </div>`;let r=n=>l`
    <button
      class=${n==="alone"?"main":"big"}
      data-t="outcome-${n}"
      @click=${()=>{Jr(t,n)}}
    >
      ${a(`outcome.${n}`)}
    </button>
  `;return l`<div class="card" data-t="end">
    <h2>${a("end.title",{child:Y(e)})}</h2>
    ${t.draft.helped?l`<p class="quiet">${a("end.helped")}</p>`:p}
    <div class="stack">${jr.map(r)}</div>
    <button class="plain" data-t="end-back" @click=${()=>dt("read")}>${a("end.back")}</button>
  </div>`}var I=(t,e)=>{let r=t._$AN;if(r===void 0)return!1;for(let n of r)n._$AO?.(e,!1),I(n,e);return!0},mt=t=>{let e,r;do{if((e=t._$AM)===void 0)break;r=e._$AN,r.delete(t),t=e}while(r?.size===0)},je=t=>{for(let e;e=t._$AM;t=e){let r=e._$AN;if(r===void 0)e._$AN=r=new Set;else if(r.has(t))break;r.add(t),en(e)}};function Qr(t){this._$AN!==void 0?(mt(this),this._$AM=t,je(this)):this._$AM=t}function tn(t,e=!1,r=0){let n=this._$AH,o=this._$AN;if(o!==void 0&&o.size!==0)if(e)if(Array.isArray(n))for(let s=r;s<n.length;s++)I(n[s],!1),mt(n[s]);else n!=null&&(I(n,!1),mt(n));else I(this,t)}var en=t=>{t.type==se.CHILD&&(t._$AP??=tn,t._$AQ??=Qr)},ut=class extends ae{constructor(){super(...arguments),this._$AN=void 0}_$AT(e,r,n){super._$AT(e,r,n),je(this),this.isConnected=e._$AU}_$AO(e,r=!0){e!==this.isConnected&&(this.isConnected=e,e?this.reconnected?.():this.disconnected?.()),r&&(I(this,e),mt(this))}setValue(e){if(ie(this._$Ct))this._$Ct._$AI(e,this);else{let r=[...this._$Ct._$AH];r[this._$Ci]=e,this._$Ct._$AI(r,this,0)}}disconnected(){}reconnected(){}};var Ht=new WeakMap,Je=yt(class extends ut{render(t){return p}update(t,[e]){let r=e!==this.G;return r&&this.rt(void 0),(r||this.lt!==this.ct)&&(this.G=e,this.ht=t.options?.host,this.rt(this.ct=t.element)),p}rt(t){if(this.G!==void 0)if(this.isConnected||(t=void 0),typeof this.G=="function"){let e=this.ht??globalThis,r=Ht.get(e);r===void 0&&(r=new WeakMap,Ht.set(e,r)),r.get(this.G)!==void 0&&this.G.call(this.ht,void 0),r.set(this.G,t),t!==void 0&&this.G.call(this.ht,t)}else this.G.value=t}get lt(){return typeof this.G=="function"?Ht.get(this.ht??globalThis)?.get(this.G):this.G?.value}disconnected(){this.lt===this.ct&&this.rt(void 0)}reconnected(){this.rt(this.ct)}});function Qe(t,e){let r=t.at(-1);return r===void 0||e-r>2500||e<r?[e]:e-r<100?[...t]:[...t,e].slice(-9)}function tr(t){let e=t.slice(1).map((n,o)=>n-t[o]).sort((n,o)=>n-o);if(!e.length)return;let r=e.length>>1;return er(e.length%2?e[r]:(e[r-1]+e[r])/2)}function At(t){let e=t===null||t.trim()===""?NaN:Number(t);return Number.isFinite(e)?er(e):600}var Dt=(t,e)=>Array.from({length:t},(r,n)=>n*e),er=t=>Math.min(1500,Math.max(250,Math.round(t)));var or="sutur-pace";function Nt(t,e,r){let n=matchMedia("(prefers-reduced-motion: reduce)"),o=n.matches,s=E("ul","beat-lengths");s.append(...e.map(d=>rn(d,o)));let c=E("p","",o?r.still:r.hint);t.replaceChildren(c,...o?[]:[on(r)],s);let i=()=>t.isConnected&&Nt(t,e,r);n.addEventListener("change",i,{once:!0})}function rn(t,e){let r=E("span","beat-dots");r.ariaHidden="true",r.append(...Dt(t.counts,1).map(c=>E("i","",String(c+1))));let n=[E("span","beat-name",t.name)," ",r],o=E("li");if(o.dataset.counts=String(t.counts),e)return o.append(...n),o;let s=E("button");return s.type="button",s.append(...n),s.addEventListener("click",()=>nn(r)),o.append(s),o}var rr=[];function nn(t){rr.forEach(clearTimeout),document.querySelectorAll(".beat-dots .on").forEach(n=>n.classList.remove("on"));let e=ar();t.style.setProperty("--count",`${e}ms`),t.offsetWidth;let r=[...t.children];rr=Dt(r.length,e).map((n,o)=>setTimeout(()=>r[o].classList.add("on"),n))}function on(t){let e=E("p","beat-pad"),r=E("button","big",t.tap);r.type="button";let n=E("span","beat-pace",nr(t,ar()));n.role="status";let o=[];return r.addEventListener("click",s=>{o=Qe(o,s.timeStamp);let c=tr(o);c&&sn(c),n.textContent=c?nr(t,c):t.more}),e.append(r," ",n),e}var nr=(t,e)=>t.pace((e/1e3).toFixed(1)),sr;function ar(){try{return sr??At(localStorage.getItem(or))}catch{return At(null)}}function sn(t){sr=t;try{localStorage.setItem(or,String(t))}catch{}}function E(t,e="",r=""){let n=document.createElement(t);return e&&(n.className=e),r&&(n.textContent=r),n}var Ct=t=>({name:t,colour:`var(--${t})`,sign:t});function _t(t){let e=f().taught.filter(n=>n.learner===t.draft.learner),r=new Set(e.map(n=>n.rule));return t.rule&&r.add(t.rule.id),r}function ir(t){let{phase:e,marks:r}=t.draft,n=f().catalogue,o=(i,d)=>({v:i.v,w:i.w,l:i.l,...d}),s=i=>Q(t.verses,i,k(t)).map(d=>F(d,N(n.rules[d.e.rule].family)));if(t.answer)return s([t.index]);if(e==="find")return r.map(i=>o(i,N(t.rule.family)));if(e!=="check")return s(Me(n,t.rule?.id??"",_t(t)));let c=S(t);return[...c.found.map(i=>F(i,Ct("found"))),...c.missed.map(i=>F(i,Ct("missed"))),...c.extra.map(i=>o(i.mark,Ct("extra")))]}var cr=t=>l`
  <section class="panel" ?hidden=${!t.explained} aria-live="polite" data-t="letter">
    ${t.explained?cn(t,t.explained):p}
  </section>
`,an=()=>w({explained:void 0,ask:!1});function cn(t,e){let{catalogue:r,settings:n}=f(),o=qe({...r,settings:n},t.verses,k(t),e,_t(t)),s=t.verses[e.v].words[e.w].text;return l`
    <div class="row">
      <h2 data-t="letter-name">${o.title}</h2>
      ${U(s,"ar small")}
      <button class="plain" data-t="letter-close" @click=${an}>${a("explain.close")}</button>
    </div>
    ${o.facts.map(c=>l`<p>${c}</p>`)}
    ${o.rules.map(({rule:c,why:i,detail:d})=>l`<p class="rule-why" .style=${j(c.family)}>
          ${J(c.family)}${lr(t,c,l`<b>${c.name}</b>`)} ${i} ${d}
        </p>`)}
    ${ln(o.rules)} ${o.later.length?mn(t,o.later):p}
  `}function ln(t){let e=t.filter(n=>n.held).map(n=>({name:a("beat.length",{rule:n.rule.name,n:n.held}),counts:n.held}));if(!e.length)return p;let r=n=>{n&&Nt(n,e,dn())};return l`<details class="opens" data-t="count-along">
    <summary>${a("beat.title")}</summary>
    ${Z(e.map(n=>n.name),()=>l`<div class="beat" ${Je(r)}></div>`)}
  </details>`}var dn=()=>({hint:a("beat.hint"),still:a("beat.still"),tap:a("beat.tap"),more:a("beat.more"),pace:t=>a("beat.pace",{seconds:t})}),mn=(t,e)=>l`
  <p class="quiet" data-t="later">${a("explain.later")}</p>
  <p class="quiet" data-t="later-lessons">
    ${a("explain.ahead")} ${e.map((r,n)=>[n?" · ":"",lr(t,r,r.name)])}
  </p>
`,lr=(t,e,r)=>{let n=L({...t.draft.lines,rule:t.rule?.id??""});return l`<a href="${$e(e.lesson)}${n}" data-t="lesson-${e.id}">${r}</a>`};async function dr(t){if(navigator.share&&matchMedia("(pointer: coarse)").matches)try{return await navigator.share({url:t}),"sent"}catch(e){if(e.name==="AbortError")return"sent"}try{return await navigator.clipboard.writeText(t),"copied"}catch{return"shown"}}var ur=t=>l`
  <details class="menu" data-t="menu" @focusout=${pn}>
    <summary class="button plain">${a("menu.title")}</summary>
    <div class="menu-list">
      <a class="button plain" href="#/lines" data-t="choose">${a("menu.choose")}</a>
      <button class="plain" data-t="share" @click=${mr(()=>{hn(t)})}>
        ${a("menu.share")}
      </button>
      <button class="plain" data-t="restart" @click=${mr(fn)}>${a("menu.restart")}</button>
      <a class="button plain" href=${un(t)} data-t="print">${a("menu.print")}</a>
    </div>
  </details>
`,un=t=>`#/print?sheet=practice&from=${wt(t.from)}&to=${wt(t.to)}&rule=${t.rule}`,mr=t=>e=>{e.target.closest("details").open=!1,t()};function pn(t){let e=t.currentTarget;t.relatedTarget&&!e.contains(t.relatedTarget)&&(e.open=!1)}function fn(){let t=h()?.draft;if(St(),ct(),!t)return;let e=()=>{h()?.draft.at===t.at&&St(t)};b({notice:{text:a("menu.restarted"),action:{label:a("undo"),run:e}}})}async function hn(t){let e=new URL(L(t),location.href).href,r=await dr(e);r==="copied"&&b({notice:{text:a("share.copied")}}),r==="shown"&&b({notice:{text:a("share.shown",{url:e}),hold:!0}})}var pr=t=>!!t.target.closest("button"),zt=class{constructor(e,r,n){this.el=e;this.sheet=r;this.on=n}el;sheet;on;id=-1;x=0;y=0;timer=0;moving=!1;lifted=-1/0;down=e=>{e.button!==0||this.id>=0||pr(e)||(this.id=e.pointerId,this.x=e.clientX,this.y=e.clientY,this.moving=!1,this.timer=window.setTimeout(this.held,450))};held=()=>{let e=this.sheet.hit(this.x,this.y);this.end(),e&&this.on.hold(e.v,e.w)};move=e=>{if(e.pointerId!==this.id)return;let r=Math.hypot(e.clientX-this.x,e.clientY-this.y);if(!(!this.moving&&(r<8||!this.begin(e)))){for(let n=1,o=Math.ceil(r/5);n<=o;n++){let s=this.x+(e.clientX-this.x)*n/o,c=this.y+(e.clientY-this.y)*n/o;this.touch(s,c,!1)}this.x=e.clientX,this.y=e.clientY}};begin(e){clearTimeout(this.timer);let r=Math.abs(e.clientY-this.y)>Math.abs(e.clientX-this.x);return e.pointerType==="touch"&&r?(this.end(),!1):(this.moving=!0,this.el.setPointerCapture(this.id),this.touch(this.x,this.y,!0),!0)}touch(e,r,n){let o=this.sheet.hit(e,r);o&&this.on.stroke(o,n)}up=e=>{if(e.pointerId!==this.id)return;this.end(),this.lifted=e.timeStamp;let r=this.moving?void 0:this.sheet.hit(e.clientX,e.clientY);r&&this.on.tap(r)};end=()=>{clearTimeout(this.timer),this.id=-1};click=e=>{if(e.detail!==0||e.timeStamp-this.lifted<=1e3||pr(e))return;let r=e.target.closest(".w"),n=r?{v:Number(r.dataset.v),w:Number(r.dataset.w)}:this.sheet.hit(e.clientX,e.clientY);n&&this.on.hold(n.v,n.w)}};function fr(t,e,r){let n=new zt(t,e,r);t.addEventListener("pointerdown",n.down),t.addEventListener("pointermove",n.move),t.addEventListener("pointerup",n.up),t.addEventListener("pointercancel",n.end),t.addEventListener("click",n.click),t.addEventListener("selectstart",o=>o.preventDefault()),t.addEventListener("contextmenu",o=>{o.pointerType!=="mouse"&&o.preventDefault()})}var gn=matchMedia("(forced-colors: active)");function wn(t,e){let r=t.dataset.ink?.split(" ")??[],n=[...e].filter(o=>!r.includes(o));n.length&&(t.dataset.ink=[...r,...n].join(" "))}function vn(t,e,{shapes:r,again:n},o){let s=e.map(i=>`${i.l} ${i.name}`).join()+(e.length&&!o?"plain":"");if(s===(t.key??"")||(t.key=s,t.bits?.remove(),delete t.bits,Ae(t.el,e),!e.length))return;let c=t.el.getBoundingClientRect().width/v.em(t);t.bits=He(t.word,r,o?n:[],{edge:c,slot:i=>v.slot(t,i),crown:i=>v.crown(t,i),top:i=>v.top(t,i)}),t.el.append(t.bits)}function yn(t,{from:e,to:r}){let n=new Range;return n.setStart(t,e),n.setEnd(t,r),n}function pt(t,e,r,n="lines"){let o=new Map,s=new Map,c=Re&&!gn.matches;for(let i of r){let d=t.word(i.v,i.w),u=d&&o.get(d);u?u.push(i):d&&o.set(d,[i])}for(let i of t.shown){let d=o.get(i)??[],u=xe(i.word,d);if(vn(i,d,u,c),c)for(let m of u.ranges)Oe(s,m.name,yn(i.node,m))}wn(e,s.keys()),$t(n,s)}var ft=(t="lines")=>$t(t,new Map);function hr(t,e,r){let n=e.w+r;if(t[e.v].words[n])return{v:e.v,w:n,l:0};let o=e.v+r,s=t[o];return s?{v:o,w:r>0?0:s.words.length-1,l:0}:void 0}function It(t,e,r){let n=e.l+r;if(t[e.v].words[e.w].letters[n])return{...e,l:n};let o=hr(t,e,r);return o?r>0?o:{...o,l:t[o.v].words[o.w].letters.length-1}:e}var Wt=(t,e,r)=>hr(t,e,r)??e;function Vt(t,e,r){let n=t.word(e.v,e.w);if(!n)return e;let o=v.box(n,e.l),s=(o.left+o.right)/2,c=e,i=1/0,d=0;for(let u of r>0?t.shown:[...t.shown].reverse()){let m=u.el.getBoundingClientRect();if(r>0?m.top<o.bottom:m.bottom>o.top)continue;if(d&&Math.abs(m.top-d)>m.height/2)break;d=m.top;let g=Math.max(m.left-s,0,s-m.right);g<i&&(i=g,c={v:u.v,w:u.w,l:0})}return c}var Bt={v:0,w:0,l:0};function wr(t,e,r){t.addEventListener("focus",()=>gr(t,e,h()?.caret??Bt)),t.addEventListener("focusout",n=>{t.contains(n.relatedTarget)||(t.tabIndex=0,r())}),t.addEventListener("keydown",n=>{let o=h();if(!o||n.target.closest("button"))return;let s=o.caret??Bt,c=n.ctrlKey||n.altKey||n.metaKey,i=bn(o,e,s,n.key,c);if(i)gr(t,e,i);else if(c||!$n(o,s,n.key))return;n.preventDefault()})}function gr(t,e,r){let n=e.word(r.v,r.w);for(let o of e.shown)o.el.tabIndex=-1;n?.el.focus({preventScroll:!0}),n?.el.scrollIntoView({block:"nearest"}),n&&(n.el.tabIndex=0),t.tabIndex=-1,w({caret:r}),qt()}function bn(t,e,r,n,o){let{verses:s}=t,c=o?s.length-1:r.v;switch(n){case"ArrowLeft":return o?Wt(s,r,1):It(s,r,1);case"ArrowRight":return o?Wt(s,r,-1):It(s,r,-1);case"ArrowDown":return Vt(e,r,1);case"ArrowUp":return Vt(e,r,-1);case"Home":return o?Bt:{v:r.v,w:0,l:0};case"End":return{v:c,w:s[c].words.length-1,l:0};default:return}}function $n(t,e,r){let n=t.draft.phase==="find"&&t.rule;if(r===" ")H(e),qt();else if(r==="Enter")lt();else if(/^[1-9]$/.test(r)&&n)ot(e,Number(r)),qt();else if(r==="e")w({explained:e});else if(r==="o")w({open:{v:e.v,w:e.w}});else if(r==="s")k(t).movable(e.v,e.w)&&at(e.v,e.w);else if(r==="Escape"&&t.explained)w({explained:void 0,ask:!1});else return!1;return!0}function qt(){let t=h();t?.caret&&w({say:xn(t,t.caret)})}function xn(t,e){let r=$(t,e),n=a(r?"say.marked":"say.letter",{letter:K(R(t.verses,e)),i:e.l+1,n:t.verses[e.v].words[e.w].letters.length});return r?.count?`${n} ${a("say.count",{n:r.count})}`:n}function vr(t,e,r){let n=[...kn(t),...Pn(t,e),...En(t)],o=n.length?r.getBoundingClientRect():void 0;G(n.map(s=>{let c=e.word(s.at.v,s.at.w);if(!c||!o)return;let i=v.box(c,s.at.l),d=[`left:${i.left-o.left}px`,`top:${i.top-o.top}px`,`width:${i.right-i.left}px`,`height:${i.bottom-i.top}px`].join(";");return l`<span class=${s.cls} .style=${d}>${s.words}</span>`}),r)}function kn(t){let{phase:e,marks:r}=t.draft;if(e==="find"&&!t.answer)return r.filter(c=>c.count).map(c=>({at:c,cls:"count",words:String(c.count)}));if(!t.rule||!(t.answer||e==="check"))return[];let{found:n,missed:o}=S(t),s=t.rule;return[...n,...o].flatMap(({v:c,e:i})=>{let d=C(s,i,f().settings).want;return d?[{at:{v:c,w:i.w,l:i.l},cls:"count",words:String(d)}]:[]})}function Pn(t,e){let r=t.caret;if(!r)return[];let n=e.word(r.v,r.w)?.el.matches(":focus-visible"),o=t.draft.phase==="find"&&!t.answer&&t.rule?.counts.length;return n||o&&$(t,r)?[{at:r,cls:"caret"}]:[]}var En=t=>t.explained?[{at:t.explained,cls:"asked"}]:[];var A,ht;function W(){let t=h(),e=document.querySelector("[data-t=passage]");!t||!e||((A?.el!==e||A.verses!==t.verses)&&Sn(e,t),pt(A.sheet,e,ir(t)),vr(t,A.sheet,e.querySelector(".layer")))}function Sn(t,e){let r=new v;for(let o of t.querySelectorAll(".w"))r.add(Number(o.dataset.v),Number(o.dataset.w),o,e.verses);A={el:t,verses:e.verses,sheet:r},Ln(t,r),wr(t,r,W),r.whenFont(t.textContent,W);let n="";ht?.disconnect(),ht=new ResizeObserver(([o])=>{let s=`${o.contentRect.width} ${o.contentRect.height}`;n&&n!==s&&W(),n=s}),ht.observe(t)}function Ln(t,e){let r=!0;fr(t,e,{tap:H,hold:(n,o)=>w({open:{v:n,w:o}}),stroke:(n,o)=>{let s=h();s?.draft.phase!=="find"||s.ask||(o&&(r=!$(s,n)),Et(n,r,o))}})}function yr(){ht?.disconnect(),A=void 0,ft()}var Tn=new Intl.NumberFormat("ar-u-nu-arab",{useGrouping:!1});function br(t){let{from:e,to:r}=t.draft.lines;return l`<div
    class="sheet"
    data-ink=${t.rule?`f-${t.rule.family}`:p}
    role="application"
    tabindex="0"
    data-t="passage"
    aria-describedby="keys-help"
    aria-label=${X(f().catalogue.surahs,e,r)}
  >
    <div class="text" lang="ar" dir="rtl">${Z([t.verses,t.draft.stops],()=>Mn(t))}</div>
    <div class="glass" aria-hidden="true"></div>
    <div class="layer" aria-hidden="true"></div>
  </div>`}function Mn(t){let e=k(t);return t.verses.map((r,n)=>l`${Rn(t,r,n)}<span
          class="verse"
          data-t="verse-${r.s}-${r.a}"
          data-ref="${r.s}:${r.a}"
          >${On(r).map((o,s)=>[s?" ":p,Hn(o,r,n,e)])}</span
        > `)}function Rn(t,e,r){let{from:n,to:o}=t.draft.lines,s=n.s!==o.s&&(e.a===1||r===0),c=t.basmala&&e.a===1&&ve(e.s),i=f().catalogue.surahs[e.s-1].ar;return[s?l`<span class="surah">${i}</span>`:p,c?l`<span class="basmala" data-t="basmala">${t.basmala}</span>`:p]}function On(t){let e=[];return t.words.forEach((r,n)=>{let o=e.at(-1);r.lined&&o?.lined?o.words.push(n):e.push({lined:!!r.lined,words:[n]})}),e}function Hn(t,e,r,n){let o=t.words.map((s,c)=>[c?" ":p,An(e,r,s,n)]);return t.lined?l`<span role="group" aria-label=${a("lines.lined")}>${o}</span>`:o}function An(t,e,r,n){let o=r===t.words.length-1,s=Dn(t.words,e,r);return!o&&!n.movable(e,r)?s:l`<span class="with-stop">${s}${Nn(t,e,r,n)}</span>`}var Dn=(t,e,r)=>l`<span
    class="w${tt(t,r)}"
    role="button"
    tabindex="-1"
    data-v=${e}
    data-w=${r}
    .textContent=${t[r].text}
  ></span>`;function Nn(t,e,r,n){let o=r===t.words.length-1&&!t.open,s=a(n.after(e,r)?"stop.stops":"stop.reads-on");return l`<button
    class=${o?"stop end":"stop"}
    ?disabled=${!n.movable(e,r)}
    data-t="stop-${t.s}-${t.a}-${r}"
    aria-pressed=${n.after(e,r)}
    aria-label=${a(o?"stop.end":"stop.sign",{a:t.a,what:s})}
    title=${s}
    @click=${()=>at(e,r)}
  >
    ${o?Tn.format(t.a):p}
  </button>`}var $r=10;function xr(t){let e=t.verses[t.v].words[t.w],r=document.createElement("dialog"),n=new v,o=[];r.className="zoom",r.ariaLabel=t.label,r.dataset.t="zoom",r.style.setProperty("--pencil",t.look.colour);let s=m=>{let g=n.hit(m.clientX,m.clientY);g&&t.choose(g.l)},c=()=>G(Cn(t,e,o,s,()=>r.close()),r);c(),n.add(t.v,t.w,r.querySelector(".w"),t.verses),r.addEventListener("close",()=>{ft("zoom"),r.remove(),t.closed()}),Wn(r),document.body.append(r),r.showModal();let i=n.word(t.v,t.w),d=i.el.getBoundingClientRect();o=e.letters.map((m,g)=>zn(i,g,d));let u=()=>{c();let m=e.letters.flatMap((g,D)=>t.marked(D)?[{v:t.v,w:t.w,l:D,...t.look}]:[]);pt(n,r,m,"zoom")};return u(),r.querySelector(".zoom-letter")?.focus(),{close:()=>r.close(),update:u}}var Cn=(t,e,r,n,o)=>l`
  <div class="zoom-word" dir="rtl">
    <span
      class="w${tt([e],0)}"
      lang="ar"
      data-t="zoom-word"
      .textContent=${e.text}
      @click=${n}
    ></span>
  </div>
  <p class="quiet">${a("zoom.hint")}</p>
  <div class="zoom-letters" dir="rtl" data-t="zoom-letters" @keydown=${In}>
    ${r.map((s,c)=>_n(t,e.letters[c],c,s))}
  </div>
  <button class="main" data-t="zoom-close" @click=${o}>${a("zoom.close")}</button>
`,_n=(t,e,r,n)=>l`
  <button
    class="zoom-letter"
    data-t="zoom-letter-${r}"
    aria-label=${K(e)}
    aria-pressed=${t.marked(r)}
    @click=${()=>t.choose(r)}
  >
    ${n}<span
      class="zoom-name"
      aria-hidden="true"
      lang=${document.documentElement.lang}
      dir="auto"
      >${T(e)}</span
    >
  </button>
`;function zn(t,e,r){let n=v.box(t,e),o=g=>`${v.base(t)-g*v.em(t)-r.top}px`,s=bt(t.word,e+1)?o(v.crown(t,e+1)):"-.4em",c=bt(t.word,e)?`calc(100% - ${o(v.crown(t,e))})`:"-.4em",i=`left:${r.left-n.left+$r}px;width:${r.width}px`,d=`clip-path:inset(${s} ${r.right-n.right}px ${c} ${n.left-r.left}px)`,u=`width:${n.right-n.left+2*$r}px;height:${r.height}px`,{text:m}=t.word;return l`<span class="slice" .style=${u} aria-hidden="true"
    ><span class="slice-word" lang="ar" .style=${i} .textContent=${m}></span
    ><span class="slice-word ink" lang="ar" .style=${`${i};${d}`} .textContent=${m}></span
  ></span>`}function In(t){let e=t.key==="ArrowLeft"?1:t.key==="ArrowRight"?-1:0,r=[...t.currentTarget.querySelectorAll(".zoom-letter")];e&&r[r.indexOf(document.activeElement)+e]?.focus()}function Wn(t){let e=!1,r=()=>{e=!0},n=o=>{e||o.detail===0||(o.stopPropagation(),o.preventDefault())};t.addEventListener("pointerdown",r,!0),t.addEventListener("click",n,!0),t.addEventListener("click",o=>{let s=t.getBoundingClientRect(),c=o.clientY>=s.top&&o.clientY<=s.bottom&&o.clientX>=s.left&&o.clientX<=s.right;o.target===t&&!c&&t.close()})}var V,gt="";function kr(t){let e=t.open?`${t.open.v}.${t.open.w}`:"";if(e===gt)return V?.update();let r=V;gt=e,V=void 0,r?.close(),t.open&&(V=Vn(t,t.open,e))}function Vn(t,{v:e,w:r},n){let o=t.draft.phase==="find"&&!t.ask;return xr({verses:t.verses,v:e,w:r,label:a("zoom.title"),look:N(t.rule?.family??""),marked:s=>o&&!!$(h()??t,{v:e,w:r,l:s}),choose:s=>{H({v:e,w:r,l:s}),o||w({open:void 0})},closed:()=>{gt===n&&(gt="",V=void 0,w({open:void 0}))}})}var Kt=t=>t.name==="lines"?t.lines:void 0;function Lr(t){let e=Kt(t.route);return e?X(t.catalogue.surahs,e.from,e.to):""}function Bn(t){let e=t.practice,r=e&&!e.opening;return l`
    <main class="lines" data-phase=${e?.draft.phase??""}>
      <header class="row">
        <a class="button plain" href="#/today" data-t="back">${a("lines.back")}</a>
        <h1 tabindex="-1">${Lr(t)}</h1>
        ${ur(Kt(t.route))}
      </header>
      <p class="task" tabindex="-1" data-t="task">${e?qn(e):p}</p>
      <div class="hold" ?hidden=${e?.draft.phase==="done"}>
        ${e?br(e):Kn(t.unreadable)}
      </div>
      <div class="after">${r?Gn(e):p}</div>
      <div class="thumb">${r?[cr(e),Ue(e),Ye(e)]:p}</div>
      <p class="hidden" aria-live="assertive" data-t="speech">${e?.say??""}</p>
      <p class="hidden" id="keys-help">${a("drawer.keys")}</p>
    </main>
  `}function qn(t){let{phase:e}=t.draft;return t.ask?a("lines.asking"):e==="check"?Ge(t):t.rule||e==="find"?a(`lines.task.${e}`,{rule:t.rule?.name??""}):a(`lines.task.plain-${e}`)}function Gn(t){return t.draft.phase==="done"?Fe(t):t.draft.phase==="check"?Ke(t):p}var Kn=t=>t?l`<div class="card" role="alert" data-t="text-error">
        <p>${a(`error.${t}`)}</p>
        <button class="main" @click=${ce}>${a("error.again")}</button>
        ${de()}
      </div>`:l`<p class="quiet">${a("lines.loading")}</p>`,B=0;async function Xn(t){let e=++B,{catalogue:r}=f(),n=Jt()?.id??"",o=n?q(n,L(t)).catch(()=>{}):void 0;try{let[s,c,i]=await Promise.all([ge(r,t.from,t.to),we(r,t.from,t.to),o]);if(e!==B)return;ze(r,s,c,i?rt(i,s):et(n,t)),requestAnimationFrame(()=>setTimeout(()=>w({}))),setTimeout(()=>{e===B&&ye().catch(()=>{})},2e3)}catch(s){if(!(s instanceof he))throw s;e===B&&b({unreadable:s.code})}}function Pr(t){!(t.ctrlKey||t.metaKey)||t.shiftKey||t.key.toLowerCase()!=="z"||h()?.draft.phase==="find"&&(t.preventDefault(),st())}var Er=()=>{document.hidden&&M()},Sr=new ResizeObserver(([t])=>{let e=t.borderBoxSize[0].blockSize;setTimeout(()=>document.documentElement.style.setProperty("--thumb",`${e+8}px`))}),Gt=0,Na={title:Lr,view:Bn,enter(t){Gt=f().draftWrites,addEventListener("keydown",Pr),addEventListener("pagehide",M),document.addEventListener("visibilitychange",Er),Xn(Kt(t))},drawn(t){let e=t.practice;e&&(Sr.observe(document.querySelector(".thumb")),t.draftWrites!==Gt&&_e(),Gt=t.draftWrites,kr(e),W())},leave(){B++,removeEventListener("keydown",Pr),removeEventListener("pagehide",M),document.removeEventListener("visibilitychange",Er),Ie(),yr(),Sr.disconnect(),b({unreadable:void 0}),setTimeout(()=>document.documentElement.style.removeProperty("--thumb"))}};export{Na as lines};
