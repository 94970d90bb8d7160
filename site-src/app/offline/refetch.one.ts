// Nothing in the one file can be fetched again.
export const refetch = () => Promise.resolve();

export const answers = () => Promise.resolve(true);
