//# allFunctionsCalledOnLoad
import{a}from"./chunk.VAACBFTI.js";import"./chunk.RKHWIURI.js";import"./chunk.AUQZJPEM.js";import"./chunk.SZWTVXW4.js";import"./chunk.JH4WJHGB.js";import"./chunk.FR5VNLUN.js";import"./chunk.TZYIGFUF.js";export{a as readFile};
