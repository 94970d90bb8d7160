// The one file has no parts to repair, and offers none.
export const repair = () => Promise.resolve(false);
