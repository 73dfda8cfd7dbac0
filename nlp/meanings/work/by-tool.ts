import type { Entry } from '../../../domain/model/entry.ts';
import { dims } from '../../clauses/clause.ts';
import { partLike } from '../../clauses/name-kinds.ts';
import { SHAVING, trim, withPhrase } from '../lib/fields.ts';
import { lowText, type Telling } from '../telling.ts';

/** "ran a file over the guides", "took the hone to the bore": the tool is the work. */
export function tooled(t: Telling): Entry[] | undefined {
  const c = t.clause;
  if (!/^(run|take|put|pass|draw|stick|chase)$/.test(c.verb?.base ?? '') || c.verb!.form === 'base' && c.verb!.low !== 'run' || !c.obj.length) return undefined;
  const tool = c.obj[0]!.np?.said.split(' ').at(-1) ?? '';
  const acts: Record<string, string> = { file: 'file', tap: 'tap', hone: 'hone', reamer: 'ream', brush: 'brush', rag: 'wipe', emery: 'sand', stone: 'stone', die: 'thread', scraper: 'scrape', cloth: 'wipe', sandpaper: 'sand', plane: 'plane', grinder: 'grind' };
  const k = c.items.findIndex((i, n) => n > c.vi && /^(over|through|across|down|to|along|up|around|round)$/.test(i.low) && (c.items[n + 1]?.np || c.items[n + 1]?.t === 'pron'));
  if (!acts[tool] || k < 0) return undefined;
  const np = c.items[k + 1]!.np;
  const part = np && !np.stands ? np.name : (np?.stands ? undefined : t.memory.topic()?.name) ?? t.memory.topic()?.name;
  return part ? [{ kind: 'work', part, action: acts[tool]! } as Entry] : undefined;
}

/** "took a skim off the flywheel", "ran a light cut across the face": the piece taken off is the work. */
export function shaved(t: Telling): Entry[] | undefined {
  const c = t.clause, cut = SHAVING.exec(c.obj[0]?.name ?? '')?.[1];
  if (!cut || !/^(take|run|put|make|give|turn|have)$/.test(c.verb?.base ?? '') || c.verb!.form === 'base' && c.verb!.low !== 'run') return undefined;
  const k = c.items.findIndex((i, n) => n > c.vi && /^(off|across|over|along|from|down|through|on)$/.test(i.low) && (c.items[n + 1]?.np || c.items[n + 1]?.t === 'pron')), np = c.items[k + 1]?.np;
  const name = np && !np.stands ? np.name : k >= 0 ? t.memory.topic()?.name : undefined;
  return name && partLike(t.sheet, name) ? [{ kind: 'work', part: name, action: cut === 'skim' ? 'skim' : 'machine' } as Entry] : undefined;
}

/** "got the hub hot with the torch": heated. */
export function heated(t: Telling): Entry[] | undefined {
  const c = t.clause;
  if (c.verb?.base !== 'get' || c.verb.form === 'base' || !c.obj.length || !/\b(hot|red|warm|cherry)\b/.test(lowText(t))) return undefined;
  return [trim({ kind: 'work', part: c.obj[0]!.name, action: 'heat', product: withPhrase(t.sheet, c.items) }) as Entry];
}

/** "tried it at 40 psi", "ran it up to 60 pounds": tested, and the figure is a reading beside it. */
export function tried(t: Telling): Entry[] | undefined {
  const c = t.clause;
  if (!/^(try|test|run|pressurise|pressurize|pressure-test|pump|leak-test)$/.test(c.verb?.base ?? '') || c.verb!.form === 'base' || c.verb!.form === 's') return undefined;
  const m = dims(c.items, 'measure').find(f => /^(psi|bar|V|A|rpm|N·m|lb-ft|Ω)$/.test(f.value.unit));
  const plain = (n: string | undefined): string | undefined => (/^(pressure|leak|load|bench|water|air|hydro)$/.test(n ?? '') ? (t.told.at(-1)?.entry as { part?: string } | undefined)?.part : n); // "flushed and pressure tested"
  const part = plain((c.obj[0] ?? (c.passive || !c.who ? c.subj[0] : undefined) ?? (!c.who && !c.subj.length ? t.memory.topic() : undefined))?.name);
  if (!m || !part) return undefined;
  const what: Record<string, string> = { psi: 'pressure', bar: 'pressure', V: 'voltage', A: 'current', rpm: 'speed', 'Ω': 'resistance' };
  return [{ kind: 'work', part, action: 'test' } as Entry, { kind: 'reading', part, what: what[m.value.unit] ?? 'torque', value: m.value.value, unit: m.value.unit } as Entry];
}
