//# allFunctionsCalledOnLoad
import{a as M}from"./chunk.JXAOP2K5.js";import{a as f,b as l,e as H}from"./chunk.MHOPZ4P2.js";import"./chunk.OXJ272IV.js";import"./chunk.BUJT5NJZ.js";import{a as p}from"./chunk.RKHWIURI.js";import{b as $}from"./chunk.CB627SJK.js";import{a as k,b,d as w,e as x,f as L,g as T}from"./chunk.CKAGG5SX.js";import"./chunk.EM6JLGQQ.js";import"./chunk.JH4WJHGB.js";import"./chunk.FR5VNLUN.js";import{Ca as m,Eb as y,Fa as d,Gb as S,R as u,d as a,o as g,r as c,sb as v,t as h}from"./chunk.TZYIGFUF.js";var E=Array.from({length:k},(t,i)=>i+1);function I(t){let{route:i,catalogue:r}=t;if(i.name!=="give")return m``;let{lines:e}=i,o=f(),n=_(t).map(B=>B.id),s=b({lines:e,times:o.times,lessons:o.taught?n:[],...o.held&&{held:T(t.settings)},say:o.say}),O=[x(r,e,o.times),o.say].filter(Boolean).join(`
`);return m`
    <main class="handed">
      <div class="off-paper">
        <a class="button plain" href=${u(e)} data-t="back"
          >${y(r.surahs,e.from,e.to)}</a
        >
      </div>
      <h1 tabindex="-1" class="off-paper">${a("nav.give")}</h1>
      <div class="off-paper">${j(t,e,n.length)}</div>
      ${M({hash:s,words:O})}
    </main>
  `}function _(t){let i=c(t);return i?$(t.catalogue,new Set(h(i.id).map(r=>r.rule))):[]}function j(t,i,r){let e=f(),o=L(t.settings),n=s=>String(s);return m`
    <p class="quiet">${a("give.what")}</p>
    <section class="card">
      <p><b>${w(t.catalogue,i)}</b></p>
      ${v(a("give.times"),"times",E,e.times,n,s=>l({times:s}))}
      ${H(a("give.say"))}
      ${r?p("give-taught",a("give.taught",{n:r,child:S(c(t))}),e.taught,s=>l({taught:s})):d}
      ${p("give-held",a("give.held",{lengths:o}),e.held,s=>l({held:s}))}
    </section>
  `}var U={title:()=>a("nav.give"),view:I,enter:()=>g({making:void 0})};export{U as give};
