import{a as K}from"./chunk.WL4ATKXQ.js";import{a as x,b as y,c as E,e as D,f as T,g as q}from"./chunk.KDDPET5T.js";import{a as w}from"./chunk.REU32BFX.js";import{a as c}from"./chunk.GDFFJXAG.js";import"./chunk.AG2JNZO7.js";import"./chunk.6RREKEHW.js";import{c as $}from"./chunk.UEZBRT4U.js";import"./chunk.APPKMSLV.js";import"./chunk.Y6T2TAYM.js";import{a as k}from"./chunk.PH67WDNA.js";import"./chunk.HOVA7EIO.js";import"./chunk.ZZZOJVYT.js";import{D as L,G as m,i as d,j as b}from"./chunk.6M4S66JV.js";import{a as I,b as O}from"./chunk.C2CM5TJ3.js";import{e as F}from"./chunk.M2I3IBPU.js";import{a as i,c as l,o as u}from"./chunk.JW3C4FA3.js";import{c as o,i as f,k as p,m as v,n as S}from"./chunk.XR2DP2R4.js";function M(t){let e=t.load??"few",{first:r,later:a}=O[e],n=s=>{m(()=>d(t.id,{load:s}))};return i`
    <section class="card">
      ${c(o("load.title"),"load",I,e,s=>o(`load.${s}`),n)}
      <p class="quiet" data-t="load-what">
        ${o("load.what",{n:3,a:r[0],b:r[1],c:a[0],d:a[1]})}
      </p>
    </section>
  `}function A(t){p({settings:{...f().settings,...t}}),m(()=>L(t))}function C(t){let{rules:e}=t.catalogue;return i`
    <section class="card looks">
      <h2>${o("looks.title")}</h2>
      ${P(t,"size",.7,1.8)} ${P(t,"spacing",.4,2.5)} ${Q(t)}
      ${g(t,"theme",["auto","light","dark"])}
      <h2>${o("looks.counts")}</h2>
      <p class="quiet">${o("looks.counts-what")}</p>
      ${g(t,"madd",$(e,"madd"))} ${g(t,"arid",$(e,"arid"))}
    </section>
  `}var P=(t,e,r,a)=>i`
  <label for=${e}>${o(`looks.${e}`)}</label>
  <input
    id=${e}
    type="range"
    min=${r}
    max=${a}
    step="0.1"
    .value=${String(t.settings[e])}
    data-t=${e}
    @input=${n=>A({[e]:Number(n.target.value)})}
  />
`,g=(t,e,r)=>{let a=n=>typeof n=="number"?String(n):o(`looks.theme.${n}`);return c(o(`looks.${e}`),e,r,t.settings[e],a,n=>A({[e]:n}))},Q=({sample:t})=>t==="failed"?l:i`<p class="text preview" lang="ar" dir="rtl" .textContent=${t?.text??""}></p>`;async function H(){let{sample:t,catalogue:e}=f();if(t&&t!=="failed")return;let r={s:1,a:1},[a]=await F(e,r,r).catch(()=>[]);p({sample:a??"failed"})}function z(t,e){return e?i`
    <section class="card">
      ${t.learners.length>1?W(t.learners,e):l}
      <label for="nickname">${o("people.name")}</label>
      ${k(e.id,X(e))}
      <div class="row">
        <button class="plain" data-t="add-learner" @click=${()=>{Y()}}>
          ${o("people.add")}
        </button>
        <button class="plain" data-t="remove-learner" @click=${()=>p({removing:e})}>
          ${o("people.remove")}
        </button>
      </div>
    </section>
  `:V()}var V=()=>i`
  <section class="card">
    <p>${o("people.none")}</p>
    <a class="button main" href="#/today">${o("nav.today")}</a>
  </section>
`;function W(t,e){let r=n=>u(t.find(s=>s.id===n)),a=t.map(n=>n.id);return c(o("people.who"),"learner",a,e.id,r,n=>{D(n)})}function X(t){let e=({target:r})=>{let a=r;a.value=E(a.value),m(()=>d(t.id,{name:a.value}))};return i`<input
    id="nickname"
    .value=${t.name}
    maxlength=${y}
    autocomplete="off"
    placeholder=${o("child")}
    data-t="nickname"
    @change=${e}
  />`}async function Y(){await T(""),document.getElementById("nickname")?.focus()}var N=t=>t.target.closest("dialog").close();function B(t){let e=a=>{N(a),m(()=>b(t.id))},r=S(t.id).length;return i`
    <dialog data-t="confirm" @close=${()=>p({removing:void 0})}>
      <p>${o("people.sure",{child:u(t),n:r})}</p>
      <div class="row">
        <button class="big" data-t="keep" @click=${N}>${o("people.keep")}</button>
        <button class="plain" data-t="confirm-remove" @click=${e}>
          ${o("people.remove")}
        </button>
      </div>
    </dialog>
  `}function G(){let t=document.querySelector("dialog[data-t=confirm]");t&&!t.open&&t.showModal()}var Z=["forwards","backwards"];function U({catalogue:t},e){let r=s=>{m(()=>d(e.id,s))},a=e.direction??"forwards",n=s=>r({direction:s});return i`
    <section class="card">
      <h2>${o("place.title")}</h2>
      <p class="quiet">${o("place.what")}</p>
      ${q(t,e.place,s=>r({place:s}))}
      ${c(o("place.direction"),"direction",Z,a,s=>o(`place.${s}`),n)}
    </section>
  `}function _(t){let e=v(t);return i`
    <main class="learner">
      ${t.closed?w(t.closed):i`<h1 tabindex="-1">${o("nav.learner")}</h1>
              ${z(t,e)}`}
      ${e?[U(t,e),M(e)]:l} ${C(t)}
      <div class="card">${K(t)}</div>
      <section class="card">
        <h2>${o("print.on-paper")}</h2>
        <p class="quiet">${o("print.on-paper-what")}</p>
        <a class="button big" href="#/print" data-t="to-print">${o("print.title")}</a>
      </section>
      ${x(t.offline,!0)}
      <p class="quiet">${o("caution")} <a href="about.html">${o("nav.about")}</a></p>
      ${t.removing?B(t.removing):l}
    </main>
  `}var Rt={title:()=>o("nav.learner"),view:_,enter:()=>{H()},drawn:G,leave(){f().removing&&p({removing:void 0})}};export{Rt as learner};
