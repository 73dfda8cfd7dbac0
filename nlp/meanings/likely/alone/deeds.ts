import type { Entry } from '../../../../domain/model/entry.ts';
import { unlisted } from '../../../clauses/items.ts';
import { saidIn, wordsIn } from '../../../likely/said.ts';
import { spotOf, verbOf } from '../../../likely/spot.ts';
import { stretchOf } from '../../../likely/stretch-of.ts';
import type { Weighed } from '../../../likely/net/weighed.ts';
import { verbForms } from '../../../words/verbs.ts';
import { deedOf } from '../../lib/deed-of.ts';
import { trim } from '../../lib/fields.ts';
import type { Telling } from '../../telling.ts';
import { namesFrom } from './names.ts';

/** How strongly the net must speak for a deed done, for one to do, and for one only begun (log odds); how sure it must be of what it was done with. */
const DONE = 1, TO_DO = 3, BEGUN = 1, WITH = 0.5;

/** "came out like it was greased": what something is only likened to. */
const LIKENED = /\b(like|as if|as though) (it|they|she|he|you|i|someone|somebody)\b/;

/** Deeds done or to do that a verb of the clause tells and no rule read: "scraped, primed and painted the tongue". */
export function deeds(t: Telling, net: Weighed): Entry[] {
  const { clause: c, sheet } = t, out: Entry[] = [];
  for (let i = c.from; i < c.to; i++) {
    const word = sheet.tokens[i]!.low, known = verbForms(word), forms = known.length ? known : /[a-z]{3}ed$/.test(word) ? [{ base: unlisted(word) }] : [], at = { from: i, to: i + 1 };
    if (!forms.length || forms[0]!.base === 'do' || LIKENED.test(sheet.tokens.slice(c.from, i).map(x => x.low).join(' '))) continue;
    const says = net.alone(...stretchOf(sheet, at)), z = (what: string): number => says.get(what) ?? -Infinity;
    const kind = z('work') > DONE ? 'work' : z('job') > TO_DO ? 'job' : undefined, base = c.items.find(x => x.t === 'verb' && x.from === i)?.base ?? forms[0]!.base;
    if (!kind || t.told.some(x => x.clause.from < c.to && c.from < Math.max(x.clause.to, x.to ?? 0) && forms.some(f => verbOf(f.base) === verbOf(deedOf(x.entry) ?? '')))) continue;
    const product = kind === 'work' ? saidIn(sheet, net, at, 'work product') : undefined;
    for (const part of namesFrom(t, net, kind, at, true)) {
      if (t.told.some(x => x.clause === c && x.entry.kind === kind && x.entry.part === part && !spotOf(sheet, x))) continue; // told in the trade's own word: "got a coat" is painted
      out.push(trim(kind === 'work'
        ? { kind, part, action: base, product: product && product.p > WITH ? wordsIn(sheet, product) : undefined, done: z('begun') > BEGUN ? false : undefined }
        : { kind, part, do: base }) as Entry);
    }
  }
  return out;
}
