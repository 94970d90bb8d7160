//# allFunctionsCalledOnLoad
import{Wa as s}from"./chunk.3SHQSNAS.js";var n=(o,t="")=>s(`lessons/${o}.html${t}`);export{n as a};
