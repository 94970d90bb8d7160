//# allFunctionsCalledOnLoad
import{a}from"./chunk.ZN3RF24E.js";import"./chunk.KSYMSB2O.js";import"./chunk.YHNQLIIW.js";import"./chunk.SZWTVXW4.js";import"./chunk.IZID5SDW.js";import"./chunk.FR5VNLUN.js";import"./chunk.3SHQSNAS.js";export{a as readFile};
