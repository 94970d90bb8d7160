import{a as Yt}from"./chunk.WL4ATKXQ.js";import{a as It}from"./chunk.GDFFJXAG.js";import{d as Wt}from"./chunk.AG2JNZO7.js";import"./chunk.6RREKEHW.js";import{a as jt,c as j,e as Dt,f as qt,g as ut,h as _t,i as Qt,j as ct,k as Zt}from"./chunk.KDABWI4A.js";import{a as U}from"./chunk.UEZBRT4U.js";import{a as Nt}from"./chunk.Y6T2TAYM.js";import{a as At}from"./chunk.PH67WDNA.js";import{a as D,b as lt}from"./chunk.GOCA65A2.js";import{a as Vt}from"./chunk.MMYUXHSV.js";import{a as zt}from"./chunk.HOVA7EIO.js";import{a as F,b as Ut,c as B,g as J,i as P}from"./chunk.ZZZOJVYT.js";import"./chunk.6M4S66JV.js";import{x as Jt}from"./chunk.T25QC45N.js";import"./chunk.C2CM5TJ3.js";import{e as K}from"./chunk.F2Z7EUMU.js";import"./chunk.ABXU77RL.js";import{a as Kt,e as G,f as Ft,g as Bt}from"./chunk.M2I3IBPU.js";import{a as p,c as d,d as w,n as k,p as Gt}from"./chunk.JW3C4FA3.js";import{c as m,i as S,k as V,m as T,o as Tt,q as mt,r as H,s as Ht}from"./chunk.XR2DP2R4.js";var q=["verses","surah","page","juz"];var ft=(t,e)=>e.s>=1&&e.s<=t.surahs.length&&e.a>=1&&e.a<=t.surahs[e.s-1].count;function _(t,e,r){if(r.s<e.s)return 0;let n=r.a-e.a+1;for(let o=e.s;o<r.s;o++)n+=t.surahs[o-1].count;return n}var Qe=(t,e,r)=>r>1?{s:e,a:r-1}:{s:e-1,a:t.surahs[e-2]?.count??1},W=(t,e)=>({surah:t.surahs,page:t.pages,juz:t.juz})[e].length;function L(t,e,r){if(e==="surah")return t.surahs[r-1]&&{from:{s:r,a:1},to:{s:r,a:t.surahs[r-1].count}};let n=e==="juz"?t.juz:t.pages,o=n[r-1],s=n[r];if(!o)return;let a=t.surahs.length;return{from:{s:o[0],a:o[1]},to:s?Qe(t,s[0],s[1]):{s:a,a:t.surahs[a-1].count}}}function Xt(t,e,{s:r,a:n}){if(e==="surah")return r;let o=(e==="juz"?t.juz:t.pages).filter(s=>s[0]<r||s[0]===r&&s[1]<=n);return Math.max(1,o.length)}var ht=["practice","answer","both","card","record"],Y=["focus","learnt","all"],gt=["a4","letter"],yt=["portrait","landscape"],Q=24,Z=48,te=2,O=t=>t.kind!=="card"&&t.kind!=="record",dt=class{problem;q;constructor(e){this.q=new URLSearchParams(e.split("?")[1]??"")}get(e){return this.q.get(e)}bad(e,r,n={}){this.problem??={key:`print.bad.${e}`,vars:{found:r,...n}}}choice(e,r,n){let o=this.get(e);if(o===null)return n;let s=r.find(a=>a===o);return s||this.bad("choice",o,{name:e,accepted:r.join(", ")}),s??n}};function ee(t,e,r){let n=new dt(e),o=n.get("name"),s={...r};return s.kind=n.choice("sheet",ht,s.kind),s.paper=n.choice("paper",gt,s.paper),s.turn=n.choice("turn",yt,s.turn),o!==null&&(s.name=o==="yes"),s.size=Ze(n,s.size),s.rule=Ye(n,t,s.rule),s.show=n.choice("show",Y,s.rule?s.show:"learnt"),{options:{...s,...Xe(n,t)},problem:n.problem}}function Ze(t,e){let r=t.get("size");if(r===null)return e;let n=Number(r);return/^\d{1,3}$/.test(r)&&n>=Q&&n<=Z?n:(t.bad("size",r,{least:Q,most:Z}),e)}function Ye(t,e,r){let n=t.get("rule");return n===null?r:!n||e.rules.some(o=>o.id===n)?n:(t.bad("rule",n),r)}function Xe(t,e){let r=q.find(i=>i!=="verses"&&t.get(i)!==null);if(r)return tr(t,e,r);let n=t.get("from");if(n===null)return;let o=t.get("to"),s=mt(n),a=o===null?s:mt(o);if(!s||!ft(e,s))t.bad("verse",n);else if(!a||!ft(e,a))t.bad("verse",o??n);else if(_(e,s,a)<1)t.bad("order",H(s),{to:H(a)});else return{part:"verses",from:s,to:a}}function tr(t,e,r){let n=t.get(r),o=/^\d{1,3}$/.test(n)?L(e,r,Number(n)):void 0;if(o)return{part:r,...o};t.bad(r,n,{most:W(e,r)})}function re(t,e){let r=new URLSearchParams({sheet:e.kind});if(O(e)){let n=e.part!=="verses"&&wt(t,e);n?r.set(e.part,String(n)):(r.set("from",H(e.from)),r.set("to",H(e.to))),r.set("rule",e.rule),r.set("show",e.show),r.set("size",String(e.size))}return r.set("paper",e.paper),r.set("turn",e.turn),e.name&&r.set("name","yes"),`#/print?${r.toString().replaceAll("%3A",":")}`}function wt(t,e){if(e.part==="verses")return 0;for(let r=1;r<=W(t,e.part);r++){let{s:n,a:o}=L(t,e.part,r).from;if(n===e.from.s&&o===e.from.a)return r}return 0}var er=new Set("BZ CA CL CO CR GT MX NI PA PH PR SV US VE".split(" "));function rr(t){try{return new Intl.Locale(t).maximize().region??""}catch{return""}}var nr=30;function ne(t,e,r,n){let[o,s]=t.juz[nr-1]??[78,1],a=e??{s:o,a:s};return{kind:"practice",part:"verses",from:a,to:{s:a.s,a:Math.min(a.a+9,t.surahs[a.s-1].count)},rule:r,show:r?"focus":"learnt",paper:er.has(rr(n))?"letter":"a4",turn:"portrait",size:32,name:!1}}function oe(t,e){let r=new Set(e.map(n=>n.rule));return D(t).filter(n=>r.has(n.id))}var X=3.7795275590551185,or=4/3,sr={a4:[210,297],letter:[215.9,279.4]},tt=13,ar=13,bt=8,ir=2.75,M=(t,e)=>{let[r,n]=sr[t];return e==="portrait"?[r,n]:[n,r]};function E({paper:t,turn:e,size:r}){let[n,o]=M(t,e),s=r*or;return{width:n*X,height:o*X,em:s,line:(n-2*tt-ar)*X,pitch:ir*s,room:(o-2*tt-bt)*X}}var pr=23,mr=32,lr=9;function se(t,e){let r=M(e.paper,e.turn)[1]/2-tt-bt-lr,n=Math.floor(r/pr),o=t<=4*n?Math.max(1,Math.ceil(t/4)):Math.max(n,Math.ceil(t/8));return{per:o,height:Math.min(mr,r/o)}}function ae(t,e){let r=Math.max(1,Math.ceil(t.length/(4*e))),n=o=>ur(t.length,4*r,o);return Array.from({length:r},(o,s)=>[0,1,2,3].map(a=>t.slice(n(4*s+a),n(4*s+a+1))))}var ur=(t,e,r)=>Math.floor(t/e)*r+Math.min(r,t%e);function cr(t){let e=t.getBoundingClientRect(),r=.5*parseFloat(getComputedStyle(t).fontSize);return t.scrollWidth>t.clientWidth+1||t.scrollHeight>t.clientHeight+r||[...t.children].some(n=>{let o=n.getBoundingClientRect();return o.left<e.left-1||o.right>e.right+1||o.top<e.top-1||o.bottom>e.bottom+1})}function A(t,e){let r=[...e],n=1;for(let o=1;o>=.5;o-=.03){n=o;for(let s of t)s.style.setProperty("--fit",o.toFixed(2));if(!r.some(cr))break}return n}var R=(t,e)=>[...t.querySelectorAll(e)];var fr=CSS.supports("-moz-appearance","none");function et(t,{v:e,w:r},n,o,s=[]){let a=Ut(t,n,fr),i=a.again.map(u=>u.l),l=new Set([...i,...a.shapes.map(u=>u.l)]);return{word:t,spans:n,ink:a,slots:new Map([...l].map(u=>[u,o.slot(e,r,u)])),crowns:new Map(i.map(u=>[u,o.crown(e,r,u)])),notes:s}}function rt(t,e){let r=new Map,n=t.querySelectorAll('.leaf:not([data-sheet="practice"]) .w');return e.forEach((o,s)=>dr(n[s],o,r)),r}function dr(t,e,r){let n=t.firstChild;Qt(t,e.spans);for(let{name:s,from:a,to:i}of e.ink.ranges)qt(r,s,hr(n,a,i));let o=_t(e.word,e.ink.shapes,Dt?e.ink.again:[],{edge:0,slot:s=>e.slots.get(s),crown:s=>e.crowns.get(s)});e.notes.length&&w(e.notes.map(s=>gr(s,e.slots.get(s.l))),o),o.firstChild&&t.prepend(o)}var hr=(t,e,r)=>new StaticRange({startContainer:t,startOffset:e,endContainer:t,endOffset:r});function gr({counts:t,keys:e},{at:r,wide:n}){let o=`--at:${Math.round((r+n/2)*1e3)/1e3}`,s=(a,i)=>i.length?p`<span class=${a} .style=${o}>${i.join(" ")}</span>`:"";return[s("held",t),s("key",e)]}var x=(t,e,r,n,o,s)=>p`
  <section
    class="leaf"
    data-sheet=${e}
    data-page=${r}
    aria-label=${m("print.page",{n:r})}
    .style=${nt(s)}
  >
    ${o}
    <footer class="leaf-foot">
      <span>${m("print.source",{digest:t.textDigest.slice(0,16)})}</span>
      <span class="page-number">${m("print.page-of",{n:r,of:n})}</span>
    </footer>
  </section>
`,b=(t,e="",r="")=>p`<span class="fill-in ${r}">${t}<span class="blank">${e}</span></span>`,nt=t=>t===void 0?"":`--fit:${t.toFixed(2)}`;function ot(t){let e=E(t),[r,n]=M(t.paper,t.turn);return`--wide:${r}mm;--high:${n}mm;--em:${e.em}px;--pitch:${e.pitch}px`}var yr=100,I=(t,e="")=>p`<span class="w${e}" .textContent=${`${t.text} `}></span>`;function ie(t,e){let r=document.createElement("div");return r.className=t,r.style.cssText=e,r.ariaHidden="true",document.body.append(r),r}async function pe(t,e){let r=ie("leaves print-measure",ot(t));r.dataset.turn=t.turn;try{return await e(r)}finally{r.remove()}}async function st(t,e=yr){await document.fonts.load(`${e}px "Scheherazade New"`,t[0]?.text.slice(0,20)??"a").catch(()=>{});let r=ie("print-measure",`font-size:${e}px`);w(t.map(s=>p`<p class="line" lang="ar" dir="rtl">${s.words.map(a=>I(a))}</p>`),r);let n=[...r.children].map(s=>[...s.querySelectorAll(".w")]),o=(s,a)=>{let i=n[s][a];return{v:s,w:a,el:i,node:i.firstChild,word:t[s].words[a]}};return{...wr(n,e),slot:(s,a,i)=>ct.slot(o(s,a),i),crown:(s,a,i)=>ct.crown(o(s,a),i),drop:()=>r.remove()}}function wr(t,e){let r=new Range,n=s=>s.getBoundingClientRect().width/e,o=t.map(s=>s.map(a=>{let i=a.firstChild;return r.setStart(i,0),r.setEnd(i,i.length-1),n(r)}));return{words:o,space:n(t[0][0])-o[0][0]}}async function me(t,e){let{c:r,learnt:n,options:o}=t,s=await Promise.all(n.map(c=>br(t,c))),a=se(s.length,o),i={sheet:"card",c:r,options:o,child:o.name?t.learner?.name??"":"",sides:ae(s,a.per),share:a,inked:s.flatMap(c=>c.words)};w($t(i),e),rt(e,i.inked);let l=R(e,"h2").map(c=>A([c],[c])),u=A(R(e,"ol"),R(e,".quarter ol, .card-rule, .card-text"));return{...i,fits:{titles:l,rules:u}}}async function br({c:t,settings:e},r){let[n,o,s]=r.at,a={s:n,a:o},i=await G(t,a,a),l=$r(t,r,i),{words:u}=i[0],c=await st(i),h=Math.max(s,s+l.cw),f=[F({v:0,e:l},B(r.family))],$=[];for(let y=Math.min(s,s+l.cw);y<=h;y++)$.push(et(u[y],{v:0,w:y},y===s?f:[],c));return c.drop(),{rule:r,words:$,count:U(r,l,e).want}}function $r(t,e,r){let[n,o,s]=e.at,a=t.rules.indexOf(e),i=new j(r),l=r[0].events.find(u=>u.rule===a&&u.w===s&&!u.unwritten&&i.holds(0,u));if(!l)throw new Error(`${e.id}: not in ${n}:${o}`);return l}var $t=t=>t.sides.map((e,r)=>x(t.c,"card",r+1,t.sides.length,p`
        <div class="quarters" .style=${`--item:${t.share.height}mm;--per:${t.share.per}`}>
          ${e.map((n,o)=>Sr(t,n,r,o))}
        </div>
      `)),Sr=(t,e,r,n)=>p`
  <section class="quarter">
    ${n<2?kr(t,n,t.fits?.titles[2*r+n]):d}
    <ol .style=${nt(t.fits?.rules)}>
      ${e.map(xr)}
    </ol>
  </section>
`;function kr({child:t},e,r){let n=t?m("print.card-of",{child:t}):m("print.kind.card");return p`<h2 aria-hidden=${e?"true":d} .style=${nt(r)}>
    ${e?d:n}
  </h2>`}var xr=({rule:t,words:e,count:r})=>p`
  <li class="card-rule" data-rule=${t.id} .style=${J(t.family)}>
    <div class="card-text">
      <p>
        <span class="inked">${P(t.family)}${t.name}</span> ${k(t.ar)}
        ${r?p`<span class="card-count">${m("print.counts",{n:r})}</span>`:d}
      </p>
      ${t.letters?k([...t.letters].join(" "),"ar card-letters"):d}
    </div>
    <div class="card-example">
      <p class="line" lang="ar" dir="rtl">${e.map(n=>I(n.word))}</p>
      <span class="card-ref">${`${t.at[0]}:${t.at[1]}`}</span>
    </div>
  </li>
`;var vr=4,Or=5;function ue({c:t,options:e,learner:r},n){let o=e.name?r?.name??"":"",s={sheet:"record",c:t,options:e,child:o};return w(St(s),n),{...s,fit:A(R(n,".leaf"),R(n,".weeks, .week-block, .weeks ol, .weeks li, .weeks h3, .fill-in"))}}var St=({c:t,child:e,fit:r})=>[x(t,"record",1,1,p`
      <header class="leaf-head">
        <div class="head-line">
          <h2>${m("print.kind.record")}</h2>
          ${b(m("print.name"),e)}
        </div>
      </header>
      <div class="weeks">${Array.from({length:vr},(n,o)=>Mr(o+1))}</div>
    `,r)],Mr=t=>p`
  <section class="week-block">
    <h3>${m("print.week",{n:t})}${b(m("print.from"),"","short")}</h3>
    <ol>
      ${Array.from({length:Or},Rr)}
    </ol>
  </section>
`,Rr=()=>p`
  <li>
    ${le()} ${b(m("print.day"),"","short")} ${b(m("print.read"),"","long")}
    ${b(m("print.rule"))}
    <span class="went"
      >${["alone","some","much"].map(t=>p`<span>${le()}${m(`print.went.${t}`)}</span>`)}</span
    >
  </li>
`,le=()=>p`<span class="tick"></span>`;function ce(t,e,r){let n=t.length,o=new Float64Array(n+1).fill(1/0),s=new Int32Array(n+1);o[0]=0;for(let i=0;i<n;i++){let l=-e;for(let u=i+1;u<=n&&(l+=e+t[u-1].width,!(l>r&&u>i+1));u++){let c=Math.max(0,1-l/r),h=u===n,f=o[i]+(h?Math.max(0,c-.4)**2:c**2);u===i+1&&n>1&&(f+=.6),t[i].end&&i>0&&!t[i-1].end&&(f+=.15),t[u-1].end&&(f-=.03),f<o[u]&&(o[u]=f,s[u]=i)}}let a=[];for(let i=n;i>0;i=s[i])a.unshift(s[i]);return a}function fe(t,e,r){let n=t.length,o=[];for(let a=0;a<n;){o.push(a);let i=Math.min(n,a+Math.max(1,o.length===1?e:r));for(;i<n&&i>a+1&&t[i-1];)i--;a=i}let s=o[o.length-1];return o.length>1&&n-s===1&&s-o[o.length-2]>2&&!t[s-2]&&(o[o.length-1]=s-1),o}function he(t,e){let r=t.map(o=>o.words.map(()=>[])),n=new Map(e.map(o=>[o,0]));for(let o of jt(t,e,new j(t)))r[o.v][o.e.w].push(o),n.set(o.e.rule,n.get(o.e.rule)+1);return{hits:r,totals:n}}function ge(t,e,r,n){let o=[];for(let s of[...new Set(e.map(a=>a.e.l))].sort((a,i)=>a-i)){let a=e.filter(c=>c.e.l===s).map(c=>c.e),i=o.at(-1),l=a.map(r).filter(Boolean).slice(0,1),u=a.flatMap(c=>n.get(c.rule)??[]);i?.l===s-1&&Gt(t,s)?(i.counts.push(...l),i.keys.push(...u)):o.push({l:s,counts:l,keys:u})}return o}var C="abcdefghjkmnpqrstuvwxyz";function ye(t){let e=[...t.totals].filter(([,r])=>r>0).map(([r])=>r);return t.totals.size<2?new Map:new Map(e.map((r,n)=>[r,n<C.length?C[n]:C[Math.floor(n/C.length)-1]+C[n%C.length]]))}var Pr=.75;function we(t,e,r,n){let o=[];for(let s=0;s<t.length;){let{s:a,a:i}=t[s];i===1&&!(n&&s===0)&&o.push({head:a});let l=[];for(;t[s]?.s===a;s++)t[s].words.forEach((h,f)=>l.push({v:s,w:f}));let u=l.map(h=>{let f=kt(t,h);return{width:e.words[h.v][h.w]+(f?Pr:0),end:f}}),c=ce(u,e.space,r.line/r.em-e.space);c.forEach((h,f)=>o.push({words:l.slice(h,c[f+1])}))}return o}var kt=(t,{v:e,w:r})=>r===t[e].words.length-1&&!t[e].open;var Lr=14,xt=t=>t===void 0?"":`block-size:${t}px`,vt=(t,e)=>p`
  <header class="leaf-head first" .style=${xt(e)}>
    <div class="head-line">
      <h2>${t.title}</h2>
      ${b(m("print.name"),t.child)} ${b(m("print.date"))}
    </div>
    <p class="task-line">${t.rule?Er(t.rule):m("print.only-read")}</p>
    ${t.learnt.length?Cr(t.learnt):d}
  </header>
`,Er=t=>p`${m("print.find")} <b>${t.name}</b> ${k(t.ar)}. ${b(m("print.how-many"))}`,Cr=t=>p`
  <p class=${t.length>Lr?"strip many":"strip"}>
    <b>${m("print.learnt")}</b>
    ${t.map((e,r)=>[r?" · ":d,p`<span class="formed">${P(e.family)}${e.name}</span>`])}
  </p>
`,Ot=(t,e)=>p`
  <header class="leaf-head first" .style=${xt(e)}>
    <div class="head-line"><h2>${m("print.answers",{title:t.title})}</h2></div>
    <p class="task-line">${t.rule?Tr(t.rule,t.places):m("print.only-read")}</p>
    <p class="strip">${m("print.how-shown")}</p>
  </header>
`,Tr=(t,e)=>p`<b>${t.name}</b> ${k(t.ar)}: ${m("print.places",{n:e})}`;function at(t,e,r){let n=e==="answer"?m("print.answers",{title:t.title}):t.title,o=t.rule?` · ${t.rule.name}`:"";return p`<header class="leaf-head" .style=${xt(r)}>${n}${o}</header>`}var Hr=new Intl.NumberFormat("ar-u-nu-arab",{useGrouping:!1}),be=(t,e,r,n)=>"head"in r?Ar(t,r.head,e.basmala):Wr(e.verses,r.words,n);function Wr(t,e,r){let n=e.map(a=>t[a.v].words[a.w]),o=e.filter(a=>kt(t,a)),s=e.map((a,i)=>[I(n[i],Zt(n,i)),o.includes(a)?p`<span class=${r?"ring full":"ring"}></span>`:d]);return p`
    <div class="row-line">
      <p class="line" lang="ar" dir="rtl">${s}</p>
      <span class="numbers" lang="ar"
        >${o.map(a=>p`<span>${Hr.format(t[a.v].a)}</span>`)}</span
      >
    </div>
  `}var Ar=(t,e,r)=>p`
  <div class="row-line head" lang="ar" dir="rtl">
    <span class="surah-name">${t.surahs[e-1].ar}</span>
    ${r&&Bt(e)?p`<span class="basmala" .textContent=${r}></span>`:d}
  </div>
`;function Mt(t,e,r){let n=[...e.totals].filter(([,o])=>o>0||e.totals.size===1);return p`
    <section class="totals">
      <h3>${m("print.totals")}</h3>
      ${n.length?p`<ul>
              ${n.map(([o,s])=>Ir(t,o,s,r.get(o)))}
            </ul>`:p`<p>${m("print.no-rules")}</p>`}
      <p class="said-once">${m("print.stops")} ${m("caution")}</p>
    </section>
  `}function Ir(t,e,r,n){let o=t.rules[e];return p`<li data-rule=${o.id} data-n=${r} .style=${J(o.family)}>
    ${n===void 0?d:p`<b class="key-name">${n}</b>`}
    <span class="inked">${P(o.family)}${o.name}</span> ${k(o.ar)}
    <span class="total">${r}</span>
  </li>`}async function $e(t,e){let{c:r,options:n}=t,[o,s]=await Promise.all([G(r,n.from,n.to),Ft(r,n.from,n.to)]),a={verses:o,basmala:s},i=E(n),l=he(o,lt(r,n.rule,zr(t))),u=ye(l),c=Nr(t,l),h=await st(o,i.em);try{let f=Vr(r,c,l,u,e),$=we(o,h,i,!!n.from.w),y=Kr($,f,i);return{sheet:"lines",c:r,options:n,passage:a,heads:c,heights:f,rows:$,starts:y,found:l,keys:u,totalsApart:!Gr($,y,f,i),inked:n.kind==="practice"?[]:Fr(t,a,$,l,u,h)}}finally{h.drop()}}function zr({options:t,learnt:e}){return t.show==="all"?"all":new Set(t.show==="learnt"?e.map(r=>r.id):[])}function Nr({c:t,options:e,learner:r,learnt:n},o){let s=t.rules.find(i=>i.id===e.rule),a=new Set(n.map(i=>i.id));return{title:K(t.surahs,e.from,e.to),rule:s,child:e.name?r?.name??"":"",learnt:lt(t,e.rule,a).map(i=>t.rules[i]),places:s?o.totals.get(t.rules.indexOf(s))??0:0}}function Vr(t,e,r,n,o){let s=a=>(w(x(t,"measure",0,0,a),o),Math.ceil(o.querySelector(".leaf > *").getBoundingClientRect().height));return{first:Math.max(s(vt(e)),s(Ot(e))),next:s(at(e,"answer")),totals:s(Mt(t,r,n))}}var Kr=(t,{first:e,next:r},n)=>fe(t.map(o=>"head"in o),Math.floor((n.room-e)/n.pitch),Math.floor((n.room-r)/n.pitch));function Gr(t,e,r,n){let o=e.length>1?r.next:r.first,s=t.length-e.at(-1);return o+s*n.pitch+r.totals<=n.room}function Fr({c:t,settings:e},{verses:r},n,o,s,a){let i=l=>U(t.rules[l.rule],l,e).want;return n.flatMap(l=>"head"in l?[]:l.words).map(l=>{let u=r[l.v].words[l.w],c=o.hits[l.v][l.w],h=c.map(f=>F(f,B(t.rules[f.e.rule].family)));return et(u,l,h,a,ge(u,c,i,s))})}var Se=({options:{kind:t}})=>t==="both"?["practice","answer"]:[t],ke=(t,e)=>t.starts.length+(e==="answer"&&t.totalsApart?1:0),xe=t=>Se(t).reduce((e,r)=>e+ke(t,r),0),ve=t=>Se(t).flatMap(e=>Br(t,e));function Br(t,e){let{c:r,heads:n,heights:o,starts:s}=t,a=e==="answer",i=ke(t,e),l=a?Mt(r,t.found,t.keys):d,u=a?Ot:vt,c=s.map((h,f)=>{let $=f?at(n,e,o.next):u(n,o.first),y=t.rows.slice(h,s[f+1]).map(_e=>be(r,t.passage,_e,a)),qe=f+1===s.length&&!t.totalsApart?l:d;return x(r,e,f+1,i,p`${$}
        <div class="rows">${y}</div>
        ${qe}`)});return i>c.length&&c.push(x(r,e,i,i,p`${at(n,e)}${l}`)),c}var Oe=t=>pe(t.options,e=>t.options.kind==="record"?ue(t,e):t.options.kind==="card"?me(t,e):$e(t,e));function Me(t){return t.sheet==="record"?St(t):t.sheet==="card"?$t(t):ve(t)}function Re(t){return t.sheet==="record"?1:t.sheet==="card"?t.sides.length:xe(t)}var Pe=t=>t.sheet==="record"?[]:t.inked;var Jr=150,Ur=20,Rt=0,it=0,Pt=t=>{let{printing:e}=S();e&&V({printing:{...e,...t}})};function Lt(){let{catalogue:t,printing:e}=S(),r=t.rules[Jt()?.today.rule??-1]?.id??"",n=ne(t,T()?.place,r,navigator.language),o=ee(t,location.hash,n);V({printing:{layout:e?.layout,...o,busy:!0}}),He(0)}function g(t){let{catalogue:e,printing:r}=S();if(!r)return;let n={...r.options,...t};history.replaceState(history.state,"",re(e,n)),Pt({options:n,problem:void 0,busy:!0}),He("size"in t?Jr:0)}function Te(){clearTimeout(Rt),it++,V({printing:void 0})}function He(t){clearTimeout(Rt),Rt=window.setTimeout(()=>{jr()},t)}async function jr(){let t=++it,{catalogue:e,settings:r,printing:n}=S();if(!n)return;let{options:o}=n,s=_(e,o.from,o.to);if(O(o)&&s>600)return Ee({key:"print.bad.many",vars:{n:s,most:600}});await new Promise(l=>setTimeout(l,Ur));let a=T(),i=a?Tt(a.id):[];try{let l=await Oe({c:e,options:o,learner:a,learnt:oe(e,i),settings:r});t===it&&Pt({layout:l,busy:!1})}catch(l){if(t!==it)return;if(!(l instanceof Kt))throw l;Ee({key:`error.${l.code}`,vars:{}})}}var Ee=t=>Pt({problem:t,layout:void 0,busy:!1});var Ie=10,ze=(t,e)=>p`
  <div class="fields place">
    ${z("print.part","print-part",Dr(t,e))} ${qr(t,e)}
  </div>
`,z=(t,e,r)=>p`<div><label for=${e}>${m(t)}</label>${r}</div>`;function Dr(t,e){return p`<select id="print-part" data-t="print-part" @change=${n=>{let o=n.target.value;if(o!=="verses")return g({part:o,...L(t,o,Xt(t,o,e.from))});let{s,a}=e.from;g({part:o,to:{s,a:Math.min(t.surahs[s-1].count,a+Ie-1)}})}}>
    ${q.map(n=>p`<option value=${n} .selected=${n===e.part}>${m(`print.part.${n}`)}</option>`)}
  </select>`}function qr(t,e){if(e.part==="surah")return We(t,e);if(e.part==="verses")return[We(t,e),z("field.from","print-from",Ae(t,e,"from")),z("field.to","print-to",Ae(t,e,"to"))];let{part:r}=e,n=`print-${r}`,o=Ve(n,W(t,r),wt(t,e)||1,s=>Ne(t,r,s));return z(`print.part.${r}`,n,o)}var Ne=(t,e,r)=>g({part:e,...L(t,e,r)});function We(t,e){let r=n=>{if(e.part==="surah")return Ne(t,"surah",n);g({from:{s:n,a:1},to:{s:n,a:Math.min(Ie,t.surahs[n-1].count)}})};return z("field.surah","print-surah",Nt(t,"print-surah",e.from.s,r))}function Ae(t,e,r){let{s:n}=e.from;return Ve(`print-${r}`,t.surahs[n-1].count,e[r].a,o=>{let s=r==="from"?o:e.from.a,a=r==="to"?o:e.to.s===n?e.to.a:o;g({from:{s:n,a:r==="to"?Math.min(s,a):s},to:{s:n,a:r==="from"?Math.max(s,a):a}})})}var Ve=(t,e,r,n)=>zt({id:t,least:1,most:e,now:r,usual:1,choose:n});function Ke(t,e){let r=T(t)?.name;return p`
    <form class="card print-form" @submit=${n=>n.preventDefault()}>
      ${pt(e,"kind",ht,n=>`print.kind.${n}`)}
      ${O(e)?_r(t.catalogue,e):d}
      ${pt(e,"paper",gt,n=>`print.paper.${n}`)}
      ${pt(e,"turn",yt,n=>`print.turn.${n}`)} ${r?Yr(e,r):d}
      <details data-t="print-pencils">
        <summary>${m("pencils.title")}</summary>
        ${Yt(t)}
      </details>
    </form>
  `}var pt=(t,e,r,n)=>It(m(`print.${e}`),e,r,t[e],o=>m(n(o)),o=>g({[e]:o})),_r=(t,e)=>p`
  ${ze(t,e)} ${Qr(t,e)}
  ${e.kind==="practice"?d:pt(e,"show",e.rule?Y:Y.slice(1),r=>`print.show.${r}`)}
  ${Zr(e)}
`;function Qr(t,e){let r=n=>{let o=n.target.value;g({rule:o,show:o?e.show:"learnt"})};return p`<div>
    <label for="print-rule">${m("print.rule-to-find")}</label>
    <select id="print-rule" data-t="print-rule" @change=${r}>
      <option value="" .selected=${!e.rule}>${m("choose.no-rule")}</option>
      ${D(t).map(n=>p`<option value=${n.id} .selected=${n.id===e.rule}>${n.name}</option>`)}
    </select>
  </div>`}function Zr(t){let e=m("print.points",{n:t.size});return p`<div>
    <label for="print-size">${m("print.size")} <span class="quiet">${e}</span></label>
    <input
      id="print-size"
      type="range"
      min=${Q}
      max=${Z}
      step=${te}
      .value=${String(t.size)}
      data-t="print-size"
      aria-valuetext=${e}
      @input=${r=>g({size:Number(r.target.value)})}
    />
  </div>`}var Yr=(t,e)=>p`
  <div class="row check">
    <input
      id="print-name"
      type="checkbox"
      .checked=${t.name}
      data-t="print-name"
      @change=${r=>g({name:r.target.checked})}
    />
    <label for="print-name">${m("print.with-name",{child:e})}</label>
  </div>
`;var Xr=12,Ge=t=>p`<div class="print-stage">${At(t,t?tn(t):d)}</div>`;function tn(t){return Vt([t],()=>{let e=Me(t);return p`<div
      class=${e.length>Xr?"leaves many":"leaves"}
      data-turn=${t.options.turn}
      .style=${ot(t.options)}
    >
      ${e}
    </div>`})}var Ct=new CSSStyleSheet,N,v,Et=new ResizeObserver(Je);function Fe(){document.adoptedStyleSheets=[...document.adoptedStyleSheets,Ct]}function Be(t){if(v?.isConnected||(Et.disconnect(),v=document.querySelector(".print-stage"),Et.observe(v)),t===N||(N=t,ut("paper",t?rt(v,Pe(t)):new Map),!t))return;let[e,r]=M(t.options.paper,t.options.turn);Ct.replaceSync(`@page{size:${e}mm ${r}mm;margin:0}`),Je()}function Je(){if(!v||!N)return;let t=Math.min(1,v.clientWidth/E(N.options).width);v.style.setProperty("--zoom",String(Math.floor(t*1e3)/1e3))}function Ue(){Et.disconnect(),v=void 0,N=void 0,ut("paper",new Map),document.adoptedStyleSheets=document.adoptedStyleSheets.filter(t=>t!==Ct)}function je({catalogue:t,printing:e}){if(!e?.layout)return m("print.title");let{options:r}=e.layout,n=m(`print.kind.${r.kind}`);return O(r)?`${K(t.surahs,r.from,r.to)} ${n}`:n}function en(t){let{options:e,problem:r,layout:n,busy:o}=t.printing,s=r?m(r.key,r.vars):"";return p`
    <main class="print">
      <div class="print-side">
        <h1 tabindex="-1">${m("print.title")}</h1>
        <p class="problem" role="alert" data-t="problem">${s}</p>
        ${Ke(t,e)}
        <p class="quiet">${m("print.respect")}</p>
      </div>
      <div class="print-go">
        <p class="print-status" role="status" data-t="print-status">${rn(n,o)}</p>
        <button
          class="main"
          type="button"
          ?disabled=${o||!n}
          data-t="print-now"
          @click=${()=>window.print()}
        >
          ${m("print.now")}
        </button>
      </div>
      ${Ge(n)}
    </main>
  `}function rn(t,e){if(e)return m("print.laying-out");if(!t)return"";let r=m("print.pages",{n:Re(t)});return t.sheet!=="card"?r:`${r} ${m(t.inked.length?"print.card-fold":"print.card-empty")}`}function De(){Ht(S().catalogue,location.hash).name==="print"&&Lt()}var Ls={title:je,view:en,enter(){let{catalogue:t,settings:e}=S();Wt(t,e.pencils),Fe(),Lt(),addEventListener("hashchange",De)},drawn(t){Be(t.printing?.layout),document.title=m("page.title",{screen:je(t)})},leave(){removeEventListener("hashchange",De),Te(),Ue()}};export{Ls as print};
