import type { Entry } from '../../../domain/model/entry.ts';
import { dims, type Clause } from '../../clauses/clause.ts';
import { lowText, type Telling } from '../telling.ts';
import { isFastener } from './fields.ts';
import { FOR_GOOD, NOT_FAST, ONLY_HOLDS, TEMPORARY, TRIED, WRONG_WAY } from './fit-phrases.ts';
import { byState } from './fit-rest.ts';
import { BY_TURNS, byVerb } from './fit-verb.ts';

export type FitState = Extract<Entry, { kind: 'fit' }>['state'];

/** The state a clause tells of its part, from its verb and particles or from the words after "is"; undefined when it tells none. */
export function fitState(t: Telling): FitState | undefined {
  const c = t.clause, text = around(t);
  if (c.items.slice(0, c.vi).some(i => i.t === 'verb' && /^(start|begin|commence|try|need|want|require)$/.test(i.base ?? ''))) return undefined;
  if (WRONG_WAY.test(lowText(t).concat(' ', t.clauses[t.at + 1] && !t.clauses[t.at + 1]!.verb ? lowText(t, t.clauses[t.at + 1]!) : '')) && (c.pred === 'be' || c.pred === 'none')) return undefined;
  const base = c.pred === 'verb' || c.pred === 'have' ? byVerb(t, c) ?? byHand(c, text) : byState(t, c) ?? byHand(c, text);
  if (!base) return undefined;
  if (base === 'off' || base === 'tried') return base;
  if (notFast(t)) return 'temporary';
  if (FOR_GOOD.test(text) && base !== 'tight') return 'on';
  if (TRIED.test(text) && base !== 'tight') return 'tried';
  if (base === 'tight' && /^(nip|snug|pinch)$/.test(c.verb?.base ?? '') && !/finger|hand/.test(text)) return 'tight';
  if (base === 'tight' && /\b(for now|for the (moment|time being|minute)|for the present|till i|until i|pro tem|temporarily)\b/.test(text)) return 'temporary';
  if (base === 'tight') return !BY_TURNS.test(text) && !dims(c.items, 'measure').some(m => /^(lb-ft|lb-in|N·m|in|mm)$/.test(m.value.unit)) && /finger[- ]?tight|hand[- ]?tight|by hand|nipped|roughly|roughed/.test(text) ? 'temporary' : 'tight';
  if (TEMPORARY.test(text)) return 'temporary';
  if (base === 'on' && !c.neg && dims(c.items, 'measure').some(m => /^(lb-ft|lb-in|N·m)$/.test(m.value.unit))) return 'tight'; // "caps on at 75 foot pounds"
  if (base === 'on' && c.verb?.base === 'do' && [...c.obj, ...c.subj].some(x => isFastener(x.name))) return 'tight'; // "did up the wheel nuts"
  if (base === 'on' && /\b(torqued|tightened|tight|torqued (up|down)|done up|pulled (up|down) tight)\b/.test(text) && !/not (yet )?(torqued|tight)/.test(text)) return 'tight';
  return base;
}

/** "standing on four bolts finger tight", "only roughed in, hand tight": however it is said, it is held for now. */
const byHand = (c: Clause, text: string): FitState | undefined =>
  (/\b(finger|hand|fingers)[- ]?tight\b/.test(text) && (c.subj.length > 0 || c.obj.length > 0) ? 'temporary' : undefined);

/** "…, not bolted yet": the clause after takes the fast hold away; it says nothing more. */
function notFast(t: Telling): boolean {
  const n = t.clauses[t.at + 1];
  if (NOT_FAST.test(lowText(t).replace(/^.* (?=(but )?(not|no) )/, ''))) return true;
  if (!n || n.asks || !NOT_FAST.test(lowText(t, n)) || n.subj.some(s => !s.carried) && !/^(but |and )?no /.test(lowText(t, n))) return false;
  (n as Clause & { spoken?: boolean }).spoken = true;
  return true;
}

/** The clause with the ones after it that say why it was so put ("…they come off again for paint"). */
function around(t: Telling): string {
  const own = lowText(t);
  const after = t.clauses[t.at + 1];
  if (!after || after.asks) return own;
  const text = lowText(t, after);
  const explains = /^(they|it|she|that|this|but (it|they)|so (it|they)|comes?|it'll|they'll|just|only|so (i|we) can|so that|to (check|see)|until|till|while|purely|merely|(?:no|without) \w+ ,? ?(?:just |only )?to (?:see|check|try)|(and )?(is|are) to come|(and )?(will|must|has to|have to) come)\b/.test(text) && /(off|out|apart|again|only|just|hold|for now|temporary|can|fit|see|check|until|till|finger)/.test(text);
  return explains || ONLY_HOLDS.test(text) ? `${own} , ${text}` : own;
}
