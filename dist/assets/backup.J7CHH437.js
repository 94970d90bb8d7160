//# allFunctionsCalledOnLoad
import{d as a,e as b,f as c,g as d,h as e}from"./chunk.EFGGJKVR.js";import"./chunk.XDHUG4LO.js";import"./chunk.FR5VNLUN.js";import"./chunk.2EDBKAC7.js";export{e as accept,d as choose,b as give,c as restore,a as save};
