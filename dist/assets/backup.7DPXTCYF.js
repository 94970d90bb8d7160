import{b as a,c as b}from"./chunk.EVS3ONGE.js";import"./chunk.RCYS5ULD.js";import"./chunk.ABXU77RL.js";import"./chunk.S3BIYIDD.js";import"./chunk.YE24VLP2.js";export{b as restore,a as save};
