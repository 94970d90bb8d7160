//# allFunctionsCalledOnLoad
import{Ca as e}from"./chunk.TZYIGFUF.js";var p=(t,n,a,o)=>e`
  <label class="tick"
    ><input
      type="checkbox"
      .checked=${a}
      data-t=${t}
      @change=${c=>o(c.target.checked)}
    /><span>${n}</span></label
  >
`;export{p as a};
