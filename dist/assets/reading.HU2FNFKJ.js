//# allFunctionsCalledOnLoad
import{a}from"./chunk.TP52CSGI.js";import"./chunk.P2OWEU52.js";import"./chunk.MMVXLLX2.js";import"./chunk.SZWTVXW4.js";import"./chunk.SMX76BLO.js";import"./chunk.FR5VNLUN.js";import"./chunk.YRF4DGAD.js";export{a as readFile};
