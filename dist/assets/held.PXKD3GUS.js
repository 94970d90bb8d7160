import{q as a,r as b,s as c}from"./chunk.TIHTPHEU.js";import"./chunk.STBKLFV4.js";import"./chunk.NGFYTAMG.js";export{c as child,a as load,b as look};
