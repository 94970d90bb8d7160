import{h as t}from"./chunk.TIHTPHEU.js";var l=e=>t(e).flatMap(o=>o.rules.map(r=>e.rules[r]));export{l as a};
