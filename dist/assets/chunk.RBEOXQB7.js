import{a as e}from"./chunk.A6UYY2CG.js";var o=(s,i,n,l,r,a)=>e`
  <fieldset class="choice">
    <legend>${s}</legend>
    <div class="row">
      ${n.map(t=>e`<button
            type="button"
            class="chip"
            data-t="${i}-${t}"
            aria-pressed=${t===l}
            @click=${()=>a(t)}
          >
            ${r(t)}
          </button>`)}
    </div>
  </fieldset>
`;export{o as a};
