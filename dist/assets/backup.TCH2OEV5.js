//# allFunctionsCalledOnLoad
import{d as a,e as b,f as c,g as d,h as e}from"./chunk.OQTUS3KB.js";import"./chunk.6VHRN2IR.js";import"./chunk.FR5VNLUN.js";import"./chunk.B6DWFGOZ.js";export{e as accept,d as choose,b as give,c as restore,a as save};
