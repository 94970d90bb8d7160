//# allFunctionsCalledOnLoad
var n=()=>!!navigator.share&&matchMedia("(pointer: coarse)").matches;async function o(e,r=""){if(n())try{return await navigator.share({...e&&{url:e},...r&&{text:r}}),"sent"}catch(t){if(t.name==="AbortError")return"sent"}return await a([r,e].filter(Boolean).join(`
`))?"copied":"shown"}async function a(e){try{return await navigator.clipboard.writeText(e),!0}catch{return!1}}export{n as a,o as b,a as c};
