// A page of paper: head, what stands on it, foot. What is seen on screen is what is printed.
import { swatch } from '../../colour/ink.ts';
import { ar, h } from '../../dom.ts';
import { t } from '../../i18n.ts';
import type { Catalogue, Rule } from '../../types.ts';

/** The words at the head of a sheet. */
export interface Heads {
  title: string;
  rule: Rule | undefined;
  child: string;
  learnt: Rule[];
  places: number;
}

export function leaf(
  c: Catalogue,
  kind: string,
  n: number,
  ...kids: (Node | Node[] | false)[]
): HTMLElement {
  return h(
    'section',
    { class: 'leaf', 'data-sheet': kind, 'data-page': n, 'aria-label': t('print.page', { n }) },
    ...kids,
    h(
      'footer',
      { class: 'leaf-foot' },
      h('span', {}, t('print.source', { digest: c.textDigest.slice(0, 16) })),
      h('span', { class: 'page-number' }, t('print.page', { n })),
    ),
  );
}

/** Page numbers with how many there are, once that is known. */
export function number(leaves: HTMLElement[]) {
  leaves.forEach((x, i) => {
    x.querySelector('.page-number')!.textContent = t('print.page-of', {
      n: i + 1,
      of: leaves.length,
    });
  });
}

const fillIn = (label: string, value = '') =>
  h('span', { class: 'fill-in' }, label, h('span', { class: 'blank' }, value));

/** A rule's name after a stroke of its family's pencil. */
export const formed = (r: Rule, text = r.name) =>
  h('span', { class: 'formed' }, swatch(r.family), text);

export const practiceHead = (x: Heads) =>
  h(
    'header',
    { class: 'leaf-head first' },
    h(
      'div',
      { class: 'head-line' },
      h('h2', {}, x.title),
      fillIn(t('print.name'), x.child),
      fillIn(t('print.date')),
    ),
    h(
      'p',
      { class: 'task-line' },
      x.rule
        ? [
            t('print.find'),
            ' ',
            h('b', {}, x.rule.name),
            ' ',
            ar(x.rule.ar, 'ar'),
            '. ',
            fillIn(t('print.how-many')),
          ]
        : t('print.only-read'),
    ),
    x.learnt.length > 0 &&
      h(
        'p',
        { class: x.learnt.length > 14 ? 'strip many' : 'strip' },
        h('b', {}, t('print.learnt')),
        ' ',
        x.learnt.map((r, i) => [i > 0 && ' · ', formed(r)]),
      ),
  );

export const answerHead = (x: Heads) =>
  h(
    'header',
    { class: 'leaf-head first' },
    h('div', { class: 'head-line' }, h('h2', {}, t('print.answers', { title: x.title }))),
    h(
      'p',
      { class: 'task-line' },
      x.rule
        ? [
            h('b', {}, x.rule.name),
            ' ',
            ar(x.rule.ar, 'ar'),
            ': ',
            t('print.places', { n: x.places }),
          ]
        : t('print.only-read'),
    ),
    h('p', { class: 'strip' }, t('print.how-shown')),
  );

/** The small head of every page after the first. */
export const nextHead = (x: Heads, kind: 'practice' | 'answer') =>
  h(
    'header',
    { class: 'leaf-head' },
    kind === 'answer' ? t('print.answers', { title: x.title }) : x.title,
    x.rule && ` · ${x.rule.name}`,
  );
