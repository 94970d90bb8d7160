import{a}from"./chunk.QJEJUHRN.js";import"./chunk.LE5DKOMH.js";import"./chunk.6RREKEHW.js";import"./chunk.SYHLGWWA.js";import"./chunk.72K5L4SK.js";import"./chunk.NGFYTAMG.js";export{a as panel};
