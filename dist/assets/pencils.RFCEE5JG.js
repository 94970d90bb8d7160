//# allFunctionsCalledOnLoad
import{a,b,c,d}from"./chunk.KBVAMGSF.js";import"./chunk.FR5VNLUN.js";import"./chunk.TZYIGFUF.js";export{d as apply,a as onPaper,c as styles,b as troubles};
