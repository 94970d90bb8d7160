import{a,c as e}from"./chunk.APPKMSLV.js";import{a as t}from"./chunk.A6UYY2CG.js";import{d as o}from"./chunk.S3BIYIDD.js";var n=s=>t`
  <section class="card" role="alert" data-t="closed">
    <h1 tabindex="-1">${o("closed.title")}</h1>
    <p>${o(`closed.${s}`)}</p>
    <div class="row">
      <button class="main" data-t="closed-again" @click=${a}>${o("error.again")}</button>
      <a class="button big" href="#/lines">${o("today.choose")}</a>
    </div>
    ${e()}
  </section>
`;export{n as a};
