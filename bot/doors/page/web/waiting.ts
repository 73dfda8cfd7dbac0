import { beginning, make, part, press } from './dom.ts';
import type { Unsent } from './unsent.ts';

const WHAT = { words: '', sound: 'Spoken note', photo: 'Photo' };

interface WaitingActs { back(m: Unsent): void; drop(m: Unsent): void }

/** The key that the program knows a message of this page by. */
export const keyOf = (m: Pick<Unsent, 'key'>): string => `page:${m.key}`;

/** Messages that are not acknowledged, under the talk, with how far each has come; then how far long work for others is. */
export function showWaiting(items: Unsent[], progress: ReadonlyMap<string, string>, held: string, acts: WaitingActs): void {
  const others = [...progress].filter(([key]) => !items.some(m => keyOf(m) === key)).map(([, text]) => make('li', '', make('p', 'about', text)));
  part('waiting').replaceChildren(...items.map(m => {
    const what = [WHAT[m.kind], m.seconds ? `${Math.round(m.seconds)} s` : '', beginning(m.text)].filter(Boolean).join(', ');
    const words = make('p', 'words', what);
    words.dir = 'auto';
    const state = m.refused ? `Not taken: ${m.refused}` : progress.get(keyOf(m)) ?? (held ? 'Kept in this page, not sent yet' : m.kind === 'sound' ? 'Hearing it…' : 'Sending…');
    const li = make('li', m.refused ? 'refused' : '', words, make('p', 'about', state));
    if (m.refused) li.append(make('div', 'choices', ...(m.text ? [press('Put the words back', () => acts.back(m))] : []), press('Drop it', () => acts.drop(m))));
    return li;
  }), ...others);
}
