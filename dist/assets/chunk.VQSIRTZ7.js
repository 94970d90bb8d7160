//# allFunctionsCalledOnLoad
var e=()=>matchMedia("(prefers-reduced-motion: reduce)").matches?"instant":"smooth";export{e as a};
