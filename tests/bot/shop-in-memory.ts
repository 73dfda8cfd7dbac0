import { openLog } from '../../domain/log/keeper.ts';
import { openStore } from '../../domain/store/open.ts';
import { readNote } from '../../nlp/read.ts';
import { BENCH, type Incoming, type Reply } from '../../bot/incoming.ts';
import { takeTurn } from '../../bot/turn.ts';
import type { Deps } from '../../bot/turn/deps.ts';

/** A shop that is forgotten afterwards, and a way to say things in it without a door. */
export function shopInMemory(dir = ':memory:'): { deps: Deps; say: (text: string, at: string, more?: Partial<Incoming>) => Reply; close(): void } {
  const log = openLog(openStore(dir));
  const deps: Deps = { log, zone: 'Europe/Paris', read: readNote };
  let n = 0;
  const say = (text: string, at: string, more: Partial<Incoming> = {}): Reply =>
    log.store.transaction(() => takeTurn({ key: `test:${++n}`, door: 'command', chat: BENCH, at, text, ...more }, deps));
  return { deps, say, close: () => log.store.close() };
}
