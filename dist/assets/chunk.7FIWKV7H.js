//# allFunctionsCalledOnLoad
import{Wa as s}from"./chunk.YRF4DGAD.js";var n=(o,t="")=>s(`lessons/${o}.html${t}`);export{n as a};
