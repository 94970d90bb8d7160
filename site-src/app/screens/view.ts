// What a screen is: a node, its title, and how it follows the state.

export interface View {
  node: HTMLElement;
  title: string;
  update: () => void;
  leave?: () => void;
}

/**
 * Runs draw now, and again only when one of the values it depends on has changed: a form must not
 * lose what is typed.
 */
export function when(on: () => unknown[], draw: () => void): () => void {
  let last: unknown[] = [];
  const update = () => {
    const now = on();
    if (last.length && now.every((x, i) => x === last[i])) return;
    last = now;
    draw();
  };
  update();
  return update;
}
