// Builds elements. Text always goes in as text, never as markup.
type Child = Node | string | false | null | undefined | Child[];
type Props = Record<string, unknown>;

/**
 * Makes an element: on… are listeners, other keys attributes; true sets an empty attribute, false
 * leaves it out.
 */
export function h<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  props: Props = {},
  ...kids: Child[]
): HTMLElementTagNameMap[K] {
  const el = document.createElement(tag);
  for (const [k, v] of Object.entries(props)) {
    if (v === false || v === undefined || v === null) continue;
    if (k.startsWith('on')) el.addEventListener(k.slice(2), v as EventListener);
    else if (k === 'style')
      el.style.cssText = String(v); // a style attribute would need a looser content policy
    else el.setAttribute(k, v === true ? '' : String(v));
  }
  el.append(...flat(kids));
  return el;
}

function flat(kids: Child[]): (Node | string)[] {
  return kids.flatMap((k) => (Array.isArray(k) ? flat(k) : k || k === '' ? [k] : []));
}

/**
 * As refill, but leaves el alone where it would come out the same: a control that is replaced
 * between press and release loses the click. What its listeners do must not depend on anything that
 * is not seen on it.
 */
export function renew(el: Element, ...kids: Child[]) {
  const now = flat(kids).map((k) => (typeof k === 'string' ? document.createTextNode(k) : k));
  if (now.length !== el.childNodes.length || now.some((k, i) => !k.isEqualNode(el.childNodes[i]!)))
    refill(el, ...now);
}

/** Replaces what is in el, and gives the focus back to the control with the same data-t. */
export function refill(el: Element, ...kids: Child[]) {
  const at = el.contains(document.activeElement) ? document.activeElement : null;
  const key = at?.getAttribute('data-t'),
    id = at?.id;
  el.replaceChildren(...flat(kids));
  if (at && !at.isConnected) {
    const again =
      (id && document.getElementById(id)) ||
      (key && el.querySelector<HTMLElement>(`[data-t="${CSS.escape(key)}"]`));
    if (again) (again as HTMLElement).focus({ preventScroll: true });
  }
}

/** Arabic of the text or of a name. */
export const ar = (text: string, cls = 'ar') =>
  h('span', { lang: 'ar', dir: 'rtl', class: cls }, text);
