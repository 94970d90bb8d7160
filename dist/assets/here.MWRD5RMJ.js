//# allFunctionsCalledOnLoad
import{a as i,b as n}from"./chunk.3BDMI5QV.js";import"./chunk.JH4WJHGB.js";import"./chunk.FR5VNLUN.js";import{Ca as o,Fa as c,d as r,o as a}from"./chunk.TZYIGFUF.js";var h=8;async function p(){try{let{scope:t}=await navigator.serviceWorker.getRegistration(),s=document.querySelector("script[type=module]").src,m=await(await caches.open(n(t))).match(t),{active:f}=await m.json();for(let e of[f,...await caches.keys()])if(e.startsWith(i(t))&&await(await caches.open(e)).match(s))return e.slice(i(t).length).slice(0,h)}catch{}return""}async function d(){let t=await p();a({keptHere:{view:()=>o`
    <p>${r("kept.here")}</p>
    ${t?o`<p data-t="version">${r("kept.version",{version:t})}</p>`:c}
  `}})}export{d as tell};
