//# allFunctionsCalledOnLoad
import{a as m}from"./chunk.SZWTVXW4.js";import{a as l,b as w}from"./chunk.3BDMI5QV.js";import"./chunk.JH4WJHGB.js";import"./chunk.FR5VNLUN.js";import{Ca as i,d as s,o as c}from"./chunk.TZYIGFUF.js";var f="news.json";async function d(){try{let{scope:t}=await navigator.serviceWorker.getRegistration(),a=new URL(f,t).href,e=new Set(await u(await fetch(a))),o=await Promise.all((await p(t)).map(async n=>u(await(await caches.open(n)).match(a))));return[...new Set(o.flat())].filter(n=>!e.has(n))}catch{return[]}}async function u(t){let a=t?.ok?await t.json():[];return Array.isArray(a)?a.filter(e=>typeof e=="string"):[]}async function p(t){let a=w(t),e=await(await caches.open(a)).match(t),{active:o,older:n}=await e.json();return(await caches.keys()).filter(r=>r.startsWith(l(t))&&r!==a&&r!==o&&!n.includes(r))}async function j(t){let a=await d(),e=()=>c({dialog:void 0});c({dialog:()=>i`
    <dialog class="asks" data-t="news" aria-labelledby="news-title" @close=${e}>
      <h2 id="news-title" tabindex="-1" autofocus>${s("update.news")}</h2>
      ${a.length?i`<ul>
              ${a.map(n=>i`<li>${n}</li>`)}
            </ul>`:i`<p>${s("update.no-news")}</p>`}
      <div class="row">
        <button class="main" data-t="news-take" @click=${t}>${s("update.take")}</button>
        <button class="plain" data-t="news-later" @click=${m}>
          ${s("update.later")}
        </button>
      </div>
    </dialog>
  `})}export{j as showNews};
