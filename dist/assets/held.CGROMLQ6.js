import{q as a,r as b,s as c}from"./chunk.7IEACX6N.js";import"./chunk.7WAI2CQ6.js";import"./chunk.NGFYTAMG.js";export{c as child,a as load,b as look};
