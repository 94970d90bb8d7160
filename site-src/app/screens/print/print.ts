// The print screen: what to print on one side, how it will look on the other, and the browser's own print.
import { h } from '../../dom.ts';
import { t } from '../../i18n.ts';
import type { View } from '../view.ts';

export function print(): View {
  const node = h('main', { class: 'print' }, h('h1', { tabindex: '-1' }, t('print.title')));
  return { node, title: t('print.title'), update: () => undefined };
}
