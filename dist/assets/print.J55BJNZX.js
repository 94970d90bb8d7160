//# allFunctionsCalledOnLoad
import{a as De}from"./chunk.H3NSAEQD.js";import{d as ro}from"./chunk.KBVAMGSF.js";import{a as qe,b as to}from"./chunk.BWWUATOI.js";import{a as ut,c as Xe,e as eo}from"./chunk.IRDW5HWH.js";import"./chunk.6IXUHZWD.js";import{a as Ue,b as Ye,c as ft,d as Qe,e as Ze,f as _t,g as oo}from"./chunk.QXOMR7TY.js";import{a as z,b as Jt}from"./chunk.23NKZ6VE.js";import{s as Ke,t as _e,v as Je}from"./chunk.VB4DZK4W.js";import"./chunk.ZN66SSCI.js";import{a as G,b as Ge,c as D,g as C,i as $}from"./chunk.NG2N4OGR.js";import"./chunk.KUMKDYU5.js";import{a as mt}from"./chunk.BUJT5NJZ.js";import{a as Ne}from"./chunk.RKHWIURI.js";import"./chunk.I6UDG63Q.js";import"./chunk.JH4WJHGB.js";import"./chunk.FR5VNLUN.js";import{Ca as l,E as Ft,Eb as k,F as X,Fa as d,Ga as x,H as Te,Hb as O,J as Ce,K as ze,Mb as Ve,O as Ae,Ob as je,R as Kt,Ub as J,Vb as ct,Xb as Fe,ab as _,d as p,db as We,g as Ee,gb as He,hb as I,m as M,o as pt,qb as Ie,r as T,sb as q,t as K,xb as lt,yb as Be,z as Z}from"./chunk.TZYIGFUF.js";var dt=["verses","surah","page","juz"];var Gt=(t,e)=>e.s>=1&&e.s<=t.surahs.length&&e.a>=1&&e.a<=t.surahs[e.s-1].count;function ht(t,e,o){if(o.s<e.s)return 0;let r=o.a-e.a+1;for(let n=e.s;n<o.s;n++)r+=t.surahs[n-1].count;return r}var Wr=(t,e,o)=>o>1?{s:e,a:o-1}:{s:e-1,a:t.surahs[e-2]?.count??1},tt=(t,e)=>({surah:t.surahs,page:t.pages,juz:t.juz})[e].length;function A(t,e,o){if(e==="surah")return t.surahs[o-1]&&{from:{s:o,a:1},to:{s:o,a:t.surahs[o-1].count}};let r=e==="juz"?t.juz:t.pages,n=r[o-1],s=r[o];if(!n)return;let a=t.surahs.length;return{from:{s:n[0],a:n[1]},to:s?Wr(t,s[0],s[1]):{s:a,a:t.surahs[a-1].count}}}function yt(t,e,{s:o,a:r}){if(e==="surah")return o;let n=(e==="juz"?t.juz:t.pages).filter(s=>s[0]<o||s[0]===o&&s[1]<=r);return Math.max(1,n.length)}var Dt=["end","only","none"],Ut=["one","two","fold"],Yt=18,Qt=36,no=16,gt=t=>t==="one"?28:20,so=(t,e)=>({juz:yt(t,"juz",e),rules:void 0,answers:"end",lay:"one",size:gt("one")}),bt=(t,e)=>A(t,"juz",e.juz);function ao(t,e,o){let r={...o};r.lay=t.choice("lay",Ut,r.lay),r.answers=t.choice("answers",Dt,r.answers),r.size=t.number("size",Yt,Qt,gt(r.lay)),r.juz=t.number("juz",1,e.juz.length,r.juz);let n=t.get("key");if(n===null)return r;let s=[...new Set(n.split(",").filter(Boolean))];return r.rules=t.known(s,a=>e.rules.some(i=>i.id===a)),r}function io(t,e){e.set("juz",String(t.juz)),t.rules&&e.set("key",t.rules.join()),e.set("answers",t.answers),e.set("lay",t.lay),e.set("size",String(t.size))}var wt=class{problem;q;constructor(e){this.q=new URLSearchParams(e.split("?")[1]??"")}get(e){return this.q.get(e)}bad(e,o,r={}){this.problem??={key:`print.bad.${e}`,vars:{found:o,...r}}}choice(e,o,r){let n=this.get(e);if(n===null)return r;let s=o.find(a=>a===n);return s||this.bad("choice",n,{name:e,accepted:o.join(", ")}),s??r}known(e,o){let r=e.find(n=>!o(n));return r!==void 0&&this.bad("rule",r),e.filter(o)}number(e,o,r,n){let s=this.get(e);if(s===null)return n;let a=Number(s);return/^\d{1,3}$/.test(s)&&a>=o&&a<=r?a:(this.bad(e,s,{least:o,most:r}),n)}};var Zt=["practice","answer","both","booklet","card","record"],kt=["focus","learnt","all"],Xt=["a4","letter"],qt=["portrait","landscape"],te=24,ee=48,$t=2,B=({kind:t})=>t==="practice"||t==="answer"||t==="both",St=t=>!!t.rule||t.also.length>0;function po(t,e,o){let r=new wt(e),n=r.get("name"),s={...o};return s.kind=r.choice("sheet",Zt,s.kind),s.paper=r.choice("paper",Xt,s.paper),s.turn=r.choice("turn",qt,s.turn),n!==null&&(s.name=n==="yes"),s.kind==="booklet"?(s.booklet=ao(r,t,s.booklet),{options:s,problem:r.problem}):(s.size=r.number("size",te,ee,s.size),s.rule=Hr(r,t,s.rule),s.also=Ir(r,t,s),s.show=r.choice("show",kt,St(s)?s.show:"learnt"),{options:{...s,...Br(r,t)},problem:r.problem})}function Hr(t,e,o){let r=t.get("rule");return r===null?o:!r||e.rules.some(n=>n.id===r)?r:(t.bad("rule",r),o)}function Ir(t,e,{rule:o,also:r}){let n=t.get("also"),s=n===null?r.filter(a=>a!==o):ze(n,o);return t.known(s,a=>Ce(e,a))}function Br(t,e){let o=dt.find(i=>i!=="verses"&&t.get(i)!==null);if(o)return Nr(t,e,o);let r=t.get("from");if(r===null)return;let n=t.get("to"),s=Ft(r),a=n===null?s:Ft(n);if(!s||!Gt(e,s))t.bad("verse",r);else if(!a||!Gt(e,a))t.bad("verse",n??r);else if(ht(e,s,a)<1)t.bad("order",X(s),{to:X(a)});else return{part:"verses",from:s,to:a}}function Nr(t,e,o){let r=t.get(o),n=/^\d{1,3}$/.test(r)?A(e,o,Number(r)):void 0;if(n)return{part:o,...n};t.bad(o,r,{most:tt(e,o)})}function lo(t,e){let o=new URLSearchParams({sheet:e.kind});if(B(e)){let r=e.part!=="verses"&&oe(t,e);r?o.set(e.part,String(r)):(o.set("from",X(e.from)),o.set("to",X(e.to))),o.set("rule",e.rule),e.also.length&&o.set("also",e.also.join()),o.set("show",e.show),o.set("size",String(e.size))}return e.kind==="booklet"&&io(e.booklet,o),o.set("paper",e.paper),o.set("turn",e.turn),e.name&&o.set("name","yes"),`#/print?${o.toString().replaceAll("%3A",":").replaceAll("%2C",",")}`}function oe(t,e){if(e.part==="verses")return 0;for(let o=1;o<=tt(t,e.part);o++){let{s:r,a:n}=A(t,e.part,o).from;if(r===e.from.s&&n===e.from.a)return o}return 0}var mo={one:1,two:2,fold:4},co=(t,e)=>Math.ceil(t/mo[e])*mo[e];function uo(t,e){return e==="one"?Array.from({length:t},(o,r)=>[r+1]):Array.from({length:t/2},(o,r)=>{if(e==="two")return[2*r+2,2*r+1];let n=r+1,s=t-r;return r%2?[s,n]:[n,s]})}var re=2,N=(t,e)=>Array.from({length:e},(o,r)=>({is:t,n:r}));function fo(t,{answers:e,lay:o}){let r=N("pencils",t.pencils),n=[...N("counts",t.counts),...N("answer",t.answer)],s=i=>co(i,o)-i;if(e==="only"){let i=[...r,...n];return[...i,...N("blank",s(i.length))]}let a=[...N("cover",1),...r,...N("practice",t.practice),...e==="end"?n:[]];return[...a,...N("days",re+s(a.length+re))]}var ho=t=>t.filter(e=>e.is==="blank"||e.is==="days"&&e.n>=re).length;function xt(t,e){let o=new Set(e.map(r=>r.rule));return z(t).filter(r=>o.has(r.id))}var Vr=new Set("BZ CA CL CO CR GT MX NI PA PH PR SV US VE".split(" "));function jr(t){try{return new Intl.Locale(t).maximize().region??""}catch{return""}}var Fr=30;function yo(t,e,o,r){let[n,s]=t.juz[Fr-1]??[78,1],a=e??{s:n,a:s};return{kind:"practice",part:"verses",from:a,to:{s:a.s,a:Math.min(a.a+9,t.surahs[a.s-1].count)},rule:o,also:[],show:o?"focus":"learnt",paper:Vr.has(jr(r))?"letter":"a4",turn:"portrait",size:32,name:!1,booklet:so(t,a)}}var Kr=3,_r=3;function Ot(t){if(t?.sheet!=="lines"||!t.options.rule)return;let{places:e,name:o}=t.heads.pencils[0];return e<Kr?{id:t.options.rule,name:o,n:e}:void 0}async function go(t){let e=Ot(t);if(!e||!await Ke().catch(()=>{}))return[];let o=_e(),r=t.c.rules.findIndex(a=>a.id===e.id),{passages:n}=o.lines(o.practise(r),{best:_r}),s=Kt({rule:e.id,from:t.options.from,to:t.options.to});return n.map(a=>({lines:o.toLines(a,e.id),places:a.focus})).filter(a=>a.places>e.n&&Kt(a.lines)!==s)}var W=3.7795275590551185,Jr=4/3,Gr={a4:[210,297],letter:[215.9,279.4]},ne=13,Dr=10,Ur=13,se=8,Yr=2.75,ae=(t,e)=>{let[o,r]=Gr[t];return e==="portrait"?[o,r]:[r,o]},ie=({kind:t,booklet:e})=>t==="booklet"&&e.lay!=="one",et=t=>t.kind!=="booklet"?t.turn:ie(t)?"landscape":"portrait",Lt=t=>ae(t.paper,et(t));function Pt(t){let[e,o]=Lt(t);return ie(t)?[e/2,o]:[e,o]}var vt=t=>ie(t)?Dr:ne;function U(t){let[e,o]=Pt(t);return[e-2*vt(t),o-2*vt(t)-se]}function V(t,e=t.kind==="booklet"?t.booklet.size:t.size){let[o,r]=Pt(t),[n,s]=U(t),a=e*Jr;return{width:o*W,height:r*W,em:a,line:(n-Ur)*W,pitch:Yr*a,room:s*W}}function bo(t){let e=[];return t.forEach(({s:o,a:r},n)=>{let s=e.at(-1),a=t.findLastIndex(m=>m.s===o)-n+1;s?.s===o&&(r%10!==1||a<4)?Object.assign(s,{b:r,to:n}):e.push({s:o,a:r,b:r,from:n,to:n})}),e}var wo=(t,e,o)=>t.map(({from:r,to:n})=>{let s=e.slice(r,n+1).flat(2);return o.map(a=>s.filter(i=>i.e.rule===a).length)}),Qr=2;function ko(t,e,o){if(!e)return[];let r=Math.max(1,Math.floor((o.width-o.name)/o.column)),n=Math.ceil(e/r),s=Math.ceil(e/n),a=Math.max(1,Math.floor((o.width+o.gap)/(o.name+s*o.column+o.gap))),i=Math.max(1,Math.floor(o.height/o.row)-Qr),m=[];for(let c=0;c<e;c+=s)for(let u=0;u<t;u+=i)m.push({rows:[u,Math.min(t,u+i)],rules:[c,Math.min(e,c+s)]});return Array.from({length:Math.ceil(m.length/a)},(c,u)=>m.slice(u*a,(u+1)*a))}function Zr(t){let e=t.getBoundingClientRect(),o=.5*parseFloat(getComputedStyle(t).fontSize);return t.scrollWidth>t.clientWidth+1||t.scrollHeight>t.clientHeight+o||[...t.children].some(r=>{let n=r.getBoundingClientRect();return n.left<e.left-1||n.right>e.right+1||n.top<e.top-1||n.bottom>e.bottom+1})}function j(t,e){let o=[...e],r=1;for(let n=1;n>=.5;n-=.03){r=n;for(let s of t)s.style.setProperty("--fit",n.toFixed(2));if(!o.some(Zr))break}return r}var v=(t,e)=>[...t.querySelectorAll(e)];function ot(t,e){let o=t.map(n=>n.words.map(()=>[])),r=new Map(e.map(n=>[n,0]));for(let n of Xe(t,e,new ut(t)))o[n.v][n.e.w].push(n),r.set(n.e.rule,r.get(n.e.rule)+1);return{hits:o,totals:r}}function Mt(t,e,o,r){let n=[];for(let s of[...new Set(e.map(a=>a.e.l))].sort((a,i)=>a-i)){let a=e.filter(u=>u.e.l===s).map(u=>u.e),i=n.at(-1),m=a.map(o).filter(Boolean).slice(0,1),c=a.flatMap(u=>r.get(u.rule)??[]);i?.l===s-1&&je(t,s)?(i.counts.push(...m),i.keys.push(...c)):n.push({l:s,counts:m,keys:c})}return n}function Rt(t){let e=[...t.totals].filter(([,o])=>o>0).map(([o])=>o);return t.totals.size<2?new Map:new Map(e.map((o,r)=>[o,r<I.length?I[r]:I[Math.floor(r/I.length)-1]+I[r%I.length]]))}async function $o(t){let{c:e,learnt:o}=t,{booklet:r}=t.options,{from:n,to:s}=bt(e,r),[a,i]=await Promise.all([J(e,n,s),ct(e,n,s)]);await t.step?.(0);let m=z(e).map(h=>e.rules.indexOf(h)),{totals:c}=ot(a,m);await t.step?.(0);let u=r.rules??o.map(h=>h.id),y=m.filter(h=>u.includes(e.rules[h].id)),f=ot(a,y.filter(h=>c.get(h)>0)),g=Rt(f);return{passage:{verses:a,basmala:i},totals:c,pencils:[...f.totals].map(([h,w])=>({rule:e.rules[h],key:g.get(h),places:w})),without:y.filter(h=>!c.get(h)).map(h=>e.rules[h]),found:f,keys:g}}function So(t,e,o){let r=t.length,n=new Float64Array(r+1).fill(1/0),s=new Int32Array(r+1);n[0]=0;for(let i=0;i<r;i++){let m=-e;for(let c=i+1;c<=r&&(m+=e+t[c-1].width,!(m>o&&c>i+1));c++){let u=Math.max(0,1-m/o),y=c===r,f=n[i]+(y?Math.max(0,u-.4)**2:u**2);c===i+1&&r>1&&(f+=.6),t[i].end&&i>0&&!t[i-1].end&&(f+=.15),t[c-1].end&&(f-=.03),f<n[c]&&(n[c]=f,s[c]=i)}}let a=[];for(let i=r;i>0;i=s[i])a.unshift(s[i]);return a}function Et(t,e,o){let r=t.length,n=[];for(let a=0;a<r;){n.push(a);let i=Math.min(r,a+Math.max(1,n.length===1?e:o));for(;i<r&&i>a+1&&t[i-1];)i--;a=i}let s=n[n.length-1];return n.length>1&&r-s===1&&s-n[n.length-2]>2&&!t[s-2]&&(n[n.length-1]=s-1),n}var Xr=.75;function Tt(t,e,o,r){let n=[];for(let s=0;s<t.length;){let{s:a,a:i}=t[s];i===1&&!(r&&s===0)&&n.push({head:a});let m=[];for(;t[s]?.s===a;s++)t[s].words.forEach((y,f)=>m.push({v:s,w:f}));let c=m.map(y=>{let f=le(t,y);return{width:e.words[y.v][y.w]+(f?Xr:0),end:f}}),u=So(c,e.space,o.line/o.em-e.space);u.forEach((y,f)=>n.push({words:m.slice(y,u[f+1])}))}return n}var le=(t,{v:e,w:o})=>o===t[e].words.length-1&&!t[e].open;var qr=CSS.supports("-moz-appearance","none");function Y(t,{v:e,w:o},r,n,s=[]){let a=Ge(t,r,qr),i=a.again.map(c=>c.l),m=new Set([...i,...a.shapes.map(c=>c.l)]);return{word:t,spans:r,ink:a,slots:new Map([...m].map(c=>[c,n.slot(e,o,c)])),crowns:new Map(i.map(c=>[c,n.crown(e,o,c)])),notes:s}}function rt(t,e,o=new Map){let r=t.querySelectorAll('.leaf:not([data-sheet="practice"]) .w');return e.forEach((n,s)=>tn(r[s],n,o)),o}function tn(t,e,o){let r=t.firstChild;Ze(t,e.spans);for(let{name:s,from:a,to:i}of e.ink.ranges)Ye(o,s,en(r,a,i));let n=Qe(e.word,e.ink.shapes,Ue?e.ink.again:[],{edge:0,slot:s=>e.slots.get(s),crown:s=>e.crowns.get(s)});e.notes.length&&x(e.notes.map(s=>on(s,e.slots.get(s.l))),n),n.firstChild&&t.prepend(n)}var en=(t,e,o)=>new StaticRange({startContainer:t,startOffset:e,endContainer:t,endOffset:o});function on({counts:t,keys:e},{at:o,wide:r}){let n=`--at:${Math.round((o+r/2)*1e3)/1e3}`,s=(a,i)=>i.length?l`<span class=${a} .style=${n}>${i.join(" ")}</span>`:"";return[s("held",t),s("key",e)]}var L=(t,e,o,r,n,s)=>l`
  <section
    class="leaf"
    data-sheet=${e}
    data-page=${o}
    aria-label=${p("print.page",{n:o})}
    .style=${Ct(s)}
  >
    ${n}
    <footer class="leaf-foot">
      <span>${p("print.source",{digest:t.textDigest.slice(0,16)})}</span>
      <span class="page-number">${p("print.page-of",{n:o,of:r})}</span>
    </footer>
  </section>
`,S=(t,e="",o="")=>l`<span class="fill-in ${o}">${t}<span class="blank">${e}</span></span>`,Ct=t=>t===void 0?"":`--fit:${t.toFixed(2)}`;function zt(t){let e=V(t),[o,r]=Pt(t);return`--wide:${o}mm;--high:${r}mm;--rim:${vt(t)}mm;--em:${e.em}px;--pitch:${e.pitch}px`}var rn=100,nt=(t,e="")=>l`<span class="w${e}" .textContent=${`${t.text} `}></span>`;function xo(t,e){let o=document.createElement("div");return o.className=t,o.style.cssText=e,o.ariaHidden="true",document.body.append(o),o}async function Oo(t,e){let o=xo("leaves print-measure",zt(t));o.dataset.turn=et(t);try{return await e(o)}finally{o.remove()}}async function Q(t,e=rn){await document.fonts.load(`${e}px "Scheherazade New"`,t[0]?.text.slice(0,20)??"a").catch(()=>{});let o=xo("print-measure",`font-size:${e}px`);x(t.map(s=>l`<p class="line" lang="ar" dir="rtl">${s.words.map(a=>nt(a))}</p>`),o);let r=[...o.children].map(s=>[...s.querySelectorAll(".w")]),n=(s,a)=>{let i=r[s][a];return{v:s,w:a,el:i,node:i.firstChild,word:t[s].words[a]}};return{...nn(r,e),slot:(s,a,i)=>_t.slot(n(s,a),i),crown:(s,a,i)=>_t.crown(n(s,a),i),drop:()=>o.remove()}}function nn(t,e){let o=new Range,r=s=>s.getBoundingClientRect().width/e,n=t.map(s=>s.map(a=>{let i=a.firstChild;return o.setStart(i,0),o.setEnd(i,i.length-1),r(o)}));return{words:n,space:r(t[0][0])-n[0][0]}}var me=8,sn=120;function an(t){let e=[],o=1/0;return t.forEach((r,n)=>{o>=sn&&(e.push(n),o=0),o+=r.words.length}),e}async function vo(t,e,o,r){let n={words:[],space:0},s=an(t);for(let[a,i]of s.entries()){let m=t.slice(i,s[a+1]),c=await Q(m,e);try{n.words.push(...c.words),n.space=c.space,r?.(c,m,i)}finally{c.drop()}await o((a+1)/s.length)}return n}function Lo(t,e,o){let r=Tt(t,e,o,!1),n=Math.floor((o.room-me*W)/o.pitch),s=r.map(a=>"head"in a);return{g:o,rows:r,starts:Et(s,n,n)}}async function Po({passage:{verses:t}},e,o){return Lo(t,await vo(t,e.em,o),e)}async function Mo({c:t,settings:e},{passage:{verses:o},found:r,keys:n},s,a){let i=[],m=y=>_(t.rules[y.rule],y,e).want,c=(y,f,g)=>f.forEach(({words:h},w)=>i.push(h.map((P,Pe)=>{let Me=r.hits[g+w][Pe],Ar=Me.map(Re=>G(Re,D(t.rules[Re.e.rule].family)));return Y(P,{v:w,w:Pe},Ar,y,Mt(P,Me,m,n))}))),u=await vo(o,s.em,a,c);return{lines:Lo(o,u,s),inked:i}}var At=(t,e,o,r)=>"head"in o?ln(t,o.head,e.basmala):pn(e.verses,o.words,r);function pn(t,e,o){let r=e.map(a=>t[a.v].words[a.w]),n=e.filter(a=>le(t,a)),s=e.map((a,i)=>[nt(r[i],eo(r,i)),n.includes(a)?l`<span class=${o?"ring full":"ring"}></span>`:d]);return l`
    <div class="row-line">
      <p class="line" lang="ar" dir="rtl">${s}</p>
      <span class="numbers" lang="ar"
        >${n.map(a=>l`<span>${oo(t[a.v].a)}</span>`)}</span
      >
    </div>
  `}var ln=(t,e,o)=>l`
  <div class="row-line head" lang="ar" dir="rtl">
    <span class="surah-name">${t.surahs[e-1].ar}</span>
    ${o&&Fe(e)?l`<span class="basmala" .textContent=${o}></span>`:d}
  </div>
`;function Ro(t){let{juz:e}=t.options.booklet,{from:o,to:r}=bt(t.c,t.options.booklet);return l`
    <div class="cover">
      <header class="cover-head">
        <h2>${p("next.juz",{n:e})}</h2>
        <p>${k(t.c.surahs,o,r)}</p>
        ${S(p("print.name"),t.child)}
      </header>
      ${mn(t)}
      <div class="cover-foot">
        <p>${p("caution")}</p>
        <p>${p("print.respect")}</p>
      </div>
    </div>
  `}function mn(t){let e=cn(t);return l`<ol class="contents" .style=${`--lines:${Math.ceil(e.length/2)}`}>
    ${e.map(({s:o,page:r})=>l`
        <li data-surah=${o} data-page-of=${r}>
          <span>${`${o}. ${t.c.surahs[o-1].la}`}</span> ${O(t.c.surahs[o-1].ar)}
          <span class="dots"></span><span>${r}</span>
        </li>
      `)}
  </ol>`}function cn({passage:{verses:t},practice:{rows:e,starts:o},leaves:r}){let n=r.findIndex(s=>s.is==="practice");return[...new Set(t.map(s=>s.s))].map(s=>{let a=e.findIndex(i=>"head"in i?i.head===s:t[i.words[0].v].s===s);return{s,page:n+o.filter(i=>i<=a).length}})}function Eo(t,e){let o=p("print.answers",{title:p("next.juz",{n:t.options.booklet.juz})});return l`
    <div class="counts-page">
      <header class="counts-head">
        <h2>${o}</h2>
        <p>${e?p("print.totals"):`${p("print.how-shown")} ${p("print.stops")}`}</p>
      </header>
      <div class="tables">${t.tables[e].map(r=>un(t,r))}</div>
    </div>
  `}function un(t,{rows:e,rules:o}){return l`<table class="tally" .style=${`--rules:${o[1]-o[0]}`}>
    <tr>
      <td></td>
      ${t.pencils.slice(...o).map(({rule:r,key:n})=>l`<th scope="col" .style=${C(r.family)}>
              ${$(r.family)}<b>${n??""}</b><span class="hidden">${r.name}</span>
            </th>`)}
    </tr>
    ${t.ranges.slice(...e).map((r,n)=>fn(t,r,t.counts[e[0]+n],o))}
  </table>`}var fn=(t,e,o,r)=>l`
  <tr data-range="${e.s}:${e.a}-${e.b}">
    <th scope="row">
      <span>${k(t.c.surahs,{s:e.s,a:e.a},{s:e.s,a:e.b})}</span>
    </th>
    ${o.slice(...r).map((n,s)=>l`<td data-rule=${t.pencils[r[0]+s].rule.id}>${n||"·"}</td>`)}
  </tr>
`;var dn=26,hn=9.5;function To({options:t}){let e=Math.floor((U(t)[1]-dn)/hn);return l`
    <div class="days-page">
      <h2>${p("print.days",{n:t.booklet.juz})}</h2>
      <table class="days">
        <tr>
          <th class="day">${p("print.day")}</th>
          <th>${p("print.read")}</th>
          <th class="slim">${p("print.found")}</th>
          ${Z.map(o=>l`<th class="slim">${p(`print.went.${o}`)}</th>`)}
        </tr>
        ${Array.from({length:e},()=>l`<tr>
              <td></td>
              <td></td>
              <td></td>
              ${Z.map(()=>l`<td><span class="tick"></span></td>`)}
            </tr>`)}
      </table>
    </div>
  `}function Co(t,e){let o=t.pencils.slice(e*t.perKey,(e+1)*t.perKey);return l`
    <div class="key-page">
      <h2>${p("print.key-title",{n:t.options.booklet.juz})}</h2>
      <p>${p(o.length?"print.key-what":"print.key-empty")}</p>
      <ul class="key-list" .style=${`--row:${t.keyRow}mm`}>
        ${o.map(yn)}
      </ul>
      ${e===0&&t.without.length?l`<p>${p("print.without",{rules:Ee(t.without.map(r=>r.name))})}</p>`:d}
    </div>
  `}var yn=({rule:t,key:e,places:o})=>l`
  <li data-rule=${t.id} data-n=${o} .style=${C(t.family)}>
    <b class="key-name">${e??""}</b>
    <span class="key-text inked">${$(t.family)}${t.name}</span> ${O(t.ar)}
    <span class="dots"></span><b>${o}</b><span class="try"></span>
  </li>
`;function ce(t,e){let{is:o}=t.leaves[e-1];return L(t.c,o,e,t.leaves.length,gn(t,e),t.fits[o])}function gn(t,e){let o=t.leaves[e-1];switch(o.is){case"cover":return Ro(t);case"pencils":return Co(t,o.n);case"practice":return zo(t,t.practice,o.n,!1);case"counts":return Eo(t,o.n);case"answer":return zo(t,t.answer,o.n,!0);case"days":return To(t);case"blank":return""}}var Ao=({rows:t,starts:e},o)=>t.slice(e[o],e[o+1]);function zo(t,e,o,r){let n=Ao(e,o),s=n.flatMap(m=>"head"in m?[]:m.words),a=m=>({s:t.passage.verses[m].s,a:t.passage.verses[m].a}),i=k(t.c.surahs,a(s[0].v),a(s.at(-1).v));return l`
    <header class="leaf-head" .style=${`block-size:${me}mm`}>
      ${r?p("print.answers",{title:i}):i}
    </header>
    <div
      class=${r?"rows small":"rows"}
      .style=${`--em:${e.g.em}px;--pitch:${e.g.pitch}px`}
    >
      ${n.map(m=>At(t.c,t.passage,m,r))}
    </div>
  `}function Wo(t,e){let o=t.leaves[e-1];return o.is!=="answer"?[]:Ao(t.answer,o.n).flatMap(r=>"head"in r?[]:r.words.map(({v:n,w:s})=>t.inked[n][s]))}var Ho=(t,e)=>mt([t],()=>{let[o,r]=t.sides[e].map(n=>ce(t,n));return r===void 0?o:l`<div class="side" dir="ltr">${o}${r}</div>`});var bn=30,wn=8.5,kn=12,$n=32,Io=.3,ue=.75;async function No(t,e){let{c:o,options:r,learner:n}=t,s=await $o(t),a=r.booklet.answers!=="none"&&s.pencils.length>0,i=(h,w)=>async P=>t.step?.(h+P*(w-h)),m=await Po(s,V(r),i(0,a?Io:ue)),c=a?await Mo(t,s,V(r,no),i(Io,ue)):void 0,u=bo(s.passage.verses),y={...s,sheet:"booklet",c:o,options:r,child:r.name?n?.name??"":"",practice:m,answer:c?.lines,inked:c?.inked??[],ranges:u,counts:wo(u,s.found.hits,[...s.found.totals.keys()]),tables:a?ko(u.length,s.pencils.length,On(r)):[],...Sn(s.pencils.length,U(r)[1]-bn)},f=fo(xn(y),r.booklet),g={...y,leaves:f,sides:uo(f.length,r.booklet.lay),fits:{}};return await t.step?.(ue),{...g,fits:vn(g,e)}}function Sn(t,e){let o=Math.floor(e/wn);return{perKey:o,keyRow:Math.min(kn,e/Math.max(1,Math.min(t,o)))}}var xn=t=>({pencils:Math.max(1,Math.ceil(t.pencils.length/t.perKey)),practice:t.practice.starts.length,counts:t.tables.length,answer:t.answer?.starts.length??0});function On(t){let[e,o]=U(t);return{width:e,height:o-$n,name:41,column:7.5,row:5.5,gap:6}}var Bo={cover:".cover, .cover-head, .contents, .contents li",pencils:".key-page, .key-list, .key-list li, .key-text",counts:".counts-page, .tables, .tally th",days:".days-page, .days th"};function vn(t,e){let o=n=>t.leaves.findIndex(s=>s.is===n),r=Object.keys(Bo).filter(n=>o(n)>=0);return x(t.leaves.flatMap((n,s)=>n.is==="cover"||n.is==="pencils"||n.is==="counts"||s===o("days")?ce(t,s+1):[]),e),Object.fromEntries(r.map(n=>{let s=`.leaf[data-sheet="${n}"]`,a=Bo[n].split(", ").map(i=>`${s} ${i}`);return[n,j(v(e,s),v(e,a.join()))]}))}var Ln=23,Pn=32,Mn=9;function Vo(t,e){let o=ae(e.paper,e.turn)[1]/2-ne-se-Mn,r=Math.floor(o/Ln),n=t<=4*r?Math.max(1,Math.ceil(t/4)):Math.max(r,Math.ceil(t/8));return{per:n,height:Math.min(Pn,o/n)}}function jo(t,e){let o=Math.max(1,Math.ceil(t.length/(4*e))),r=n=>Rn(t.length,4*o,n);return Array.from({length:o},(n,s)=>[0,1,2,3].map(a=>t.slice(r(4*s+a),r(4*s+a+1))))}var Rn=(t,e,o)=>Math.floor(t/e)*o+Math.min(o,t%e);async function Fo(t,e){let{c:o,learnt:r,options:n}=t,s=await Promise.all(r.map(u=>En(t,u))),a=Vo(s.length,n),i={sheet:"card",c:o,options:n,child:n.name?t.learner?.name??"":"",sides:jo(s,a.per),share:a,inked:s.flatMap(u=>u.words)};x(fe(i),e),rt(e,i.inked);let m=v(e,"h2").map(u=>j([u],[u])),c=j(v(e,"ol"),v(e,".quarter ol, .card-rule, .card-text"));return{...i,fits:{titles:m,rules:c}}}async function En({c:t,settings:e},o){let[r,n,s]=o.at,a={s:r,a:n},i=await J(t,a,a),m=Tn(t,o,i),{words:c}=i[0],u=await Q(i),y=Math.max(s,s+m.cw),f=[G({v:0,e:m},D(o.family))],g=[];for(let h=Math.min(s,s+m.cw);h<=y;h++)g.push(Y(c[h],{v:0,w:h},h===s?f:[],u));return u.drop(),{rule:o,words:g,count:_(o,m,e).want}}function Tn(t,e,o){let[r,n,s]=e.at,a=t.rules.indexOf(e),i=new ut(o),m=o[0].events.find(c=>c.rule===a&&c.w===s&&!c.unwritten&&i.holds(0,c));if(!m)throw new Error(`${e.id}: not in ${r}:${n}`);return m}var fe=t=>t.sides.map((e,o)=>L(t.c,"card",o+1,t.sides.length,l`
        <div class="quarters" .style=${`--item:${t.share.height}mm;--per:${t.share.per}`}>
          ${e.map((r,n)=>Cn(t,r,o,n))}
        </div>
      `)),Cn=(t,e,o,r)=>l`
  <section class="quarter">
    ${r<2?zn(t,r,t.fits?.titles[2*o+r]):d}
    <ol .style=${Ct(t.fits?.rules)}>
      ${e.map(An)}
    </ol>
  </section>
`;function zn({child:t},e,o){let r=t?p("print.card-of",{child:t}):p("print.kind.card");return l`<h2 aria-hidden=${e?"true":d} .style=${Ct(o)}>
    ${e?d:r}
  </h2>`}var An=({rule:t,words:e,count:o})=>l`
  <li class="card-rule" data-rule=${t.id} .style=${C(t.family)}>
    <div class="card-text">
      <p>
        <span class="inked">${$(t.family)}${t.name}</span> ${O(t.ar)}
        ${o?l`<span class="card-count">${p("print.counts",{n:o})}</span>`:d}
      </p>
      ${t.letters?O([...t.letters].join(" "),"ar card-letters"):d}
    </div>
    <div class="card-example">
      <p class="line" lang="ar" dir="rtl">${e.map(r=>nt(r.word))}</p>
      <span class="card-ref">${`${t.at[0]}:${t.at[1]}`}</span>
    </div>
  </li>
`;var Wn=4,Hn=5;function _o({c:t,options:e,learner:o},r){let n=e.name?o?.name??"":"",s={sheet:"record",c:t,options:e,child:n};return x(de(s),r),{...s,fit:j(v(r,".leaf"),v(r,".weeks, .week-block, .weeks ol, .weeks li, .weeks h3, .fill-in"))}}var de=({c:t,child:e,fit:o})=>[L(t,"record",1,1,l`
      <header class="leaf-head">
        <div class="head-line">
          <h2>${p("print.kind.record")}</h2>
          ${S(p("print.name"),e)}
        </div>
      </header>
      <div class="weeks">${Array.from({length:Wn},(r,n)=>In(n+1))}</div>
    `,o)],In=t=>l`
  <section class="week-block">
    <h3>${p("print.week",{n:t})}${S(p("print.from"),"","short")}</h3>
    <ol>
      ${Array.from({length:Hn},Bn)}
    </ol>
  </section>
`,Bn=()=>l`
  <li>
    ${Ko()} ${S(p("print.day"),"","short")} ${S(p("print.read"),"","long")}
    ${S(p("print.rule"))}
    <span class="went"
      >${Z.map(t=>l`<span>${Ko()}${p(`print.went.${t}`)}</span>`)}</span
    >
  </li>
`,Ko=()=>l`<span class="tick"></span>`;var Nn=14,he=t=>t===void 0?"":`block-size:${t}px`,ye=(t,e)=>l`
  <header class="leaf-head first" .style=${he(e)}>
    <div class="head-line">
      <h2>${t.title}</h2>
      ${S(p("print.name"),t.child)} ${S(p("print.date"))}
    </div>
    <p class="task-line">${Vn(t)}</p>
    ${t.learnt.length?Fn(t.learnt):d}
  </header>
`;function Vn({pencils:t}){let[e,...o]=t;return!e||!o.length&&!e.marks?p("print.only-read"):o.length?l`${p("print.find")} ${Go(t,jn)}. ${p("print.how-many")}`:l`${p("print.find")} ${Jo(e)}. ${S(p("print.how-many"))}`}var Jo=({name:t,ar:e})=>l`<b>${t}</b>${e?l` ${O(e)}`:d}`,Go=(t,e)=>t.map((o,r)=>[r?" · ":d,l`<span class="formed">${$(o.family)}<b>${o.name}</b>${e(o)}</span>`]),jn=({marks:t})=>t?l` ${S("")}`:d,Fn=t=>l`
  <p class=${t.length>Nn?"strip many":"strip"}>
    <b>${p("print.learnt")}</b>
    ${t.map((e,o)=>[o?" · ":d,l`<span class="formed">${$(e.family)}${e.name}</span>`])}
  </p>
`,ge=(t,e)=>l`
  <header class="leaf-head first" .style=${he(e)}>
    <div class="head-line"><h2>${p("print.answers",{title:t.title})}</h2></div>
    <p class="task-line">${Kn(t)}</p>
    <p class="strip">${p("print.how-shown")}</p>
  </header>
`;function Kn({pencils:t}){let[e,...o]=t;return!e||!o.length&&!e.marks?p("print.only-read"):o.length?Go(t,r=>r.marks?`: ${r.places}`:d):l`${Jo(e)}: ${p("print.places",{n:e.places})}`}function Wt(t,e,o){let r=e==="answer"?p("print.answers",{title:t.title}):t.title,n=t.pencils.map(s=>` · ${s.name}`).join("");return l`<header class="leaf-head" .style=${he(o)}>${r}${n}</header>`}var Do=t=>[...new Set(Uo(t).flatMap(e=>e.rules))],Uo=({c:t,options:e,learner:o,learnt:r})=>He(t,We(e),o?new Set(r.map(n=>n.id)):"all"),Yo=(t,{hits:e})=>Uo(t).map(({id:o,name:r,family:n,rules:s})=>{let a=e.map(i=>i.flat().filter(m=>s.includes(m.e.rule)).length);return{name:r||p("case.stops"),ar:t.c.rules.find(i=>i.id===o)?.ar??"",family:n,rules:s,marks:o!==Te,byVerse:a,places:a.reduce((i,m)=>i+m,0)}}),_n=12,be=t=>t.length>1&&t.some(e=>e.marks&&e.byVerse.length<=_n),we=(t,e,o)=>be(e)?l`<table class="boxes">
        <tr>
          <th scope="col">${p("field.verse")}</th>
          ${t.map(r=>l`<th scope="col">${r.a}</th>`)}
        </tr>
        ${e.filter(r=>r.marks).map(r=>l`<tr>
                <th scope="row">${$(r.family)}${r.name}</th>
                ${r.byVerse.map(n=>l`<td>${o?n:d}</td>`)}
              </tr>`)}
      </table>`:d,Qo=(t,e)=>l`
  <section class="totals">
    <h3>${p("print.how-many")}</h3>
    ${we(t,e,!1)}
  </section>
`;function Zo(t,e,o,r){let n=[...e.totals].filter(([,s])=>s>0||e.totals.size===1);return l`
    <section class="totals">
      <h3>${p("print.totals")}</h3>
      ${r}
      ${n.length?l`<ul>
              ${n.map(([s,a])=>Jn(t,s,a,o.get(s)))}
            </ul>`:l`<p>${p("print.no-rules")}</p>`}
      <p class="said-once">${p("print.stops")} ${p("caution")}</p>
    </section>
  `}function Jn(t,e,o,r){let n=t.rules[e];return l`<li data-rule=${n.id} data-n=${o} .style=${C(n.family)}>
    ${r===void 0?d:l`<b class="key-name">${r}</b>`}
    <span class="inked">${$(n.family)}${n.name}</span> ${O(n.ar)}
    <span class="total">${o}</span>
  </li>`}async function Xo(t,e){let{c:o,options:r}=t,[n,s]=await Promise.all([J(o,r.from,r.to),ct(o,r.from,r.to)]),a={verses:n,basmala:s},i=V(r),m=ot(n,Gn(t)),c=Dn(t,m),u={c:o,passage:a,heads:c,found:m,keys:Rt(m)},y=await Q(n,i.em);try{let f=Un(u,e),g=Tt(n,y,i,!!r.from.w),h=Yn(g,f,i),w=P=>f.foot[P]>0&&!Qn(f.foot[P],g,h,f,i);return{...u,sheet:"lines",options:r,heights:f,rows:g,starts:h,apart:{practice:w("practice"),answer:w("answer")},inked:r.kind==="practice"?[]:Zn(t,u,g,y)}}finally{y.drop()}}function Gn(t){let{c:e,options:o,learnt:r}=t,n=o.show==="learnt"?r.map(a=>a.id):[],s=Jt(e,"",o.show==="all"?"all":new Set(n));return[...new Set([...Do(t),...s])]}function Dn(t,e){let{c:o,options:r,learner:n,learnt:s}=t,a=new Set([...r.also,...s.map(i=>i.id)]);return{title:k(o.surahs,r.from,r.to),pencils:Yo(t,e),child:r.name?n?.name??"":"",learnt:Jt(o,r.rule,a).map(i=>o.rules[i])}}function ke({c:t,passage:{verses:e},heads:o,found:r,keys:n},s){return s==="answer"?Zo(t,r,n,we(e,o.pencils,!0)):be(o.pencils)?Qo(e,o.pencils):void 0}function Un(t,e){let{c:o,heads:r}=t,n=s=>s?(x(L(o,"measure",0,0,s),e),Math.ceil(e.querySelector(".leaf > *").getBoundingClientRect().height)):0;return{first:Math.max(n(ye(r)),n(ge(r))),next:n(Wt(r,"answer")),foot:{practice:n(ke(t,"practice")),answer:n(ke(t,"answer"))}}}var Yn=(t,{first:e,next:o},r)=>Et(t.map(n=>"head"in n),Math.floor((r.room-e)/r.pitch),Math.floor((r.room-o)/r.pitch));function Qn(t,e,o,r,n){let s=o.length>1?r.next:r.first,a=e.length-o.at(-1);return s+a*n.pitch+t<=n.room}function Zn({c:t,settings:e},{passage:{verses:o},found:r,keys:n},s,a){let i=m=>_(t.rules[m.rule],m,e).want;return s.flatMap(m=>"head"in m?[]:m.words).map(m=>{let c=o[m.v].words[m.w],u=r.hits[m.v][m.w],y=u.map(f=>G(f,D(t.rules[f.e.rule].family)));return Y(c,m,y,a,Mt(c,u,i,n))})}var qo=({options:{kind:t}})=>t==="both"?["practice","answer"]:[t],tr=(t,e)=>t.starts.length+(t.apart[e]?1:0),er=t=>qo(t).reduce((e,o)=>e+tr(t,o),0),or=t=>qo(t).flatMap(e=>Xn(t,e));function Xn(t,e){let{c:o,heads:r,heights:n,starts:s}=t,a=e==="answer",i=tr(t,e),m=ke(t,e)??d,c=a?ge:ye,u=s.map((y,f)=>{let g=f?Wt(r,e,n.next):c(r,n.first),h=t.rows.slice(y,s[f+1]).map(P=>At(o,t.passage,P,a)),w=f+1===s.length&&!t.apart[e]?m:d;return L(o,e,f+1,i,l`${g}
        <div class="rows">${h}</div>
        ${w}`)});return i>u.length&&u.push(L(o,e,i,i,l`${Wt(r,e)}${m}`)),u}var rr=t=>Oo(t.options,e=>t.options.kind==="booklet"?No(t,e):t.options.kind==="record"?_o(t,e):t.options.kind==="card"?Fo(t,e):Xo(t,e));function nr(t,e){return t.sheet==="booklet"?t.sides.slice(0,e).map((o,r)=>Ho(t,r)):t.sheet==="record"?de(t):t.sheet==="card"?fe(t):or(t)}var sr=t=>t.sheet==="booklet"?t.sides.length:0;function Ht(t){return t.sheet==="booklet"?t.leaves.length:t.sheet==="record"?1:t.sheet==="card"?t.sides.length:er(t)}var ar=t=>t.sheet==="lines"||t.sheet==="card"?t.inked:[];var Bt={busy:!1,progress:void 0,stopped:!1},Se={...Bt,busy:!0,offers:[]},qn=150,ts=20,pr=2,cr=.8,It=0,R=0,H=t=>{let{printing:e}=M();e&&pt({printing:{...e,...t}})};function xe(){let{catalogue:t,printing:e}=M(),o=t.rules[Je()?.today.rule??-1]?.id??"",r=yo(t,T()?.place,o,navigator.language),n=po(t,location.hash,r),{layout:s,drawn:a=0}=e??{};pt({printing:{layout:s,drawn:a,...Se,before:void 0,...n}}),Oe(0)}function b(t,e){let{catalogue:o,printing:r}=M();if(!r)return;let n={...r.options,...t};history.replaceState(history.state,"",lo(o,n));let s="from"in t||"to"in t||"kind"in t?e:r.before;H({...Se,options:n,problem:void 0,before:s});let a="size"in t||n.booklet.size!==r.options.booklet.size;Oe(a?qn:0)}function F(t){let{printing:e}=M();e&&b({booklet:{...e.options.booklet,...t}})}function ur(){clearTimeout(It),R++,H({...Bt,stopped:!0,layout:void 0})}function fr(){H(Se),Oe(0)}function dr(){clearTimeout(It),R++,pt({printing:void 0})}function Oe(t){clearTimeout(It),R++,It=window.setTimeout(()=>{es()},t)}async function es(){let t=++R,{catalogue:e,settings:o,printing:r}=M();if(!r)return;let{options:n}=r,s=ht(e,n.from,n.to);if(B(n)&&s>600)return mr({key:"print.bad.many",vars:{n:s,most:600}});await lr(ts);let a=T(),i=a?K(a.id):[],m=async c=>{if(t===R&&H({progress:c*cr}),await lr(0),t!==R)throw new Error("stopped")};try{let c=await rr({c:e,options:n,learner:a,learnt:xt(e,i),settings:o,step:m});if(t!==R)return;await os(c,m),H({...Bt,layout:c,drawn:1/0});let u=await go(c);t===R&&H({offers:u})}catch(c){if(t!==R)return;if(!(c instanceof Ve))throw c;mr({key:`error.${c.code}`,vars:{}})}}async function os(t,e){let o=sr(t);for(let r=pr;r<o;r+=pr)H({layout:t,drawn:r}),await e(1+(1/cr-1)*(r/o))}var lr=t=>new Promise(e=>setTimeout(e,t)),mr=t=>H({...Bt,problem:t,layout:void 0});function Nt(t,e,o,r,n){let s=p("print.points",{n:t});return l`<div>
    <label for="print-size">${p("print.size")} <span class="quiet">${s}</span></label>
    <input
      id="print-size"
      type="range"
      min=${e}
      max=${o}
      step=${r}
      .value=${String(t)}
      data-t="print-size"
      aria-valuetext=${s}
      @input=${a=>n(Number(a.target.value))}
    />
  </div>`}function hr(t,{booklet:e}){let[o,r]=[p("print.answers-where"),p("print.lay")];return l`
    <div>
      <label for="booklet-juz">${p("print.juz")}</label>
      ${lt({id:"booklet-juz",least:1,most:t.catalogue.juz.length,now:e.juz,usual:e.juz,choose:n=>F({juz:n})})}
    </div>
    ${ss(t,e)}
    ${q(o,"answers",Dt,e.answers,n=>p(`print.answers-where.${n}`),n=>F({answers:n}))}
    ${q(r,"lay",Ut,e.lay,n=>p(`print.lay.${n}`),n=>F({lay:n,size:gt(n)}))}
    ${ns(t)} ${Nt(e.size,Yt,Qt,$t,n=>F({size:n}))}
  `}var rs=16;function ns({printing:t}){let{lay:e}=t.options.booklet;if(e==="one")return d;let o=t.layout,r=!t.busy&&o?.sheet==="booklet"&&o.options.booklet.lay===e,n=r?ho(o.leaves):0,s=r&&e==="fold"&&o.sides.length/2>rs;return l`<p class="quiet" data-t="lay-how">
    ${p(`print.lay-${e}`)} ${n?p("print.filled",{n}):""} ${s?p("print.thick"):""}
  </p>`}function ss(t,e){let{catalogue:o,printing:r}=t,n=r?.layout,s=n?.sheet==="booklet"&&n.options.booklet.juz===e.juz?n.totals:void 0,a=T(t),i=a?xt(o,K(a.id)).map(f=>f.id):[],m=new Set(e.rules??i),c=z(o),u=f=>{let g=c.map(h=>h.id).filter(h=>h===f!==m.has(h));F({rules:g.join()===i.join()?void 0:g})},y=f=>{let g=s?.get(o.rules.indexOf(f)),h=m.has(f.id);if(!h&&!g)return d;let w=g===void 0?f.name:p("print.key-rule",{rule:f.name,n:g});return to(`find-${f.id}`,w,f.family,h,()=>u(f.id))};return l`<details class="opens" data-t="booklet-rules">
    <summary>${p("print.key")}</summary>
    <div class="case" role="group" aria-label=${p("print.key")}>
      <div class="row">${c.map(y)}</div>
      ${e.rules&&i.length?l`<div class="row">
              <button
                type="button"
                class="plain"
                data-t="booklet-learnt"
                data-next='[data-t="booklet-rules"] summary'
                @click=${()=>F({rules:void 0})}
              >
                ${p("print.key-learnt")}
              </button>
            </div>`:d}
    </div>
  </details>`}var as='[data-t="better-1"]';function yr(t,e){let o=Ot(e.layout),{part:r,from:n,to:s}=e.options,a=({lines:i})=>b({part:"verses",from:i.from,to:i.to},{part:r,from:n,to:s});return l`<div class="print-note" data-t="print-note">
    ${e.before?is(t,e.before):d}
    ${o&&e.offers.length?l`<p>${p("print.better",{rule:o.name})}</p>
            <div class="row">${e.offers.map((i,m)=>ps(t,i,m,a))}</div>`:d}
  </div>`}var is=(t,e)=>l`
  <p>${p("print.moved")}</p>
  <div class="row">
    <button
      type="button"
      class="plain"
      data-t="print-back"
      data-next="#print-part"
      @click=${()=>b(e)}
    >
      ${p("print.back",{lines:k(t.surahs,e.from,e.to)})}
    </button>
  </div>
`,ps=(t,e,o,r)=>l`
  <button
    type="button"
    class="plain"
    data-t="better-${o+1}"
    data-next='[data-t="print-back"]'
    @click=${()=>r(e)}
  >
    ${p("print.better-lines",{lines:k(t.surahs,e.lines.from,e.lines.to),n:e.places})}
  </button>
`;function gr(t){let e=Ot(t);return e?p("print.few",{rule:e.name,n:e.n}):t.sheet==="card"?t.inked.length?"":p("print.card-empty"):t.sheet==="booklet"?t.pencils.length?"":p("print.key-none"):""}function ls(){let t=document.querySelector(as);t?.focus({preventScroll:!0}),t?.closest(".print-note")?.scrollIntoView()}var br=t=>t.offers.length?l`<button type="button" class="link" data-t="see-better" @click=${ls}>
        ${p("print.see-better")}
      </button>`:d;var $r=10,Sr=(t,e)=>l`
  <div class="fields place">
    ${st("print.part","print-part",ms(t,e))} ${cs(t,e)}
  </div>
`,st=(t,e,o)=>l`<div><label for=${e}>${p(t)}</label>${o}</div>`;function ms(t,e){return l`<select id="print-part" data-t="print-part" @change=${r=>{let n=r.target.value;if(n!=="verses")return b({part:n,...A(t,n,yt(t,n,e.from))});let{s,a}=e.from;b({part:n,to:{s,a:Math.min(t.surahs[s-1].count,a+$r-1)}})}}>
    ${dt.map(r=>l`<option value=${r} .selected=${r===e.part}>${p(`print.part.${r}`)}</option>`)}
  </select>`}function cs(t,e){if(e.part==="surah")return wr(t,e);if(e.part==="verses")return[wr(t,e),st("field.from","print-from",kr(t,e,"from")),st("field.to","print-to",kr(t,e,"to"))];let{part:o}=e,r=`print-${o}`,n=Or(r,tt(t,o),oe(t,e)||1,s=>xr(t,o,s));return st(`print.part.${o}`,r,n)}var xr=(t,e,o)=>b({part:e,...A(t,e,o)});function wr(t,e){let o=r=>{if(e.part==="surah")return xr(t,"surah",r);b({from:{s:r,a:1},to:{s:r,a:Math.min($r,t.surahs[r-1].count)}})};return st("field.surah","print-surah",Be(t,"print-surah",e.from.s,o))}function kr(t,e,o){let{s:r}=e.from;return Or(`print-${o}`,t.surahs[r-1].count,e[o].a,n=>{let s=o==="from"?n:e.from.a,a=o==="to"?n:e.to.s===r?e.to.a:n;b({from:{s:r,a:o==="to"?Math.min(s,a):s},to:{s:r,a:o==="from"?Math.max(s,a):a}})})}var Or=(t,e,o,r)=>lt({id:t,least:1,most:e,now:o,usual:1,choose:r});function vr(t,e){let o=T(t)?.name;return l`
    <form class="card print-form" @submit=${r=>r.preventDefault()}>
      ${Vt(e,"kind",Zt,r=>`print.kind.${r}`)}
      ${B(e)?us(t,e):d}
      ${e.kind==="booklet"?hr(t,e):d}
      ${Vt(e,"paper",Xt,r=>`print.paper.${r}`)}
      ${e.kind==="booklet"?d:Vt(e,"turn",qt,r=>`print.turn.${r}`)}
      ${o?hs(e,o):d}
      <details class="opens" data-t="print-pencils">
        <summary>${p("pencils.title")}</summary>
        ${De(t)}
      </details>
    </form>
  `}var Vt=(t,e,o,r)=>q(p(`print.${e}`),e,o,t[e],n=>p(r(n)),n=>b({[e]:n})),us=(t,e)=>l`
  ${Sr(t.catalogue,e)} ${fs(t.catalogue,e)} ${yr(t.catalogue,t.printing)}
  ${ds(t,e)}
  ${e.kind==="practice"?d:Vt(e,"show",St(e)?kt:kt.slice(1),o=>o==="focus"&&e.also.length?"print.show.these":`print.show.${o}`)}
  ${Nt(e.size,te,ee,$t,o=>b({size:o}))}
`,Lr=(t,e)=>b({...e,show:St({...t,...e})?t.show:"learnt"});function fs(t,e){let o=r=>{let n=r.target.value;Lr(e,{rule:n,also:e.also.filter(s=>s!==n)})};return l`<div>
    <label for="print-rule">${p("print.rule-to-find")}</label>
    <select id="print-rule" data-t="print-rule" @change=${o}>
      <option value="" .selected=${!e.rule}>${p("choose.no-rule")}</option>
      ${z(t).map(r=>l`<option value=${r.id} .selected=${r.id===e.rule}>${r.name}</option>`)}
    </select>
  </div>`}function ds(t,e){let o=T(t),r=o?K(o.id).map(a=>a.rule):t.catalogue.rules.map(a=>a.id),{rule:n,also:s}=e;return l`<details class="opens" data-t="print-case">
    <summary>${p("case.title")}</summary>
    <div class="case" role="group" aria-label=${p("case.title")}>
      ${qe(t.catalogue,{rule:n,also:s,name:"print-with",rules:new Set([...r,n,...s]),choose:a=>Lr(e,{rule:n,also:a})})}
    </div>
  </details>`}var hs=(t,e)=>Ne("print-name",p("print.with-name",{child:e}),t.name,o=>b({name:o}));var ys=12,Pr=(t,e)=>l`<div class="print-stage">${Ie(t,t?gs(t,e):d)}</div>`,gs=(t,e)=>mt([t,e],()=>l`<div
        class=${Ht(t)>ys?"leaves many":"leaves"}
        data-turn=${et(t.options)}
        .style=${zt(t.options)}
      >
        ${nr(t,e)}
      </div>`),Le=new CSSStyleSheet,at,jt=0,it=new Map,E,ve=new ResizeObserver(Er);function Mr(){document.adoptedStyleSheets=[...document.adoptedStyleSheets,Le]}function Rr(t,e){E?.isConnected||(ve.disconnect(),E=document.querySelector(".print-stage"),ve.observe(E)),t!==at&&bs(E,t),t?.sheet==="booklet"&&ws(E,t,e)}function bs(t,e){if(at=e,jt=0,it=e?rt(t,ar(e)):new Map,ft("paper",it),!e)return;let[o,r]=Lt(e.options);Le.replaceSync(`@page{size:${o}mm ${r}mm;margin:0}`),Er()}function ws(t,e,o){let r=e.sides.slice(jt,o).flat();if(r.length){jt=Math.min(o,e.sides.length);for(let n of r){let s=Wo(e,n);s.length&&rt(t.querySelector(`[data-page="${n}"]`),s,it)}jt===e.sides.length&&ft("paper",it)}}function Er(){if(!E||!at)return;let t=Math.min(1,E.clientWidth/(Lt(at.options)[0]*W));E.style.setProperty("--zoom",String(Math.floor(t*1e3)/1e3))}function Tr(){ve.disconnect(),E=void 0,at=void 0,it=new Map,ft("paper",new Map),document.adoptedStyleSheets=document.adoptedStyleSheets.filter(t=>t!==Le)}function Cr({catalogue:t,printing:e}){if(!e?.layout)return p("print.title");let{options:o}=e.layout;if(o.kind==="booklet")return p("next.juz",{n:o.booklet.juz});let r=p(`print.kind.${o.kind}`);return B(o)?`${k(t.surahs,o.from,o.to)} ${r}`:r}function ks(t){let e=t.printing,o=e.problem?p(e.problem.key,e.problem.vars):"";return l`
    <main class="print">
      <div class="print-side">
        <h1 tabindex="-1">${p("print.title")}</h1>
        <p class="problem" role="alert" data-t="problem">${o}</p>
        ${vr(t,e.options)}
        <p class="quiet">${p("print.respect")}</p>
      </div>
      <div class="print-go">
        ${e.busy&&e.progress!==void 0?xs(e.progress):d}
        <div class="print-status">
          <p role="status" data-t="print-status">${Os(e)}</p>
          ${br(e)}
        </div>
        ${e.stopped?Ss():$s(e)}
      </div>
      ${Pr(e.layout,e.drawn)}
    </main>
  `}var $s=({busy:t,layout:e})=>l`
  <button
    class="main"
    type="button"
    ?disabled=${t||!e}
    data-t="print-now"
    @click=${()=>window.print()}
  >
    ${p("print.now")}
  </button>
`,Ss=()=>l`
  <button class="main" type="button" data-t="print-again" @click=${fr}>
    ${p("print.lay-out")}
  </button>
`,xs=t=>l`
  <div class="print-progress">
    <progress aria-label=${p("print.progress")} data-t="print-progress" .value=${t}></progress>
    <button
      type="button"
      class="plain"
      data-t="print-stop"
      data-next='[data-t="print-again"], [data-t="print-now"]'
      @click=${ur}
    >
      ${p("print.stop")}
    </button>
  </div>
`;function Os({layout:t,busy:e,stopped:o}){if(e)return p("print.laying-out");if(o)return p("print.stopped");if(!t)return"";let r=gr(t);return[p("print.pages",{n:Ht(t)}),vs(t),r&&l` <b>${r}</b>`]}function vs(t){return t.sheet==="card"&&t.inked.length?` ${p("print.card-fold")}`:t.sheet!=="booklet"||t.options.booklet.lay!=="fold"?"":` ${p("print.sheets",{n:t.sides.length/2})}`}function zr(){Ae(M().catalogue,location.hash).name==="print"&&xe()}var rm={title:Cr,view:ks,enter(){let{catalogue:t,settings:e}=M();ro(t,e.pencils),Mr(),xe(),addEventListener("hashchange",zr)},drawn(t){Rr(t.printing?.layout,t.printing?.drawn??0),document.title=p("page.title",{screen:Cr(t)})},leave(){removeEventListener("hashchange",zr),dr(),Tr()}};export{rm as print};
