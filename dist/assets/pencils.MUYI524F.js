import{a,b,c,d}from"./chunk.AG2JNZO7.js";import"./chunk.6RREKEHW.js";import"./chunk.YE24VLP2.js";export{d as apply,a as onPaper,c as styles,b as troubles};
