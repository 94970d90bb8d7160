//# allFunctionsCalledOnLoad
import{a,b,c,d}from"./chunk.ABOHW7P2.js";import"./chunk.FR5VNLUN.js";import"./chunk.2EDBKAC7.js";export{d as apply,a as onPaper,c as styles,b as troubles};
