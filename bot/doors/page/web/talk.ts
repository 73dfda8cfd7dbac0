import { beginning, make, part, press } from './dom.ts';
import { keptFile } from './kept.ts';
import type { Talk } from './shapes.ts';

const BY: Record<string, string> = { telegram: ' by chat', terminal: ' at the terminal', command: ' by command' };
const NEAR_END = 120;

interface TalkView {
  /** Shows an exchange, or shows it anew; true when it was not there before. */
  show(t: Talk): boolean;
  /** Number of the newest exchange shown, 0 when there is none. */
  newest(): number;
  oldest(): number | undefined;
  toEnd(): void;
}

/** The stream of exchanges, in the order of their numbers. `say`: what a button does with the words it carries. */
export function talkView(say: (words: string) => void): TalkView {
  const list = part('said');
  const stream = part('stream');
  const items = new Map<number, { talk: Talk; li: HTMLElement }>();
  let newest = 0;
  const main = part('talk');
  // On a phone the page itself scrolls, with the tickets below the talk; beside the tickets the stream does.
  const pageScrolls = () => getComputedStyle(stream).overflowY === 'visible';
  const below = () => (pageScrolls() ? main.getBoundingClientRect().bottom - innerHeight : stream.scrollHeight - stream.scrollTop - stream.clientHeight);
  const toEnd = () => { if (pageScrolls()) scrollBy(0, below()); else stream.scrollTop = stream.scrollHeight; };
  // When something opens below it (the listening bar) or a picture comes in, the newest exchange stays in sight.
  let atFoot = true;
  addEventListener('scroll', () => { atFoot = Math.abs(below()) < NEAR_END; }, { capture: true, passive: true });
  const sizes = new ResizeObserver(() => { if (atFoot) toEnd(); });
  for (const e of [stream, list]) sizes.observe(e);
  const place = (id: number, li: HTMLElement) => {
    const after = [...items.keys()].filter(n => n > id).sort((a, b) => a - b)[0];
    if (after === undefined) list.append(li); else list.insertBefore(li, items.get(after)!.li);
  };
  return {
    show(t) {
      const atEnd = Math.abs(below()) < NEAR_END;
      const old = items.get(t.id);
      // Shown as it is already: left alone, with whatever is being played or pressed in it.
      if (old && JSON.stringify(old.talk) === JSON.stringify(t)) return false;
      // Work that took longer comes after its exchange, without the words again: it goes under the reply.
      if (old?.talk.text && !t.text) { old.li.querySelector('.reply:last-of-type')!.after(replyOf(t.say)); if (atEnd) toEnd(); return true; }
      const li = exchange(t, say);
      if (old) old.li.replaceWith(li); else place(t.id, li);
      items.set(t.id, { talk: t, li });
      newest = Math.max(newest, t.id);
      // Words like "scratch that" mean the latest note, so only the latest keeps its buttons.
      for (const [id, { li: item }] of items) if (id !== newest) item.querySelector('.choices')?.remove();
      part('empty').hidden = true;
      if (atEnd && t.id === newest) toEnd();
      return !old;
    },
    newest: () => newest,
    oldest: () => (items.size ? Math.min(...items.keys()) : undefined),
    toEnd,
  };
}

function exchange(t: Talk, say: (words: string) => void): HTMLElement {
  const words = make('p', 'words', beginning(t.text) || 'Without words');
  words.dir = 'auto';
  const about = make('p', 'about', make('span', 'number', String(t.id)), ` ${moment(t.at)}${BY[t.door] ?? ''}${t.struck ? ', struck out' : ''}`);
  const li = make('li', t.struck ? 'struck' : '', about, t.struck ? make('del', '', words) : words, replyOf(t.say));
  if (t.files.length) li.append(make('div', 'kept', ...t.files.map(keptFile)));
  if (t.buttons.length) {
    const choices = make('div', 'choices', ...t.buttons.map(b => press(b.label, () => say(b.send))));
    choices.setAttribute('role', 'group');
    choices.setAttribute('aria-label', 'Answers to choose from');
    li.append(choices);
  }
  return li;
}

/** Line by line, so that an item of a list that is broken hangs under its own first word. */
function replyOf(say: string): HTMLElement {
  const reply = make('p', 'reply', ...beginning(say).split('\n').map(l => make('span', /^\s*[•…] /.test(l) ? 'item' : '', l || '\u00a0')));
  reply.dir = 'auto';
  return reply;
}

/** The time of day as the shop's clock had it, with the day when it is not today. */
function moment(at: string): string {
  const d = new Date(`${at.slice(0, 10)}T12:00:00`);
  const today = new Date().toDateString() === d.toDateString();
  const day = today ? '' : `${d.toLocaleDateString('en-GB', { weekday: 'short', day: 'numeric', month: 'short' }).replace(',', '')} `;
  return `${day}${at.slice(11, 16)}`;
}
