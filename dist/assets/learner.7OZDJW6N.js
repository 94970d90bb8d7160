import{a as O}from"./chunk.ZCLDAGIS.js";import{a as w,b as T}from"./chunk.JEDIKCEU.js";import{a as k}from"./chunk.RAJEIFQJ.js";import{a as c}from"./chunk.RBEOXQB7.js";import"./chunk.AG2JNZO7.js";import"./chunk.6RREKEHW.js";import"./chunk.TWD3TNZW.js";import{a as x,b as E,d as q,e as D}from"./chunk.FQKUSJ4B.js";import"./chunk.APPKMSLV.js";import{a as u,d as $}from"./chunk.TX2AM5FN.js";import"./chunk.EZIODPUZ.js";import{a as y}from"./chunk.JG3ILKLC.js";import"./chunk.P7LSG5ID.js";import"./chunk.CLYPCFEQ.js";import{H as p,j as d,k as L}from"./chunk.RCYS5ULD.js";import"./chunk.U4LIOG5F.js";import{a as C,b as I}from"./chunk.C2CM5TJ3.js";import{e as N}from"./chunk.E6OLOVED.js";import{a,c as l,o as g}from"./chunk.A6UYY2CG.js";import{d as o,j as f,l as m,o as S,p as b}from"./chunk.S3BIYIDD.js";import"./chunk.YE24VLP2.js";var Y=["once","every","never"],j=t=>{u({counting:t})},A=({settings:t})=>a`
  <section class="card">
    ${c(o("learner.counting"),"counting",Y,t.counting??"once",e=>o(`learner.counting-${e}`),j)}
    <p class="quiet">${o("learner.counting-what")}</p>
  </section>
`;function K(t){let e=t.load??"few",{first:n,later:r}=I[e],i=s=>{p(()=>d(t.id,{load:s}))};return a`
    <section class="card">
      ${c(o("load.title"),"load",C,e,s=>o(`load.${s}`),i)}
      <p class="quiet" data-t="load-what">
        ${o("load.what",{n:3,a:n[0],b:n[1],c:r[0],d:r[1]})}
      </p>
    </section>
  `}var v=t=>{u(t)};function R(t){let{rules:e}=t.catalogue;return a`
    <section class="card looks">
      <h2>${o("looks.title")}</h2>
      ${M(t,"size",.7,1.8)} ${M(t,"spacing",.4,2.5)} ${X(t)}
      ${h(t,"theme",["auto","light","dark"])} ${V(t)}
      <h2>${o("looks.counts")}</h2>
      <p class="quiet">${o("looks.counts-what")}</p>
      ${h(t,"madd",$(e,"madd"))} ${h(t,"arid",$(e,"arid"))}
    </section>
  `}var M=(t,e,n,r)=>a`
  <label for=${e}>${o(`looks.${e}`)}</label>
  <input
    id=${e}
    type="range"
    min=${n}
    max=${r}
    step="0.1"
    .value=${String(t.settings[e])}
    data-t=${e}
    @input=${i=>v({[e]:Number(i.target.value)})}
  />
`,h=(t,e,n)=>{let r=i=>typeof i=="number"?String(i):o(`looks.theme.${i}`);return c(o(`looks.${e}`),e,n,t.settings[e],r,i=>v({[e]:i}))},V=({settings:t})=>{let e=r=>o(`looks.large.${r}`),n=r=>v({large:r==="yes"});return c(o("looks.large"),"large",["no","yes"],t.large?"yes":"no",e,n)},X=({sample:t})=>t==="failed"?l:a`<p class="text preview" lang="ar" dir="rtl" .textContent=${t?.text??""}></p>`;async function H(){let{sample:t,catalogue:e}=f();if(t&&t!=="failed")return;let n={s:1,a:1},[r]=await N(e,n,n).catch(()=>[]);m({sample:r??"failed"})}function B(t,e){return e?a`
    <section class="card">
      ${t.learners.length>1?_(t.learners,e):l}
      <label for="nickname">${o("people.name")}</label>
      ${y(e.id,tt(e))}
      <div class="row">
        <button class="plain" data-t="add-learner" @click=${()=>{et()}}>
          ${o("people.add")}
        </button>
        <button class="plain" data-t="remove-learner" @click=${()=>m({removing:e})}>
          ${o("people.remove")}
        </button>
      </div>
    </section>
  `:Z()}var Z=()=>a`
  <section class="card">
    <p>${o("people.none")}</p>
    <a class="button main" href="#/today">${o("nav.today")}</a>
  </section>
`;function _(t,e){let n=i=>g(t.find(s=>s.id===i)),r=t.map(i=>i.id);return c(o("people.who"),"learner",r,e.id,n,i=>{q(i)})}function tt(t){let e=({target:n})=>{let r=n;r.value=E(r.value),p(()=>d(t.id,{name:r.value}))};return a`<input
    id="nickname"
    .value=${t.name}
    maxlength=${x}
    autocomplete="off"
    placeholder=${o("child")}
    data-t="nickname"
    @change=${e}
  />`}async function et(){await D(""),document.getElementById("nickname")?.focus()}var z=t=>t.target.closest("dialog").close();function G(t){let e=r=>{z(r),p(()=>L(t.id))},n=b(t.id).length;return a`
    <dialog data-t="confirm" @close=${()=>m({removing:void 0})}>
      <p>${o("people.sure",{child:g(t),n})}</p>
      <div class="row">
        <button class="big" data-t="keep" @click=${z}>${o("people.keep")}</button>
        <button class="plain" data-t="confirm-remove" @click=${e}>
          ${o("people.remove")}
        </button>
      </div>
    </dialog>
  `}function U(){let t=document.querySelector("dialog[data-t=confirm]");t&&!t.open&&t.showModal()}var ot=["forwards","backwards"];function W({catalogue:t},e){let n=s=>{p(()=>d(e.id,s))},r=e.direction??"forwards",i=s=>n({direction:s});return a`
    <section class="card">
      <h2>${o("place.title")}</h2>
      <p class="quiet">${o("place.what")}</p>
      ${T(t,e.place,s=>n({place:s}))}
      ${c(o("place.direction"),"direction",ot,r,s=>o(`place.${s}`),i)}
    </section>
  `}function rt(t){let e=S(t);return a`
    <main class="learner">
      ${t.closed?k(t.closed):a`<h1 tabindex="-1">${o("nav.learner")}</h1>
              ${B(t,e)}`}
      ${e?[W(t,e),K(e)]:l} ${R(t)} ${A(t)}
      <div class="card">${O(t)}</div>
      <section class="card">
        <h2>${o("print.on-paper")}</h2>
        <p class="quiet">${o("print.on-paper-what")}</p>
        <a class="button big" href="#/print" data-t="to-print">${o("print.title")}</a>
      </section>
      ${w(t.offline,!0)}
      <p class="quiet">${o("caution")} <a href="about.html">${o("nav.about")}</a></p>
      ${t.removing?G(t.removing):l}
    </main>
  `}var jt={title:()=>o("nav.learner"),view:rt,enter:()=>{H()},drawn:U,leave(){f().removing&&m({removing:void 0})}};export{jt as learner};
