//# allFunctionsCalledOnLoad
import{d as e}from"./chunk.B6DWFGOZ.js";var m=t=>e(`pencils.family.${t}`);export{m as a};
