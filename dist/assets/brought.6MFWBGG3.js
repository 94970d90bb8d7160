import{a as u,b as d}from"./chunk.SHE5VPCE.js";import"./chunk.4UQFCQDR.js";import{a as f}from"./chunk.ZQWQOWT4.js";import"./chunk.UYR2T2K5.js";import"./chunk.C4OPALXK.js";import"./chunk.OA6TLP6Y.js";import{b as m,c as n}from"./chunk.F7ZIPP77.js";import"./chunk.54UGIVXV.js";import"./chunk.X3AHV2R3.js";import"./chunk.RTY2RGDI.js";import"./chunk.IHDLNBOP.js";import"./chunk.JEJVGIZA.js";import"./chunk.NK4HJI4L.js";import{Ca as o,Fb as l,d as e,m as c,o as a,q as h,rb as p}from"./chunk.XFR4XVB7.js";var g=t=>o`
  <main class="handed">
    <h1 tabindex="-1">${e("nav.brought")}</h1>
    ${t.closed?p(t.closed):t.brought?w(t.brought):b()}
  </main>
`,b=()=>o`<p class="quiet">${e("brought.reading")}</p>`,w=t=>o`
  <p class="problem" role="alert" data-t="brought">${e(`brought.${t}`)}</p>
  <p class="row">${l("big")}</p>
  ${d(!0)}
`,i=!1;async function y(){let t=new URL(".",location.href).href,s=await caches.open(m(t)),r=await s.match(new URL(n,t));return await s.delete(new URL(n,t)),r?r.headers.has("Content-Type")?u(c().catalogue,await r.formData()):{bad:"big"}:{bad:"nothing"}}async function $(){i=!0;let t=await y().catch(()=>({bad:"nothing"}));if("bad"in t)return a({brought:t.bad});location.replace("hash"in t?t.hash:h().length?"#/record":"#/today"),"file"in t&&await f(t.file)}var T={title:()=>e("nav.brought"),view:g,enter(){i=!1,a({brought:void 0})},drawn(t){!i&&!t.closed&&$()}};export{T as brought};
