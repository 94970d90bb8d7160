import{a}from"./chunk.W7Y4NHPC.js";import"./chunk.LE5DKOMH.js";import"./chunk.6RREKEHW.js";import"./chunk.WZOTPK3V.js";import"./chunk.POHJCMQZ.js";import"./chunk.NGFYTAMG.js";export{a as panel};
