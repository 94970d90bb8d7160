// Choose lines: a rule, then the best lines for it, or a surah and verses. A link that could not be
// read comes here too, with the reason.
import '../../later.ts';
import { html } from 'lit-html';
import { guard } from 'lit-html/directives/guard.js';
import { keyed } from 'lit-html/directives/keyed.js';
import { live } from 'lit-html/directives/live.js';
import { t } from '../../i18n.ts';
import { whenIdle } from '../../idle.ts';
import { rulesInOrder } from '../../plan/ladder.ts';
import { loadCourse, reader } from '../../planner.ts';
import { giveHash, linesHash, MOST } from '../../share/link.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import type { Route } from '../../types.ts';
import { surahSelect } from '../parts/surahs.ts';
import type { Screen } from '../screen.ts';
import { ahead } from '../screens.ts';
import { find, results, whereField } from './best.ts';
import type { Choice } from './choice.ts';
import { together } from './together.ts';

/** Verses put into the fields with a surah. */
const FEW = 5;

const change = (patch: Partial<Choice>) =>
  state.set({ choice: { ...state.get().choice!, ...patch } });

const verses = (surah: number) => state.get().catalogue.surahs[surah - 1]!.count;

function view(s: State) {
  const x = s.choice!;
  return html`
    <main class="choose">
      <h1 tabindex="-1">${t('choose.title')}</h1>
      ${together(s)}
      <div class="card">
        <p class="problem" role="alert" data-t="problem" .textContent=${x.problem}></p>
        <div><label for="rule">${t('field.rule')}</label>${ruleField(s, x)}</div>
        <div>
          <label for="where">${t('best.where')}</label>${whereField('where', x.where, look)}
        </div>
      </div>
      <h2>${t('best.title')}</h2>
      <section aria-live="polite" data-t="best">${guard([x.best], () => best(x))}</section>
      <h2>${t('choose.own')}</h2>
      ${own(s, x)}
    </main>
  `;
}

function ruleField(s: State, x: Choice) {
  const pick = (e: Event) => suggest({ rule: (e.target as HTMLSelectElement).value });
  return html`<select id="rule" data-t="rule" @change=${pick}>
    <option value="">${t('choose.no-rule')}</option>
    ${rulesInOrder(s.catalogue).map(
      (r) => html`<option value=${r.id} .selected=${r.id === x.rule}>${r.name}</option>`,
    )}
  </select>`;
}

const look = (where: string) => suggest({ where });

/** The best lines; others begin anew, with the reasons of the first one open. */
function best({ best: b }: Choice) {
  if (typeof b === 'object') return keyed(b, results(b));
  return html`<p class="quiet">${t(b ? 'today.no-lines' : 'today.looking')}</p>`;
}

/** The fields for lines of one's own. */
function own(s: State, x: Choice) {
  const surah = (n: number) =>
    byHand({ surah: n, from: '1', to: String(Math.min(FEW, verses(n))) });
  return html`
    <form class="card" @submit=${open}>
      <div>
        <label for="surah">${t('field.surah')}</label
        >${surahSelect(s.catalogue, 'surah', x.surah, surah)}
      </div>
      <div class="fields">
        <div><label for="from">${t('field.from')}</label>${verseField(x, 'from')}</div>
        <div><label for="to">${t('field.to')}</label>${verseField(x, 'to')}</div>
      </div>
      <p class="quiet" role="status" data-t="choose-found" .textContent=${found(x)}></p>
      <button class="main" data-t="open">${t('choose.open')}</button>
      <button class="plain" name="give" data-t="give">${t('choose.give')}</button>
    </form>
    <p><a href="#/work" data-t="paste-link">${t('paste.title')}</a></p>
  `;
}

const found = ({ places: n }: Choice) => (n === undefined ? '' : t('choose.found', { n }));

const byHand = (patch: Partial<Choice>) => change({ ...patch, byHand: true, places: undefined });

/** live, because what cannot be read as a number is empty here and not in the field. */
const verseField = (x: Choice, key: 'from' | 'to') => html`
  <input
    id=${key}
    type="number"
    inputmode="numeric"
    min="1"
    max=${verses(x.surah)}
    required
    data-t=${key}
    .value=${live(x[key])}
    @input=${(e: Event) => byHand({ [key]: (e.target as HTMLInputElement).value })}
  />
`;

/** Opens the verses, or gives them as work. */
function open(e: SubmitEvent) {
  e.preventDefault();
  const hashOf = (e.submitter as HTMLButtonElement | null)?.name === 'give' ? giveHash : linesHash;
  const { rule, surah: s, from, to } = state.get().choice!;
  const [a, b] = [Number(from), Number(to)];
  if (b < a) change({ problem: t('bad.order', { from: a, to: b }) });
  else if (b - a >= MOST) change({ problem: t('bad.many', { n: b - a + 1, most: MOST }) });
  else location.hash = hashOf({ rule, from: { s, a }, to: { s, a: b } });
}

/**
 * Looks for the best lines with what was chosen anew, and puts the verses of the best into the
 * fields, unless others have been chosen by hand meanwhile.
 */
async function suggest(patch: Partial<Choice> = {}) {
  change({ ...patch, byHand: false, places: undefined });
  try {
    await loadCourse();
  } catch {
    return change({ best: 'failed' });
  }
  const x = state.get().choice!;
  const child = reader()!;
  const rule = state.get().catalogue.rules.findIndex((r) => r.id === x.rule);
  const ranking = find(child, rule, x.where);
  const top = ranking.passages[0];
  change({ best: { child, rule, ranking } });
  if (!top) return;
  const lines = child.toLines(top, x.rule);
  whenIdle(() => void ahead({ name: 'lines', lines }));
  if (x.byHand || rule < 0) return;
  const { from, to } = lines;
  change({ surah: from.s, from: String(from.a), to: String(to.a), places: top.focus });
}

/** The choice at an address: at the learner's place, with a rule, or why the link cannot be read. */
function choiceAt(r: Route): Choice {
  const { juz, rules } = state.get().catalogue;
  const pick = r.name === 'choose' ? rules.find((x) => x.id === r.pick) : undefined;
  const at = state.learner()?.place ?? { s: juz[29]?.[0] ?? 78, a: 1 };
  return {
    rule: pick?.id ?? '',
    where: '',
    best: undefined,
    surah: at.s,
    from: String(at.a),
    to: String(Math.min(at.a + FEW - 1, verses(at.s))),
    byHand: false,
    places: undefined,
    problem: r.name === 'bad' ? t(`bad.${r.reason}`, r.vars) : '',
  };
}

export const choose: Screen = {
  title: () => t('choose.title'),
  view,
  enter(r) {
    state.set({ choice: choiceAt(r) });
    void suggest();
  },
};
