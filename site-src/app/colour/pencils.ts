// The colours a family draws with, in place of the usual ones: what they come to on paper and on
// the dark page, and which are hard to tell apart. Pure but for apply.
import { note } from '../notes.ts';
import { own as sheet } from '../theme.ts';
import type { Catalogue, Family } from '../types.ts';
import {
  CLOSE_BELOW,
  contrast,
  difference,
  type Eyes,
  forDark,
  parse,
  tooClose,
  VIEWS,
} from './close.ts';

/**
 * A family's own colours on paper, #rrggbb by the rule family's id; those not named have the usual
 * colour.
 */
export type Pencils = Record<string, string>;

/**
 * Less contrast than this with the page is hard to see even for thick strokes (WCAG 2 asks 3 of
 * graphics, 4.5 of text).
 */
const FAINT = 3;

const valid = (hex: unknown): hex is string => {
  try {
    return !!parse(String(hex));
  } catch {
    return false;
  }
};

/** The colour of every rule family on paper. What cannot be read as a colour is left out. */
export const onPaper = (families: Family[], own: Pencils = {}): Map<string, string> =>
  new Map(families.map((f) => [f.id, valid(own[f.id]) ? own[f.id]! : f.light]));

/**
 * Two families whose colours are too near (which says for whose eyes; sameForm, that their lines are
 * alike too), or one too near the ink or the page. With other eyes than most, twelve colours cannot
 * all differ: there the lines tell families apart, and only a pair whose lines are alike too is
 * told.
 */
export type Trouble =
  | { kind: 'pair'; a: string; b: string; which: Eyes; sameForm: boolean }
  | { kind: 'ink' | 'faint'; a: string };

/**
 * What is hard to tell apart because of a colour that was chosen; the usual colours among
 * themselves have been arranged already.
 */
export function troubles({ families, themes }: Catalogue, own: Pencils = {}): Trouble[] {
  const { paper, ink } = themes.light;
  const colours = onPaper(families, own);
  const out: Trouble[] = [];
  const chosen = (f: Family) => colours.get(f.id) !== f.light;
  families.forEach((f, i) => {
    const mine = colours.get(f.id)!;
    if (chosen(f) && tooClose(mine, ink).close) out.push({ kind: 'ink', a: f.id });
    if (chosen(f) && contrast(mine, paper) < FAINT) out.push({ kind: 'faint', a: f.id });
    for (const g of families.slice(i + 1)) {
      if (!chosen(f) && !chosen(g)) continue;
      const other = colours.get(g.id)!;
      const near = tooClose(mine, other);
      const sameForm = f.form === g.form;
      if (difference(mine, other, 0) < CLOSE_BELOW)
        out.push({ kind: 'pair', a: f.id, b: g.id, which: VIEWS[0]!.name, sameForm });
      else if (near.close && sameForm)
        out.push({ kind: 'pair', a: f.id, b: g.id, which: near.which, sameForm });
    }
  });
  return out;
}

/**
 * The style sheet that puts own colours in place of the usual ones; print and pages of paper are
 * always light. Empty for none.
 */
export function styles({ families, themes }: Catalogue, own: Pencils = {}): string {
  const mine = families.filter((f) => valid(own[f.id]));
  const list = (of: (hex: string) => string) =>
    mine.map((f) => `--c-${f.id}:${of(own[f.id]!)}`).join(';');
  if (!mine.length) return '';
  const dark = list((hex) => forDark(hex, themes.dark.paper));
  return [
    `:root,.leaf{${list((hex) => hex)}}`,
    `@media screen and (prefers-color-scheme:dark){:root:not([data-theme=light]){${dark}}}`,
    `@media screen{:root[data-theme=dark]{${dark}}}`,
  ].join('');
}

/**
 * Puts the colours into effect, and notes them where the next page finds them before it is drawn.
 */
export function apply(c: Catalogue, pencils?: Pencils) {
  const text = styles(c, pencils);
  sheet?.replaceSync(text);
  note('device', 'sutur-pencils', text);
}
