import{a as le}from"./chunk.ZCLDAGIS.js";import{a as Bt}from"./chunk.RBEOXQB7.js";import{d as Gt}from"./chunk.AG2JNZO7.js";import"./chunk.6RREKEHW.js";import{a as Q,c as re,e as ne,f as gt,g as oe,h as se,i as yt,j as ae,k as ie,l as pe}from"./chunk.ZOTFDGBQ.js";import"./chunk.TWD3TNZW.js";import{a as Dt,d as _t}from"./chunk.E4I625RD.js";import{b as B}from"./chunk.TX2AM5FN.js";import{a as jt}from"./chunk.EZIODPUZ.js";import{a as q,b as ht}from"./chunk.3B5LX3MQ.js";import{a as Qt}from"./chunk.4MBP4JSQ.js";import{a as Jt}from"./chunk.JG3ILKLC.js";import{a as Ut}from"./chunk.P7LSG5ID.js";import{a as j,b as ee,c as D,g as _,i as S}from"./chunk.CLYPCFEQ.js";import"./chunk.RCYS5ULD.js";import"./chunk.U4LIOG5F.js";import{x as te}from"./chunk.6WKKIGEP.js";import"./chunk.LE5K7YXS.js";import"./chunk.C2CM5TJ3.js";import{e as J}from"./chunk.SBHWFWE5.js";import"./chunk.ABXU77RL.js";import{a as qt,e as U,f as Yt,g as Xt}from"./chunk.E6OLOVED.js";import{a as p,c as f,d as w,n as v,p as Zt}from"./chunk.A6UYY2CG.js";import{d as l,j as k,l as K,o as E,q as G,t as ft,u as H,v as Vt,x as dt,y as Ft,z as Kt}from"./chunk.S3BIYIDD.js";import"./chunk.YE24VLP2.js";var Z=["verses","surah","page","juz"];var bt=(t,e)=>e.s>=1&&e.s<=t.surahs.length&&e.a>=1&&e.a<=t.surahs[e.s-1].count;function Y(t,e,r){if(r.s<e.s)return 0;let n=r.a-e.a+1;for(let o=e.s;o<r.s;o++)n+=t.surahs[o-1].count;return n}var fr=(t,e,r)=>r>1?{s:e,a:r-1}:{s:e-1,a:t.surahs[e-2]?.count??1},W=(t,e)=>({surah:t.surahs,page:t.pages,juz:t.juz})[e].length;function L(t,e,r){if(e==="surah")return t.surahs[r-1]&&{from:{s:r,a:1},to:{s:r,a:t.surahs[r-1].count}};let n=e==="juz"?t.juz:t.pages,o=n[r-1],s=n[r];if(!o)return;let a=t.surahs.length;return{from:{s:o[0],a:o[1]},to:s?fr(t,s[0],s[1]):{s:a,a:t.surahs[a-1].count}}}function me(t,e,{s:r,a:n}){if(e==="surah")return r;let o=(e==="juz"?t.juz:t.pages).filter(s=>s[0]<r||s[0]===r&&s[1]<=n);return Math.max(1,o.length)}var $t=["practice","answer","both","card","record"],et=["focus","learnt","all"],St=["a4","letter"],kt=["portrait","landscape"],X=24,tt=48,ce=2,P=t=>t.kind!=="card"&&t.kind!=="record",rt=t=>!!t.rule||t.also.length>0,wt=class{problem;q;constructor(e){this.q=new URLSearchParams(e.split("?")[1]??"")}get(e){return this.q.get(e)}bad(e,r,n={}){this.problem??={key:`print.bad.${e}`,vars:{found:r,...n}}}choice(e,r,n){let o=this.get(e);if(o===null)return n;let s=r.find(a=>a===o);return s||this.bad("choice",o,{name:e,accepted:r.join(", ")}),s??n}};function ue(t,e,r){let n=new wt(e),o=n.get("name"),s={...r};return s.kind=n.choice("sheet",$t,s.kind),s.paper=n.choice("paper",St,s.paper),s.turn=n.choice("turn",kt,s.turn),o!==null&&(s.name=o==="yes"),s.size=dr(n,s.size),s.rule=hr(n,t,s.rule),s.also=gr(n,t,s),s.show=n.choice("show",et,rt(s)?s.show:"learnt"),{options:{...s,...yr(n,t)},problem:n.problem}}function dr(t,e){let r=t.get("size");if(r===null)return e;let n=Number(r);return/^\d{1,3}$/.test(r)&&n>=X&&n<=tt?n:(t.bad("size",r,{least:X,most:tt}),e)}function hr(t,e,r){let n=t.get("rule");return n===null?r:!n||e.rules.some(o=>o.id===n)?n:(t.bad("rule",n),r)}function gr(t,e,{rule:r,also:n}){let o=t.get("also"),s=o===null?n.filter(i=>i!==r):Ft(o,r),a=s.find(i=>!dt(e,i));return a!==void 0&&t.bad("rule",a),s.filter(i=>dt(e,i))}function yr(t,e){let r=Z.find(i=>i!=="verses"&&t.get(i)!==null);if(r)return br(t,e,r);let n=t.get("from");if(n===null)return;let o=t.get("to"),s=ft(n),a=o===null?s:ft(o);if(!s||!bt(e,s))t.bad("verse",n);else if(!a||!bt(e,a))t.bad("verse",o??n);else if(Y(e,s,a)<1)t.bad("order",H(s),{to:H(a)});else return{part:"verses",from:s,to:a}}function br(t,e,r){let n=t.get(r),o=/^\d{1,3}$/.test(n)?L(e,r,Number(n)):void 0;if(o)return{part:r,...o};t.bad(r,n,{most:W(e,r)})}function fe(t,e){let r=new URLSearchParams({sheet:e.kind});if(P(e)){let n=e.part!=="verses"&&xt(t,e);n?r.set(e.part,String(n)):(r.set("from",H(e.from)),r.set("to",H(e.to))),r.set("rule",e.rule),e.also.length&&r.set("also",e.also.join()),r.set("show",e.show),r.set("size",String(e.size))}return r.set("paper",e.paper),r.set("turn",e.turn),e.name&&r.set("name","yes"),`#/print?${r.toString().replaceAll("%3A",":").replaceAll("%2C",",")}`}function xt(t,e){if(e.part==="verses")return 0;for(let r=1;r<=W(t,e.part);r++){let{s:n,a:o}=L(t,e.part,r).from;if(n===e.from.s&&o===e.from.a)return r}return 0}var wr=new Set("BZ CA CL CO CR GT MX NI PA PH PR SV US VE".split(" "));function $r(t){try{return new Intl.Locale(t).maximize().region??""}catch{return""}}var Sr=30;function de(t,e,r,n){let[o,s]=t.juz[Sr-1]??[78,1],a=e??{s:o,a:s};return{kind:"practice",part:"verses",from:a,to:{s:a.s,a:Math.min(a.a+9,t.surahs[a.s-1].count)},rule:r,also:[],show:r?"focus":"learnt",paper:wr.has($r(n))?"letter":"a4",turn:"portrait",size:32,name:!1}}function he(t,e){let r=new Set(e.map(n=>n.rule));return q(t).filter(n=>r.has(n.id))}var nt=3.7795275590551185,kr=4/3,xr={a4:[210,297],letter:[215.9,279.4]},ot=13,Or=13,Ot=8,vr=2.75,M=(t,e)=>{let[r,n]=xr[t];return e==="portrait"?[r,n]:[n,r]};function C({paper:t,turn:e,size:r}){let[n,o]=M(t,e),s=r*kr;return{width:n*nt,height:o*nt,em:s,line:(n-2*ot-Or)*nt,pitch:vr*s,room:(o-2*ot-Ot)*nt}}var Pr=23,Mr=32,Rr=9;function ge(t,e){let r=M(e.paper,e.turn)[1]/2-ot-Ot-Rr,n=Math.floor(r/Pr),o=t<=4*n?Math.max(1,Math.ceil(t/4)):Math.max(n,Math.ceil(t/8));return{per:o,height:Math.min(Mr,r/o)}}function ye(t,e){let r=Math.max(1,Math.ceil(t.length/(4*e))),n=o=>Er(t.length,4*r,o);return Array.from({length:r},(o,s)=>[0,1,2,3].map(a=>t.slice(n(4*s+a),n(4*s+a+1))))}var Er=(t,e,r)=>Math.floor(t/e)*r+Math.min(r,t%e);function Lr(t){let e=t.getBoundingClientRect(),r=.5*parseFloat(getComputedStyle(t).fontSize);return t.scrollWidth>t.clientWidth+1||t.scrollHeight>t.clientHeight+r||[...t.children].some(n=>{let o=n.getBoundingClientRect();return o.left<e.left-1||o.right>e.right+1||o.top<e.top-1||o.bottom>e.bottom+1})}function A(t,e){let r=[...e],n=1;for(let o=1;o>=.5;o-=.03){n=o;for(let s of t)s.style.setProperty("--fit",o.toFixed(2));if(!r.some(Lr))break}return n}var R=(t,e)=>[...t.querySelectorAll(e)];var Cr=CSS.supports("-moz-appearance","none");function st(t,{v:e,w:r},n,o,s=[]){let a=ee(t,n,Cr),i=a.again.map(c=>c.l),m=new Set([...i,...a.shapes.map(c=>c.l)]);return{word:t,spans:n,ink:a,slots:new Map([...m].map(c=>[c,o.slot(e,r,c)])),crowns:new Map(i.map(c=>[c,o.crown(e,r,c)])),notes:s}}function at(t,e){let r=new Map,n=t.querySelectorAll('.leaf:not([data-sheet="practice"]) .w');return e.forEach((o,s)=>Tr(n[s],o,r)),r}function Tr(t,e,r){let n=t.firstChild;ie(t,e.spans);for(let{name:s,from:a,to:i}of e.ink.ranges)se(r,s,Hr(n,a,i));let o=ae(e.word,e.ink.shapes,oe?e.ink.again:[],{edge:0,slot:s=>e.slots.get(s),crown:s=>e.crowns.get(s)});e.notes.length&&w(e.notes.map(s=>Wr(s,e.slots.get(s.l))),o),o.firstChild&&t.prepend(o)}var Hr=(t,e,r)=>new StaticRange({startContainer:t,startOffset:e,endContainer:t,endOffset:r});function Wr({counts:t,keys:e},{at:r,wide:n}){let o=`--at:${Math.round((r+n/2)*1e3)/1e3}`,s=(a,i)=>i.length?p`<span class=${a} .style=${o}>${i.join(" ")}</span>`:"";return[s("held",t),s("key",e)]}var x=(t,e,r,n,o,s)=>p`
  <section
    class="leaf"
    data-sheet=${e}
    data-page=${r}
    aria-label=${l("print.page",{n:r})}
    .style=${it(s)}
  >
    ${o}
    <footer class="leaf-foot">
      <span>${l("print.source",{digest:t.textDigest.slice(0,16)})}</span>
      <span class="page-number">${l("print.page-of",{n:r,of:n})}</span>
    </footer>
  </section>
`,g=(t,e="",r="")=>p`<span class="fill-in ${r}">${t}<span class="blank">${e}</span></span>`,it=t=>t===void 0?"":`--fit:${t.toFixed(2)}`;function pt(t){let e=C(t),[r,n]=M(t.paper,t.turn);return`--wide:${r}mm;--high:${n}mm;--em:${e.em}px;--pitch:${e.pitch}px`}var Ar=100,I=(t,e="")=>p`<span class="w${e}" .textContent=${`${t.text} `}></span>`;function be(t,e){let r=document.createElement("div");return r.className=t,r.style.cssText=e,r.ariaHidden="true",document.body.append(r),r}async function we(t,e){let r=be("leaves print-measure",pt(t));r.dataset.turn=t.turn;try{return await e(r)}finally{r.remove()}}async function lt(t,e=Ar){await document.fonts.load(`${e}px "Scheherazade New"`,t[0]?.text.slice(0,20)??"a").catch(()=>{});let r=be("print-measure",`font-size:${e}px`);w(t.map(s=>p`<p class="line" lang="ar" dir="rtl">${s.words.map(a=>I(a))}</p>`),r);let n=[...r.children].map(s=>[...s.querySelectorAll(".w")]),o=(s,a)=>{let i=n[s][a];return{v:s,w:a,el:i,node:i.firstChild,word:t[s].words[a]}};return{...Ir(n,e),slot:(s,a,i)=>gt.slot(o(s,a),i),crown:(s,a,i)=>gt.crown(o(s,a),i),drop:()=>r.remove()}}function Ir(t,e){let r=new Range,n=s=>s.getBoundingClientRect().width/e,o=t.map(s=>s.map(a=>{let i=a.firstChild;return r.setStart(i,0),r.setEnd(i,i.length-1),n(r)}));return{words:o,space:n(t[0][0])-o[0][0]}}async function $e(t,e){let{c:r,learnt:n,options:o}=t,s=await Promise.all(n.map(u=>zr(t,u))),a=ge(s.length,o),i={sheet:"card",c:r,options:o,child:o.name?t.learner?.name??"":"",sides:ye(s,a.per),share:a,inked:s.flatMap(u=>u.words)};w(vt(i),e),at(e,i.inked);let m=R(e,"h2").map(u=>A([u],[u])),c=A(R(e,"ol"),R(e,".quarter ol, .card-rule, .card-text"));return{...i,fits:{titles:m,rules:c}}}async function zr({c:t,settings:e},r){let[n,o,s]=r.at,a={s:n,a:o},i=await U(t,a,a),m=Nr(t,r,i),{words:c}=i[0],u=await lt(i),h=Math.max(s,s+m.cw),d=[j({v:0,e:m},D(r.family))],$=[];for(let b=Math.min(s,s+m.cw);b<=h;b++)$.push(st(c[b],{v:0,w:b},b===s?d:[],u));return u.drop(),{rule:r,words:$,count:B(r,m,e).want}}function Nr(t,e,r){let[n,o,s]=e.at,a=t.rules.indexOf(e),i=new Q(r),m=r[0].events.find(c=>c.rule===a&&c.w===s&&!c.unwritten&&i.holds(0,c));if(!m)throw new Error(`${e.id}: not in ${n}:${o}`);return m}var vt=t=>t.sides.map((e,r)=>x(t.c,"card",r+1,t.sides.length,p`
        <div class="quarters" .style=${`--item:${t.share.height}mm;--per:${t.share.per}`}>
          ${e.map((n,o)=>Vr(t,n,r,o))}
        </div>
      `)),Vr=(t,e,r,n)=>p`
  <section class="quarter">
    ${n<2?Fr(t,n,t.fits?.titles[2*r+n]):f}
    <ol .style=${it(t.fits?.rules)}>
      ${e.map(Kr)}
    </ol>
  </section>
`;function Fr({child:t},e,r){let n=t?l("print.card-of",{child:t}):l("print.kind.card");return p`<h2 aria-hidden=${e?"true":f} .style=${it(r)}>
    ${e?f:n}
  </h2>`}var Kr=({rule:t,words:e,count:r})=>p`
  <li class="card-rule" data-rule=${t.id} .style=${_(t.family)}>
    <div class="card-text">
      <p>
        <span class="inked">${S(t.family)}${t.name}</span> ${v(t.ar)}
        ${r?p`<span class="card-count">${l("print.counts",{n:r})}</span>`:f}
      </p>
      ${t.letters?v([...t.letters].join(" "),"ar card-letters"):f}
    </div>
    <div class="card-example">
      <p class="line" lang="ar" dir="rtl">${e.map(n=>I(n.word))}</p>
      <span class="card-ref">${`${t.at[0]}:${t.at[1]}`}</span>
    </div>
  </li>
`;var Gr=4,Jr=5;function ke({c:t,options:e,learner:r},n){let o=e.name?r?.name??"":"",s={sheet:"record",c:t,options:e,child:o};return w(Pt(s),n),{...s,fit:A(R(n,".leaf"),R(n,".weeks, .week-block, .weeks ol, .weeks li, .weeks h3, .fill-in"))}}var Pt=({c:t,child:e,fit:r})=>[x(t,"record",1,1,p`
      <header class="leaf-head">
        <div class="head-line">
          <h2>${l("print.kind.record")}</h2>
          ${g(l("print.name"),e)}
        </div>
      </header>
      <div class="weeks">${Array.from({length:Gr},(n,o)=>Br(o+1))}</div>
    `,r)],Br=t=>p`
  <section class="week-block">
    <h3>${l("print.week",{n:t})}${g(l("print.from"),"","short")}</h3>
    <ol>
      ${Array.from({length:Jr},Ur)}
    </ol>
  </section>
`,Ur=()=>p`
  <li>
    ${Se()} ${g(l("print.day"),"","short")} ${g(l("print.read"),"","long")}
    ${g(l("print.rule"))}
    <span class="went"
      >${["alone","some","much"].map(t=>p`<span>${Se()}${l(`print.went.${t}`)}</span>`)}</span
    >
  </li>
`,Se=()=>p`<span class="tick"></span>`;function xe(t,e,r){let n=t.length,o=new Float64Array(n+1).fill(1/0),s=new Int32Array(n+1);o[0]=0;for(let i=0;i<n;i++){let m=-e;for(let c=i+1;c<=n&&(m+=e+t[c-1].width,!(m>r&&c>i+1));c++){let u=Math.max(0,1-m/r),h=c===n,d=o[i]+(h?Math.max(0,u-.4)**2:u**2);c===i+1&&n>1&&(d+=.6),t[i].end&&i>0&&!t[i-1].end&&(d+=.15),t[c-1].end&&(d-=.03),d<o[c]&&(o[c]=d,s[c]=i)}}let a=[];for(let i=n;i>0;i=s[i])a.unshift(s[i]);return a}function Oe(t,e,r){let n=t.length,o=[];for(let a=0;a<n;){o.push(a);let i=Math.min(n,a+Math.max(1,o.length===1?e:r));for(;i<n&&i>a+1&&t[i-1];)i--;a=i}let s=o[o.length-1];return o.length>1&&n-s===1&&s-o[o.length-2]>2&&!t[s-2]&&(o[o.length-1]=s-1),o}function Pe(t,e){let r=t.map(o=>o.words.map(()=>[])),n=new Map(e.map(o=>[o,0]));for(let o of re(t,e,new Q(t)))r[o.v][o.e.w].push(o),n.set(o.e.rule,n.get(o.e.rule)+1);return{hits:r,totals:n}}function Me(t,e,r,n){let o=[];for(let s of[...new Set(e.map(a=>a.e.l))].sort((a,i)=>a-i)){let a=e.filter(u=>u.e.l===s).map(u=>u.e),i=o.at(-1),m=a.map(r).filter(Boolean).slice(0,1),c=a.flatMap(u=>n.get(u.rule)??[]);i?.l===s-1&&Zt(t,s)?(i.counts.push(...m),i.keys.push(...c)):o.push({l:s,counts:m,keys:c})}return o}var T="abcdefghjkmnpqrstuvwxyz";function Re(t){let e=[...t.totals].filter(([,r])=>r>0).map(([r])=>r);return t.totals.size<2?new Map:new Map(e.map((r,n)=>[r,n<T.length?T[n]:T[Math.floor(n/T.length)-1]+T[n%T.length]]))}var jr=.75;function Ee(t,e,r,n){let o=[];for(let s=0;s<t.length;){let{s:a,a:i}=t[s];i===1&&!(n&&s===0)&&o.push({head:a});let m=[];for(;t[s]?.s===a;s++)t[s].words.forEach((h,d)=>m.push({v:s,w:d}));let c=m.map(h=>{let d=Mt(t,h);return{width:e.words[h.v][h.w]+(d?jr:0),end:d}}),u=xe(c,e.space,r.line/r.em-e.space);u.forEach((h,d)=>o.push({words:m.slice(h,u[d+1])}))}return o}var Mt=(t,{v:e,w:r})=>r===t[e].words.length-1&&!t[e].open;var Dr=14,Rt=t=>t===void 0?"":`block-size:${t}px`,Et=(t,e)=>p`
  <header class="leaf-head first" .style=${Rt(e)}>
    <div class="head-line">
      <h2>${t.title}</h2>
      ${g(l("print.name"),t.child)} ${g(l("print.date"))}
    </div>
    <p class="task-line">${_r(t)}</p>
    ${t.learnt.length?qr(t.learnt):f}
  </header>
`;function _r({pencils:t}){let[e,...r]=t;return!e||!r.length&&!e.marks?l("print.only-read"):r.length?p`${l("print.find")} ${Ce(t,Qr)}. ${l("print.how-many")}`:p`${l("print.find")} ${Le(e)}. ${g(l("print.how-many"))}`}var Le=({name:t,ar:e})=>p`<b>${t}</b>${e?p` ${v(e)}`:f}`,Ce=(t,e)=>t.map((r,n)=>[n?" · ":f,p`<span class="formed">${S(r.family)}<b>${r.name}</b>${e(r)}</span>`]),Qr=({marks:t})=>t?p` ${g("")}`:f,qr=t=>p`
  <p class=${t.length>Dr?"strip many":"strip"}>
    <b>${l("print.learnt")}</b>
    ${t.map((e,r)=>[r?" · ":f,p`<span class="formed">${S(e.family)}${e.name}</span>`])}
  </p>
`,Lt=(t,e)=>p`
  <header class="leaf-head first" .style=${Rt(e)}>
    <div class="head-line"><h2>${l("print.answers",{title:t.title})}</h2></div>
    <p class="task-line">${Zr(t)}</p>
    <p class="strip">${l("print.how-shown")}</p>
  </header>
`;function Zr({pencils:t}){let[e,...r]=t;return!e||!r.length&&!e.marks?l("print.only-read"):r.length?Ce(t,n=>n.marks?`: ${n.places}`:f):p`${Le(e)}: ${l("print.places",{n:e.places})}`}function mt(t,e,r){let n=e==="answer"?l("print.answers",{title:t.title}):t.title,o=t.pencils.map(s=>` · ${s.name}`).join("");return p`<header class="leaf-head" .style=${Rt(r)}>${n}${o}</header>`}var Yr=new Intl.NumberFormat("ar-u-nu-arab",{useGrouping:!1}),Te=(t,e,r,n)=>"head"in r?tn(t,r.head,e.basmala):Xr(e.verses,r.words,n);function Xr(t,e,r){let n=e.map(a=>t[a.v].words[a.w]),o=e.filter(a=>Mt(t,a)),s=e.map((a,i)=>[I(n[i],pe(n,i)),o.includes(a)?p`<span class=${r?"ring full":"ring"}></span>`:f]);return p`
    <div class="row-line">
      <p class="line" lang="ar" dir="rtl">${s}</p>
      <span class="numbers" lang="ar"
        >${o.map(a=>p`<span>${Yr.format(t[a.v].a)}</span>`)}</span
      >
    </div>
  `}var tn=(t,e,r)=>p`
  <div class="row-line head" lang="ar" dir="rtl">
    <span class="surah-name">${t.surahs[e-1].ar}</span>
    ${r&&Xt(e)?p`<span class="basmala" .textContent=${r}></span>`:f}
  </div>
`;var He=t=>[...new Set(We(t).flatMap(e=>e.rules))],We=({c:t,options:e,learner:r,learnt:n})=>_t(t,Dt(e),r?new Set(n.map(o=>o.id)):"all"),Ae=(t,{hits:e})=>We(t).map(({id:r,name:n,family:o,rules:s})=>{let a=e.map(i=>i.flat().filter(m=>s.includes(m.e.rule)).length);return{name:n||l("case.stops"),ar:t.c.rules.find(i=>i.id===r)?.ar??"",family:o,rules:s,marks:r!==Vt,byVerse:a,places:a.reduce((i,m)=>i+m,0)}}),en=12,Ct=t=>t.length>1&&t.some(e=>e.marks&&e.byVerse.length<=en),Tt=(t,e,r)=>Ct(e)?p`<table class="boxes">
        <tr>
          <th scope="col">${l("field.verse")}</th>
          ${t.map(n=>p`<th scope="col">${n.a}</th>`)}
        </tr>
        ${e.filter(n=>n.marks).map(n=>p`<tr>
                <th scope="row">${S(n.family)}${n.name}</th>
                ${n.byVerse.map(o=>p`<td>${r?o:f}</td>`)}
              </tr>`)}
      </table>`:f,Ie=(t,e)=>p`
  <section class="totals">
    <h3>${l("print.how-many")}</h3>
    ${Tt(t,e,!1)}
  </section>
`;function ze(t,e,r,n){let o=[...e.totals].filter(([,s])=>s>0||e.totals.size===1);return p`
    <section class="totals">
      <h3>${l("print.totals")}</h3>
      ${n}
      ${o.length?p`<ul>
              ${o.map(([s,a])=>rn(t,s,a,r.get(s)))}
            </ul>`:p`<p>${l("print.no-rules")}</p>`}
      <p class="said-once">${l("print.stops")} ${l("caution")}</p>
    </section>
  `}function rn(t,e,r,n){let o=t.rules[e];return p`<li data-rule=${o.id} data-n=${r} .style=${_(o.family)}>
    ${n===void 0?f:p`<b class="key-name">${n}</b>`}
    <span class="inked">${S(o.family)}${o.name}</span> ${v(o.ar)}
    <span class="total">${r}</span>
  </li>`}async function Ne(t,e){let{c:r,options:n}=t,[o,s]=await Promise.all([U(r,n.from,n.to),Yt(r,n.from,n.to)]),a={verses:o,basmala:s},i=C(n),m=Pe(o,nn(t)),c=on(t,m),u={c:r,passage:a,heads:c,found:m,keys:Re(m)},h=await lt(o,i.em);try{let d=sn(u,e),$=Ee(o,h,i,!!n.from.w),b=an($,d,i),V=F=>d.foot[F]>0&&!pn(d.foot[F],$,b,d,i);return{...u,sheet:"lines",options:n,heights:d,rows:$,starts:b,apart:{practice:V("practice"),answer:V("answer")},inked:n.kind==="practice"?[]:ln(t,u,$,h)}}finally{h.drop()}}function nn(t){let{c:e,options:r,learnt:n}=t,o=r.show==="learnt"?n.map(a=>a.id):[],s=ht(e,"",r.show==="all"?"all":new Set(o));return[...new Set([...He(t),...s])]}function on(t,e){let{c:r,options:n,learner:o,learnt:s}=t,a=new Set([...n.also,...s.map(i=>i.id)]);return{title:J(r.surahs,n.from,n.to),pencils:Ae(t,e),child:n.name?o?.name??"":"",learnt:ht(r,n.rule,a).map(i=>r.rules[i])}}function Ht({c:t,passage:{verses:e},heads:r,found:n,keys:o},s){return s==="answer"?ze(t,n,o,Tt(e,r.pencils,!0)):Ct(r.pencils)?Ie(e,r.pencils):void 0}function sn(t,e){let{c:r,heads:n}=t,o=s=>s?(w(x(r,"measure",0,0,s),e),Math.ceil(e.querySelector(".leaf > *").getBoundingClientRect().height)):0;return{first:Math.max(o(Et(n)),o(Lt(n))),next:o(mt(n,"answer")),foot:{practice:o(Ht(t,"practice")),answer:o(Ht(t,"answer"))}}}var an=(t,{first:e,next:r},n)=>Oe(t.map(o=>"head"in o),Math.floor((n.room-e)/n.pitch),Math.floor((n.room-r)/n.pitch));function pn(t,e,r,n,o){let s=r.length>1?n.next:n.first,a=e.length-r.at(-1);return s+a*o.pitch+t<=o.room}function ln({c:t,settings:e},{passage:{verses:r},found:n,keys:o},s,a){let i=m=>B(t.rules[m.rule],m,e).want;return s.flatMap(m=>"head"in m?[]:m.words).map(m=>{let c=r[m.v].words[m.w],u=n.hits[m.v][m.w],h=u.map(d=>j(d,D(t.rules[d.e.rule].family)));return st(c,m,h,a,Me(c,u,i,o))})}var Ve=({options:{kind:t}})=>t==="both"?["practice","answer"]:[t],Fe=(t,e)=>t.starts.length+(t.apart[e]?1:0),Ke=t=>Ve(t).reduce((e,r)=>e+Fe(t,r),0),Ge=t=>Ve(t).flatMap(e=>mn(t,e));function mn(t,e){let{c:r,heads:n,heights:o,starts:s}=t,a=e==="answer",i=Fe(t,e),m=Ht(t,e)??f,c=a?Lt:Et,u=s.map((h,d)=>{let $=d?mt(n,e,o.next):c(n,o.first),b=t.rows.slice(h,s[d+1]).map(F=>Te(r,t.passage,F,a)),V=d+1===s.length&&!t.apart[e]?m:f;return x(r,e,d+1,i,p`${$}
        <div class="rows">${b}</div>
        ${V}`)});return i>u.length&&u.push(x(r,e,i,i,p`${mt(n,e)}${m}`)),u}var Je=t=>we(t.options,e=>t.options.kind==="record"?ke(t,e):t.options.kind==="card"?$e(t,e):Ne(t,e));function Be(t){return t.sheet==="record"?Pt(t):t.sheet==="card"?vt(t):Ge(t)}function Ue(t){return t.sheet==="record"?1:t.sheet==="card"?t.sides.length:Ke(t)}var je=t=>t.sheet==="record"?[]:t.inked;var cn=150,un=20,Wt=0,ct=0,At=t=>{let{printing:e}=k();e&&K({printing:{...e,...t}})};function It(){let{catalogue:t,printing:e}=k(),r=t.rules[te()?.today.rule??-1]?.id??"",n=de(t,E()?.place,r,navigator.language),o=ue(t,location.hash,n);K({printing:{layout:e?.layout,...o,busy:!0}}),Ze(0)}function y(t){let{catalogue:e,printing:r}=k();if(!r)return;let n={...r.options,...t};history.replaceState(history.state,"",fe(e,n)),At({options:n,problem:void 0,busy:!0}),Ze("size"in t?cn:0)}function qe(){clearTimeout(Wt),ct++,K({printing:void 0})}function Ze(t){clearTimeout(Wt),Wt=window.setTimeout(()=>{fn()},t)}async function fn(){let t=++ct,{catalogue:e,settings:r,printing:n}=k();if(!n)return;let{options:o}=n,s=Y(e,o.from,o.to);if(P(o)&&s>600)return _e({key:"print.bad.many",vars:{n:s,most:600}});await new Promise(m=>setTimeout(m,un));let a=E(),i=a?G(a.id):[];try{let m=await Je({c:e,options:o,learner:a,learnt:he(e,i),settings:r});t===ct&&At({layout:m,busy:!1})}catch(m){if(t!==ct)return;if(!(m instanceof qt))throw m;_e({key:`error.${m.code}`,vars:{}})}}var _e=t=>At({problem:t,layout:void 0,busy:!1});var tr=10,er=(t,e)=>p`
  <div class="fields place">
    ${z("print.part","print-part",dn(t,e))} ${hn(t,e)}
  </div>
`,z=(t,e,r)=>p`<div><label for=${e}>${l(t)}</label>${r}</div>`;function dn(t,e){return p`<select id="print-part" data-t="print-part" @change=${n=>{let o=n.target.value;if(o!=="verses")return y({part:o,...L(t,o,me(t,o,e.from))});let{s,a}=e.from;y({part:o,to:{s,a:Math.min(t.surahs[s-1].count,a+tr-1)}})}}>
    ${Z.map(n=>p`<option value=${n} .selected=${n===e.part}>${l(`print.part.${n}`)}</option>`)}
  </select>`}function hn(t,e){if(e.part==="surah")return Ye(t,e);if(e.part==="verses")return[Ye(t,e),z("field.from","print-from",Xe(t,e,"from")),z("field.to","print-to",Xe(t,e,"to"))];let{part:r}=e,n=`print-${r}`,o=nr(n,W(t,r),xt(t,e)||1,s=>rr(t,r,s));return z(`print.part.${r}`,n,o)}var rr=(t,e,r)=>y({part:e,...L(t,e,r)});function Ye(t,e){let r=n=>{if(e.part==="surah")return rr(t,"surah",n);y({from:{s:n,a:1},to:{s:n,a:Math.min(tr,t.surahs[n-1].count)}})};return z("field.surah","print-surah",jt(t,"print-surah",e.from.s,r))}function Xe(t,e,r){let{s:n}=e.from;return nr(`print-${r}`,t.surahs[n-1].count,e[r].a,o=>{let s=r==="from"?o:e.from.a,a=r==="to"?o:e.to.s===n?e.to.a:o;y({from:{s:n,a:r==="to"?Math.min(s,a):s},to:{s:n,a:r==="from"?Math.max(s,a):a}})})}var nr=(t,e,r,n)=>Ut({id:t,least:1,most:e,now:r,usual:1,choose:n});function or(t,e){let r=E(t)?.name;return p`
    <form class="card print-form" @submit=${n=>n.preventDefault()}>
      ${ut(e,"kind",$t,n=>`print.kind.${n}`)}
      ${P(e)?gn(t,e):f}
      ${ut(e,"paper",St,n=>`print.paper.${n}`)}
      ${ut(e,"turn",kt,n=>`print.turn.${n}`)} ${r?$n(e,r):f}
      <details data-t="print-pencils">
        <summary>${l("pencils.title")}</summary>
        ${le(t)}
      </details>
    </form>
  `}var ut=(t,e,r,n)=>Bt(l(`print.${e}`),e,r,t[e],o=>l(n(o)),o=>y({[e]:o})),gn=(t,e)=>p`
  ${er(t.catalogue,e)} ${yn(t.catalogue,e)} ${bn(t,e)}
  ${e.kind==="practice"?f:ut(e,"show",rt(e)?et:et.slice(1),r=>r==="focus"&&e.also.length?"print.show.these":`print.show.${r}`)}
  ${wn(e)}
`,sr=(t,e)=>y({...e,show:rt({...t,...e})?t.show:"learnt"});function yn(t,e){let r=n=>{let o=n.target.value;sr(e,{rule:o,also:e.also.filter(s=>s!==o)})};return p`<div>
    <label for="print-rule">${l("print.rule-to-find")}</label>
    <select id="print-rule" data-t="print-rule" @change=${r}>
      <option value="" .selected=${!e.rule}>${l("choose.no-rule")}</option>
      ${q(t).map(n=>p`<option value=${n.id} .selected=${n.id===e.rule}>${n.name}</option>`)}
    </select>
  </div>`}function bn(t,e){let r=E(t),n=r?G(r.id).map(a=>a.rule):t.catalogue.rules.map(a=>a.id),{rule:o,also:s}=e;return p`<details data-t="print-case">
    <summary>${l("case.title")}</summary>
    <div class="case" role="group" aria-label=${l("case.title")}>
      ${ne(t.catalogue,{rule:o,also:s,name:"print-with",rules:new Set([...n,o,...s]),choose:a=>sr(e,{rule:o,also:a})})}
    </div>
  </details>`}function wn(t){let e=l("print.points",{n:t.size});return p`<div>
    <label for="print-size">${l("print.size")} <span class="quiet">${e}</span></label>
    <input
      id="print-size"
      type="range"
      min=${X}
      max=${tt}
      step=${ce}
      .value=${String(t.size)}
      data-t="print-size"
      aria-valuetext=${e}
      @input=${r=>y({size:Number(r.target.value)})}
    />
  </div>`}var $n=(t,e)=>p`
  <div class="row check">
    <input
      id="print-name"
      type="checkbox"
      .checked=${t.name}
      data-t="print-name"
      @change=${r=>y({name:r.target.checked})}
    />
    <label for="print-name">${l("print.with-name",{child:e})}</label>
  </div>
`;var Sn=12,ar=t=>p`<div class="print-stage">${Jt(t,t?kn(t):f)}</div>`;function kn(t){return Qt([t],()=>{let e=Be(t);return p`<div
      class=${e.length>Sn?"leaves many":"leaves"}
      data-turn=${t.options.turn}
      .style=${pt(t.options)}
    >
      ${e}
    </div>`})}var Nt=new CSSStyleSheet,N,O,zt=new ResizeObserver(lr);function ir(){document.adoptedStyleSheets=[...document.adoptedStyleSheets,Nt]}function pr(t){if(O?.isConnected||(zt.disconnect(),O=document.querySelector(".print-stage"),zt.observe(O)),t===N||(N=t,yt("paper",t?at(O,je(t)):new Map),!t))return;let[e,r]=M(t.options.paper,t.options.turn);Nt.replaceSync(`@page{size:${e}mm ${r}mm;margin:0}`),lr()}function lr(){if(!O||!N)return;let t=Math.min(1,O.clientWidth/C(N.options).width);O.style.setProperty("--zoom",String(Math.floor(t*1e3)/1e3))}function mr(){zt.disconnect(),O=void 0,N=void 0,yt("paper",new Map),document.adoptedStyleSheets=document.adoptedStyleSheets.filter(t=>t!==Nt)}function cr({catalogue:t,printing:e}){if(!e?.layout)return l("print.title");let{options:r}=e.layout,n=l(`print.kind.${r.kind}`);return P(r)?`${J(t.surahs,r.from,r.to)} ${n}`:n}function xn(t){let{options:e,problem:r,layout:n,busy:o}=t.printing,s=r?l(r.key,r.vars):"";return p`
    <main class="print">
      <div class="print-side">
        <h1 tabindex="-1">${l("print.title")}</h1>
        <p class="problem" role="alert" data-t="problem">${s}</p>
        ${or(t,e)}
        <p class="quiet">${l("print.respect")}</p>
      </div>
      <div class="print-go">
        <p class="print-status" role="status" data-t="print-status">${On(n,o)}</p>
        <button
          class="main"
          type="button"
          ?disabled=${o||!n}
          data-t="print-now"
          @click=${()=>window.print()}
        >
          ${l("print.now")}
        </button>
      </div>
      ${ar(n)}
    </main>
  `}function On(t,e){if(e)return l("print.laying-out");if(!t)return"";let r=l("print.pages",{n:Ue(t)});return t.sheet!=="card"?r:`${r} ${l(t.inked.length?"print.card-fold":"print.card-empty")}`}function ur(){Kt(k().catalogue,location.hash).name==="print"&&It()}var oa={title:cr,view:xn,enter(){let{catalogue:t,settings:e}=k();Gt(t,e.pencils),ir(),It(),addEventListener("hashchange",ur)},drawn(t){pr(t.printing?.layout),document.title=l("page.title",{screen:cr(t)})},leave(){removeEventListener("hashchange",ur),qe(),mr()}};export{oa as print};
