// Fields that name a surah.
import * as state from '../../state.ts';
import { h } from '../../dom.ts';

/** A list of all surahs by number and both names. */
export function surahSelect(id: string, now: number, onchange: () => void): HTMLSelectElement {
  return h(
    'select',
    { id, 'data-t': id, onchange },
    state
      .get()
      .catalogue.surahs.map((s) =>
        h('option', { value: s.n, selected: s.n === now }, `${s.n}. ${s.la} · \u2067${s.ar}\u2069`),
      ),
  );
}
