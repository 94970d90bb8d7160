//# allFunctionsCalledOnLoad
import{a as E}from"./chunk.DPTGSEAY.js";import{a as q,b as A,c as B}from"./chunk.MI3U7UAE.js";import"./chunk.P6PE5TZN.js";import{a as D,b as $}from"./chunk.K6AWTCIU.js";import{i as W}from"./chunk.SY3C5SWB.js";import{c as m,d as p,e as h,f as y,g as j,s as V,v as P}from"./chunk.VB4DZK4W.js";import"./chunk.ZN66SSCI.js";import{g as F,i as K}from"./chunk.NG2N4OGR.js";import"./chunk.KUMKDYU5.js";import{a as T}from"./chunk.BUJT5NJZ.js";import"./chunk.SZWTVXW4.js";import"./chunk.I6UDG63Q.js";import"./chunk.FR5VNLUN.js";import{Ca as s,Eb as L,Fa as l,Gb as d,Ja as H,Jb as N,Kb as w,R,U as S,Yb as M,Z as x,d as o,g as u,k as C,qb as I,r as k,xa as O}from"./chunk.TZYIGFUF.js";var X=3;function z(e){let t=e.today,{rules:a}=e.course.c,r=d(e.learner);switch(t.do){case m:return o("today.why.settle",{n:t.left,child:r});case h:return Y(e,t.readiness,r);case y:{let n=t.due.slice(0,X).map(i=>a[i].name);return o("today.why.review",{n:t.due.length,rules:u(n)})}case p:{let n=e.ahead()[t.unit];return n?o("today.why.teach",{n,child:r}):B(e.course.c,t.unit)}default:return o("today.why.read",{child:r})}}function Y(e,t,a){let r=e.criterion;if(!t.sessions)return o("today.why.practise-first",{child:a});if(t.muchHelp)return o("today.why.help");if(t.percent>=0&&t.percent<r.percent)return o("today.why.found",{n:t.percent,want:r.percent});if(t.practised>=t.wanted)return o("today.why.practise",{n:t.days,of:r.days});let n=e.course.c.rules[t.rule].name;return o("today.why.rule",{n:t.practised,of:t.wanted,rule:n})}var Z={[m]:"settle",[p]:"teach",[h]:"practise",[y]:"review",[j]:"read"},b;function G(e){return b?.of!==e&&(b=D(e)),b}var J=[],Te={view(){let e=P();return s`${T([e],()=>e?_(e,G(e)):l)}`},drawn(e){let t=P(),a=[t&&G(t).lines,e.unfinished[0]?.lines];if(!C(a,J)){J=a;for(let r of a)r&&H(()=>{M({name:"lines",lines:r})})}}};function _(e,t){let{rule:a,lines:r}=t,{units:n}=e.course,{do:i,unit:g}=e.today,c=Z[i],Q={rule:i===p?n[g].name:ee(t),child:d(e.learner)},f=r?R(r):"#/lines",v=i===p?E(n[g].id,r?f:""):void 0;return I(c+f,s`<section class="card" data-t="next-${c}">
      <h2 tabindex="-1" class=${a?"inked":l} .style=${a?F(a.family):""}>
        ${te(t).map(U=>K(U))}${o(`today.card.${c}`,Q)}
      </h2>
      <p data-t="why">${w(z(e))}</p>
      ${i===p&&a?s`<p>${N(a.name,o("today.meaning"))}</p>`:l}
      <a class="button main" href=${v??f} data-t="start">${o(`today.button.${c}`)}</a>
      ${v?s`<p><a href=${f} data-t="start-lines">${o("today.after-lesson")}</a></p>`:l}
      <p class="quiet" data-t="where">${re(e,t)}</p>
      ${r?s`<p><a href=${S(r)} data-t="print-today">${o("today.print")}</a></p>`:l}
      ${oe(e,t)} ${ae(i)}
    </section>`)}var ee=e=>u($(e).map(t=>t.name)),te=e=>[...new Set($(e).map(t=>t.family))];function re(e,{rule:t,lines:a,places:r}){if(!a)return o("plan.nowhere");let n=L(e.course.c.surahs,a.from,a.to);return t?`${n} · ${o("today.places",{n:r})}`:n}function oe(e,{rule:t,found:a}){let r=a.passages[0];if(!r)return l;let n=[A(a),...q(e,r,e.today.rule,d(e.learner))];return s`
    <details class="plan-why opens" data-t="because">
      <summary>${o("plan.because")}</summary>
      <ul>
        ${n.filter(Boolean).map(i=>s`<li>${w(i)}</li>`)}
      </ul>
      <p>
        <a href="#/lines${t?`?rule=${t.id}`:""}" data-t="other-lines"
          >${o("plan.other-lines")}</a
        >
      </p>
    </details>
  `}function ae(e){return e===m?s`<p>
      <button class="link" data-t="settled" data-next=".card h2" @click=${()=>{ne()}}>
        ${o("today.settled")}
      </button>
    </p>`:e===p?s`<p><a href="#/rules" data-t="other-rule">${o("today.other-rule")}</a></p>`:l}async function ne(){let e=k();e&&await O(()=>x(e.id,{settled:!0}))}export{Te as card,V as loadCourse,W as switcher};
