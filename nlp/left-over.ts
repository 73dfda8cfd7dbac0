import type { Entry } from '../domain/model/entry.ts';
import type { Placed } from './clauses/clauses.ts';
import type { Clause } from './clauses/clause.ts';
import type { Weighed } from './likely/net/weighed.ts';
import { remark } from './meanings/remark.ts';
import { clauseText, type Telling, type Told } from './meanings/telling.ts';

/** A heading ("radiator: core ok") is read where what stands under it is. */
export function headed(left: Telling[], covered: Clause[]): void {
  for (const t of [...left]) {
    const next = t.clauses[t.at + 1];
    if (t.clause.pred !== 'none' || t.clause.items.some(i => !i.np && !/^(mark|intj|adv)$/.test(i.t)) || !next || (next as Placed).sentence !== (t.clause as Placed).sentence || !covered.includes(next)) continue;
    (next as Clause).from = Math.min(next.from, t.clause.from);
    left.splice(left.indexOf(t), 1);
  }
}

/** How strongly the net must speak for a remark where no rule sees one, and against it where one does (log odds). */
const KEPT = 0, IDLE = -3;

/** What of a note is worth keeping beside its entries; the clauses left go to the trace. One remark a note: sentences that follow one another are one, of those apart the one that the net speaks most for. */
export function remarked(left: readonly Telling[], covered: Clause[], net?: Weighed): Told[] {
  const out: Kept[] = [];
  const read = new Set(covered.map(c => (c as Placed).sentence));
  for (const own of runs(left)) {
    const { sheet, clause } = own[0]!, start = sheet.tokens[clause.from]?.start ?? 0, end = sheet.tokens[own.at(-1)!.clause.to - 1]?.end ?? 0, z = net?.told(start, end)?.get('remark') ?? 0;
    const got = z < IDLE ? undefined : remark(own, read.has((clause as Placed).sentence)) ?? (z > KEPT && !clause.neg ? { kind: 'remark', text: sheet.text.slice(start, end).trim() } as Entry : undefined);
    const last = out.at(-1);
    if (got && last && last.own.at(-1)!.at + 1 === own[0]!.at) { last.own.push(...own); last.z = Math.max(last.z, z); }
    else if (got?.kind === 'remark') out.push({ own: [...own], z, start: sheet.text.indexOf(got.text, sheet.tokens[clause.from - 1]?.start ?? 0) });
    for (const t of own) t.sheet.trace.push({ stage: 'meaning', rule: got ? 'remark' : 'none', text: clauseText(t) });
  }
  if (!out.length) return [];
  const { own, start } = out.reduce((a, b) => (b.z > a.z ? b : a)), { sheet } = own[0]!, to = own.at(-1)!.clause.to;
  covered.push(...own.map(t => t.clause));
  return [{ entry: { kind: 'remark', text: sheet.text.slice(start, sheet.tokens[to - 1]!.end).trim() } as Entry, clause: { ...own[0]!.clause, to }, rule: 'remark' }];
}

/** Clauses that make a remark, how strongly the net speaks for it, and where in the note its words begin. */
interface Kept { own: Telling[]; z: number; start: number }

/** Clauses left unread, in runs without a gap inside one sentence. */
function runs(left: readonly Telling[]): Telling[][] {
  const out: Telling[][] = [];
  for (const t of left) {
    const last = out.at(-1)?.at(-1);
    if (last && last.at + 1 === t.at && (last.clause as Placed).sentence === (t.clause as Placed).sentence) out.at(-1)!.push(t);
    else out.push([t]);
  }
  return out;
}
