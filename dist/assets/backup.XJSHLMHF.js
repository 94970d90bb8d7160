//# allFunctionsCalledOnLoad
import{d as a,e as b,f as c,g as d,h as e}from"./chunk.MMVXLLX2.js";import"./chunk.SMX76BLO.js";import"./chunk.FR5VNLUN.js";import"./chunk.YRF4DGAD.js";export{e as accept,d as choose,b as give,c as restore,a as save};
