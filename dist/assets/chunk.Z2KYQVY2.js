//# allFunctionsCalledOnLoad
import{d as c}from"./chunk.SY3C5SWB.js";import{Ca as d,Ra as s,Ta as i,Va as l,d as a,m as r,o as e}from"./chunk.TZYIGFUF.js";var n="[data-t=add-learner]",E=t=>t.adding?d`<form class="card adder" data-t="add" @submit=${f} @keydown=${p}>
        <label for="add-name">${a("people.new")}</label>
        <input
          id="add-name"
          maxlength=${s}
          autocomplete="off"
          required
          data-t="add-name"
          data-next=${n}
        />
        <p class="quiet">${a("first.private")}</p>
        <div class="row">
          <button class="big" data-t="add-confirm" data-next=${n}>
            ${a("people.add-this")}
          </button>
          <button
            type="button"
            class="plain"
            data-t="add-cancel"
            data-next=${n}
            @click=${()=>e({adding:!1})}
          >
            ${a("people.cancel")}
          </button>
        </div>
      </form>`:d`<button class="plain" data-t="add-learner" @click=${u}>${a("people.add")}</button>`;function u(){e({adding:!0}),requestAnimationFrame(()=>document.getElementById("add-name")?.focus())}function p(t){t.key==="Escape"&&e({adding:!1})}async function f(t){t.preventDefault();let o=t.currentTarget.querySelector("input").value.trim();if(!o)return;let m=c(r().learners);await l(o,{...i(),colour:m})&&e({adding:!1})}export{E as a};
