//# allFunctionsCalledOnLoad
import{a as f}from"./chunk.JXAOP2K5.js";import{a as p,e as c}from"./chunk.MHOPZ4P2.js";import"./chunk.OXJ272IV.js";import"./chunk.BUJT5NJZ.js";import{b as d,f as m}from"./chunk.Y3ELL5AQ.js";import"./chunk.I6UDG63Q.js";import"./chunk.EM6JLGQQ.js";import"./chunk.JH4WJHGB.js";import"./chunk.FR5VNLUN.js";import{Ca as o,d as t,o as a,ub as i}from"./chunk.TZYIGFUF.js";function l(e){let{route:n}=e,s=n.name==="send"?e.sessions.find(r=>r.id===n.id):void 0;return o`<main class="handed">
    ${e.closed?i(e.closed):s?h(e,s):u()}
  </main>`}function h({catalogue:e},n){let{say:s}=p(),r=[m(e,n),s].filter(Boolean).join(`
`);return o`
    <h1 tabindex="-1" class="off-paper">${t("nav.send")}</h1>
    <div class="off-paper">
      <p class="quiet">${t("send.what")}</p>
      <section class="card">${c(t("send.say"))}</section>
    </div>
    ${f({hash:d(e,n,s),words:r})}
  `}var u=()=>o`
  <h1 tabindex="-1" class="off-paper">${t("nav.send")}</h1>
  <p class="empty" data-t="send-gone">${t("send.gone")}</p>
  <a class="button big" href="#/record">${t("nav.record")}</a>
`,k={title:()=>t("nav.send"),view:l,enter:()=>a({making:void 0})};export{k as send};
