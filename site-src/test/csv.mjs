// A parser of CSV, written for tests, and a session to be written.
import assert from 'node:assert/strict';
import '../node_modules/.out/app/later.js';
import { csv } from '../node_modules/.out/app/record/csv.js';

/** RFC 4180, section 2: records end with CRLF; a quoted field may hold commas, quotes and breaks. */
export function parse(text) {
  const rows = [];
  let row = [];
  let at = 0;
  while (at < text.length) {
    let field = '';
    if (text[at] === '"') {
      for (at++; ; at++) {
        assert.ok(at < text.length, 'a quoted field has no end');
        if (text[at] !== '"') field += text[at];
        else if (text[at + 1] === '"') field += text[at++];
        else break;
      }
      at++;
    } else
      for (; at < text.length && !',\r\n'.includes(text[at]); at++) {
        assert.notEqual(text[at], '"', 'a quote within a plain field');
        field += text[at];
      }
    row.push(field);
    if (text[at] === ',') at++;
    else {
      assert.equal(text.slice(at, at + 2), '\r\n', `after field ${row.length}: ${field}`);
      at += 2;
      rows.push(row);
      row = [];
    }
  }
  assert.deepEqual(row, [], 'the last record has no end');
  return rows;
}

export const c = {
  surahs: Array.from({ length: 114 }, (_, i) => ({ la: `S${i + 1}` })),
  rules: [
    { id: 'a', name: 'Rule, with a comma' },
    { id: 'b', name: 'B' },
  ],
};
export const session = {
  id: 's1',
  learner: 'l1',
  day: '2026-03-01',
  at: '2026-03-01T10:00:00.000Z',
  rule: 'a',
  from: { s: 78, a: 12 },
  to: { s: 78, a: 16 },
  found: 3,
  missed: 1,
  extra: 0,
  helped: false,
  outcome: 'alone',
};
export const rows = (...list) =>
  parse(
    csv(
      c,
      list.map((x) => ({ ...session, ...x })),
    ).slice(1),
  );
export const note = (text) => rows({ note: text })[1][12];
