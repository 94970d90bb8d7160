//# allFunctionsCalledOnLoad
import{d as a,e as b,f as c,g as d,h as e}from"./chunk.YHNQLIIW.js";import"./chunk.IZID5SDW.js";import"./chunk.FR5VNLUN.js";import"./chunk.3SHQSNAS.js";export{e as accept,d as choose,b as give,c as restore,a as save};
