// Printing is the browser's own: the style sheet for print shows the lines alone, large, without anything to press.

export const printLines = () => { window.print(); };
