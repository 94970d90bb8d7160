//# allFunctionsCalledOnLoad
import{J as r,R as s}from"./chunk.TZYIGFUF.js";function u(n,{rule:e,pencils:i=[],from:l,to:a}){let o=i.filter(t=>r(n,t)),m=n.rules.some(t=>t.id===e)?e:"";return s({rule:m,...o.length&&{also:o},from:l,to:a})}export{u as a};
