//# allFunctionsCalledOnLoad
import{d as a,e as b,f as c,g as d,h as e}from"./chunk.AUQZJPEM.js";import"./chunk.JH4WJHGB.js";import"./chunk.FR5VNLUN.js";import"./chunk.TZYIGFUF.js";export{e as accept,d as choose,b as give,c as restore,a as save};
