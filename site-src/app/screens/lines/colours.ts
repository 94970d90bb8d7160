// Which letters have which colour, by what the screen is for: finding, checking or reading.
import { look } from '../../colour/ink.ts';
import { type Hit, written } from '../../marking/check.ts';
import { pencilOf, sameMark } from '../../marking/pencils.ts';
import { type Look, type Span, spanOf } from '../../marking/spans.ts';
import { rulesShown } from '../../plan/ladder.ts';
import { marksRules, type Practice, stops } from '../../practice/practice.ts';
import { keepsBack, results } from '../../practice/steps.ts';
import * as state from '../../state.ts';
import type { Mark } from '../../types.ts';

const checked = (sign: 'found' | 'missed' | 'extra'): Look => ({
  name: sign,
  colour: `var(--${sign})`,
  sign,
});

/** The rules the learner has been taught, and those to mark. */
export function known(p: Practice): Set<string> {
  const { taught, catalogue } = state.get();
  const own = taught.filter((x) => x.learner === p.draft.learner).map((x) => x.rule);
  return new Set([...own, ...marksRules(p).map((r) => catalogue.rules[r]!.id)]);
}

const marked = (m: Mark, how: Look): Span => ({ v: m.v, w: m.w, l: m.l, ...how });

/** The places of rules; keyed: with the keys of the pencils that mark them. */
const places = (p: Practice, rules: number[], keyed = false) =>
  written(p.verses, rules, stops(p)).map((h) => {
    const own = keyed ? p.pencils.find((x) => x.rules.includes(h.e.rule)) : undefined;
    return spanOf(h, look(state.get().catalogue.rules[h.e.rule]!.family, own?.key));
  });

export function colours(p: Practice): Span[] {
  const { phase, lines } = p.draft;
  if (p.answer) return stacked(places(p, marksRules(p), true));
  if (phase === 'find') return stacked(drawn(p));
  if (phase === 'check') return told(p);
  return places(p, rulesShown(state.get().catalogue, lines.rule, known(p)));
}

/** What was marked: with the pencil in hand first; what the check set apart keeps its sign. */
function drawn(p: Practice): Span[] {
  const { marks, lines } = p.draft;
  const inOrder = [...p.pencils].sort((a, b) => Number(b.id === p.hand) - Number(a.id === p.hand));
  return inOrder.flatMap(({ id, family, key }) =>
    marks
      .filter((m) => pencilOf(m, lines) === id)
      .map((m) => marked(m, isApart(p, m) ? checked('extra') : look(family, key))),
  );
}

const isApart = (p: Practice, m: Mark) => p.apart.some((x) => sameMark(x, m));

/** Letters with more than one mark have one shape below the other. */
export function stacked(spans: Span[]): Span[] {
  const many = new Map<string, number>();
  return spans.map((s) => {
    const at = `${s.v}.${s.w}.${s.l}`;
    const under = many.get(at) ?? 0;
    many.set(at, under + 1);
    return under ? { ...s, under } : s;
  });
}

/** What was found and what was not, as far as the check says it. */
function told(p: Practice): Span[] {
  const all = results(p);
  const hits = (list: Hit[], how: Look) => list.map((x) => spanOf(x, how));
  return [
    ...all.flatMap((r) => hits(r.found, checked('found'))),
    ...all.flatMap((r) => r.alike.map((x) => marked(x.mark, checked('found')))),
    ...(keepsBack(p) ? [] : all.flatMap((r) => hits(r.missed, checked('missed')))),
    ...all
      .flatMap((r) => [...r.beside, ...r.extra.map((x) => x.mark)])
      .map((m) => marked(m, checked('extra'))),
  ];
}
