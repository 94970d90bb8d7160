import{a as g}from"./chunk.APPKMSLV.js";import{a as h}from"./chunk.Y6T2TAYM.js";import{a as v}from"./chunk.HOVA7EIO.js";import{D as m,F as d,G as l,b as p,h as c}from"./chunk.6M4S66JV.js";import{a,c as u}from"./chunk.JW3C4FA3.js";import{c as o,i as f,k as i}from"./chunk.XR2DP2R4.js";var z=(e,t)=>a`
  <div class="kept quiet" role="status" data-t="offline">${$(e,t)}</div>
`;function $(e,t){let{kind:r,n:s=0,of:n=0,why:w="network"}=e;return r==="unknown"||r==="ready"&&!e.fetched&&!t?u:r==="failed"?a`<p>${o(`offline.failed-${w}`,{n:s,of:n})}</p>
      <button class="plain" data-t="offline-again" @click=${k}>${o("error.again")}</button>`:a`<p>${o(`offline.${r==="saving"&&n?"so-far":r}`,{n:s,of:n})}</p>`}async function k(){i({offline:{kind:"saving"}});try{let{attempt:e}=await import("./offline.XYDZLXZ6.js");await e()}catch{i({offline:{kind:"failed",why:"network"}}),g()}}var b=40,x=e=>e.trim().slice(0,b);function L(){let[e,t]=f().catalogue.juz[29]??[78,1];return{place:{s:e,a:t}}}function S(e,t){let r=new Date().toISOString();return{id:p(),name:x(e),...t,settled:!1,made:r,updated:r}}async function B(e){i({settings:{...f().settings,learner:e}}),await l(()=>m({learner:e}))}async function q(e,t=L()){let r=S(e,t);await l(()=>c(r))&&(await B(r.id),d())}function P(e,t,r){let s=v({id:"place-verse",least:1,most:e.surahs[t.s-1].count,now:t.a,usual:1,choose:n=>r({s:t.s,a:n})});return a`
    <div class="fields">
      <div>
        <label for="place-surah">${o("field.surah")}</label
        >${h(e,"place-surah",t.s,n=>r({s:n,a:1}))}
      </div>
      <div><label for="place-verse">${o("field.verse")}</label> ${s}</div>
    </div>
  `}export{z as a,b,x as c,L as d,B as e,q as f,P as g};
