import { beginning, make, part, press } from './dom.ts';
import type { Unsent } from './unsent.ts';

const WHAT = { words: '', sound: 'Spoken note', photo: 'Photo' };

export interface WaitingActs { back(m: Unsent): void; drop(m: Unsent): void }

/** Messages that are not acknowledged, under the talk, with how far each has come. */
export function showWaiting(items: Unsent[], progress: ReadonlyMap<string, string>, held: string, acts: WaitingActs): void {
  part('waiting').replaceChildren(...items.map(m => {
    const what = [WHAT[m.kind], m.seconds ? `${Math.round(m.seconds)} s` : '', beginning(m.text)].filter(Boolean).join(', ');
    const words = make('p', 'words', what);
    words.dir = 'auto';
    const state = m.refused ? `Not taken: ${m.refused}` : progress.get(`page:${m.key}`) ?? (held ? 'Kept in this page, not sent yet' : m.kind === 'sound' ? 'Hearing it…' : 'Sending…');
    const li = make('li', m.refused ? 'refused' : '', words, make('p', 'about', state));
    if (m.refused) li.append(make('div', 'choices', ...(m.text ? [press('Put the words back', () => acts.back(m))] : []), press('Drop it', () => acts.drop(m))));
    return li;
  }));
}
