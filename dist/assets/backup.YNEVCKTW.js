import{b as a,c as b}from"./chunk.SROMD2EF.js";import"./chunk.6M4S66JV.js";import"./chunk.ABXU77RL.js";import"./chunk.XR2DP2R4.js";export{b as restore,a as save};
