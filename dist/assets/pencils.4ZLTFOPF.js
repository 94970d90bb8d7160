//# allFunctionsCalledOnLoad
import{a,b,c,d}from"./chunk.CPB36SEW.js";import"./chunk.FR5VNLUN.js";import"./chunk.3SHQSNAS.js";export{d as apply,a as onPaper,c as styles,b as troubles};
