var o=r=>`--pencil:var(--c-${r});--form:var(--form-${r},solid)`;export{o as a};
