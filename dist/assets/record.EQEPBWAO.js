//# allFunctionsCalledOnLoad
import{a as pe,b as fe}from"./chunk.DRL2FVH7.js";import{f as me,g as he}from"./chunk.QXOMR7TY.js";import{a as T}from"./chunk.AK3QRE62.js";import{a as ye}from"./chunk.23NKZ6VE.js";import{a as nt}from"./chunk.G5CYZMU4.js";import{c as ue,g as ot,i as rt}from"./chunk.NG2N4OGR.js";import"./chunk.KUMKDYU5.js";import{a as et}from"./chunk.BUJT5NJZ.js";import{a as se}from"./chunk.RKHWIURI.js";import{b as X,c as Qt,d as Xt,e as Zt}from"./chunk.AUQZJPEM.js";import{a as bt,b as g,c as v,d as ce}from"./chunk.I6UDG63Q.js";import"./chunk.JH4WJHGB.js";import"./chunk.FR5VNLUN.js";import{Ab as ie,C as yt,Ca as a,D as Vt,Da as H,Eb as w,Fa as c,Fb as tt,G as Gt,Gb as O,Hb as ae,Ib as de,Lb as b,M as P,Ma as Q,N as S,Na as gt,Oa as f,Ub as le,V as Kt,Ya as Z,d as n,e as y,f as x,g as _,gb as te,h as Dt,ha as Y,i as ft,ib as $t,j as It,k as At,m as u,o as p,oa as Ut,pa as ht,qa as Jt,qb as ee,r as h,ra as _t,s as z,sa as zt,sb as oe,ta as Yt,u as Ht,ub as re,xa as F,yb as ne,z as jt}from"./chunk.TZYIGFUF.js";var So=t=>t?g(t).map(e=>e.rule):[];function ge(t,e){return t&&e.some(o=>o.rule===t.rule)?t.rule:t&&!t.rule&&t.also?.length?"":e[0]?.rule??""}function $e(t,e,o){let r=o.map(m=>m.rule),s=So(t),i=(t?.pencils??[]).filter(m=>r.includes(m)||!s.includes(m)),d=r.filter(m=>!s.includes(m)),l=[...new Set([...i,...d])].filter(m=>m!==e);return l.length?l:void 0}var be=(t,e,o)=>e===o||!e?t:t.map(({pencil:r=e,...s})=>r===o?s:{...s,pencil:r});function ve(t,e,o=new Date){let[r,s,i]=t.split("-").map(Number),d=new Date(e);return d.setFullYear(r,s-1,i),(d<o?d:o).toISOString()}var wo=(t,e)=>JSON.stringify(t)===JSON.stringify(e);function ke(t,e){let o={...e,marks:be(t.marks,t.rule,e.rule),at:e.day===t.day?t.at:ve(e.day,t.at)},r=Object.entries(o).filter(([s,i])=>!wo(i,t[s]));return Object.fromEntries(r)}var Se=(t,e)=>Object.fromEntries(Object.keys(e).map(o=>[o,t[o]]));function we(t,e,o,r=new Date){let s=Object.entries(o).filter(([,i])=>i!==void 0);return{id:t,learner:e,at:ve(o.day,r.toISOString(),r),marks:[],stops:[],extra:0,helped:!1,...Object.fromEntries(s)}}var C=t=>u().sessions.some(e=>e.id===t),vt=(t,e)=>Z(t,e,{name:"undo"});async function kt(t){let e=await Yt(t).catch(()=>{});if(!e)return;let{removed:o}=u(),r=o?.learner===t?o:void 0;p({removed:{listed:0,asked:void 0,...r,learner:t,list:e}})}async function j(t){return await F(()=>Jt(t))?(vt(n("record.removed"),()=>St(t)),!0):!1}async function St(t){if(!await F(()=>_t(t)))return;let e=C(t);p({notice:{text:n(e?"record.back":"record.not-back"),name:"back"}})}async function Oe(t,e){await F(()=>zt(t))&&(await kt(e),p({notice:{text:n("removed.forgotten",{n:t.length}),name:"forgotten"}}))}async function Te(t,e){let o=ke(t,e);return Object.keys(o).length?await F(()=>ht(t.id,o))?(C(t.id)?vt(n("record.corrected"),()=>Oo(t,o)):Ee(),C(t.id)):!1:!0}async function Oo(t,e){await F(()=>ht(t.id,Se(t,e)))&&(C(t.id)||Ee())}var Ee=()=>p({notice:{text:n("record.gone"),hold:!0}});async function xe(t){return await F(()=>Ut(t))?(C(t.id)?vt(n("record.added"),()=>j(t.id)):p({notice:{text:n("end.gone"),hold:!0}}),C(t.id)):!1}var Eo=t=>t===void 0?"":String(t);function Re(t){return{day:t.day,from:{s:t.from.s,a:String(t.from.a)},to:{s:t.to.s,a:String(t.to.a)},rules:g(t).map(xo),outcome:t.outcome,paper:!!t.paper,minutes:Eo(t.minutes),note:t.note??""}}function xo({rule:t,found:e,missed:o}){let r=e+o;return{rule:t,found:r?String(e):"",of:r?String(r):""}}var it=t=>Vt(t.replace(/[\u200e\u200f\u061c\u2066-\u2069]/g,""));function at(t){let e=it(t);return/^\d{1,6}$/.test(e)?Number(e):void 0}function Fo(t){let e=/^(\d{4})[-/.](\d{1,2})[-/.](\d{1,2})$/.exec(it(t)),o=e&&`${e[1]}-${e[2].padStart(2,"0")}-${e[3].padStart(2,"0")}`;return o&&Ht(o)?o:void 0}var Ro=t=>t.replace(/\r\n?/g,`
`).replace(/[\u0000-\u0009\u000b-\u001f\u007f]/g," ").trim(),wt=class{problems=[];bad(e,o,r){this.problems.push({field:e,key:o,...r&&{vars:r}})}number(e,o,r){if(!it(o))return;let s=at(o);return s===void 0?this.bad(e,"number",{found:o.slice(0,40)}):s<=r?s:this.bad(e,"most",{most:r})}day(e,o){let r=Fo(e);return r?r<=o?r:this.bad("day","future"):this.bad("day",it(e)?"day":"no-day")}verse(e,o,{s:r,a:s}){let i=e.surahs[r-1],d=at(s);return i?d===void 0||d<1||d>i.count?this.bad(o,"verse",{surah:i.la,n:i.count}):{s:r,a:d}:this.bad(o,"surah")}lines(e,o){let r=this.verse(e,"from",o.from),s=this.verse(e,"to",o.to);if(!r||!s)return;let i=Gt(e,r,s);return i<1?this.bad("to","order"):i<=yt?{from:r,to:s}:this.bad("to","many",{n:i,most:yt})}tally({rule:e,found:o,of:r}){let s=`rule-${e}`,i=this.problems.length,d=this.number(s,o,5e3),l=this.number(s,r,5e3);return this.problems.length===i&&(d===void 0!=(l===void 0)?this.bad(s,"both"):d!==void 0&&d>l&&this.bad(s,"more",{found:String(d)})),{rule:e,found:d??0,missed:Math.max(0,(l??0)-(d??0))}}};function Me(t,e,o,r){let s=new wt,i=s.day(e.day,r),d=o&&Mo(o,e)?o:s.lines(t,e),l=e.rules.map(A=>s.tally(A));e.outcome||s.bad("outcome","outcome");let m=s.number("minutes",e.minutes,600),W=Ro(e.note);if(W.length>500&&s.bad("note","note",{n:W.length,most:500}),s.problems.length||!i||!d||!e.outcome)return s.problems;let D=ge(o,l),I=l.find(A=>A.rule===D),Wt=l.filter(A=>A!==I);return{day:i,rule:D,from:d.from,to:d.to,found:I?.found??0,missed:I?.missed??0,also:Wt.length?Wt:void 0,pencils:$e(o,D,l),looked:e.paper?void 0:No(o,l),outcome:e.outcome,paper:e.paper||void 0,minutes:m,note:W||void 0}}var Mo=({from:t,to:e},o)=>t.s===o.from.s&&e.s===o.to.s&&at(o.from.a)===t.a&&at(o.to.a)===e.a;function No(t,e){let o=t?.looked;return o===void 0||JSON.stringify(g(t))===JSON.stringify(e)?o:o>v(e).found?void 0:o}var dt="sutur-form ",Pe=(t,{typed:e})=>ft("visit",dt+t,JSON.stringify(e)),Ce=()=>It("visit",dt),Be=t=>ft("visit",dt+t,void 0);function qe(t){try{let e=JSON.parse(Dt("visit",dt+t));return Po(e)?{typed:e,touched:!0}:{}}catch{return{}}}var Ot=(...t)=>t.every(e=>typeof e=="string"),Ne=t=>typeof t?.s=="number"&&Ot(t.a);function Po(t){let e=t;return!!e&&Ot(e.day,e.outcome,e.minutes,e.note)&&typeof e.paper=="boolean"&&Ne(e.from)&&Ne(e.to)&&Array.isArray(e.rules)&&e.rules.every(o=>Ot(o?.rule,o?.found,o?.of))}var Le=t=>ee(t,a`<div class="sheet" data-t="kept-lines">
      <div class="text" lang="ar" dir="rtl">${t.map(Co)}</div>
    </div>`),Co=(t,e)=>a`<span class="verse"
      >${t.words.map((o,r)=>[r?" ":c,a`<span class="w" data-v=${e} data-w=${r} .textContent=${o.text}></span>`])}</span
    >
    ${t.open?c:a`<span class="verse-end">${he(t.a)}</span> `}`,We=(t,e)=>t.marks.filter(o=>e[o.v]?.words[o.w]?.letters[o.l]),De=(t,e)=>te(u().catalogue,[$t(e,t)],"all")[0];function Bo(t,e){return We(t,e).flatMap(o=>{let r=De(t,o);return r?[{v:o.v,w:o.w,l:o.l,...ue(r.family)}]:[]})}var V;function Tt({opened:t}){let e=document.querySelector("[data-t=kept-lines]");if(!e||!t?.session||t.verses==="failed")return;let{verses:o,session:r}=t;if(V?.el!==e||V.verses!==o){let s=me.of(e,o);V={el:e,verses:o,sheet:s},s.whenFont(e.textContent,()=>Tt(u()))}pe(V.sheet,e,Bo(r,o),"session")}function Ie(){V=void 0,fe("session")}function Ae(t,e){let o=We(t,e),r=n("session.marked",{n:o.length});if(!o.length)return a`<p class="quiet" data-t="marked">${r}</p>`;let s=new Set(o.map(l=>$t(l,t))).size>1,i=[...o].sort((l,m)=>l.v-m.v||l.w-m.w||l.l-m.l),d=[...Y(i,l=>`${l.v} ${l.w}`).values()];return a`<details class="opens marked" data-t="marked">
    <summary>${r}</summary>
    <ul>
      ${d.map(l=>{let{v:m,w:W}=l[0],{a:D,words:I}=e[m];return a`<li>
          ${`${n("session.verse",{a:D})}: `}${ae(I[W].text)}${" "}${qo(t,l,e,s)}
        </li>`})}
    </ul>
  </details>`}var qo=(t,e,o,r)=>e.map((s,i)=>{let d=De(t,s),l=ie(o[s.v].words[s.w].letters[s.l]),m=[r?d?.name??s.pencil??"":"",s.count?n("session.count",{n:s.count}):""].filter(Boolean);return a`${i?" · ":c}${d?rt(d.family):c}${m.length?`${l} (${_(m)})`:l}`});var He=t=>a`<li data-t="session">
    <div>${Et(t)}</div>
    <div class="row-buttons">
      <a
        class="button plain"
        href=${P(t.id)}
        data-t="open-session"
        aria-label=${n("record.open-this",{day:y(t.day)})}
        >${n("record.open")}</a
      >
      <button
        class="plain"
        data-t="remove"
        aria-label=${n("record.remove-this",{day:y(t.day)})}
        @click=${()=>{j(t.id)}}
      >
        ${n("record.remove")}
      </button>
    </div>
  </li>`;function Et(t){let{catalogue:e}=u();return a`<p>${Lo(t)}</p>
    <p class="quiet">
      <a href=${nt(e,t)}>${w(e.surahs,t.from,t.to)}</a
      >${Do(t)}
    </p>
    ${t.note?xt(t.note):c}`}var xt=t=>a`<p class="note" dir="auto" data-t="note" .textContent=${t}></p>`;function Lo(t){let e=g(t);return e.length?e.map((o,r)=>[r?" · ":c,R(o.rule),e.length>1?Wo(o):c]):a`<b>${n("record.reading")}</b>`}function R(t){let e=u().catalogue.rules.find(o=>o.id===t);return e?a`<b class="inked" .style=${ot(e.family)}>${rt(e.family)}${e.name}</b>`:a`<b>${t}</b>`}function Wo(t){let{found:e,of:o}=v([t]);return o?` ${n("record.of",{n:e,of:o})}`:c}var Do=t=>[n(`outcome.${t.outcome}`),t.paper?n("record.on-paper"):"",t.together?n("record.together"):"",Io(t),t.minutes===void 0?"":n("record.minutes",{n:t.minutes})].filter(Boolean).map(e=>` · ${e}`).join("");function Io(t){let e=g(t),{found:o,of:r}=v(e);return t.looked!==void 0&&t.looked<o?n("record.looked",{looked:t.looked,n:o,of:r}):r&&e.length===1?n("record.found",{n:o,of:r}):""}var k=(t,e)=>t.sessions.find(o=>o.id===e),Ft;async function je(t){let e=k(u(),t);if(!e||Ft===e||u().opened?.entry===e)return;Ft=e;let{catalogue:o}=u(),r=le(o,e.from,e.to).catch(()=>"failed"),s=X(t).catch(()=>{}),i={entry:e,session:await s,verses:await r};Ft===e&&p({opened:i})}function Ve(t,e){let o=k(t,e);if(!o)return Rt();let r=t.learners.find(i=>i.id===o.learner),s=t.opened?.entry.id===e?t.opened:void 0;return a`
    <p class="no-print"><a href="#/record" data-t="all-sessions">${n("record.all")}</a></p>
    <h1 tabindex="-1">${w(t.catalogue.surahs,o.from,o.to)}</h1>
    <p>${n("session.of",{child:O(r),day:y(o.day)})}</p>
    ${Ho(o)}
    <section class="card" aria-busy=${!s}>
      <h2>${n("session.lines")}</h2>
      ${s?Ao(s):a`<p class="quiet">${n("session.loading")}</p>`}
    </section>
    ${Go(t,o)}
  `}var Rt=()=>a`
  <h1 tabindex="-1">${n("nav.record")}</h1>
  <p data-t="unknown-session">${n("record.unknown")}</p>
  <a class="button big" href="#/record" data-t="all-sessions">${n("record.all")}</a>
`,Ao=({session:t,verses:e})=>a`
  ${e==="failed"?a`<p class="quiet">${n("session.no-lines")}</p>`:Le(e)}
  ${t?c:a`<p class="quiet" data-t="no-marks">${n("session.damaged")}</p>`}
  ${t&&e!=="failed"?Ae(t,e):c}
  ${t?.stops.length?a`<p class="quiet">${n("session.stops",{n:t.stops.length})}</p>`:c}
`;function Ho(t){let e=g(t),o=[t.paper?n("record.on-paper"):"",t.together?n("record.together"):"",t.minutes===void 0?"":n("record.minutes",{n:t.minutes})].filter(Boolean);return a`<dl class="facts" data-t="facts">
    <dt>${n("session.rules")}</dt>
    <dd>${e.length?e.map(r=>a`<p>${jo(r)}</p>`):n("session.no-rule")}</dd>
    <dt>${n("session.went")}</dt>
    <dd>
      <p>${[n(`outcome.${t.outcome}`),...o].join(" · ")}</p>
      ${Vo(t).map(r=>a`<p class="quiet">${r}</p>`)}
    </dd>
    ${t.note?a`<dt>${n("session.note")}</dt>
            <dd>${xt(t.note)}</dd>`:c}
  </dl>`}var jo=({rule:t,found:e,missed:o})=>[R(t)," · ",e+o?n("record.found",{n:e,of:e+o}):n("session.unsaid")],Vo=t=>[t.looked===void 0?"":n("session.looked",{n:t.looked}),t.extra?n("session.extra",{n:t.extra}):"",t.helped?n("session.helped"):"",t.updated?n("session.updated",{day:y(f(new Date(t.updated)))}):""].filter(Boolean),Go=(t,e)=>a`
  <div class="row no-print">
    <a class="button big" href=${S(e.id)} data-t="correct">${n("session.correct")}</a>
    <button class="big" data-t="remove-session" @click=${()=>{Ko(e)}}>
      ${n("record.remove")}
    </button>
    <a class="button plain" href=${nt(t.catalogue,e)} data-t="again"
      >${n("session.again")}</a
    >
  </div>
`;async function Ko({id:t}){await j(t)&&location.replace("#/record")}var G=(t,e)=>e??`add ${h(t)?.id??""}`,M=(t,e)=>t.forms[G(t,e)];function B(t,e){let{[t]:o,...r}=u().forms;p({forms:e?{...r,[t]:e}:r}),e?.touched?Pe(t,e):Be(t)}function Uo({place:{s:t,a:e}}){return{day:f(),from:{s:t,a:String(e)},to:{s:t,a:String(e)},rules:[],outcome:"",paper:!0,minutes:"",note:""}}var Mt=new Set;async function ct(t){let e=u(),o=G(e,t);if(e.closed||e.forms[o]?.touched||Mt.has(o))return;Mt.add(o);let r=await Jo(e,t).catch(()=>{});Mt.delete(o),!u().forms[o]?.touched&&(r?B(o,{...r,...qe(o)}):t!==void 0&&k(e,t)&&location.hash===S(t)&&location.replace(P(t)))}async function Jo(t,e){let o={problems:[],touched:!1},r=h(t);if(e===void 0)return r&&{learner:r.id,typed:Uo(r),was:void 0,...o};if(!k(t,e))return;let s=await X(e);return s&&{learner:s.learner,typed:Re(s),was:s,...o}}var Ge=()=>Ce().forEach(t=>{ct(t.startsWith("add ")?void 0:t)});function Ke(t,e){let o=M(u(),t);if(!o)return;let r={...o.typed,...e};B(G(u(),t),{...o,typed:r,touched:!0})}var Nt=new Set;async function Ue(t){let e=M(u(),t),o=G(u(),t);if(!e||Nt.has(o))return;let r=Me(u().catalogue,e.typed,e.was,f());if(Array.isArray(r))return B(o,{...e,problems:r,touched:!0}),setTimeout(()=>document.querySelector("[aria-invalid=true]")?.focus());Nt.add(o);let s=e.was?void 0:we(Kt(),e.learner,r),i=await(s?xe(s):Te(e.was,r));i&&location.replace(P(s?.id??t)),setTimeout(()=>{Nt.delete(o),i&&B(o,void 0)})}function Je(t){location.hash=t===void 0?"#/record":P(t),_e(t)}function _e(t){let e=G(u(),t),o=M(u(),t);if(B(e,void 0),!o?.touched)return;let r=()=>{B(e,o),location.hash=S(t)};Z(n("edit.discarded"),r,{name:"discarded"})}function ze(t){let e=h(t);return Object.entries(t.forms).filter(([,r])=>r.touched&&r.learner===e?.id).map(([r,s])=>{let i=s.was?r:void 0,d=s.was?n("record.unfinished-edit",{day:y(s.was.day)}):n("record.unfinished-add");return a`<section class="card no-print" data-t="unfinished">
      <p>${n("record.unfinished",{what:d})}</p>
      <a class="button big" href=${S(i)} data-t="go-on">${n("record.go-on")}</a>
      <button class="plain" data-t="drop-form" @click=${()=>_e(i)}>
        ${n("edit.discard")}
      </button>
    </section>`})}function N(t,e){let o=t.problems.find(r=>r.field===e);return o?n(`edit.bad.${o.key}`,o.vars):""}var E=(t,e)=>a`<p
    class="problem"
    id="bad-${e}"
    data-t="bad-${e}"
    .textContent=${N(t,e)}
  ></p>`,q=t=>t.target.value,Ye=(()=>{let t=document.createElement("input");return t.type="date",t.type==="date"})(),Pt=(t,e,o,r)=>a`
  <div>
    <label for="edit-${e}">${o}</label>
    <input
      id="edit-${e}"
      type=${r.type??"text"}
      inputmode=${r.numeric?"numeric":c}
      max=${r.most??c}
      autocomplete="off"
      aria-invalid=${N(t,e)?"true":c}
      aria-describedby="bad-${e} how-${e}"
      data-t="edit-${e}"
      .value=${T(r.value)}
      @input=${s=>r.choose(q(s))}
    />
    ${E(t,e)}
    <p class="quiet how" id="how-${e}" .textContent=${r.how??""}></p>
  </div>
`,Qe=(t,e,o)=>a`
  <div>
    <label for="edit-note">${n("edit.note")}</label>
    <textarea
      id="edit-note"
      rows="3"
      dir="auto"
      aria-invalid=${N(t,"note")?"true":c}
      aria-describedby="bad-note how-note"
      data-t="edit-note"
      .value=${T(t.typed.note)}
      @input=${r=>o(q(r))}
    ></textarea>
    ${E(t,"note")}
    <p class="quiet how" id="how-note">${n("edit.note-how",{most:e})}</p>
  </div>
`;function Ct(t,e,o,r){let s=e.typed[o],i=`edit-${o}-surah`,d=`edit-${o}`;return a`
    <div class="fields place">
      <div>
        <label for=${i}>${n(`edit.${o}-surah`)}</label>
        ${ne(t,i,s.s,l=>r({...s,s:l}))}
      </div>
      <div>
        <label for=${d}>${n(`field.${o}`)}</label>
        <input
          id=${d}
          type="text"
          inputmode="numeric"
          autocomplete="off"
          aria-invalid=${N(e,o)?"true":c}
          aria-describedby="bad-${o}"
          data-t=${d}
          .value=${T(s.a)}
          @input=${l=>r({...s,a:q(l)})}
        />
      </div>
    </div>
    ${E(e,o)}
  `}var Ze=(t,e,o)=>a`
  <fieldset>
    <legend>${n("edit.rules")}</legend>
    <p class="quiet how">${n(e.typed.rules.length?"edit.rules-how":"edit.no-rules")}</p>
    <ul class="edit-rules">
      ${b(e.typed.rules,r=>r.rule,r=>_o(t,e,r,o))}
    </ul>
    ${zo(t,e,o)}
  </fieldset>
`;function _o({catalogue:t},e,o,r){let{rules:s}=e.typed,i=tt(t.rules,o.rule),d=l=>r(s.map(m=>m.rule===o.rule?{...m,...l}:m));return a`<li data-t="edit-rule-${o.rule}">
    <div class="row">
      ${R(o.rule)}
      <button
        type="button"
        class="plain"
        data-t="drop-rule"
        data-next="[data-t=edit-more]"
        aria-label=${n("edit.drop-rule",{rule:i})}
        @click=${()=>r(s.filter(l=>l.rule!==o.rule))}
      >
        ${n("record.remove")}
      </button>
    </div>
    <div class="found-of">
      ${Xe(e,o,"found",n("edit.found-of",{rule:i}),l=>d({found:l}))}
      <span>${n("edit.of")}</span>
      ${Xe(e,o,"of",n("edit.all-of",{rule:i}),l=>d({of:l}))}
    </div>
    ${E(e,`rule-${o.rule}`)}
  </li>`}var Xe=(t,e,o,r,s)=>a`
  <input
    type="text"
    inputmode="numeric"
    autocomplete="off"
    placeholder=${n(o==="found"?"edit.found":"edit.of")}
    aria-label=${r}
    aria-invalid=${N(t,`rule-${e.rule}`)?"true":c}
    aria-describedby="bad-rule-${e.rule}"
    data-t="edit-${o}-${e.rule}"
    .value=${T(e[o])}
    @input=${i=>s(q(i))}
  />
`;function zo({catalogue:t},e,o){let{rules:r}=e.typed,s=d=>{let l=d.target.value;l&&o([...r,{rule:l,found:"",of:""}])},i=ye(t).filter(d=>!r.some(l=>l.rule===d.id));return a`<label for="edit-more">${n("edit.add-rule")}</label>
    <select id="edit-more" data-t="edit-more" .value=${T("")} @change=${s}>
      <option value="">${n("edit.choose-rule")}</option>
      ${i.map(d=>a`<option value=${d.id}>${d.name}</option>`)}
    </select>`}function to(t,e){let o=M(t,e);if(e!==void 0&&!o&&!k(t,e))return Rt();let r=o?t.learners.find(s=>s.id===o.learner):h(t);return a`
    <h1 tabindex="-1">
      ${e===void 0?n("edit.add-title",{child:O(r)}):n("edit.title")}
    </h1>
    ${e===void 0?a`<p class="quiet">${n("edit.add-what")}</p>`:c}
    ${o?Yo(t,e,o):a`<p class="quiet" aria-busy="true">${n("session.loading")}</p>`}
  `}function Yo(t,e,o){let r=i=>{i.preventDefault(),Ue(e)},s=i=>Ke(e,i);return a`
    <form class="card edit" novalidate data-t="edit" @submit=${r}>
      <p
        class="problem"
        role="alert"
        data-t="problem"
        .textContent=${o.problems.length?n("edit.look"):""}
      ></p>
      ${Pt(o,"day",n("edit.day"),{type:"date",most:f(),how:Ye?"":n("edit.day-how",{day:f()}),value:o.typed.day,choose:i=>s({day:i})})}
      ${o.was&&(o.was.marks.length||o.was.stops.length)?Qo(t,o.was):Xo(t,o,s)}
      ${Ze(t,o,i=>s({rules:i}))}
      <div aria-describedby="bad-outcome">
        ${oe(n("edit.outcome"),"went",jt,o.typed.outcome,i=>n(`outcome.${i}`),i=>s({outcome:i}))}
        ${E(o,"outcome")}
      </div>
      ${se("edit-paper",n("edit.paper"),o.typed.paper,i=>s({paper:i}))}
      ${Pt(o,"minutes",n("edit.minutes"),{numeric:!0,value:o.typed.minutes,choose:i=>s({minutes:i})})}
      ${Qe(o,500,i=>s({note:i}))}
      <button class="main" data-t="save-session">${n("edit.save")}</button>
      <button type="button" class="plain" data-t="discard" @click=${()=>Je(e)}>
        ${n(o.touched?"edit.discard":"edit.cancel")}
      </button>
    </form>
  `}var Qo=({catalogue:t},{from:e,to:o})=>a`
  <p><b>${w(t.surahs,e,o)}</b></p>
  <p class="quiet">${n("edit.lines-stay")}</p>
`,Xo=(t,e,o)=>[Ct(t.catalogue,e,"from",r=>{let s=e.typed.to.s===e.typed.from.s&&r.s!==e.typed.from.s;o({from:r,...s&&{to:{...e.typed.to,s:r.s}}})}),Ct(t.catalogue,e,"to",r=>o({to:r}))];function eo(t){let e=h(t);return a`
    <section class="card backup">
      <h2>${n("backup.title")}</h2>
      <p>${n("backup.what")}</p>
      <p class="quiet" data-t="backed">${Zo(t)}</p>
      ${t.damaged>0?a`<p class="quiet" data-t="aside">${n("backup.aside",{n:t.damaged})}</p>`:c}
      <div class="row">
        <button class="big" data-t="backup" @click=${()=>{Xt()}}>${n("backup.save")}</button>
        ${de("big")}
      </div>
      ${e?a`<p>${n("backup.give-what",{child:O(e)})}</p>
              <button class="big" data-t="give" @click=${()=>{Zt(e.id)}}>
                ${n("backup.give")}
              </button>`:c}
    </section>
  `}var Zo=({settings:{backed:t}})=>t?n("backup.last",{day:x(f(new Date(t)))}):n("backup.never");var L=12;function tr(t){let e=Q(t);return gt(e-(e+3)%7)}function oo(t,e=f()){let o=Q(tr(e))-(L-1)*7,r=Array.from({length:L},(s,i)=>({from:gt(o+i*7),sessions:0,found:0,of:0}));for(let s of t){if(s.day<r[0].from||s.day>e)continue;let i=r[Math.floor((Q(s.day)-o)/7)];if(!i)continue;let{found:d,of:l}=v(g(s));i.sessions++,i.found+=d,i.of+=l}return r}var K=({found:t,of:e})=>e?Math.floor(100*t/e):void 0;function lt(t,{most:e,wide:o,top:r,base:s}){let i=o/t.length;return t.map((d,l)=>{let m=e>0?Math.round((s-r)*d*100/e)/100:0;return{x:Math.round(l*i),y:s-m,wide:Math.round(i*.7),high:m}})}var U=288,ro=14,ut=74,er=90;function no(t,e){if(!t.length)return c;let o=oo(t,e),r=o.some(s=>s.sessions);return a`
    <section class="charts" data-t="charts">
      <h2>${n("charts.title",{n:L})}</h2>
      ${r?[or(o),rr(o)]:a`<p class="quiet">${n("charts.none",{n:L})}</p>`}
    </section>
  `}function or(t){let e=Math.max(...t.map(s=>s.sessions)),r=lt(t.map(s=>s.sessions),{most:e,wide:U,top:ro,base:ut}).map((s,i)=>[io(s),ao(s,t[i].sessions||void 0)]);return so("charts.sessions",t,r,[n("charts.sessions-column")],s=>[s.sessions])}function rr(t){if(!t.some(i=>i.of))return c;let e={most:100,wide:U,top:ro,base:ut},o=lt(t.map(i=>K(i)??0),e),r=lt(t.map(i=>i.of?100:0),e),s=o.map((i,d)=>[io(i),sr(r[d]),ao(r[d],K(t[d]))]);return so("charts.found",t,s,[n("charts.found-column"),n("charts.of-column"),n("charts.percent-column")],i=>i.of?[i.found,i.of,n("charts.percent",{n:K(i)})]:["","",n("charts.no-figure")])}function so(t,e,o,r,s){return a`<figure class="chart" data-t=${t.replace(".","-")}>
    <figcaption>${n(t)}</figcaption>
    <svg viewBox="0 0 ${U} ${er}" aria-hidden="true">
      <path class="base" d="M0 ${ut}H${U}"></path>
      ${o} ${e.map((i,d)=>d%4?c:ir(i,d))}
    </svg>
    <div class="figures">${nr(t,e,r,s)}</div>
  </figure>`}var nr=(t,e,o,r)=>a`
  <table>
    <caption>
      ${n(t)}
    </caption>
    <tr>
      <th scope="col">${n("charts.week")}</th>
      ${o.map(s=>a`<th scope="col">${s}</th>`)}
    </tr>
    ${e.map(s=>a`<tr>
          <th scope="row">${x(s.from)}</th>
          ${r(s).map(i=>a`<td>${i}</td>`)}
        </tr>`)}
  </table>
`,io=t=>H`<rect class="full" x=${t.x} y=${t.y} width=${t.wide} height=${t.high}></rect>`,sr=t=>t.high?H`<rect class="frame" x=${t.x} y=${t.y} width=${t.wide} height=${t.high}></rect>`:c,ao=(t,e)=>e===void 0?c:H`<text x=${t.x} y=${t.y-3}>${e}</text>`,ir=(t,e)=>H`<text class="week" x=${e*U/L} y=${ut+13}>${x(t.from)}</text>`,co=t=>a`
  <svg class="share-bar" viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">
    <rect class="full" width=${K(t)??0} height="8"></rect>
    <rect class="frame" width="100" height="8"></rect>
  </svg>
`;var lo=["day","surah","verses","rules","found","of","looked","outcome","helped","paper","together","minutes","note"],ar="\uFEFF",dr=/^[\t\r\n]|^\s*[=+\-@\uff1d\uff0b\uff0d\uff20]/;function cr(t){if(t===void 0)return"";if(typeof t=="number")return String(t);let e=t.replace(/\0/g,"").replace(new RegExp("\\p{Surrogate}","gu"),"�"),o=dr.test(e)?`'${e}`:e;return/[",;\t\r\n]|^ | $/.test(o)?`"${o.replaceAll('"','""')}"`:o}var lr=t=>`${t.map(cr).join(",")}\r
`,uo=(t,e)=>ar+[lo.map(o=>n(`csv.${o}`)),...e.map(o=>{let r=ur(t,o);return lo.map(s=>r[s])})].map(lr).join(""),Bt=t=>t?n("csv.yes"):void 0;function ur(t,e){let o=g(e),{found:r,of:s}=v(o),i=d=>t.surahs[d.s-1].la;return{day:e.day,surah:e.from.s===e.to.s?i(e.from):`${i(e.from)} – ${i(e.to)}`,verses:mr(e),rules:_(o.map(d=>tt(t.rules,d.rule))),found:s?r:void 0,of:s||void 0,looked:e.looked,outcome:n(`outcome.${e.outcome}`),helped:Bt(e.helped),paper:Bt(e.paper),together:Bt(e.together),minutes:e.minutes,note:e.note}}function mr({from:t,to:e}){let o=(i,d)=>d===void 0?String(i.a):n("csv.word",{a:i.a,w:d+1}),r=o(t,t.w),s=o(e,e.w);return t.s===e.s&&r===s?r:`${r}–${s}`}function mo(){let t=h();if(t)try{let e=uo(u().catalogue,z(t.id));Qt(e,`sutur-sessions-${f()}.csv`,"text/csv;charset=utf-8"),p({notice:{text:n("record.table-saved"),name:"table"}})}catch{p({notice:{text:n("record.table-failed"),hold:!0}})}}var pr=500,fo=t=>a`
  <section class="card no-print" data-t="output">
    <h2>${n("record.output")}</h2>
    <div class="row">
      ${t?a`<button class="big" data-t="print-record" @click=${fr}>
                ${n("record.print")}
              </button>
              <button class="big" data-t="save-table" @click=${mo}>
                ${n("record.table")}
              </button>`:c}
      <a class="button plain" href="#/print?sheet=record" data-t="print-empty"
        >${n("record.print-empty")}</a
      >
    </div>
    ${t?a`<p class="quiet">${n("record.table-what")}</p>`:c}
  </section>
`;function fr(){let{listed:t}=u();document.querySelectorAll(".by-rule").forEach(e=>e.open=!0),p({listed:Math.max(t,pr)}),mt=t,requestAnimationFrame(()=>setTimeout(()=>window.print()))}var mt;function po(){mt!==void 0&&p({listed:mt}),mt=void 0}var qt=t=>t?addEventListener("afterprint",po):removeEventListener("afterprint",po);var ho=20,J=t=>{let{removed:e}=u();e&&p({removed:{...e,...t}})},yo=[];function go(t){let e=h(t),o=[e?.id,t.sessions];!e||At(o,yo)||(yo=o,kt(e.id))}function $o(t,e){let o=t.removed;if(!e||o?.learner!==e.id||!o.list.length)return c;let r=o.listed||ho,s=o.list.map(i=>i.id);return a`
    <details class="opens removed no-print" data-t="removed">
      <summary><h2>${n("removed.title",{n:o.list.length})}</h2></summary>
      <p class="quiet">${n("removed.what")}</p>
      <ul class="sessions">
        ${b(o.list.slice(0,r),i=>i.id,i=>gr(o,i))}
      </ul>
      ${s.length>r?yr(s.length,r):c}
      ${o.asked&&o.asked.length>1?bo(o):hr(s)}
    </details>
  `}var yr=(t,e)=>a`
  <button class="plain" data-t="more-removed" @click=${()=>J({listed:e+ho})}>
    ${n("record.more",{n:t-e})}
  </button>
`,hr=t=>t.length>1?a`<p>
        <button class="plain" data-t="forget-all" @click=${()=>J({asked:t})}>
          ${n("removed.forget-all")}
        </button>
      </p>`:c;function gr(t,{id:e,session:o}){let r=o,s=t.asked?.length===1&&t.asked[0]===e;return a`<li data-t="removed-session">
    <div>
      <p class="quiet">${y(r.day)}</p>
      ${Et(r)}${s?bo(t):c}
    </div>
    ${s?c:$r(r)}
  </li>`}var $r=({id:t,day:e})=>a`
  <div class="row-buttons">
    <button
      class="plain"
      data-t="bring-back"
      aria-label=${n("removed.back-this",{day:y(e)})}
      @click=${()=>{St(t)}}
    >
      ${n("removed.back")}
    </button>
    <button
      class="plain"
      data-t="forget"
      data-next="[data-t=forget-keep]"
      aria-label=${n("removed.forget-this",{day:y(e)})}
      @click=${()=>J({asked:[t]})}
    >
      ${n("removed.forget")}
    </button>
  </div>
`;function bo({asked:t=[],learner:e}){return a`<div class="sure" role="alert" data-t="sure">
    <p>${n("removed.sure",{n:t.length})}</p>
    <div class="row">
      <button class="big" data-t="forget-keep" @click=${()=>J({asked:void 0})}>
        ${n("removed.keep")}
      </button>
      <button class="plain" data-t="forget-sure" @click=${()=>{br(t,e)}}>
        ${n("removed.forget")}
      </button>
    </div>
  </div>`}async function br(t,e){await Oe(t,e),J({asked:void 0})}function vo(t){let e=ce(t);return e.length?a`
    <details class="by-rule opens" data-t="by-rule" open>
      <summary><h2>${n("record.by-rule")}</h2></summary>
      <table>
        <thead class="hidden">
          <tr>
            <th scope="col">${n("charts.rule-column")}</th>
            <th scope="col">${n("charts.found-column")}</th>
          </tr>
        </thead>
        <tbody>
          ${b(e,o=>o.rule,vr)}
        </tbody>
      </table>
    </details>
  `:c}function vr(t){let e=u().catalogue.rules.find(o=>o.id===t.rule);return a`<tr data-t="total-${t.rule}" .style=${e?ot(e.family):""}>
    <th scope="row">
      <a href="#/rules">${R(t.rule)}</a>
      <p class="quiet">
        ${`${n("record.sessions",{n:t.sessions})} ${n("record.on-days",{n:t.days})}, `}<span
          class="date"
          >${n("record.last-day",{day:x(t.day)})}</span
        >${Sr(t)}
      </p>
    </th>
    <td>${t.of>0?kr(t):n("charts.no-figure")}</td>
  </tr>`}var kr=t=>a`<span class="plan-figure">${n("record.found",{n:t.found,of:t.of})}</span
    >${co(t)}`,Sr=t=>t.sessions>bt&&t.lastOf>0?` · ${n("record.lately",{n:t.lastFound,of:t.lastOf,last:bt})}`:c;var Lt=50;function ko(t){let e=h(t),o=e?z(e.id):[],r=f();return a`
    <h1 tabindex="-1">${n("record.title",{child:O(e)})}</h1>
    <p class="print-only quiet">${n("record.printed-on",{day:y(r)})}</p>
    ${o.length?c:a`<p class="empty" data-t="empty">${n("record.empty")}</p>`}
    ${ze(t)} ${e?wr():c} ${et([o,r],()=>no(o,r))}
    ${et([o],()=>vo(o))}
    ${et([o,t.listed],()=>b(Or(o.slice(0,t.listed)),([s])=>s,Tr))}
    ${o.length>t.listed?Er(o.length,t.listed):c} ${$o(t,e)}
    ${e?fo(o.length):c} ${eo(t)}
  `}var wr=()=>a`
  <p class="no-print">
    <a class="button big" href=${S()} data-t="add-session">${n("record.add")}</a>
  </p>
`,Or=t=>[...Y(t,e=>e.day)],Tr=([t,e])=>a`
  <section class="day">
    <h2>${y(t)}</h2>
    <ul class="sessions">
      ${b(e,o=>o.id,He)}
    </ul>
  </section>
`,Er=(t,e)=>a`
  <button class="plain no-print" data-t="more" @click=${()=>p({listed:e+Lt})}>
    ${n("record.more",{n:t-e})}
  </button>
  <p class="print-only">${n("record.printed",{n:e,of:t})}</p>
`;var pt=t=>t.name==="record"?t:{name:"record"},xr=t=>a`
  <main class="record">${t.closed?re(t.closed):Fr(t)}</main>
`;function Fr(t){let{session:e,edit:o}=pt(t.route);return o?to(t,e):e?Ve(t,e):ko(t)}function Rr(t){let{session:e,edit:o}=pt(t.route);if(o)return n(e?"edit.title":"record.add");let r=e&&k(t,e);return r?w(t.catalogue.surahs,r.from,r.to):n("nav.record")}var Ii={title:Rr,view:xr,enter(t){let{edit:e,session:o}=pt(t);p({listed:Lt}),e?ct(o):Ge(),qt(!0)},drawn(t){if(t.closed)return;let{session:e,edit:o}=pt(t.route);o&&!M(t,e)&&ct(e),e&&!o&&(je(e),Tt(t)),!e&&!o&&go(t)},leave(){Ie(),qt(!1)}};export{Ii as record};
