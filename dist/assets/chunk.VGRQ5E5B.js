//# allFunctionsCalledOnLoad
import{d as e}from"./chunk.YRF4DGAD.js";var m=t=>e(`pencils.family.${t}`);export{m as a};
