import { nameKey } from '../domain/model/names.ts';
import type { Log } from '../domain/log/keeper.ts';
import { machineNames, type Thing } from '../domain/log/shop.ts';
import { unheardNotes } from '../domain/store/heard.ts';
import { isSound, mediaOfNote, readMedia } from '../domain/store/media.ts';
import { outbox } from '../domain/store/outbox.ts';
import type { Store } from '../domain/store/open.ts';
import { modelsFor, type Hearer } from '../nlp/hear/hear.ts';
import { nowAndThen } from './now-and-then.ts';
import { putOut, type Outgoing } from './outbox.ts';
import type { ReceivingOptions } from './receive.ts';
import { sayHearing } from './say/model.ts';
import type { Service } from './service.ts';

/** Names that go along with a recording; more than this never fit the model, which takes the first that do. */
const MOST_NAMES = 120;
/** Less talk than this is heard before anyone could read how far it is, seconds. */
const LONG_TALK = 25;
/** A model that is put there by hand is noticed so soon, ms. */
const LOOK_MS = 5_000;

/** The number of the newest entry that says how a thing is; the newest are most likely to be spoken of again. */
const lastSaid = (t: Thing): number => Math.max(0, t.fit?.id ?? 0, t.finding?.id ?? 0, t.place?.id ?? 0, t.out?.id ?? 0, ...t.wants.map(w => w.id), ...t.jobs.map(j => j.id), ...[...t.works.values()].map(w => w.id));

/** The names of the shop that may be in what is heard next, most recent first: parts, machines, then places. */
function namesToHear(log: Log, machine: string | undefined): string[] {
  const here = machine === undefined ? [...log.shop.machines.values()] : [log.shop.machines.get(nameKey(machine))].filter(m => m !== undefined);
  const things = here.flatMap(m => [...m.things.values()]).filter(t => t.key).sort((a, b) => lastSaid(b) - lastSaid(a)).slice(0, MOST_NAMES);
  const places = new Set(things.flatMap(t => (t.place ? [t.place.where] : [])));
  return [...machineNames(log.shop), ...things.map(t => t.name), ...places].slice(0, MOST_NAMES);
}

/** The ear as the intake uses it, with the shop's own names and progress in words for what takes long. */
export function hearWith(hearer: Pick<Hearer, 'hear'>, log: Log, machine: () => string | undefined): NonNullable<ReceivingOptions['hear']> {
  return (bytes, tell) => hearer.hear(bytes, namesToHear(log, machine()), nowAndThen((share, seconds) => {
    if (seconds >= LONG_TALK) tell(sayHearing(share, seconds), share >= 1);
  }));
}

/** Hears what was kept while there was nothing to hear with; each is its note read anew, and answered where "the sound is kept" was said. */
export async function hearKept(service: Pick<Service, 'take'>, store: Store, canHear: () => boolean, onOut?: () => void): Promise<void> {
  for (const note of canHear() ? unheardNotes(store) : []) {
    const files = mediaOfNote(store, note.id).filter(isSound).map(m => ({ bytes: readMedia(store, m), use: 'sound' as const }));
    const key = `heard:${note.id}`;
    const { say, buttons, files: shown } = await service.take({ key, door: 'page', chat: note.chat, at: note.at, text: note.text, edits: note.key, files });
    const told = outbox.byKey(store, note.key);
    if (!told) continue;
    putOut(store, { key, door: told.door, at: note.at }, { target: (JSON.parse(told.body) as Outgoing).target, say, buttons, files: shown });
    onOut?.();
  }
}

/** Calls `act` as soon as there is something to hear with, though it be put there by hand while the program runs. Returns how to stop waiting. */
export function whenHearing(canHear: () => boolean, act: () => void): () => void {
  if (canHear()) { act(); return () => {}; }
  const look = setInterval(() => {
    if (!canHear()) return;
    clearInterval(look);
    act();
  }, LOOK_MS);
  look.unref();
  return () => clearInterval(look);
}

/** Whether there is a whole model to hear with. */
export const canHear = (...which: Parameters<typeof modelsFor>): boolean => modelsFor(...which).length > 0;
