//# allFunctionsCalledOnLoad
import{a as u}from"./chunk.RKHWIURI.js";import{a as f,f as h,g as m,h as $}from"./chunk.AUQZJPEM.js";import{a as p}from"./chunk.SZWTVXW4.js";import{Ca as r,Fa as l,Gb as k,d as i,o as g}from"./chunk.TZYIGFUF.js";async function C(e){g({dialog:R}),await h(e)}var R=e=>e.reading?y(e.reading):l,w=e=>{let t=$();p(e)};function y(e){let{rows:t,file:n,ids:a}=e,s=t.some(d=>a.has(d.learner.id)&&(f(d)||e.back&&d.removedHere>0))||n.damaged.length>0,o=t.reduce((d,c)=>d+c.removedHere,0);return r`
    <dialog
      class="asks"
      data-t="reading"
      aria-labelledby="reading-title"
      @close=${()=>g({reading:void 0})}
    >
      <h2 id="reading-title">${i("reading.title")}</h2>
      <p class="quiet">${i("reading.what")}</p>
      <ul class="readings">
        ${t.map(d=>H(e,d))}
      </ul>
      ${n.damaged.length?r`<p class="quiet">${i("backup.odd",{n:n.damaged.length})}</p>`:l}
      ${o?q(e,o):l}
      <div class="row">
        <button class="main" data-t="reading-take" ?disabled=${!s} @click=${w}>
          ${i("reading.take")}
        </button>
        <button class="plain" data-t="reading-leave" @click=${p}>
          ${i("reading.leave")}
        </button>
      </div>
    </dialog>
  `}function H({rows:e,ids:t},n){let{learner:a}=n,s=r`<b><bdi>${k(a)}</bdi></b>`,o=`reading-${a.id}`,d=c=>{let b=[...t].filter(v=>v!==a.id);m({ids:new Set(c?[...b,a.id]:b)})};return r`<li data-t=${o}>
    ${e.length>1?u(`${o}-on`,s,t.has(a.id),d):s}
    <p>${S(n)}</p>
  </li>`}function S(e){let t=a=>e[a]?i(`reading.${a}`,{n:e[a]}):"";return[e.isNew?i("reading.new"):"",t("added"),t("corrected"),t("removed"),e.isNew?"":t("rules"),e.other?i("reading.other"):"",t("left")].filter(Boolean).join(" ")||i("reading.nothing")}var q=(e,t)=>u("reading-back",i("reading.back",{n:t}),e.back,n=>m({back:n}));export{C as a};
