//# allFunctionsCalledOnLoad
import{d as e}from"./chunk.2EDBKAC7.js";var m=t=>e(`pencils.family.${t}`);export{m as a};
