//# allFunctionsCalledOnLoad
import{b as k}from"./chunk.SORUR6TA.js";import"./chunk.Y3ELL5AQ.js";import"./chunk.I6UDG63Q.js";import{a as l}from"./chunk.CB627SJK.js";import{d as w}from"./chunk.CKAGG5SX.js";import"./chunk.EM6JLGQQ.js";import"./chunk.JH4WJHGB.js";import"./chunk.FR5VNLUN.js";import{Ca as o,Eb as d,Fa as i,Q as f,R as c,d as t,r as m,s as p}from"./chunk.TZYIGFUF.js";var $=({id:r})=>o`<a class="button plain" href=${f(r)} data-t="send-result">${t("nav.send")}</a>`;var j={view(r){let e=m(r);if(!e?.work)return o``;let{lines:s,times:u,say:n}=e.work,a=l(e.work,p(e.id)),h=d(r.catalogue.surahs,s.from,s.to);return o`
      <h2>${t("work.title")}</h2>
      <p data-t="work-done">${h} · ${t("work.done",{n:a.length,of:u})}</p>
      <p>${w(r.catalogue,s)}</p>
      ${n?o`<p class="quiet"><bdi>${n}</bdi></p>`:i}
      <div class="row">
        <a class="button big" href=${c(s)} data-t="work-open">${t("work.start")}</a>
        ${a[0]?$(a[0]):i}
        <button class="plain" data-t="work-away" @click=${()=>{k(e)}}>
          ${t("work.away")}
        </button>
      </div>
    `}};export{j as work};
