// The lines that are read and marked, and every way they change.
export * from './core.ts';
export * from './marks.ts';
