//# allFunctionsCalledOnLoad
import{c as g,d as p}from"./chunk.MHOPZ4P2.js";import{c as d}from"./chunk.Y3ELL5AQ.js";import{c as h}from"./chunk.CKAGG5SX.js";import{l as c}from"./chunk.EM6JLGQQ.js";import{Ca as l,Fa as u,d as a,m}from"./chunk.TZYIGFUF.js";var b=["url","text","title"],w="files";function f(t,r){let e=c(r),[i,s,o]=/^#\/(\w+)\?(.*?\bend=\w+)/.exec(e??"")??[];return o&&"given"in(s==="work"?h(t,o):d(t,o))?i:e}var y=t=>typeof t!="string"&&!!(t.name||t.size);function I(t,r){let e=r.getAll(w).filter(y);if(e.length>1)return{bad:"several"};let[i]=e;if(i)return{file:i};let s=b.map(n=>r.get(n)).filter(n=>typeof n=="string"&&n.trim());if(!s.length)return{bad:"nothing"};let o=f(t,s.join(`
`));return o?{hash:o}:{bad:"foreign"}}var E=t=>l`
  <form class="card" data-t="paste" @submit=${v}>
    ${t?l`<h2>${a("paste.title")}</h2>`:u}
    <p class="quiet" id="paste-what">${a("paste.what")}</p>
    <label for="paste-field">${a("paste.field")}</label>
    <textarea
      id="paste-field"
      rows="4"
      required
      aria-describedby="paste-what"
      data-t="paste-field"
    ></textarea>
    <p class="problem" role="alert" data-t="problem" .textContent=${g().problem}></p>
    <button class="main" data-t="paste-open">${a("paste.open")}</button>
  </form>
`;function v(t){t.preventDefault();let r=t.currentTarget.querySelector("textarea"),e=f(m().catalogue,r.value);if(!e)return p({problem:a("paste.none")});p({problem:""}),r.value="",location.hash=e}export{I as a,E as b};
