//# allFunctionsCalledOnLoad
import{a}from"./chunk.UT6EWK5X.js";import"./chunk.RBJCUORR.js";import"./chunk.EFGGJKVR.js";import"./chunk.SZWTVXW4.js";import"./chunk.XDHUG4LO.js";import"./chunk.FR5VNLUN.js";import"./chunk.2EDBKAC7.js";export{a as readFile};
