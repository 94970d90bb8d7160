//# allFunctionsCalledOnLoad
import{Wa as s}from"./chunk.2EDBKAC7.js";var n=(o,t="")=>s(`lessons/${o}.html${t}`);export{n as a};
