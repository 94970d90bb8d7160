import{b as a,c as b}from"./chunk.PMIMR234.js";import"./chunk.LTV3GLX7.js";import"./chunk.ORXOJBFS.js";import"./chunk.YICT7SXV.js";export{a as backup,b as save};
