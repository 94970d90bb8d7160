// Counts to be seen: for each length a row of dots that fill one after another, without a sound, at
// the pace of the family's own tapping. Where motion is reduced the dots stand still, numbered.
import { note, noted } from '../notes.ts';
import { paceOf, readPace, starts, tapped } from './pace.ts';

/** One length of a rule. */
export interface Length {
  name: string;
  counts: number;
}

/** hint: how to tap. still: what stands there instead where nothing moves. more: after one tap. */
export interface Words {
  hint: string;
  still: string;
  tap: string;
  more: string;
  pace: (seconds: string) => string;
}

const KEPT = 'sutur-pace';

/** Fills host with the lengths. */
export function beat(host: HTMLElement, lengths: readonly Length[], words: Words): void {
  const reduced = matchMedia('(prefers-reduced-motion: reduce)');
  const still = reduced.matches;
  const list = make('ul', 'beat-lengths');
  list.append(...lengths.map((l) => row(l, still)));
  const hint = make('p', '', still ? words.still : words.hint);
  host.replaceChildren(hint, ...(still ? [] : [pad(words)]), list);
  const again = () => host.isConnected && beat(host, lengths, words);
  reduced.addEventListener('change', again, { once: true });
}

function row(l: Length, still: boolean): HTMLElement {
  const dots = make('span', 'beat-dots');
  dots.ariaHidden = 'true';
  dots.append(...starts(l.counts, 1).map((i) => make('i', '', String(i + 1))));
  const inside = [make('span', 'beat-name', l.name), ' ', dots];
  const li = make('li');
  li.dataset.counts = String(l.counts);
  if (still) {
    li.append(...inside);
    return li;
  }
  const button = make('button');
  button.type = 'button';
  button.append(...inside);
  button.addEventListener('click', () => fill(dots));
  li.append(button);
  return li;
}

let waiting: ReturnType<typeof setTimeout>[] = [];

/** One row fills at a time; pressed again it begins again. */
function fill(dots: HTMLElement) {
  waiting.forEach(clearTimeout);
  document.querySelectorAll('.beat-dots .on').forEach((d) => d.classList.remove('on'));
  const pace = kept();
  dots.style.setProperty('--count', `${pace}ms`);
  void dots.offsetWidth; // empty first, so that they fill anew
  const all = [...dots.children];
  waiting = starts(all.length, pace).map((at, i) =>
    setTimeout(() => all[i]!.classList.add('on'), at),
  );
}

/** The button to tap, and what has been understood. */
function pad(words: Words): HTMLElement {
  const box = make('p', 'beat-pad');
  const button = make('button', 'big', words.tap);
  button.type = 'button';
  const said = make('span', 'beat-pace', seconds(words, kept()));
  said.role = 'status';
  let taps: number[] = [];
  button.addEventListener('click', (e) => {
    taps = tapped(taps, e.timeStamp);
    const pace = paceOf(taps);
    if (pace) keep(pace);
    said.textContent = pace ? seconds(words, pace) : words.more;
  });
  box.append(button, ' ', said);
  return box;
}

const seconds = (words: Words, pace: number) => words.pace((pace / 1000).toFixed(1));

let here: number | undefined; // for a browser that keeps nothing

const kept = (): number => here ?? readPace(noted('device', KEPT));

function keep(pace: number) {
  here = pace;
  note('device', KEPT, String(pace));
}

function make<K extends keyof HTMLElementTagNameMap>(tag: K, className = '', text = '') {
  const el = document.createElement(tag);
  if (className) el.className = className;
  if (text) el.textContent = text;
  return el;
}
