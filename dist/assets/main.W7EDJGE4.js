import{a as ct}from"./chunk.KHREQIDH.js";import{a as tt,b as ot,d as w,f as nt,g as at}from"./chunk.KDDPET5T.js";import{a as _}from"./chunk.REU32BFX.js";import{a as rt}from"./chunk.GDFFJXAG.js";import{b as V}from"./chunk.6RREKEHW.js";import{a as p,b as X,c as $}from"./chunk.APPKMSLV.js";import"./chunk.Y6T2TAYM.js";import{a as E}from"./chunk.PH67WDNA.js";import{a as it}from"./chunk.P4TWWTJR.js";import"./chunk.HOVA7EIO.js";import{b as st}from"./chunk.LCOACQMV.js";import{E as G,G as k,H as K,I as Q,J as U,a as h,d as z,e as M,p as j,r as Y,t as J,x as g}from"./chunk.6M4S66JV.js";import{e as y}from"./chunk.F2Z7EUMU.js";import{b as Z}from"./chunk.ABXU77RL.js";import{a as lt,c as mt}from"./chunk.M2I3IBPU.js";import{a as s,c as m,d as x,o as et}from"./chunk.JW3C4FA3.js";import{c as o,f as A,h as F,i as c,j as W,k as a,l as B,m as b,n as I,s as S,t as H}from"./chunk.XR2DP2R4.js";var T="sutur-reloaded";function dt(){It()&&a({notice:{text:o("closed.superseded"),name:"superseded"}}),z(t=>{t==="superseded"?Bt():Ht(t==="lost")})}function Bt(){try{sessionStorage.setItem(T,"1")}catch{}location.reload()}function It(){try{let t=sessionStorage.getItem(T)!==null;return sessionStorage.removeItem(T),t}catch{return!1}}async function Ht(t){try{U(await jt()),a({closed:void 0}),t&&a({notice:{text:o("closed.lost"),hold:!0,name:"lost"}})}catch(e){a({closed:h(e)})}}var zt=4,Mt=1e3;async function jt(){for(let t=zt-1;;t--)try{return await g()}catch(e){if(!t)throw e;await new Promise(n=>setTimeout(n,Mt))}}var R;function ft(t){if(t===R)return;R=t;let e=document.documentElement;e.style.setProperty("--size",String(t.size)),e.style.setProperty("--spacing",String(t.spacing)),t.theme==="auto"?delete e.dataset.theme:e.dataset.theme=t.theme,t.pencils&&Yt();try{localStorage.setItem("sutur-theme",t.theme)}catch{}}async function Yt(){try{let{apply:t}=await import("./pencils.7FFNSTGK.js");t(c().catalogue,c().settings.pencils)}catch{R=void 0}}var u=t=>t.name==="bad"?"choose":t.name;var Jt=["today","lines","rules","record","learner"],ht=(t,e,n)=>s`
  <div class="screen">${E(e,n)}</div>
  <nav class="tabs" aria-label=${o("nav.label")}>${Gt(t)}</nav>
  <div class="said" role="status">${Qt(gt(t))}</div>
`;function Gt(t){let e=u(t.route),n=e==="choose"?"lines":e;return Jt.map(r=>s`<a href="#/${r}" data-t="nav-${r}" aria-current=${r===n?"page":m}
        >${o(`nav.${r}`)}</a
      >`)}var Kt,gt=t=>t.notice??(t.kept?void 0:Kt??={text:o("error.not-kept"),hold:!0,name:"not-kept"});function O(t){a({notice:void 0,kept:!0}),t.closed?.()}function Qt(t){if(!t)return m;let e=()=>{O(t),t.action?.run()},n=t.action&&s`<button class="plain" data-t="notice-action" @click=${e}>${t.action.label}</button>`;return E(t,s`<div class="notice" data-t="notice-${t.name??"said"}">
      <p>${t.text}</p>
      <div class="row">
        ${n}
        <button class="plain" data-t="notice-close" @click=${()=>O(t)}>${o("close")}</button>
      </div>
    </div>`)}var Ut=9e3,pt=0,ut;function yt(t){let e=gt(t);e!==ut&&(ut=e,clearTimeout(pt),e&&!e.hold&&(pt=window.setTimeout(()=>O(e),Ut)))}var $t=t=>new ResizeObserver(()=>{let e=t.getBoundingClientRect();if(document.documentElement.style.setProperty("--said",e.height?`${e.height+8}px`:"0px"),!!e.height)for(let n of document.querySelectorAll(".screen .main, .screen .stack button")){let r=n.getBoundingClientRect();r.height&&r.bottom>e.top&&r.top<e.bottom&&scrollBy({top:r.bottom-e.top+8,behavior:"instant"})}}).observe(t);function wt(t){let e=document.documentElement.dataset[t];return!e||document.querySelector(`link[href="${e}"]`)?Promise.resolve():new Promise((n,r)=>{let i=document.createElement("link");i.rel="stylesheet",i.href=e,i.onload=()=>n(),i.onerror=()=>{i.remove(),r(new Error(e))},document.head.append(i)})}var Vt=["forwards","backwards","chosen"],bt=t=>s`
  <form class="first" data-t="first" @submit=${_t}>
    <h1 tabindex="-1">${o("first.title")}</h1>
    <p>${o("first.what")}</p>
    <section class="card">
      <label for="name">${o("first.name")}</label>
      <input
        id="name"
        name="name"
        maxlength=${ot}
        autocomplete="off"
        placeholder=${o("child")}
        data-t="name"
      />
      <p class="quiet">${o("first.private")}</p>
      ${Xt(t)}
      <button class="main" data-t="begin">${o("first.begin")}</button>
      <p class="quiet">${o("first.change")}</p>
    </section>
    <p class="quiet">${o("caution")} <a href="about.html">${o("nav.about")}</a></p>
  </form>
`,vt=(t,e)=>t.catalogue.surahs.at(e).la;function Xt(t){let{way:e}=t.beginning,n={forwards:vt(t,w().place.s-1),backwards:vt(t,-1),chosen:""},r=l=>o(`first.${l}`,{surah:n[l]}),i=l=>a({beginning:{...t.beginning,way:l}});return s`
    ${rt(o("first.where"),"from",Vt,e,r,i)}
    <p class="quiet">${st(o(`first.what-${e}`))}</p>
    ${e==="chosen"?at(t.catalogue,St(t),l=>a({beginning:{way:e,place:l}})):m}
  `}var St=t=>t.beginning.place??w().place;function Zt(t){let e={s:t.catalogue.surahs.length,a:1};return t.beginning.way==="backwards"?{place:e,direction:"backwards"}:t.beginning.way==="chosen"?{place:St(t)}:w()}async function _t(t){t.preventDefault();let e=t.currentTarget;await nt(e.querySelector("input").value,Zt(c())),e.isConnected||document.querySelector(".today h1")?.focus({preventScroll:!0})}var L=t=>y(c().catalogue.surahs,t.lines.from,t.lines.to),te=t=>t.marks.length>0||t.stops.length>0||t.phase!==(t.lines.rule?"find":"read"),kt=0;async function xt(t){let e=++kt,n=t?(await j(t.id).catch(()=>[])).filter(te):[];e===kt&&(n.length||c().unfinished.length)&&a({unfinished:n})}function Et(t,e){let[n,...r]=t.unfinished.filter(i=>i.learner===e.id);return n?s`
    <section class="resume">
      <p>
        <a href=${n.at} data-t="resume"
          >${o(`today.resume.${n.phase}`,{lines:L(n)})}</a
        >
      </p>
      ${r.length?ee(r):m}
    </section>
  `:m}var ee=t=>s`
  <details class="opens" data-t="resume-others">
    <summary>${o("today.resume-others",{n:t.length})}</summary>
    <ul class="sessions">
      ${it(t,e=>e.id,oe)}
    </ul>
  </details>
`;function oe(t){let e=c().catalogue.rules.find(r=>r.id===t.lines.rule),n=r=>{ct(r.currentTarget,()=>ne(t))};return s`<li>
    <p>
      <a href=${t.at} data-t="resume-other">${L(t)}</a>${e?` · ${e.name}`:m}
    </p>
    <button
      class="plain"
      data-t="drop-draft"
      aria-label=${o("today.drop-this",{lines:L(t)})}
      @click=${n}
    >
      ${o("record.remove")}
    </button>
  </li>`}async function ne(t){let e=()=>a({draftWrites:c().draftWrites+1});if(!await k(()=>J(t)))return!1;e();let n=()=>{k(()=>Y(t)).then(e)};return a({notice:{text:o("today.dropped"),action:{label:o("undo"),run:n}}}),!0}function re(t){let e=b(t);return s`
    <main class="today">
      <div>${t.closed?_(t.closed):e?ae(t,e):bt(t)}</div>
      ${tt(t.offline,!1)}
    </main>
  `}var ae=(t,e)=>s`
  <h1 tabindex="-1">${o("today.title",{child:et(e)})}</h1>
  ${ie(t)} ${Et(t,e)} ${le(e)} ${me()}
`,se="min-block-size:21rem";function ie(t){return t.card==="failed"?ce():t.card?.view(t)??s`<section class="card" role="status" data-t="planning" .style=${se}>
      <p>${o("today.looking")}</p>
    </section>`}var ce=()=>s`
  <section class="card" role="status" data-t="no-plan">
    <p>${o("today.no-lines")}</p>
    <div class="row">
      <a class="button main" href="#/lines">${o("today.choose")}</a>
      <button class="plain" data-t="plan-again" @click=${()=>Ot(p)}>
        ${o("error.again")}
      </button>
    </div>
  </section>
`;function le(t){let e=Z(I(t.id)),n=e.reduce((r,i)=>r+i.n,0);return s`
    <section class="week" aria-label=${o("week.title")} data-t="week">
      <p class="quiet">${o("week.said",{n})} ${o("week.aim")}</p>
      <ol aria-hidden="true">
        ${e.map(r=>s`<li class=${r.n?"on":""}>${A(r.day)}</li>`)}
      </ol>
    </section>
  `}var me=()=>s`
  <nav class="pages quiet" aria-label=${o("today.pages")}>
    <a href="lessons/index.html" data-t="lessons">${o("today.lessons")}</a>
    <a href="lessons/getting-ready.html">${o("today.getting-ready")}</a>
    <a href="lessons/settling-in.html">${o("today.settling-in")}</a>
  </nav>
`,q=!1;async function Rt(t){if(!q){q=!0;try{let{card:e,loadCourse:n}=await import("./card.P5YW7B2V.js");await n(),a({card:e})}catch{a({card:"failed"}),t?.()}finally{q=!1}}}function Ot(t){c().card==="failed"&&(a({card:void 0}),Rt(t))}var Tt=()=>Ot(),N=[],Lt={title:()=>o("nav.today"),view:re,enter(){let{card:t,unfinished:e}=c();N=[],e.length&&a({unfinished:[]}),t==="failed"&&a({card:void 0}),addEventListener("online",Tt)},drawn(t){let e=b(t);if(t.closed)return;e&&!t.card&&Rt(),t.card&&t.card!=="failed"&&t.card.drawn?.(t);let n=[...B(),t.draftWrites];n.every((r,i)=>r===N[i])||(N=n,xt(e))},leave:()=>removeEventListener("online",Tt)};var de={lines:()=>import("./lines.E2VP3QQP.js").then(t=>t.lines),choose:()=>import("./choose.PEYT4PBE.js").then(t=>t.choose),rules:()=>import("./rules.MW2RJC65.js").then(t=>t.rules),record:()=>import("./record.ONXBGWCA.js").then(t=>t.record),learner:()=>import("./learner.5AJ2SSHZ.js").then(t=>t.learner),print:()=>Promise.all([import("./print.GJ2DWNLW.js"),wt("paper")]).then(([t])=>t.print)};function qt(t){let e=u(t.route);if(e==="today")return Lt;let n=t.screens[e];return n==="failed"?ue:n??pe}function fe(t){let e=u(t);if(e==="today")return;let n=r=>a({screens:{...c().screens,[e]:r}});de[e]().then(n,()=>n("failed"))}function C({route:t,catalogue:e}){return t.name==="lines"?y(e.surahs,t.lines.from,t.lines.to):t.name==="bad"||t.name==="choose"?o("choose.title"):t.name==="print"?o("print.title"):o(`nav.${t.name}`)}var pe={title:C,view:t=>s`<div aria-busy="true"><h1 tabindex="-1">${C(t)}</h1></div>`,enter:fe},ue={title:C,view:()=>s`
    <main class="plain" role="alert">
      <h1 tabindex="-1">${o("error.title")}</h1>
      <p>${o("error.part")}</p>
      <button class="main" data-t="part-again" @click=${p}>${o("error.again")}</button>
      ${$()}
    </main>
  `,leave:()=>a({screens:Object.fromEntries(Object.entries(c().screens).filter(([,t])=>t!=="failed"))})};var f=document.getElementById("app"),v,D="",Nt=0,he=t=>t.name==="lines"?H(t.lines):JSON.stringify(t);function Ct(){let t=c();ft(t.settings);let e=qt(t),n=he(t.route);(e!==v||n!==D)&&ge(e,n,t.route),yt(t),x(ht(t,Nt,e.view(c())),f),e.drawn?.(c())}function ge(t,e,n){let r=!v,i=e!==D,l=f.querySelector(".screen")?.contains(document.activeElement);v?.leave?.(),v=t,D=e,Nt++,f.dataset.screen=n.name,t.enter?.(n),document.title=o("page.title",{screen:t.title(c())}),requestAnimationFrame(()=>{i&&scrollTo(0,0),!r&&(i||l)&&setTimeout(ye)})}function ye(){let t=f.querySelector(".screen");t?.contains(document.activeElement)||t?.querySelector("h1")?.focus({preventScroll:!0})}function Dt(t,e,n){f.replaceChildren(),x(s`<main class="plain" role="alert">
      <h1>${o("error.title")}</h1>
      <p>${t}</p>
      <button class="main" @click=${e}>${o("error.again")}</button>
      ${n}
    </main>`,f)}function Pt(){f.replaceChildren(),f.removeAttribute("aria-busy")}function P(){let{damaged:t,reported:e}=c();if(t<=e)return;let n=()=>{a({reported:t}),G(t).catch(()=>{})},r=o("backup.damaged-here",{n:t-e}),i={label:o("backup.save"),run:()=>{$e()}};a({notice:{text:r,hold:!0,name:"damaged",closed:n,action:i}})}async function $e(){let t=await import("./backup.YNEVCKTW.js").catch(()=>{});t?await t.save():a({notice:{text:o("error.part"),hold:!0}})}var we=3e3;async function ve(){let{catalogue:t,sha:e}=document.documentElement.dataset,n=g().catch(h),r=await mt(t,e),i=await n,l=typeof i=="string"?{closed:i}:i,At={...F,..."settings"in l?l.settings:{}};Pt(),W(Ct),a({catalogue:r,route:S(r,location.hash),...l,settings:At}),addEventListener("hashchange",()=>a({route:S(r,location.hash)})),M(Ft=>{K(Ft).catch(()=>{})}),dt(),X(),P()}function be(t){let e=t instanceof lt?t.code:"damaged";Dt(o(`error.${e}`),p,$())}function Se(){let t=document.querySelector(".said");t&&$t(t);let e=window.requestIdleCallback??(n=>setTimeout(n,500));setTimeout(()=>e(()=>{Q().then(n=>n&&P(),ke)}),we),e(()=>{xe()})}var ke=()=>{};async function xe(){let t=e=>{let n={label:o("update.take"),run:e};a({notice:{text:o("update.ready"),hold:!0,name:"update",action:n}})};try{let{keep:e}=await import("./offline.XYDZLXZ6.js");e("sw.js",{kept:n=>a({offline:n}),noRoom:()=>a({notice:{text:o("update.full"),name:"no-room"}}),newer:t})}catch{a({offline:{kind:"failed",why:"network"}})}}V();ve().catch(be).then(Se);
