import type { Entry } from '../../domain/model/entry.ts';
import { stillToDo } from './lib/still-to.ts';
import { nounClasses } from '../words/nouns.ts';
import { lowText, type Meaning, type Telling } from './telling.ts';
import { entry } from './job/act.ts';
import { asThat } from './job/as-that.ts';
import { treated } from './job/treated.ts';
import { ordered } from './job/ordered.ts';
import { condition, make } from './finding/part.ts';

/** Work still to do: "need to", "I'll", "going to", "must", an order to oneself, "X wants a clean", "X needs welding". */
export const job: Meaning = t => {
  const c = t.clause;
  const reminded = /\bdon't (let me )?forget to\b/.test(lowText(t));
  if (c.neg && !reminded || c.asks || c.sub && !(c.sub === 'when' && c.reality === 'plan') && /^(if|unless|until|till|before|when|after|because|so|that|which|while|since|as)$/.test(c.sub)) return undefined;
  if (/^(maybe|perhaps|possibly|might)\b/.test(lowText(t))) return undefined;
  if (c.reality === 'cond' || c.join === 'or' || t.clauses[t.at + 1]?.join === 'or' || /\b(don't know|not sure|no idea)\b/.test(lowText(t))) return undefined;
  const anew = t.told.at(-1)?.entry;
  if (anew?.kind === 'finding' && /\b(have|get|need|want)s? (to have |to get )?(a new|another) one (cut|made|cast|turned|machined|rolled|bent|forged|welded|ground|poured|wound)\b/.test(lowText(t))) { anew.verdict ??= 'replace'; return []; }
  const left = stillToDo(t), got = treated(t, c) ?? (left?.parts.length ? left.parts.map(p => entry(left.act, p.name)) : undefined) ?? asThat(t) ?? ordered(t, c);
  if (!got || c.join === ':' && got.some(j => j.kind === 'job' && j.part !== undefined && nounClasses(j.part.split(' ').at(-1)!).has('place'))) return undefined; // "rod bolts: pickle jar, upper shelf"
  mends(t, got);
  return [...toMend(t, got), ...got];
};

/** Work that only what is found bad needs: a part that needs it was found so. */
const FOUND_BAD = /^(?:re-?)?(?:weld|braze|solder|pour|build|line|bush|bore|skim|grind|stitch|metal|chrome|wind|patch|sleeve)\b/;
/** "Drag link end needs welding", "front bushing has to be re-poured": how the part was found, where nothing else of the note says it. */
function toMend(t: Telling, jobs: readonly Entry[]): Entry[] {
  const c = t.clause, from = c.items.find(i => /^(need|needs|wants|requires?|has|have|must)$/.test(i.low))?.from;
  if (from === undefined || !/\b(?:needs?|wants|requires?|(?:has|have) (?:got )?to be|must be)\b/.test(lowText(t)) || /^(i|we|you|he|they)$/.test(c.who ?? '') || c.sub) return [];
  return jobs.flatMap(j => (j.kind === 'job' && j.part !== undefined && FOUND_BAD.test(j.do) && c.subj.some(s => !s.carried && s.name === j.part) && !t.told.some(x => x.entry.kind === 'finding' && x.entry.part === j.part) ? [make(j.part, condition(t, c, from), 'repair')] : []));
}

const MENDS = /^(grind|file|skim|machine|dress|weld|braze|solder|patch|pour|re-pour|repour|glue|straighten|rebuild|rewind|reline|rebush|sleeve|regrind|repair|fix|mend|file|recut|rivet|epoxy|re-line|resleeve|rebabbitt|fill|plug|build|stitch|sew|splice|re-cover|recover|pin|reface|true|bush)$/;
/** A repair that he says he will do is the verdict on what was found: "rotted through… I've got to patch it". */
function mends(t: Telling, jobs: readonly Entry[]): void {
  const anew = /\b(make|turn|cut|carve|fabricate|knock up|build|saw|forge|cast|get|weave|sew|machine) (up )?(me |us )?(another|a new|new)( one| ones)?\b/.test(lowText(t)) ? t.told.at(-1)?.entry : undefined; // "…worn, I'll turn another one"
  if (anew?.kind === 'finding') anew.verdict ??= 'replace';
  for (const j of jobs) {
    if (j.kind !== 'job' || !MENDS.test(j.do)) continue;
    const names = [j.part, ...t.clause.subj.map(s => s.name), ...t.memory.lastGroup().map(s => s.name)];
    const f = t.told.findLast(x => x.entry.kind === 'finding' && (x.entry.part === j.part || names.includes(x.entry.part) && (t.clause.items.some(i => i.low === 'it' || i.low === 'for') || j.part === undefined)));
    if (f?.entry.kind === 'finding') f.entry.verdict ??= 'repair';
  }
}
