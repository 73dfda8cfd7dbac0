import type { Entry } from '../../../domain/model/entry.ts';
import type { Clause } from '../../clauses/clause.ts';
import type { Item } from '../../clauses/items.ts';
import { trim } from '../lib/fields.ts';

/** A job to do: on a part, or on nothing that was named. */
export const entry = (act: string, part?: string): Entry => trim({ kind: 'job', do: act, part }) as Entry;

/** The verb `v` as what is to be done: "re-pour" is to pour, "send" goes with its "off". */
export const plainAct = (v: Item, c: Clause): string => {
  const away = v.base === 'send' ? [...c.prt, ...c.rest.map(i => i.low)].find(p => /^(off|out|away|back)$/.test(p)) : undefined;
  if (v.base === 'send') return away ? `send ${away}` : 'send';
  return v.base === 're-pour' || v.base === 'repour' ? 'pour' : v.base!;
};

/** `act` with the particle of its verb `base`, where that makes it another deed: "knock out", "take off". */
export const withParticle = (act: string, base: string, c: Clause): string => {
  if (/^(drill|knock|press|drive|cut|break|dig|saw|chip|punch|strip|burn|grind|chisel|tap|pull|clean|line|lay|mark)$/.test(base)) { const p = c.prt.find(x => /^(off|out|apart)$/.test(x)); return p ? `${act} ${p}` : act; }
  if (/^(take|get|put|whip|nip)$/.test(base)) { const p = c.prt.find(x => /^(off|out|on|in|apart|back)$/.test(x)); return /^(take|get|whip|nip)$/.test(base) && /^(off|out)$/.test(p ?? '') ? `take ${p}` : p ? `${base} ${p}` : act; }
  return act;
};
