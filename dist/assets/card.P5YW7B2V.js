import{a as v}from"./chunk.PH67WDNA.js";import{a as P}from"./chunk.MMYUXHSV.js";import{a as L,b as w}from"./chunk.LCOACQMV.js";import{a as q}from"./chunk.7P5GCF4H.js";import{g as A,i as B}from"./chunk.ZZZOJVYT.js";import{G as N,i as R}from"./chunk.6M4S66JV.js";import{a as D,b as H,c as O}from"./chunk.4U7YGSLN.js";import"./chunk.QJIUZPA5.js";import{c as u,d,e as f,f as h,g as T,v as M,x as $}from"./chunk.T25QC45N.js";import"./chunk.C2CM5TJ3.js";import{e as S}from"./chunk.F2Z7EUMU.js";import"./chunk.ABXU77RL.js";import{h as j}from"./chunk.M2I3IBPU.js";import{a as i,c as l,o as c}from"./chunk.JW3C4FA3.js";import{c as n,g as k,m as C,t as x}from"./chunk.XR2DP2R4.js";var z=3;function E(e){let t=e.today,{rules:a}=e.course.c,r=c(e.learner);switch(t.do){case u:return n("today.why.settle",{n:t.left,child:r});case f:return G(e,t.readiness,r);case h:{let o=t.due.slice(0,z).map(s=>a[s].name);return n("today.why.review",{n:t.due.length,rules:k(o)})}case d:{let o=e.ahead()[t.unit];return o?n("today.why.teach",{n:o,child:r}):O(e.course.c,t.unit)}default:return n("today.why.read",{child:r})}}function G(e,t,a){let r=e.criterion;if(!t.sessions)return n("today.why.practise-first",{child:a});if(t.muchHelp)return n("today.why.help");if(t.percent>=0&&t.percent<r.percent)return n("today.why.found",{n:t.percent,want:r.percent});if(t.practised>=t.wanted)return n("today.why.practise",{n:t.days,of:r.days});let o=e.course.c.rules[t.rule].name;return n("today.why.rule",{n:t.practised,of:t.wanted,rule:o})}var J={[u]:"settle",[d]:"teach",[f]:"practise",[h]:"review",[T]:"read"},y;function F(e){if(y?.of===e)return y;let t=e.course.c.rules[e.today.rule],a=e.lines(),r=a.passages[0];return y={of:e,rule:t,found:a,lines:r&&e.toLines(r,t?.id??"")},y}var I,be={view(){let e=$();return i`${P([e],()=>e?Q(e,F(e)):l)}`},drawn(){let e=$();if(!e||e===I)return;I=e;let{lines:t}=F(e);t&&j(e.course.c,t)}};function Q(e,t){let{rule:a,lines:r}=t,{units:o}=e.course,{do:s,unit:g}=e.today,p=J[s],K={rule:s===d?o[g].name:a?.name??"",child:c(e.learner)},m=r?x(r):"#/lines",b=s===d?q(o[g].id)+(r?m:""):void 0;return v(p+m,i`<section class="card" data-t="next-${p}">
      <h2 class=${a?"inked":l} .style=${a?A(a.family):""}>
        ${a?B(a.family):l}${n(`today.card.${p}`,K)}
      </h2>
      <p data-t="why">${w(E(e))}</p>
      ${s===d&&a?i`<p>${L(a.name,n("today.meaning"))}</p>`:l}
      <a class="button main" href=${b??m} data-t="start">${n(`today.button.${p}`)}</a>
      ${b?i`<p><a href=${m} data-t="start-lines">${n("today.after-lesson")}</a></p>`:l}
      <p class="quiet" data-t="where">${U(e,t)}</p>
      ${V(e,t)} ${W(s)}
    </section>`)}function U(e,{rule:t,found:a,lines:r}){if(!r)return n("plan.nowhere");let o=S(e.course.c.surahs,r.from,r.to);return t?`${o} · ${n("today.places",{n:a.passages[0].focus})}`:o}function V(e,{rule:t,found:a}){let r=a.passages[0];if(!r)return l;let o=[H(a),...D(e,r,e.today.rule,c(e.learner))];return i`
    <details class="plan-why opens" data-t="because">
      <summary>${n("plan.because")}</summary>
      <ul>
        ${o.filter(Boolean).map(s=>i`<li>${w(s)}</li>`)}
      </ul>
      <p>
        <a href="#/lines${t?`?rule=${t.id}`:""}" data-t="other-lines"
          >${n("plan.other-lines")}</a
        >
      </p>
    </details>
  `}function W(e){return e===u?i`<p>
      <button class="link" data-t="settled" @click=${()=>{X()}}>
        ${n("today.settled")}
      </button>
    </p>`:e===d?i`<p><a href="#/rules" data-t="other-rule">${n("today.other-rule")}</a></p>`:l}async function X(){let e=C();e&&await N(()=>R(e.id,{settled:!0}))}export{be as card,M as loadCourse};
