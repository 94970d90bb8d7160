// What can be put into a pencil case: stops, families, and rules.
import { html, nothing } from 'lit-html';
import { t } from '../../i18n.ts';
import { STOPS } from '../../marking/pencils.ts';
import { rulesInOrder } from '../../plan/ladder.ts';
import { MOST_PENCILS } from '../../share/link.ts';
import type { Catalogue, Lines } from '../../types.ts';
import { pencil, swatch } from './pencil.ts';

/** The pencils of some lines, and what can be chosen for them. */
interface Case extends Pick<Lines, 'rule' | 'also'> {
  /** Begins the hook of each chip. */
  name: string;
  /** The ids of the rules to choose from. */
  rules: ReadonlySet<string>;
  /** Is given the other pencils as they are to be. */
  choose: (also: string[]) => void;
}

/** A chip for each pencil, in two rows. That of the lines' rule is always there. */
export function pencilChips(c: Catalogue, x: Case) {
  const rules = rulesInOrder(c).filter((r) => x.rules.has(r.id));
  const many = (families: string[]) => rules.filter((r) => families.includes(r.family)).length > 1;
  const groups = c.groups.filter((g) => many(g.families) || x.also?.includes(g.id));
  return [
    html`<div class="row">
      ${chip(x, STOPS, t('case.stops'), '')}
      ${groups.map((g) => chip(x, g.id, g.name, g.families[0]!))}
    </div>`,
    html`<div class="row">${rules.map((r) => chip(x, r.id, r.name, r.family))}</div>`,
  ];
}

function chip({ rule, also = [], ...x }: Case, id: string, name: string, family: string) {
  const chosen = id === rule || also.includes(id);
  const full = !chosen && also.length >= MOST_PENCILS;
  const turned = () => (chosen ? also.filter((other) => other !== id) : [...also, id]);
  const off = id === rule || full;
  return pencilChip(`${x.name}-${id}`, name, family, chosen, () => x.choose(turned()), off);
}

/** A pencil to choose or to leave, of a family if it has one; off where it cannot be pressed. */
export const pencilChip = (
  hook: string,
  name: string,
  family: string,
  chosen: boolean,
  turn: () => void,
  off = false,
) =>
  html`<button
    type="button"
    class="chip"
    .style=${family ? pencil(family) : ''}
    ?disabled=${off}
    aria-pressed=${chosen}
    data-t=${hook}
    @click=${turn}
  >
    ${family ? swatch(family) : nothing}${name}
  </button>`;
