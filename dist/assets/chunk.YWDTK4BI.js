import{a}from"./chunk.FQKUSJ4B.js";import{a as r}from"./chunk.A6UYY2CG.js";import{d as t}from"./chunk.S3BIYIDD.js";var p=o=>r`
  <label for=${o}>${t("first.name")}</label>
  <input id=${o} maxlength=${a} autocomplete="off" placeholder=${t("child")} data-t=${o} />
  <p class="quiet">${t("first.private")}</p>
`;export{p as a};
