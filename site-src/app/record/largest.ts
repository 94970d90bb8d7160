/** A file larger than this (bytes) is no backup of ours: a session takes about 1 KB. */
export const LARGEST = 32 << 20;
