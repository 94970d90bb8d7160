//# allFunctionsCalledOnLoad
var n=["few","usual","many"];var a={few:{first:[4,7],later:[8,12]},usual:{first:[6,10],later:[12,18]},many:{first:[8,14],later:[16,24]}};function s(r,t){let[e,o]=a[r.load??"few"][t<3?"first":"later"];return{fewest:e,most:o,short:4}}export{n as a,a as b,s as c};
