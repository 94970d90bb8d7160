import{j as t}from"./chunk.E4GSWRY5.js";var l=e=>t(e).flatMap(o=>o.rules.map(r=>e.rules[r]));export{l as a};
