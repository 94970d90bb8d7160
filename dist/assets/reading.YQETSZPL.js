//# allFunctionsCalledOnLoad
import{a}from"./chunk.OWTES5FQ.js";import"./chunk.JPJLU3I3.js";import"./chunk.OQTUS3KB.js";import"./chunk.SZWTVXW4.js";import"./chunk.6VHRN2IR.js";import"./chunk.FR5VNLUN.js";import"./chunk.B6DWFGOZ.js";export{a as readFile};
