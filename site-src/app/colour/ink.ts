/** The style that gives an element of class inked, and what is below it, a family's pencil and line. */
export const pencil = (family: string) => `--pencil:var(--c-${family});--form:var(--form-${family},solid)`;
