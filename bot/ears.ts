import { nameKey } from '../domain/model/names.ts';
import type { Log } from '../domain/log/keeper.ts';
import { machineNames, type Thing } from '../domain/log/shop.ts';
import { unheardNotes } from '../domain/store/heard.ts';
import { isSound, mediaOfNote, readMedia } from '../domain/store/media.ts';
import type { Store } from '../domain/store/open.ts';
import { chooseModel, type Hearer, type HearerOptions } from '../nlp/hear/hear.ts';
import { missingFiles } from '../nlp/hear/model-files.ts';
import type { Heard, ReceivingOptions } from './receive.ts';
import type { Service } from './service.ts';

/** Names that go along with a recording; more than this never fit the model, which takes the first that do. */
const MOST_NAMES = 120;

/** The number of the newest entry that says how a thing is; the newest are most likely to be spoken of again. */
const lastSaid = (t: Thing): number => Math.max(0, t.fit?.id ?? 0, t.finding?.id ?? 0, t.place?.id ?? 0, t.out?.id ?? 0, ...t.wants.map(w => w.id), ...t.jobs.map(j => j.id), ...[...t.works.values()].map(w => w.id));

/** The names of the shop that may be in what is heard next, most recent first: parts, machines, then places. */
export function namesToHear(log: Log, machine: string | undefined): string[] {
  const here = machine === undefined ? [...log.shop.machines.values()] : [log.shop.machines.get(nameKey(machine))].filter(m => m !== undefined);
  const things = here.flatMap(m => [...m.things.values()]).filter(t => t.key).sort((a, b) => lastSaid(b) - lastSaid(a)).slice(0, MOST_NAMES);
  const places = new Set(things.flatMap(t => (t.place ? [t.place.where] : [])));
  return [...machineNames(log.shop), ...things.map(t => t.name), ...places].slice(0, MOST_NAMES);
}

/** Whether there is a whole model to hear with. */
export const canHear = (options: HearerOptions): boolean => missingFiles(chooseModel(options)).length === 0;

/** The ear as the intake uses it, with the shop's own names and progress in words for what takes long. */
export function hearWith(hearer: Hearer, log: Log, options: HearerOptions, machine: () => string | undefined): NonNullable<ReceivingOptions['hear']> {
  return async (bytes, progress): Promise<Heard> => {
    const heard = await hearer.hear(bytes, namesToHear(log, machine()), share => {
      if (share < 1) progress(`Hearing… ${Math.round(share * 100)} %`);
    });
    return { ...heard, unheard: !canHear(options) };
  };
}

/** Hears what was kept while there was nothing to hear with; each is its note read anew. */
export async function hearKept(service: Pick<Service, 'take'>, store: Store, options: HearerOptions): Promise<void> {
  if (!canHear(options)) return;
  for (const note of unheardNotes(store)) {
    const files = mediaOfNote(store, note.id).filter(isSound).map(m => ({ bytes: readMedia(store, m), use: 'sound' as const }));
    await service.take({ key: `heard:${note.id}`, door: 'page', chat: note.chat, at: note.at, text: note.text, edits: note.key, files });
  }
}
