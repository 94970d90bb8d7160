import{a as P}from"./chunk.EZIODPUZ.js";import{a as L}from"./chunk.3B5LX3MQ.js";import{a as B}from"./chunk.4MBP4JSQ.js";import{a as x}from"./chunk.JG3ILKLC.js";import{a as k,b as A}from"./chunk.2ICTYC5G.js";import"./chunk.U4LIOG5F.js";import"./chunk.XWG3HUNR.js";import{k as j,v as O,w as I}from"./chunk.6WKKIGEP.js";import"./chunk.LE5K7YXS.js";import"./chunk.C2CM5TJ3.js";import{e as R}from"./chunk.SBHWFWE5.js";import"./chunk.ABXU77RL.js";import"./chunk.E6OLOVED.js";import{a as l,b as d,c as w,e as p,f as T,g as E,h as C,k as S,o as H}from"./chunk.A6UYY2CG.js";import{A as h,d as s,j as c,l as b,o as f,s as g}from"./chunk.S3BIYIDD.js";import"./chunk.YE24VLP2.js";var N=T(class extends E{constructor(e){if(super(e),e.type!==p.PROPERTY&&e.type!==p.ATTRIBUTE&&e.type!==p.BOOLEAN_ATTRIBUTE)throw Error("The `live` directive is not allowed on child or event bindings");if(!C(e))throw Error("`live` bindings can only contain a single expression")}render(e){return e}update(e,[t]){if(t===d||t===w)return t;let r=e.element,o=e.name;if(e.type===p.PROPERTY){if(t===r[o])return d}else if(e.type===p.BOOLEAN_ATTRIBUTE){if(!!t===r.hasAttribute(o))return d}else if(e.type===p.ATTRIBUTE&&r.getAttribute(o)===t+"")return d;return S(e),t}});var D=6;function Q(e,t){let{x:r,c:o}=e.course,i=Number(t.slice(1));if(t.startsWith("j")){let[a,n]=j(r,o.juz,i);return{from:a,to:n}}return t.startsWith("s")?{from:r.surahs[i-1],to:r.surahs[i]-1}:{}}function M(e,t,r){let o=t<0?{...e.today,unit:-1,rule:-1}:e.practise(t);return e.lines(o,{best:D,...Q(e,r)})}function q(e){let{ranking:t}=e,r=[s("best.weighed",{n:t.seen}),A(t)];return l`
    <p class="quiet" data-t="weighed">${r.filter(Boolean).join(" ")}</p>
    <ol class="plan-best">
      ${t.passages.map((o,i)=>Y(e,o,i))}
    </ol>
  `}function Y({child:e,rule:t},r,o){let{c:i}=e.course,a=e.toLines(r,i.rules[t]?.id??""),[n,...u]=k(e,r,t,H(f()));return l`
    <li class="card" data-t="best-${o+1}">
      <h3>
        ${R(i.surahs,a.from,a.to)}<span class="quiet"
          >${` · ${s("best.words",{n:r.words})}`}</span
        >
      </h3>
      <p>${n}</p>
      <details class="plan-why opens" ?open=${o===0}>
        <summary>${s("plan.because")}</summary>
        <ul>
          ${u.map($=>l`<li>${$}</li>`)}
        </ul>
      </details>
      <a class="button big" href=${h(a)} data-t="open-${o+1}">${s("choose.open")}</a>
    </li>
  `}function z(e,t,r){let{juz:o,surahs:i}=c().catalogue,a=(n,u)=>l`<option value=${n} .selected=${n===t}>${u}</option>`;return l`
    <select
      id=${e}
      data-t=${e}
      @change=${n=>r(n.target.value)}
    >
      ${a("",s("best.near"))}
      <optgroup label=${s("best.juz")}>
        ${o.map((n,u)=>a(`j${u+1}`,s("next.juz",{n:u+1})))}
      </optgroup>
      <optgroup label=${s("field.surah")}>
        ${i.map(n=>a(`s${n.n}`,`${n.n}. ${n.la}`))}
      </optgroup>
    </select>
  `}var U=5,m=e=>b({choice:{...c().choice,...e}}),v=e=>c().catalogue.surahs[e-1].count;function V(e){let t=e.choice;return l`
    <main class="choose">
      <h1 tabindex="-1">${s("choose.title")}</h1>
      <div class="card">
        <p class="problem" role="alert" data-t="problem" .textContent=${t.problem}></p>
        <div><label for="rule">${s("field.rule")}</label>${G(e,t)}</div>
        <div>
          <label for="where">${s("best.where")}</label>${z("where",t.where,J)}
        </div>
      </div>
      <h2>${s("best.title")}</h2>
      <section aria-live="polite" data-t="best">${B([t.best],()=>K(t))}</section>
      <h2>${s("choose.own")}</h2>
      ${X(e,t)}
    </main>
  `}function G(e,t){return l`<select id="rule" data-t="rule" @change=${o=>y({rule:o.target.value})}>
    <option value="">${s("choose.no-rule")}</option>
    ${L(e.catalogue).map(o=>l`<option value=${o.id} .selected=${o.id===t.rule}>${o.name}</option>`)}
  </select>`}var J=e=>y({where:e});function K({best:e}){return typeof e=="object"?x(e,q(e)):l`<p class="quiet">${s(e?"today.no-lines":"today.looking")}</p>`}function X(e,t){let r=o=>W({surah:o,from:"1",to:String(Math.min(U,v(o)))});return l`
    <form class="card" @submit=${ee}>
      <div>
        <label for="surah">${s("field.surah")}</label
        >${P(e.catalogue,"surah",t.surah,r)}
      </div>
      <div class="fields">
        <div><label for="from">${s("field.from")}</label>${F(t,"from")}</div>
        <div><label for="to">${s("field.to")}</label>${F(t,"to")}</div>
      </div>
      <p class="quiet" role="status" data-t="choose-found" .textContent=${Z(t)}></p>
      <button class="main" data-t="open">${s("choose.open")}</button>
    </form>
  `}var Z=({places:e})=>e===void 0?"":s("choose.found",{n:e}),W=e=>m({...e,byHand:!0,places:void 0}),F=(e,t)=>l`
  <input
    id=${t}
    type="number"
    inputmode="numeric"
    min="1"
    max=${v(e.surah)}
    required
    data-t=${t}
    .value=${N(e[t])}
    @input=${r=>W({[t]:r.target.value})}
  />
`;function ee(e){e.preventDefault();let{rule:t,surah:r,from:o,to:i}=c().choice,[a,n]=[Number(o),Number(i)];n<a?m({problem:s("bad.order",{from:a,to:n})}):n-a>=g?m({problem:s("bad.many",{n:n-a+1,most:g})}):location.hash=h({rule:t,from:{s:r,a},to:{s:r,a:n}})}async function y(e={}){m({...e,byHand:!1,places:void 0});try{await O()}catch{return m({best:"failed"})}let t=c().choice,r=I(),o=c().catalogue.rules.findIndex($=>$.id===t.rule),i=M(r,o,t.where),a=i.passages[0];if(m({best:{child:r,rule:o,ranking:i}}),t.byHand||o<0||!a)return;let{from:n,to:u}=r.toLines(a,t.rule);m({surah:n.s,from:String(n.a),to:String(u.a),places:a.focus})}function te(e){let{juz:t,rules:r}=c().catalogue,o=e.name==="choose"?r.find(a=>a.id===e.pick):void 0,i=f()?.place??{s:t[29]?.[0]??78,a:1};return{rule:o?.id??"",where:"",best:void 0,surah:i.s,from:String(i.a),to:String(Math.min(i.a+U-1,v(i.s))),byHand:!1,places:void 0,problem:e.name==="bad"?s(`bad.${e.reason}`,e.vars):""}}var xe={title:()=>s("choose.title"),view:V,enter(e){b({choice:te(e)}),y()}};export{xe as choose};
