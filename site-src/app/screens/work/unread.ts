// In place of a link that cannot be read: why, and a field for another.
import { html, nothing } from 'lit-html';
import { t } from '../../i18n.ts';
import type { Read } from '../../share/query.ts';
import type { State } from '../../state.ts';
import { paste } from './paste.ts';

type Bad = Extract<Read<never>, { bad: unknown }>;

export function unread({ route }: State, { bad, vars }: Bad) {
  const empty = 'query' in route && !route.query.trim();
  return html`
    <h1 tabindex="-1">${t(empty ? 'paste.title' : 'unread.title')}</h1>
    ${empty ? nothing : html`<p class="problem" data-t="unread">${t(`unread.${bad}`, vars)}</p>`}
    ${paste(!empty)}
  `;
}
