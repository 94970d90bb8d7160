import{a as h,b,d as g}from"./chunk.AG2JNZO7.js";import{g as y,i as d}from"./chunk.ZZZOJVYT.js";import{D as $,G as f}from"./chunk.6M4S66JV.js";import{a as i,c as p}from"./chunk.JW3C4FA3.js";import{c as n,i as u,k as m}from"./chunk.XR2DP2R4.js";var a=t=>n(`pencils.family.${t}`);function j({catalogue:t,settings:e}){let s=e.pencils??{},c=h(t.families,s),o=b(t,s);return i`
    <section class="pencils">
      <h2>${n("pencils.title")}</h2>
      <p class="quiet">${n("pencils.what")}</p>
      <ul class="pencil-list">
        ${t.families.map(l=>v(s,l.id,c.get(l.id)))}
      </ul>
      <div class="pencil-said" role="status" data-t="pencil-said">
        ${o.length?i`<ul>
                ${o.map(l=>i`<li>${w(l)}</li>`)}
              </ul>`:p}
      </div>
      <button
        type="button"
        class="plain"
        data-t="pencils-usual"
        ?hidden=${Object.keys(s).length<2}
        @click=${()=>r({})}
      >
        ${n("pencils.usual")}
      </button>
    </section>
  `}function v(t,e,s){let c=l=>r({...t,[e]:l.target.value}),o=()=>{let{[e]:l,...k}=t;r(k),document.getElementById(`pencil-${e}`)?.focus({preventScroll:!0})};return i`<li .style=${y(e)}>
    <input
      type="color"
      id="pencil-${e}"
      .value=${s}
      data-t="pencil-${e}"
      @change=${c}
    />
    <label for="pencil-${e}"><span class="inked">${d(e)}${a(e)}</span></label>
    ${t[e]===void 0?p:i`<button
            type="button"
            class="plain"
            data-t="pencil-back-${e}"
            aria-label=${n("pencils.usual-of",{a:a(e)})}
            @click=${o}
          >
            ${n("pencils.back")}
          </button>`}
  </li>`}function w(t){if(t.kind!=="pair")return n(`pencils.${t.kind}`,{a:a(t.a)});let e=t.which==="full colour"?"pencils.alike":"pencils.alike-for",s=n(`pencils.${t.which}`);return`${n(e,{a:a(t.a),b:a(t.b),which:s})} ${n(t.sameForm?"pencils.same-line":"pencils.other-line")}`}function r(t){let{catalogue:e,settings:s}=u();m({settings:{...s,pencils:t}}),g(e,t),f(()=>$({pencils:t}))}export{j as a};
