//# allFunctionsCalledOnLoad
import{a}from"./chunk.GQQQSYVL.js";import"./chunk.TOM7XRLW.js";import"./chunk.O2LQJJLR.js";import"./chunk.SZWTVXW4.js";import"./chunk.H3P2TS2G.js";import"./chunk.FR5VNLUN.js";import"./chunk.OYEOHGKC.js";export{a as readFile};
