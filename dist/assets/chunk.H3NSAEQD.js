//# allFunctionsCalledOnLoad
import{a as h,b,d as g}from"./chunk.KBVAMGSF.js";import{a}from"./chunk.6IXUHZWD.js";import{g as $,i as f}from"./chunk.NG2N4OGR.js";import{Ca as s,Fa as p,Pa as m,d as l,m as u}from"./chunk.TZYIGFUF.js";function j({catalogue:t,settings:e}){let n=e.pencils??{},c=h(t.families,n),o=b(t,n);return s`
    <section class="pencils">
      <h2>${l("pencils.title")}</h2>
      <p class="quiet">${l("pencils.what")}</p>
      <ul class="pencil-list">
        ${t.families.map(i=>y(n,i.id,c.get(i.id)))}
      </ul>
      <div class="pencil-said" role="status" data-t="pencil-said">
        ${o.length?s`<ul>
                ${o.map(i=>s`<li>${k(i)}</li>`)}
              </ul>`:p}
      </div>
      <button
        type="button"
        class="plain"
        data-t="pencils-usual"
        ?hidden=${Object.keys(n).length<2}
        @click=${()=>r({})}
      >
        ${l("pencils.usual")}
      </button>
    </section>
  `}function y(t,e,n){let c=i=>r({...t,[e]:i.target.value}),o=()=>{let{[e]:i,...d}=t;r(d),document.getElementById(`pencil-${e}`)?.focus({preventScroll:!0})};return s`<li .style=${$(e)}>
    <input
      type="color"
      id="pencil-${e}"
      .value=${n}
      data-t="pencil-${e}"
      @change=${c}
    />
    <label for="pencil-${e}"><span class="inked">${f(e)}${a(e)}</span></label>
    ${t[e]===void 0?p:s`<button
            type="button"
            class="plain"
            data-t="pencil-back-${e}"
            aria-label=${l("pencils.usual-of",{a:a(e)})}
            @click=${o}
          >
            ${l("pencils.back")}
          </button>`}
  </li>`}function k(t){if(t.kind!=="pair")return l(`pencils.${t.kind}`,{a:a(t.a)});let e=t.which==="full colour"?"pencils.alike":"pencils.alike-for",n=l(`pencils.${t.which}`);return`${l(e,{a:a(t.a),b:a(t.b),which:n})} ${l(t.sameForm?"pencils.same-line":"pencils.other-line")}`}function r(t){g(u().catalogue,t),m({pencils:t})}export{j as a};
