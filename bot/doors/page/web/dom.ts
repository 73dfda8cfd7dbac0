/** The element with this id; the page's own markup is what makes it sure to be there. */
export const part = <T extends HTMLElement = HTMLElement>(id: string): T => document.getElementById(id) as T;

/** An element with a class and what goes into it. Words go in as text, never as markup. */
export function make<K extends keyof HTMLElementTagNameMap>(tag: K, kind: string, ...inside: (Node | string)[]): HTMLElementTagNameMap[K] {
  const e = document.createElement(tag);
  if (kind) e.className = kind;
  e.append(...inside);
  return e;
}

const MOST_SHOWN = 2000;

/** A very long note shown by its beginning; the log holds all of it. */
export const beginning = (text: string): string =>
  (text.length > MOST_SHOWN ? `${text.slice(0, MOST_SHOWN)}… (${text.length.toLocaleString('en')} characters in all)` : text);

export function press(label: string, act: () => void): HTMLButtonElement {
  const b = make('button', '', label);
  b.type = 'button';
  b.addEventListener('click', act);
  return b;
}

/** Shows a sentence about what went wrong; an empty one takes it away. */
export function trouble(sentence: string): void {
  const p = part('trouble');
  p.textContent = sentence;
  p.hidden = !sentence;
}
