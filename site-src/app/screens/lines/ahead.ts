// Makes the lines that will probably be opened next ready while there is time: their text is read,
// and they are drawn once out of sight, so that the code has been compiled, the templates parsed and
// the font set up before anybody waits for it.
import { render, type TemplateResult } from 'lit-html';
import { nextIdle } from '../../idle.ts';
import { paint, unpaint } from '../../painting/paint.ts';
import { Sheet } from '../../painting/sheet.ts';
import { readLines } from '../../practice/reading.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import type { Lines } from '../../types.ts';
import { colours } from './colours.ts';
import { labelWords } from './labels.ts';
import { opened } from './open.ts';

let drawn = false;

/** Fails with a TextError. Each step is short, because a press may come at any time. */
export async function ahead(view: (s: State) => TemplateResult, lines: Lines) {
  const who = state.learner()?.id ?? '';
  const read = await readLines(state.get().catalogue, who, lines);
  if (drawn) return;
  drawn = true;
  const practice = opened(read, who, lines);
  const room = document.createElement('div');
  room.className = 'screen';
  room.style.cssText = 'position:fixed;inset:0;visibility:hidden';
  for (const opening of [true, false]) {
    await nextIdle();
    if (state.get().route.name === 'lines') return;
    const route = { name: 'lines', lines } as const;
    render(view({ ...state.get(), route, practice: { ...practice, opening } }), room);
  }
  await nextIdle();
  document.body.append(room);
  room.getBoundingClientRect(); // lays it out
  const sheet = Sheet.of(room, practice.verses);
  const spans = colours(practice);
  paint(sheet, room, spans, 'ahead');
  labelWords(practice, sheet, spans);
  unpaint('ahead');
  room.remove();
}
