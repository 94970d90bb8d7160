import{a as s}from"./chunk.APPKMSLV.js";import{a as d}from"./chunk.EZIODPUZ.js";import{a as p}from"./chunk.P7LSG5ID.js";import{a as r,c as l}from"./chunk.A6UYY2CG.js";import{d as i,l as f}from"./chunk.S3BIYIDD.js";var g=(e,t)=>r`
  <div class="kept quiet" role="status" data-t="offline">${c(e,t)}</div>
`;function c(e,t){let{kind:o,n=0,of:a=0,why:m="network"}=e;return o==="unknown"||o==="ready"&&!e.fetched&&!t?l:o==="failed"?r`<p>${i(`offline.failed-${m}`,{n,of:a})}</p>
      <button class="plain" data-t="offline-again" @click=${u}>${i("error.again")}</button>`:r`<p>${i(`offline.${o==="saving"&&a?"so-far":o}`,{n,of:a})}</p>`}async function u(){f({offline:{kind:"saving"}});try{let{attempt:e}=await import("./offline.E4GU6ZXM.js");await e()}catch{f({offline:{kind:"failed",why:"network"}}),s()}}function x(e,t,o){let n=p({id:"place-verse",least:1,most:e.surahs[t.s-1].count,now:t.a,usual:1,choose:a=>o({s:t.s,a})});return r`
    <div class="fields">
      <div>
        <label for="place-surah">${i("field.surah")}</label
        >${d(e,"place-surah",t.s,a=>o({s:a,a:1}))}
      </div>
      <div><label for="place-verse">${i("field.verse")}</label> ${n}</div>
    </div>
  `}export{g as a,x as b};
