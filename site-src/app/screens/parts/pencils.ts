// Where a family sets its own pencils, and is told when two are hard to tell apart.
import { html, nothing } from 'lit-html';
import { changeSettings } from '../../actions/settings.ts';
import { apply, onPaper, type Pencils, type Trouble, troubles } from '../../colour/pencils.ts';
import { t } from '../../i18n.ts';
import * as state from '../../state.ts';
import type { State } from '../../state.ts';
import { familyName } from './family.ts';
import { pencil, swatch } from './pencil.ts';

/** The list of pencils. */
export function pencilPanel({ catalogue: c, settings }: State) {
  const own = settings.pencils ?? {};
  const colours = onPaper(c.families, own);
  const said = troubles(c, own);
  return html`
    <section class="pencils">
      <h2>${t('pencils.title')}</h2>
      <p class="quiet">${t('pencils.what')}</p>
      <ul class="pencil-list">
        ${c.families.map((f) => item(own, f.id, colours.get(f.id)!))}
      </ul>
      <div class="pencil-said" role="status" data-t="pencil-said">
        ${
          said.length
            ? html`<ul>
                ${said.map((x) => html`<li>${words(x)}</li>`)}
              </ul>`
            : nothing
        }
      </div>
      <button
        type="button"
        class="plain"
        data-t="pencils-usual"
        ?hidden=${Object.keys(own).length < 2}
        @click=${() => set({})}
      >
        ${t('pencils.usual')}
      </button>
    </section>
  `;
}

function item(own: Pencils, id: string, colour: string) {
  const choose = (e: Event) => set({ ...own, [id]: (e.target as HTMLInputElement).value });
  const back = () => {
    const { [id]: _, ...rest } = own;
    set(rest);
    // The button goes: the keyboard stays with the pencil.
    document.getElementById(`pencil-${id}`)?.focus({ preventScroll: true });
  };
  return html`<li .style=${pencil(id)}>
    <input
      type="color"
      id="pencil-${id}"
      .value=${colour}
      data-t="pencil-${id}"
      @change=${choose}
    />
    <label for="pencil-${id}"><span class="inked">${swatch(id)}${familyName(id)}</span></label>
    ${
      own[id] === undefined
        ? nothing
        : html`<button
            type="button"
            class="plain"
            data-t="pencil-back-${id}"
            aria-label=${t('pencils.usual-of', { a: familyName(id) })}
            @click=${back}
          >
            ${t('pencils.back')}
          </button>`
    }
  </li>`;
}

function words(x: Trouble): string {
  if (x.kind !== 'pair') return t(`pencils.${x.kind}`, { a: familyName(x.a) });
  const eyes = x.which === 'full colour' ? 'pencils.alike' : 'pencils.alike-for';
  const which = t(`pencils.${x.which}`);
  const pair = t(eyes, { a: familyName(x.a), b: familyName(x.b), which });
  return `${pair} ${t(x.sameForm ? 'pencils.same-line' : 'pencils.other-line')}`;
}

function set(pencils: Pencils) {
  apply(state.get().catalogue, pencils);
  void changeSettings({ pencils });
}
