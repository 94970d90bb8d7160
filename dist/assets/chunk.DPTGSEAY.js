//# allFunctionsCalledOnLoad
import{Wa as s}from"./chunk.TZYIGFUF.js";var n=(o,t="")=>s(`lessons/${o}.html${t}`);export{n as a};
