//# allFunctionsCalledOnLoad
import{a as L,b as P}from"./chunk.MI3U7UAE.js";import"./chunk.P6PE5TZN.js";import{a as B}from"./chunk.AK3QRE62.js";import{a as F}from"./chunk.23NKZ6VE.js";import{k as M,s as q,t as z}from"./chunk.VB4DZK4W.js";import"./chunk.ZN66SSCI.js";import"./chunk.KUMKDYU5.js";import{a as E}from"./chunk.BUJT5NJZ.js";import"./chunk.I6UDG63Q.js";import"./chunk.JH4WJHGB.js";import"./chunk.FR5VNLUN.js";import{C as b,Ca as c,Eb as j,Fa as C,Gb as h,Ja as H,P as f,R as $,Yb as N,d as r,g as w,m as u,o as d,q as S,qb as k,r as p,yb as x}from"./chunk.TZYIGFUF.js";var G=6;function J(t,e){let{x:a,c:o}=t.course,s=Number(e.slice(1));if(e.startsWith("j")){let[i,n]=M(a,o.juz,s);return{from:i,to:n}}return e.startsWith("s")?{from:a.surahs[s-1],to:a.surahs[s]-1}:{}}function I(t,e,a){let o=e<0?{...t.today,unit:-1,rule:-1}:t.practise(e);return t.lines(o,{best:G,...J(t,a)})}function O(t){let{ranking:e}=t,a=[r("best.weighed",{n:e.seen}),P(e)];return c`
    <p class="quiet" data-t="weighed">${a.filter(Boolean).join(" ")}</p>
    <ol class="plan-best">
      ${e.passages.map((o,s)=>K(t,o,s))}
    </ol>
  `}function K({child:t,rule:e},a,o){let{c:s}=t.course,i=t.toLines(a,s.rules[e]?.id??""),[n,...l]=L(t,a,e,h(p()));return c`
    <li class="card" data-t="best-${o+1}">
      <h3>
        ${j(s.surahs,i.from,i.to)}<span class="quiet"
          >${` · ${r("best.words",{n:a.words})}`}</span
        >
      </h3>
      <p>${n}</p>
      <details class="plan-why opens" ?open=${o===0}>
        <summary>${r("plan.because")}</summary>
        <ul>
          ${l.map(g=>c`<li>${g}</li>`)}
        </ul>
      </details>
      <div class="row">
        <a class="button big" href=${$(i)} data-t="open-${o+1}"
          >${r("choose.open")}</a
        >
        <a class="button plain" href=${f(i)} data-t="give-${o+1}"
          >${r("choose.give")}</a
        >
      </div>
    </li>
  `}function R(t,e,a){let{juz:o,surahs:s}=u().catalogue,i=(n,l)=>c`<option value=${n} .selected=${n===e}>${l}</option>`;return c`
    <select
      id=${t}
      data-t=${t}
      @change=${n=>a(n.target.value)}
    >
      ${i("",r("best.near"))}
      <optgroup label=${r("best.juz")}>
        ${o.map((n,l)=>i(`j${l+1}`,r("next.juz",{n:l+1})))}
      </optgroup>
      <optgroup label=${r("field.surah")}>
        ${s.map(n=>i(`s${n.n}`,`${n.n}. ${n.la}`))}
      </optgroup>
    </select>
  `}function W(t){let e=p(t),a=S(t).filter(s=>t.together.includes(s.id));if(!e||!a.length)return C;let o=w([e,...a].map(s=>h(s)));return c`<div class="row" data-t="together-for">
    <p>${r("together.who",{child:o})}</p>
    <button class="plain" data-t="alone" @click=${()=>d({together:[]})}>
      ${r("together.alone",{child:h(e)})}
    </button>
  </div>`}var A=5,m=t=>d({choice:{...u().choice,...t}}),v=t=>u().catalogue.surahs[t-1].count;function U(t){let e=t.choice;return c`
    <main class="choose">
      <h1 tabindex="-1">${r("choose.title")}</h1>
      ${W(t)}
      <div class="card">
        <p class="problem" role="alert" data-t="problem" .textContent=${e.problem}></p>
        <div><label for="rule">${r("field.rule")}</label>${V(t,e)}</div>
        <div>
          <label for="where">${r("best.where")}</label>${R("where",e.where,X)}
        </div>
      </div>
      <h2>${r("best.title")}</h2>
      <section aria-live="polite" data-t="best">${E([e.best],()=>Y(e))}</section>
      <h2>${r("choose.own")}</h2>
      ${Z(t,e)}
    </main>
  `}function V(t,e){return c`<select id="rule" data-t="rule" @change=${o=>y({rule:o.target.value})}>
    <option value="">${r("choose.no-rule")}</option>
    ${F(t.catalogue).map(o=>c`<option value=${o.id} .selected=${o.id===e.rule}>${o.name}</option>`)}
  </select>`}var X=t=>y({where:t});function Y({best:t}){return typeof t=="object"?k(t,O(t)):c`<p class="quiet">${r(t?"today.no-lines":"today.looking")}</p>`}function Z(t,e){let a=o=>D({surah:o,from:"1",to:String(Math.min(A,v(o)))});return c`
    <form class="card" @submit=${et}>
      <div>
        <label for="surah">${r("field.surah")}</label
        >${x(t.catalogue,"surah",e.surah,a)}
      </div>
      <div class="fields">
        <div><label for="from">${r("field.from")}</label>${Q(e,"from")}</div>
        <div><label for="to">${r("field.to")}</label>${Q(e,"to")}</div>
      </div>
      <p class="quiet" role="status" data-t="choose-found" .textContent=${tt(e)}></p>
      <button class="main" data-t="open">${r("choose.open")}</button>
      <button class="plain" name="give" data-t="give">${r("choose.give")}</button>
    </form>
    <p><a href="#/work" data-t="paste-link">${r("paste.title")}</a></p>
  `}var tt=({places:t})=>t===void 0?"":r("choose.found",{n:t}),D=t=>m({...t,byHand:!0,places:void 0}),Q=(t,e)=>c`
  <input
    id=${e}
    type="number"
    inputmode="numeric"
    min="1"
    max=${v(t.surah)}
    required
    data-t=${e}
    .value=${B(t[e])}
    @input=${a=>D({[e]:a.target.value})}
  />
`;function et(t){t.preventDefault();let e=t.submitter?.name==="give"?f:$,{rule:a,surah:o,from:s,to:i}=u().choice,[n,l]=[Number(s),Number(i)];l<n?m({problem:r("bad.order",{from:n,to:l})}):l-n>=b?m({problem:r("bad.many",{n:l-n+1,most:b})}):location.hash=e({rule:a,from:{s:o,a:n},to:{s:o,a:l}})}async function y(t={}){m({...t,byHand:!1,places:void 0});try{await q()}catch{return m({best:"failed"})}let e=u().choice,a=z(),o=u().catalogue.rules.findIndex(_=>_.id===e.rule),s=I(a,o,e.where),i=s.passages[0];if(m({best:{child:a,rule:o,ranking:s}}),!i)return;let n=a.toLines(i,e.rule);if(H(()=>{N({name:"lines",lines:n})}),e.byHand||o<0)return;let{from:l,to:g}=n;m({surah:l.s,from:String(l.a),to:String(g.a),places:i.focus})}function ot(t){let{juz:e,rules:a}=u().catalogue,o=t.name==="choose"?a.find(i=>i.id===t.pick):void 0,s=p()?.place??{s:e[29]?.[0]??78,a:1};return{rule:o?.id??"",where:"",best:void 0,surah:s.s,from:String(s.a),to:String(Math.min(s.a+A-1,v(s.s))),byHand:!1,places:void 0,problem:t.name==="bad"?r(`bad.${t.reason}`,t.vars):""}}var Mt={title:()=>r("choose.title"),view:U,enter(t){d({choice:ot(t)}),y()}};export{Mt as choose};
