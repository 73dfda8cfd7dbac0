import { openLog, type Log } from '../../../../domain/log/keeper.ts';
import { record } from '../../../../domain/log/record.ts';
import type { Machine, Thing } from '../../../../domain/log/shop.ts';
import type { Entry } from '../../../../domain/model/entry.ts';
import { nameKey } from '../../../../domain/model/names.ts';
import type { StoredEntry } from '../../../../domain/model/stored.ts';
import { keepNote } from '../../../../domain/store/notes.ts';
import { openStore } from '../../../../domain/store/open.ts';

interface Where { at?: string; machine?: string; chat?: string; text?: string; edits?: number }

/** A shop in which things are said as entries, without a reader. Moments go on by a minute a note unless they are given. */
export class BenchShop {
  readonly log: Log;
  #notes = 0;
  constructor(dir = ':memory:') { this.log = openLog(openStore(dir)); }

  say(entries: readonly Entry[], { at, machine = 'Heron', chat = 'bench', text = 'said', edits }: Where = {}): StoredEntry[] {
    const n = ++this.#notes;
    const moment = at ?? new Date(Date.UTC(2026, 2, 2, 8, n)).toISOString().replace('.000Z', '+00:00');
    const { note } = keepNote(this.log.store, { key: `test:${n}:${Math.random()}`, at: moment, door: 'test', chat, text, machine, edits });
    return record(this.log, note, entries);
  }
  machine(name = 'Heron'): Machine {
    const found = this.log.shop.machines.get(nameKey(name));
    if (!found) throw new Error(`no machine ${name}`);
    return found;
  }
  thing(name: string, machine = 'Heron'): Thing {
    const found = this.machine(machine).things.get(nameKey(name));
    if (!found) throw new Error(`no thing ${name} among ${[...this.machine(machine).things.keys()].join(', ')}`);
    return found;
  }
}
