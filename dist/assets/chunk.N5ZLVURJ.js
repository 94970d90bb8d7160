//# allFunctionsCalledOnLoad
import{d as e}from"./chunk.3SHQSNAS.js";var m=t=>e(`pencils.family.${t}`);export{m as a};
