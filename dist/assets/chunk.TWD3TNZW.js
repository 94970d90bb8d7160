import{d as e}from"./chunk.S3BIYIDD.js";var m=t=>e(`pencils.family.${t}`);export{m as a};
