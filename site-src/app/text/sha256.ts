// Of the library, SHA-256 alone: what is imported by a part of its own is taken whole.
export { sha256 } from '@noble/hashes/sha2.js';
