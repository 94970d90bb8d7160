import{a as t}from"./chunk.A6UYY2CG.js";var u=(r,a,o,l)=>t`
  <select
    id=${a}
    data-t=${a}
    @change=${e=>l(Number(e.target.value))}
  >
    ${r.surahs.map(e=>t`<option value=${e.n} .selected=${e.n===o}>
          ${`${e.n}. ${e.la} · ⁧${e.ar}⁩`}
        </option>`)}
  </select>
`;export{u as a};
