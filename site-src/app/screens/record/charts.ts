// Small charts of the last weeks. Each is a picture for the eye alone, with its figures on it, and a
// table of the same figures that is read out, and printed.
import { html, nothing, svg, type TemplateResult } from 'lit-html';
import { dateName, t } from '../../i18n.ts';
import { type Bar, barsOf, percent, type Week, weeks, WEEKS } from '../../record/charts.ts';
import type { Entry } from '../../types.ts';

/** The drawing, in its own units: as wide as a phone of 320 pixels has room for. */
const WIDE = 288;
const TOP = 14;
const BASE = 74;
const HIGH = 90;

export function charts(sessions: Entry[], end: string) {
  if (!sessions.length) return nothing;
  const list = weeks(sessions, end);
  const any = list.some((w) => w.sessions);
  return html`
    <section class="charts" data-t="charts">
      <h2>${t('charts.title', { n: WEEKS })}</h2>
      ${any ? [often(list), found(list)] : html`<p class="quiet">${t('charts.none', { n: WEEKS })}</p>`}
    </section>
  `;
}

/** Sessions a week. */
function often(list: Week[]) {
  const most = Math.max(...list.map((w) => w.sessions));
  const bars = barsOf(
    list.map((w) => w.sessions),
    { most, wide: WIDE, top: TOP, base: BASE },
  );
  const drawn = bars.map((b, i) => [full(b), figure(b, list[i]!.sessions || undefined)]);
  return figureOf('charts.sessions', list, drawn, [t('charts.sessions-column')], (w) => [
    w.sessions,
  ]);
}

/** Places found of all: what is filled of each frame. */
function found(list: Week[]) {
  if (!list.some((w) => w.of)) return nothing;
  const room = { most: 100, wide: WIDE, top: TOP, base: BASE };
  const bars = barsOf(
    list.map((w) => percent(w) ?? 0),
    room,
  );
  const frames = barsOf(
    list.map((w) => (w.of ? 100 : 0)),
    room,
  );
  const drawn = bars.map((b, i) => [
    full(b),
    frame(frames[i]!),
    figure(frames[i]!, percent(list[i]!)),
  ]);
  return figureOf(
    'charts.found',
    list,
    drawn,
    [t('charts.found-column'), t('charts.of-column'), t('charts.percent-column')],
    (w) =>
      w.of
        ? [w.found, w.of, t('charts.percent', { n: percent(w)! })]
        : ['', '', t('charts.no-figure')],
  );
}

function figureOf(
  name: 'charts.sessions' | 'charts.found',
  list: Week[],
  drawn: unknown,
  columns: string[],
  cells: (w: Week) => (string | number)[],
) {
  return html`<figure class="chart" data-t=${name.replace('.', '-')}>
    <figcaption>${t(name)}</figcaption>
    <svg viewBox="0 0 ${WIDE} ${HIGH}" aria-hidden="true">
      <path class="base" d="M0 ${BASE}H${WIDE}"></path>
      ${drawn} ${list.map((w, i) => (i % 4 ? nothing : week(w, i)))}
    </svg>
    <div class="figures">${table(name, list, columns, cells)}</div>
  </figure>`;
}

const table = (
  name: 'charts.sessions' | 'charts.found',
  list: Week[],
  columns: string[],
  cells: (w: Week) => (string | number)[],
) => html`
  <table>
    <caption>
      ${t(name)}
    </caption>
    <tr>
      <th scope="col">${t('charts.week')}</th>
      ${columns.map((x) => html`<th scope="col">${x}</th>`)}
    </tr>
    ${list.map(
      (w) =>
        html`<tr>
          <th scope="row">${dateName(w.from)}</th>
          ${cells(w).map((x) => html`<td>${x}</td>`)}
        </tr>`,
    )}
  </table>
`;

const full = (b: Bar) =>
  svg`<rect class="full" x=${b.x} y=${b.y} width=${b.wide} height=${b.high}></rect>`;

const frame = (b: Bar) =>
  b.high
    ? svg`<rect class="frame" x=${b.x} y=${b.y} width=${b.wide} height=${b.high}></rect>`
    : nothing;

/** The value over its bar, from the bar's start on. */
const figure = (b: Bar, n: number | undefined): TemplateResult | typeof nothing =>
  n === undefined ? nothing : svg`<text x=${b.x} y=${b.y - 3}>${n}</text>`;

const week = (w: Week, i: number) =>
  svg`<text class="week" x=${(i * WIDE) / WEEKS} y=${BASE + 13}>${dateName(w.from)}</text>`;

/** How much of a rule was found, as a bar of the colour of its pencil. */
export const shareBar = (x: { found: number; of: number }) => html`
  <svg class="share-bar" viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true">
    <rect class="full" width=${percent(x) ?? 0} height="8"></rect>
    <rect class="frame" width="100" height="8"></rect>
  </svg>
`;
