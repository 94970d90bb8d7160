function u(o,i){let e=[],n=()=>{let t=o();e.length&&t.every((r,d)=>r===e[d])||(e=t,i())};return n(),n}export{u as a};
