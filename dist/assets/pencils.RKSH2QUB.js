import{a,b,c,d}from"./chunk.IGIUYOIN.js";import"./chunk.NK4HJI4L.js";import"./chunk.XFR4XVB7.js";export{d as apply,a as onPaper,c as styles,b as troubles};
