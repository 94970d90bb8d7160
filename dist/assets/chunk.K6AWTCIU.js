//# allFunctionsCalledOnLoad
function a(e){let{x:s,c:n}=e.course,t=e.lines(),o=t.passages[0],l=o?e.marks(o):[];return{of:e,rule:n.rules[e.today.rule],found:t,lines:o&&e.proposed(o),marks:l.map(r=>n.rules[r]),places:o?l.reduce((r,p)=>r+s.count(p,o.a,o.b),0):0}}var i=({rule:e,marks:s})=>s.length||!e?s:[e];export{a,i as b};
