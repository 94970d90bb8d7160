import{a as ot,b as ct}from"./chunk.JEDIKCEU.js";import{a as nt}from"./chunk.RAJEIFQJ.js";import{a as st}from"./chunk.RBEOXQB7.js";import{b as _}from"./chunk.6RREKEHW.js";import{a as it}from"./chunk.YWDTK4BI.js";import{c as w,e as at}from"./chunk.FQKUSJ4B.js";import{a as f,b as tt,c as v}from"./chunk.APPKMSLV.js";import{b as dt}from"./chunk.E4I625RD.js";import"./chunk.TX2AM5FN.js";import"./chunk.EZIODPUZ.js";import{a as T}from"./chunk.JG3ILKLC.js";import{a as mt}from"./chunk.ZHFQYOYG.js";import"./chunk.P7LSG5ID.js";import{b as lt}from"./chunk.PCM2CTZV.js";import{F as G,H as E,I as V,J as X,K as Z,b as h,e as Y,f as J,q as K,s as Q,u as U,y as g}from"./chunk.RCYS5ULD.js";import{e as y}from"./chunk.SBHWFWE5.js";import{b as et}from"./chunk.ABXU77RL.js";import{a as ut,c as ft}from"./chunk.E6OLOVED.js";import{a as i,c as m,d as x,o as rt}from"./chunk.A6UYY2CG.js";import{A as k,B as j,d as o,g as M,i as W,j as c,k as B,l as a,n as I,o as $,p as z,z as S}from"./chunk.S3BIYIDD.js";import"./chunk.YE24VLP2.js";var R="sutur-reloaded";function pt(){Ut()&&a({notice:{text:o("closed.superseded"),name:"superseded"}}),Y(t=>{t==="superseded"?Qt():Gt(t==="lost")})}function Qt(){try{sessionStorage.setItem(R,"1")}catch{}location.reload()}function Ut(){try{let t=sessionStorage.getItem(R)!==null;return sessionStorage.removeItem(R),t}catch{return!1}}async function Gt(t){try{Z(await Zt()),a({closed:void 0}),t&&a({notice:{text:o("closed.lost"),hold:!0,name:"lost"}})}catch(e){a({closed:h(e)})}}var Vt=4,Xt=1e3;async function Zt(){for(let t=Vt-1;;t--)try{return await g()}catch(e){if(!t)throw e;await new Promise(n=>setTimeout(n,Xt))}}var ht=t=>t instanceof HTMLElement&&t!==document.body&&t.isConnected&&!t.matches(":disabled")&&!t.closest("[hidden]");function _t(t){let e=t.closest("li"),n=t.getAttribute("data-t");return!e||!n?[]:[e.nextElementSibling,e.previousElementSibling].map(r=>r?.querySelector(`[data-t="${n}"]`))}var te=()=>document.querySelector(".screen .task")??document.querySelector(".screen h1"),gt=null,yt=null;function ee(){let t=document.querySelector(".notice");t!==gt&&(gt=t,yt=document.activeElement)}function vt(t){let e=document.activeElement,n=e?_t(e):[];if(t(),e&&e!==document.body&&!ht(document.activeElement)){let r=e.getAttribute("data-next");[e,r?document.querySelector(r):null,...n,e.closest(".notice")?yt:null,te()].find(ht)?.focus({preventScroll:!0})}ee()}var L;function wt(t){if(t===L)return;L=t;let e=document.documentElement;e.style.setProperty("--size",String(t.size)),e.style.setProperty("--spacing",String(t.spacing)),t.theme==="auto"?delete e.dataset.theme:e.dataset.theme=t.theme,t.pencils&&ne();try{localStorage.setItem("sutur-theme",t.theme)}catch{}}async function ne(){try{let{apply:t}=await import("./pencils.MUYI524F.js");t(c().catalogue,c().settings.pencils)}catch{L=void 0}}var p=t=>t.name==="bad"?"choose":t.name;var oe=["today","lines","rules","record","learner"],St=(t,e,n)=>i`
  <a class="skip" href="#screen" data-t="skip" @click=${re}
    >${o(p(t.route)==="lines"?"nav.skip-lines":"nav.skip")}</a
  >
  ${q.matches?bt(t):m}
  <div class="screen" id="screen">${T(e,n)}</div>
  ${q.matches?m:bt(t)}
  <div class="said" role="status">${ie(kt(t))}</div>
`,q=matchMedia("(min-width: 50rem)");q.addEventListener("change",()=>a({}));var bt=t=>i`<nav class="tabs" aria-label=${o("nav.label")}>${ae(t)}</nav>`;function re(t){t.preventDefault(),(document.querySelector("[data-t=passage]")??document.querySelector(".screen h1"))?.focus()}function ae(t){let e=p(t.route),n=e==="choose"?"lines":e;return oe.map(r=>i`<a href="#/${r}" data-t="nav-${r}" aria-current=${r===n?"page":m}
        >${o(`nav.${r}`)}</a
      >`)}var se,kt=t=>t.notice??(t.kept?void 0:se??={text:o("error.not-kept"),hold:!0,name:"not-kept"});function O(t){a({notice:void 0,kept:!0}),t.closed?.()}function ie(t){if(!t)return m;let e=()=>{O(t),t.action?.run()},n=t.action&&i`<button class="plain" data-t="notice-action" @click=${e}>${t.action.label}</button>`;return T(t,i`<div class="notice" data-t="notice-${t.name??"said"}">
      <p>${t.text}</p>
      <div class="row">
        ${n}
        <button class="plain" data-t="notice-close" @click=${()=>O(t)}>${o("close")}</button>
      </div>
    </div>`)}var Et=9e3,N=0,$t;function xt(t){let e=kt(t);e!==$t&&($t=e,clearTimeout(N),e&&!e.hold&&(N=window.setTimeout(Tt,Et,e)))}function Tt(t){document.activeElement?.closest(".said")?N=window.setTimeout(Tt,Et,t):O(t)}var Rt=t=>new ResizeObserver(()=>{let e=t.getBoundingClientRect();if(document.documentElement.style.setProperty("--said",e.height?`${e.height+8}px`:"0px"),!!e.height)for(let n of document.querySelectorAll(".screen .main, .screen .stack button")){let r=n.getBoundingClientRect();r.height&&r.bottom>e.top&&r.top<e.bottom&&scrollBy({top:r.bottom-e.top+8,behavior:"instant"})}}).observe(t);function Lt(t){let e=document.documentElement.dataset[t];return!e||document.querySelector(`link[href="${e}"]`)?Promise.resolve():new Promise((n,r)=>{let s=document.createElement("link");s.rel="stylesheet",s.href=e,s.onload=()=>n(),s.onerror=()=>{s.remove(),r(new Error(e))},document.head.append(s)})}var ce=["forwards","backwards","chosen"],Ot=t=>i`
  <form class="first" data-t="first" @submit=${de}>
    <h1 tabindex="-1">${o("first.title")}</h1>
    <p>${o("first.what")}</p>
    <section class="card">
      ${it("name")} ${le(t)}
      <button class="main" data-t="begin">${o("first.begin")}</button>
      <p class="quiet">${o("first.change")}</p>
    </section>
    <p class="quiet">${o("caution")} <a href="about.html">${o("nav.about")}</a></p>
  </form>
`,qt=(t,e)=>t.catalogue.surahs.at(e).la;function le(t){let{way:e}=t.beginning,n={forwards:qt(t,w().place.s-1),backwards:qt(t,-1),chosen:""},r=l=>o(`first.${l}`,{surah:n[l]}),s=l=>a({beginning:{...t.beginning,way:l}});return i`
    ${st(o("first.where"),"from",ce,e,r,s)}
    <p class="quiet">${lt(o(`first.what-${e}`))}</p>
    ${e==="chosen"?ct(t.catalogue,Nt(t),l=>a({beginning:{way:e,place:l}})):m}
  `}var Nt=t=>t.beginning.place??w().place;function me(t){let e={s:t.catalogue.surahs.length,a:1};return t.beginning.way==="backwards"?{place:e,direction:"backwards"}:t.beginning.way==="chosen"?{place:Nt(t)}:w()}function de(t){t.preventDefault();let e=t.currentTarget;at(e.querySelector("input").value,me(c()))}var D=t=>y(c().catalogue.surahs,t.lines.from,t.lines.to),ue=t=>t.marks.length>0||t.stops.length>0||t.phase!==dt(t.lines),Dt=0;async function Ct(t){let e=++Dt,n=t?(await K(t.id).catch(()=>[])).filter(ue):[];e===Dt&&(n.length||c().unfinished.length)&&a({unfinished:n})}function Ht(t,e){let[n,...r]=t.unfinished.filter(s=>s.learner===e.id);return n?i`
    <section class="resume">
      <p>
        <a href=${k(n.lines)} data-t="resume"
          >${o(`today.resume.${n.phase}`,{lines:D(n)})}</a
        >
      </p>
      ${r.length?fe(r):m}
    </section>
  `:m}var fe=t=>i`
  <details class="opens" data-t="resume-others">
    <summary>${o("today.resume-others",{n:t.length})}</summary>
    <ul class="sessions">
      ${mt(t,e=>e.id,pe)}
    </ul>
  </details>
`;function pe(t){let e=c().catalogue.rules.find(n=>n.id===t.lines.rule);return i`<li>
    <p>
      <a href=${k(t.lines)} data-t="resume-other">${D(t)}</a
      >${e?` · ${e.name}`:m}
    </p>
    <button
      class="plain"
      data-t="drop-draft"
      aria-label=${o("today.drop-this",{lines:D(t)})}
      @click=${()=>{he(t)}}
    >
      ${o("record.remove")}
    </button>
  </li>`}async function he(t){let e=()=>a({draftWrites:c().draftWrites+1});if(!await E(()=>U(t)))return;e();let n=()=>{E(()=>Q(t)).then(e)};a({notice:{text:o("today.dropped"),action:{label:o("undo"),run:n}}})}function ge(t){let e=$(t);return i`
    <main class="today">
      <div>${t.closed?nt(t.closed):e?ye(t,e):Ot(t)}</div>
      ${ot(t.offline,!1)}
    </main>
  `}var ye=(t,e)=>i`
  <h1 tabindex="-1">${o("today.title",{child:rt(e)})}</h1>
  ${we(t)} ${Ht(t,e)} ${$e(e)} ${Se()}
`,ve="min-block-size:21rem";function we(t){return t.card==="failed"?be():t.card?.view(t)??i`<section class="card" role="status" data-t="planning" .style=${ve}>
      <p>${o("today.looking")}</p>
    </section>`}var be=()=>i`
  <section class="card" role="status" data-t="no-plan">
    <p>${o("today.no-lines")}</p>
    <div class="row">
      <a class="button main" href="#/lines">${o("today.choose")}</a>
      <button class="plain" data-t="plan-again" @click=${()=>Ft(f)}>
        ${o("error.again")}
      </button>
    </div>
  </section>
`;function $e(t){let e=et(z(t.id)),n=e.reduce((r,s)=>r+s.n,0);return i`
    <section class="week" aria-label=${o("week.title")} data-t="week">
      <p class="quiet">${o("week.said",{n})} ${o("week.aim")}</p>
      <ol aria-hidden="true">
        ${e.map(r=>i`<li class=${r.n?"on":""}>${M(r.day)}</li>`)}
      </ol>
    </section>
  `}var Se=()=>i`
  <nav class="pages quiet" aria-label=${o("today.pages")}>
    <a href="lessons/index.html" data-t="lessons">${o("today.lessons")}</a>
    <a href="lessons/getting-ready.html">${o("today.getting-ready")}</a>
    <a href="lessons/settling-in.html">${o("today.settling-in")}</a>
  </nav>
`,C=!1;async function At(t){if(!C){C=!0;try{let{card:e,loadCourse:n}=await import("./card.RLUOO3DC.js");await n(),a({card:e})}catch{a({card:"failed"}),t?.()}finally{C=!1}}}function Ft(t){c().card==="failed"&&(a({card:void 0}),At(t))}var Pt=()=>Ft(),H=[],Mt={title:()=>o("nav.today"),view:ge,enter(){let{card:t,unfinished:e}=c();H=[],e.length&&a({unfinished:[]}),t==="failed"&&a({card:void 0}),addEventListener("online",Pt)},drawn(t){let e=$(t);if(t.closed)return;e&&!t.card&&At(),t.card&&t.card!=="failed"&&t.card.drawn?.(t);let n=[...I(),t.draftWrites];n.every((r,s)=>r===H[s])||(H=n,Ct(e))},leave:()=>removeEventListener("online",Pt)};var ke={lines:()=>import("./lines.KYW44FAN.js").then(t=>t.lines),choose:()=>import("./choose.754LM7TZ.js").then(t=>t.choose),rules:()=>import("./rules.MBVS33A3.js").then(t=>t.rules),record:()=>import("./record.6MD46JYF.js").then(t=>t.record),learner:()=>import("./learner.7OZDJW6N.js").then(t=>t.learner),print:()=>Promise.all([import("./print.NHD42W3H.js"),Lt("paper")]).then(([t])=>t.print)};function Wt(t){let e=p(t.route);if(e==="today")return Mt;let n=t.screens[e];return n==="failed"?Te:n??xe}function Ee(t){let e=p(t);if(e==="today")return;let n=r=>a({screens:{...c().screens,[e]:r}});ke[e]().then(n,()=>n("failed"))}function P({route:t,catalogue:e}){return t.name==="lines"?y(e.surahs,t.lines.from,t.lines.to):t.name==="bad"||t.name==="choose"?o("choose.title"):t.name==="print"?o("print.title"):o(`nav.${t.name}`)}var xe={title:P,view:t=>i`<div aria-busy="true"><h1 tabindex="-1">${P(t)}</h1></div>`,enter:Ee},Te={title:P,view:()=>i`
    <main class="plain" role="alert">
      <h1 tabindex="-1">${o("error.title")}</h1>
      <p>${o("error.part")}</p>
      <button class="main" data-t="part-again" @click=${f}>${o("error.again")}</button>
      ${v()}
    </main>
  `,leave:()=>a({screens:Object.fromEntries(Object.entries(c().screens).filter(([,t])=>t!=="failed"))})};var u=document.getElementById("app"),b,A="",Bt=0,Re=t=>t.name==="lines"?j(t.lines):JSON.stringify(t);function It(){let t=c();wt(t.settings);let e=Wt(t),n=Re(t.route),r=e!==b||n!==A;r&&Le(e,n,t.route),xt(t);let s=()=>{x(St(t,Bt,e.view(c())),u),e.drawn?.(c())};r?s():vt(s)}function Le(t,e,n){let r=!b,s=e!==A,l=u.querySelector(".screen")?.contains(document.activeElement);b?.leave?.(),b=t,A=e,Bt++,u.dataset.screen=n.name,t.enter?.(n),document.title=o("page.title",{screen:t.title(c())}),requestAnimationFrame(()=>{s&&scrollTo(0,0),!r&&(s||l)&&setTimeout(qe)})}function qe(){let t=u.querySelector(".screen");t?.contains(document.activeElement)||t?.querySelector("h1")?.focus({preventScroll:!0})}function zt(t,e,n){u.replaceChildren(),x(i`<main class="plain" role="alert">
      <h1>${o("error.title")}</h1>
      <p>${t}</p>
      <button class="main" @click=${e}>${o("error.again")}</button>
      ${n}
    </main>`,u)}function jt(){u.replaceChildren(),u.removeAttribute("aria-busy")}function F(){let{damaged:t,reported:e}=c();if(t<=e)return;let n=()=>{a({reported:t}),G(t).catch(()=>{})},r=o("backup.damaged-here",{n:t-e}),s={label:o("backup.save"),run:()=>{Oe()}};a({notice:{text:r,hold:!0,name:"damaged",closed:n,action:s}})}async function Oe(){let t=await import("./backup.7DPXTCYF.js").catch(()=>{});t?await t.save():a({notice:{text:o("error.part"),hold:!0}})}var Ne=3e3;async function De(){let{catalogue:t,sha:e}=document.documentElement.dataset,n=g().catch(h),r=await ft(t,e),s=await n,l=typeof s=="string"?{closed:s}:s,Yt={...W,..."settings"in l?l.settings:{}};jt(),B(It),a({catalogue:r,route:S(r,location.hash),...l,settings:Yt}),addEventListener("hashchange",()=>a({route:S(r,location.hash)})),J(Jt=>{V(Jt).catch(()=>{})}),pt(),tt(),F()}function Ce(t){let e=t instanceof ut?t.code:"damaged";zt(o(`error.${e}`),f,v())}function He(){let t=document.querySelector(".said");t&&Rt(t);let e=window.requestIdleCallback??(n=>setTimeout(n,500));setTimeout(()=>e(()=>{X().then(n=>n&&F(),Pe)}),Ne),e(()=>{Ae()})}var Pe=()=>{};async function Ae(){let t=e=>{let n={label:o("update.take"),run:e};a({notice:{text:o("update.ready"),hold:!0,name:"update",action:n}})};try{let{keep:e}=await import("./offline.E4GU6ZXM.js");e("sw.js",{kept:n=>a({offline:n}),noRoom:()=>a({notice:{text:o("update.full"),name:"no-room"}}),newer:t})}catch{a({offline:{kind:"failed",why:"network"}})}}_();De().catch(Ce).then(He);
