import{a as m}from"./chunk.A6UYY2CG.js";function c({id:e,least:n,most:t,now:i,usual:a,choose:o}){let b=d=>{let r=d.target,u=Math.min(t,Math.max(n,Math.round(Number(r.value))||a));r.value=String(u),o(u)};return m`<input
    id=${e}
    type="number"
    inputmode="numeric"
    min=${n}
    max=${t}
    .value=${String(i)}
    data-t=${e}
    @change=${b}
  />`}export{c as a};
