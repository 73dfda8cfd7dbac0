import type { Entry } from '../../../domain/model/entry.ts';
import type { Clause } from '../../clauses/clause.ts';
import { partLike } from '../../clauses/name-kinds.ts';
import { COATS } from '../../words/coats.ts';
import { isClass, verbForms } from '../../words/verbs.ts';
import { isConsumable, nounsFrom, trim, withPhrase } from '../lib/fields.ts';
import { lowText, type Telling } from '../telling.ts';
import { table } from '../../words/table.ts';

/** What is given a part as a noun, and the verb of it. */
const NOUNED: Record<string, string> = table({ clean: 'clean', cleaning: 'clean', wash: 'wash', scrub: 'scrub', polish: 'polish', sand: 'sand', flush: 'flush', wipe: 'wipe', soak: 'soak', rub: 'rub', brush: 'brush', grease: 'grease', blast: 'blast', 'going over': 'clean', 'once over': 'clean', dip: 'dip', dunk: 'dip', rinse: 'rinse', hone: 'hone', scrape: 'scrape', buff: 'buff', hosing: 'hose', soaking: 'soak', greasing: 'grease', painting: 'paint', polishing: 'polish', sanding: 'sand', scrubbing: 'scrub', oiling: 'oil', brushing: 'brush', degrease: 'degrease', blow: 'blow', lick: 'paint', bath: 'soak', 'wire brushing': 'clean', service: 'service', overhaul: 'overhaul', dressing: 'dress', skim: 'skim', regrind: 'regrind' });

/** "gave the hood a good clean", "gave it two coats of red oxide". */
export function gave(t: Telling): Entry[] | undefined {
  const c = t.clause;
  if (c.verb?.base !== 'give') return undefined;
  const items = c.items.slice(c.vi + 1);
  const nps = items.filter(i => i.np);
  const thing = c.obj[0];
  if (!thing) return undefined;
  const given = nps.find(i => (i.from >= thing.to || items[0]?.t === 'pron') && i.np!.said.split(' ').some(w => NOUNED[w])) ?? nps.findLast(i => i.from >= thing.to || items[0]?.t === 'pron');
  const nouned = new RegExp(`\\bg[ai]ve .+? (?:a|another|some|its|the)(?: \\w+){0,2} (${Object.keys(NOUNED).join('|')})\\b`).exec(lowText(t));
  if (nouned && !items.some(i => i.low === 'of')) return [trim({ kind: 'work', part: thing.name, action: NOUNED[nouned[1]!]!, product: givenIn(t, items) }) as Entry];
  if (!given) return undefined;
  const words = given.np!.said.split(' ');
  const coat = items.findIndex(i => i.low === 'of');
  const stuff = coat >= 0 ? items[coat + 1]?.np?.said : undefined;
  if (stuff) { const act = COATS[stuff.split(' ').at(-1)!]; if (act) return [trim({ kind: 'work', part: thing.name, action: act, product: stuff }) as Entry]; }
  const act = words.map(w => NOUNED[w]).find(Boolean);
  return act ? [trim({ kind: 'work', part: thing.name, action: act, product: givenIn(t, items) }) as Entry] : undefined;
}

/** "the steps got a wire brushing", "frame's had a rub down and a wash": given by whoever it was. */
export function gotOne(t: Telling): Entry[] | undefined {
  const c = t.clause, parts = c.subj.filter(s => !s.carried && partLike(t.sheet, s.name));
  if (!/^(get|have)$/.test(c.verb?.base ?? (c.pred === 'have' ? 'have' : '')) || c.verb && c.verb.form === 'base' || !parts.length || /^(i|we|he|she|they|person|you)$/.test(c.who ?? '')) return undefined;
  const nouned = new RegExp(`\\b(?:got|had|getting|gotten) (?:a|an|another|its|their|some)(?: \\w+){0,2}? (wire brushing|${Object.keys(NOUNED).join('|')})\\b`).exec(lowText(t))?.[1];
  return nouned ? parts.map(p => trim({ kind: 'work', part: p.name, action: NOUNED[nouned]!, product: nouned === 'wire brushing' ? 'wire brush' : givenIn(t, c.items.slice(c.vi + 1)) }) as Entry) : undefined;
}

/** "welding's done on the bunk frame", "the painting is finished on both doors". */
export function doneOn(t: Telling): Entry[] | undefined {
  const m = /^(?:and |so |but |well |the |all the |now )*(\w+ing)(?:'s| is| was| has been|'s been) (?:all |now |finally )*(done|finished|complete|completed)(?: up| off)? on \b/.exec(lowText(t));
  const base = m && verbForms(m[1]!).find(f => f.form === 'ing' && isClass(f.base, 'work'))?.base, k = t.clause.items.findIndex((i, n) => i.low === 'on' && t.clause.items[n + 1]?.np), np = t.clause.items[k + 1]?.np;
  return base && k >= 0 && np && !np.stands && partLike(t.sheet, np.name) ? [{ kind: 'work', part: np.name, action: base } as Entry] : undefined;
}

/** "a soak in diesel", "a rub with emery". */
function givenIn(t: Telling, items: Clause['items']): string | undefined {
  const bath = items.findIndex((i, k) => i.low === 'in' && items[k + 1]?.np && isConsumable(items[k + 1]!.np!.said));
  return withPhrase(t.sheet, items) ?? (bath >= 0 ? nounsFrom(t.sheet, items, bath + 1) : undefined);
}
