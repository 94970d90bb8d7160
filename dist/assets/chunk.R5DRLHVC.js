import{Ta as s}from"./chunk.XFR4XVB7.js";var n=(o,t="")=>s(`lessons/${o}.html${t}`);export{n as a};
