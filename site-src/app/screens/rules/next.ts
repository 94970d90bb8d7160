// Which rule next: what each rule would make readable in the lines the child is about to read, as
// bars.
import { html, nothing } from 'lit-html';
import { t } from '../../i18n.ts';
import { scrolling } from '../../motion.ts';
import { type Child, PAGES } from '../../plan/child.ts';
import { next, type Option } from '../../plan/next.ts';
import { part } from '../../plan/places.ts';
import { reason } from '../../plan/words.ts';
import * as state from '../../state.ts';
import { withTerm } from '../parts/term.ts';
import { called } from '../parts/words.ts';

/** Bars shown. */
const MOST = 7;

export function nextRule(c: Child) {
  const { units, x, c: cat } = c.course;
  const juz = state.get().ahead;
  const places = c.ahead(juz ? [part(x, cat.juz, juz)] : undefined);
  const all = next(units, places, c.taught);
  const proposed = c.reader.order.find((u) => all.some((o) => o.unit === u));
  if (proposed === undefined) return nothing;
  const why = c.learner.order ? t('plan.your-order') : reason(cat, proposed);
  return html`
    <section class="card" data-t="next">
      <h2>${t('next.title')}</h2>
      <p><b>${units[proposed]!.name}</b>: ${withTerm(why)}</p>
      ${learning(c)}
      <label for="ahead">${t('next.where')}</label>
      ${whereField(juz, cat.juz.length)}
      <ol class="plan-bars">
        ${bars(c, all, proposed)}
      </ol>
      <p class="quiet">${t('next.what', { child: called(state.learner()) })}</p>
    </section>
  `;
}

/** Says that a rule begun before is not known yet. */
function learning(c: Child) {
  const open = c.reader.taught.find((b) => c.standing(b.unit).state === 'learning');
  if (!open) return nothing;
  const rule = c.course.units[open.unit]!.name;
  return html`<p class="quiet" data-t="not-ready">${t('next.not-ready', { rule })}</p>`;
}

const whereField = (juz: number, n: number) => html`
  <select
    id="ahead"
    data-t="ahead"
    @change=${(e: Event) => state.set({ ahead: Number((e.target as HTMLSelectElement).value) })}
  >
    <option value="0" ?selected=${juz === 0}>${t('next.pages', { n: PAGES })}</option>
    ${Array.from(
      { length: n },
      (_, i) =>
        html`<option value=${i + 1} ?selected=${juz === i + 1}>
          ${t('next.juz', { n: i + 1 })}
        </option>`,
    )}
  </select>
`;

/** A bar for each of the rules with the most places, and for the one proposed. */
function bars(c: Child, all: Option[], proposed: number) {
  const top = Math.max(1, ...all.map((o) => o.places));
  const list = all.slice(0, MOST);
  if (!list.some((o) => o.unit === proposed))
    list.splice(
      -1,
      1,
      all.find((o) => o.unit === proposed)!,
    );
  return list.map((o) => {
    const u = c.course.units[o.unit]!;
    const mine = o.unit === proposed;
    return html`<li .style=${`--pencil:var(--c-${u.family})`}>
      <button data-t="bar-${u.id}" @click=${() => open(u.id)}>
        <span
          >${u.name}${
            mine ? html`<span class="quiet"> · ${t('next.proposed')}</span>` : nothing
          }</span
        >
        <span class="plan-bar" aria-hidden="true"
          ><span .style=${`inline-size:${Math.round((100 * o.places) / top)}%`}></span
        ></span>
        <span class="plan-figure">${t('today.places', { n: o.places })}</span>
      </button>
    </li>`;
  });
}

/** Opens the rung of a lesson and brings it into view. */
function open(id: string) {
  const rung = document.querySelector<HTMLDetailsElement>(`[data-t="rung-${id}"]`);
  if (!rung) return;
  rung.open = true;
  rung.scrollIntoView({ block: 'center', behavior: scrolling() });
  rung.querySelector('summary')!.focus({ preventScroll: true });
}
