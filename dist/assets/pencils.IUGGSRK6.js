//# allFunctionsCalledOnLoad
import{a,b,c,d}from"./chunk.VFCZRPRD.js";import"./chunk.FR5VNLUN.js";import"./chunk.OYEOHGKC.js";export{d as apply,a as onPaper,c as styles,b as troubles};
