import{a,b}from"./chunk.Q374RP7Y.js";import"./chunk.2ZCWRFRC.js";import"./chunk.ZH4VIE7A.js";import"./chunk.F5IERCXU.js";export{a as backup,b as save};
