//# allFunctionsCalledOnLoad
import{a as n,b as l}from"./chunk.EM6JLGQQ.js";import{Ca as r,Fa as s,d as o,m as a,o as i}from"./chunk.TZYIGFUF.js";var p=3,c=()=>a().making??{say:"",times:p,taught:!0,held:!0},d=e=>i({making:{...c(),...e}}),g=()=>a().received??{learner:"",problem:""},y=e=>i({received:{...g(),...e}}),v=e=>r`
  <label for="say">${e}</label>
  <input
    id="say"
    dir="auto"
    autocomplete="off"
    maxlength=${n}
    .value=${c().say}
    aria-describedby="say-what"
    data-t="say"
    @input=${t=>d({say:l(t.target.value)})}
  />
  <p class="quiet" id="say-what">${o("give.say-what")}</p>
`,f=(e,t)=>t?r`<p class="quiet">${e}</p>
        <blockquote data-t="said"><bdi>${t}</bdi></blockquote>`:s;export{c as a,d as b,g as c,y as d,v as e,f};
