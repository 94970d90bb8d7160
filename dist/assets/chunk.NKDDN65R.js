import{d as e}from"./chunk.XFR4XVB7.js";var m=t=>e(`pencils.family.${t}`);export{m as a};
