//# allFunctionsCalledOnLoad
import{d as e}from"./chunk.OYEOHGKC.js";var m=t=>e(`pencils.family.${t}`);export{m as a};
