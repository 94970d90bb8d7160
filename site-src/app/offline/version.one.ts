// The one file has no worker that keeps versions.
export const version = async () => '';
