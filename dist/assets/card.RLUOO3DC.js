import{a as P}from"./chunk.4MBP4JSQ.js";import{a as v}from"./chunk.JG3ILKLC.js";import{a as O,b as g}from"./chunk.PCM2CTZV.js";import{a as q}from"./chunk.7P5GCF4H.js";import{g as A,i as B}from"./chunk.CLYPCFEQ.js";import{H as R,j as C}from"./chunk.RCYS5ULD.js";import{a as T,b as j,c as D}from"./chunk.2ICTYC5G.js";import"./chunk.XWG3HUNR.js";import{c as u,d as l,e as y,f as w,g as L,v as z,x as b}from"./chunk.6WKKIGEP.js";import"./chunk.LE5K7YXS.js";import"./chunk.C2CM5TJ3.js";import{e as S}from"./chunk.SBHWFWE5.js";import"./chunk.ABXU77RL.js";import{h as H}from"./chunk.E6OLOVED.js";import{a as i,c as d,o as p}from"./chunk.A6UYY2CG.js";import{A as N,d as n,h,o as x}from"./chunk.S3BIYIDD.js";import"./chunk.YE24VLP2.js";var G=3;function E(e){let t=e.today,{rules:o}=e.course.c,a=p(e.learner);switch(t.do){case u:return n("today.why.settle",{n:t.left,child:a});case y:return J(e,t.readiness,a);case w:{let r=t.due.slice(0,G).map(s=>o[s].name);return n("today.why.review",{n:t.due.length,rules:h(r)})}case l:{let r=e.ahead()[t.unit];return r?n("today.why.teach",{n:r,child:a}):D(e.course.c,t.unit)}default:return n("today.why.read",{child:a})}}function J(e,t,o){let a=e.criterion;if(!t.sessions)return n("today.why.practise-first",{child:o});if(t.muchHelp)return n("today.why.help");if(t.percent>=0&&t.percent<a.percent)return n("today.why.found",{n:t.percent,want:a.percent});if(t.practised>=t.wanted)return n("today.why.practise",{n:t.days,of:a.days});let r=e.course.c.rules[t.rule].name;return n("today.why.rule",{n:t.practised,of:t.wanted,rule:r})}var Q={[u]:"settle",[l]:"teach",[y]:"practise",[w]:"review",[L]:"read"},$;function F(e){if($?.of===e)return $;let{x:t,c:o}=e.course,a=e.lines(),r=a.passages[0],s=r?e.marks(r):[];return $={of:e,rule:o.rules[e.today.rule],found:a,lines:r&&e.proposed(r),marks:s.map(c=>o.rules[c]),places:r?s.reduce((c,m)=>c+t.count(m,r.a,r.b),0):0},$}var I,Ne={view(){let e=b();return i`${P([e],()=>e?U(e,F(e)):d)}`},drawn(){let e=b();if(!e||e===I)return;I=e;let{lines:t}=F(e);t&&H(e.course.c,t)}};function U(e,t){let{rule:o,lines:a}=t,{units:r}=e.course,{do:s,unit:c}=e.today,m=Q[s],M={rule:s===l?r[c].name:V(t),child:p(e.learner)},f=a?N(a):"#/lines",k=s===l?q(r[c].id)+(a?f:""):void 0;return v(m+f,i`<section class="card" data-t="next-${m}">
      <h2 tabindex="-1" class=${o?"inked":d} .style=${o?A(o.family):""}>
        ${W(t).map(B)}${n(`today.card.${m}`,M)}
      </h2>
      <p data-t="why">${g(E(e))}</p>
      ${s===l&&o?i`<p>${O(o.name,n("today.meaning"))}</p>`:d}
      <a class="button main" href=${k??f} data-t="start">${n(`today.button.${m}`)}</a>
      ${k?i`<p><a href=${f} data-t="start-lines">${n("today.after-lesson")}</a></p>`:d}
      <p class="quiet" data-t="where">${X(e,t)}</p>
      ${Y(e,t)} ${Z(s)}
    </section>`)}var K=({rule:e,marks:t})=>t.length||!e?t:[e],V=e=>h(K(e).map(t=>t.name)),W=e=>[...new Set(K(e).map(t=>t.family))];function X(e,{rule:t,lines:o,places:a}){if(!o)return n("plan.nowhere");let r=S(e.course.c.surahs,o.from,o.to);return t?`${r} · ${n("today.places",{n:a})}`:r}function Y(e,{rule:t,found:o}){let a=o.passages[0];if(!a)return d;let r=[j(o),...T(e,a,e.today.rule,p(e.learner))];return i`
    <details class="plan-why opens" data-t="because">
      <summary>${n("plan.because")}</summary>
      <ul>
        ${r.filter(Boolean).map(s=>i`<li>${g(s)}</li>`)}
      </ul>
      <p>
        <a href="#/lines${t?`?rule=${t.id}`:""}" data-t="other-lines"
          >${n("plan.other-lines")}</a
        >
      </p>
    </details>
  `}function Z(e){return e===u?i`<p>
      <button class="link" data-t="settled" data-next=".card h2" @click=${()=>{_()}}>
        ${n("today.settled")}
      </button>
    </p>`:e===l?i`<p><a href="#/rules" data-t="other-rule">${n("today.other-rule")}</a></p>`:d}async function _(){let e=x();e&&await R(()=>C(e.id,{settled:!0}))}export{Ne as card,z as loadCourse};
