import{h as t}from"./chunk.7IEACX6N.js";var l=e=>t(e).flatMap(o=>o.rules.map(r=>e.rules[r]));export{l as a};
