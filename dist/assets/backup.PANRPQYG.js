//# allFunctionsCalledOnLoad
import{d as a,e as b,f as c,g as d,h as e}from"./chunk.O2LQJJLR.js";import"./chunk.H3P2TS2G.js";import"./chunk.FR5VNLUN.js";import"./chunk.OYEOHGKC.js";export{e as accept,d as choose,b as give,c as restore,a as save};
