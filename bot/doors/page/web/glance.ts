import { make, part } from './dom.ts';
import type { Glance } from './shapes.ts';

/** The five tickets beside the talk. */
export function showGlance(tickets: Glance[]): void {
  part('glance').replaceChildren(...tickets.map(ticket));
}

function ticket({ title, say, lines }: Glance): HTMLElement {
  const head = make('h2', '', title);
  // The heading says it already when the answer's own headline is no more than that.
  const inside: HTMLElement[] = [make('div', '', head, ...(say === `${title}:` ? [] : [make('p', '', say)]))];
  if (lines.length) {
    const list = make('ol', '', ...lines.map(l => { const li = make('li', '', l); li.dir = 'auto'; return li; }));
    list.setAttribute('role', 'list');
    inside.push(list);
  }
  const box = make('section', 'ticket', ...inside);
  head.id = `ticket-${title.toLowerCase().replace(/\W+/g, '-')}`;
  box.setAttribute('aria-labelledby', head.id);
  return box;
}
