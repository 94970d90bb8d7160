//# allFunctionsCalledOnLoad
var o=t=>`sutur:${t}:`,r=t=>`${o(t)}state`,s="brought",e="quiet?";export{o as a,r as b,s as c,e as d};
