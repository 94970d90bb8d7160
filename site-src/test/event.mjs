// An event of no rule in particular, at a letter of a word.
export const event = (w, l, more = {}) => ({
  w,
  l,
  rule: 0,
  count: 0,
  when: 0,
  before: false,
  unwritten: false,
  detail: 0,
  cw: 0,
  cl: -1,
  ...more,
});
