//# allFunctionsCalledOnLoad
import{a,b,c,d}from"./chunk.6GXSN2UD.js";import"./chunk.FR5VNLUN.js";import"./chunk.B6DWFGOZ.js";export{d as apply,a as onPaper,c as styles,b as troubles};
