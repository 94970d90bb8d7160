//# allFunctionsCalledOnLoad
import{a as u,b as d}from"./chunk.QZEEDDTA.js";import"./chunk.MHOPZ4P2.js";import{a as f}from"./chunk.VAACBFTI.js";import"./chunk.RKHWIURI.js";import"./chunk.AUQZJPEM.js";import"./chunk.SZWTVXW4.js";import{b as m,c as n}from"./chunk.3BDMI5QV.js";import"./chunk.Y3ELL5AQ.js";import"./chunk.I6UDG63Q.js";import"./chunk.CKAGG5SX.js";import"./chunk.EM6JLGQQ.js";import"./chunk.JH4WJHGB.js";import"./chunk.FR5VNLUN.js";import{Ca as o,Ib as l,d as e,m as c,o as a,q as h,ub as p}from"./chunk.TZYIGFUF.js";var g=t=>o`
  <main class="handed">
    <h1 tabindex="-1">${e("nav.brought")}</h1>
    ${t.closed?p(t.closed):t.brought?w(t.brought):b()}
  </main>
`,b=()=>o`<p class="quiet">${e("brought.reading")}</p>`,w=t=>o`
  <p class="problem" role="alert" data-t="brought">${e(`brought.${t}`)}</p>
  <p class="row">${l("big")}</p>
  ${d(!0)}
`,i=!1;async function y(){let t=new URL(".",location.href).href,s=await caches.open(m(t)),r=await s.match(new URL(n,t));return await s.delete(new URL(n,t)),r?r.headers.has("Content-Type")?u(c().catalogue,await r.formData()):{bad:"big"}:{bad:"nothing"}}async function $(){i=!0;let t=await y().catch(()=>({bad:"nothing"}));if("bad"in t)return a({brought:t.bad});location.replace("hash"in t?t.hash:h().length?"#/record":"#/today"),"file"in t&&await f(t.file)}var T={title:()=>e("nav.brought"),view:g,enter(){i=!1,a({brought:void 0})},drawn(t){!i&&!t.closed&&$()}};export{T as brought};
