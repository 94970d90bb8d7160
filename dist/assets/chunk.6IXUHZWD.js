//# allFunctionsCalledOnLoad
import{d as e}from"./chunk.TZYIGFUF.js";var m=t=>e(`pencils.family.${t}`);export{m as a};
