// How a page moves by itself.

/** The behaviour of a scroll that nobody asked for with a finger: none is seen where it is unwanted. */
export const scrolling = (): ScrollBehavior =>
  matchMedia('(prefers-reduced-motion: reduce)').matches ? 'instant' : 'smooth';
