//# allFunctionsCalledOnLoad
import{a,b,c,d}from"./chunk.5ENDEJPP.js";import"./chunk.FR5VNLUN.js";import"./chunk.YRF4DGAD.js";export{d as apply,a as onPaper,c as styles,b as troubles};
