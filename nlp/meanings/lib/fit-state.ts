import { isKnownPart } from '../../dimensions/part/known.ts';
import type { Entry } from '../../../domain/model/entry.ts';
import { dims, type Clause } from '../../clauses/clause.ts';
import { isPlaceNoun } from '../../clauses/things.ts';
import { isClass } from '../../words/verbs.ts';
import { lowText, type Telling } from '../telling.ts';
import { isFastener } from './fields.ts';

export type FitState = Extract<Entry, { kind: 'fit' }>['state'];

const OFF_ALONE = /^(pull|remove|unbolt|unscrew|dismount|detach|disconnect|uncouple|extract|unpin|unhook|unhitch|dismantle|disassemble|undo|unship|withdraw|yank)$/;
const OFF_WITH = /^(take|get|come|knock|drive|press|punch|tap|lift|slide|drop|pop|break|slip|draw|drag|haul|whip|prise|pry|wrestle|jack|crack|bring|have|cut|work|tease|coax|beat|chisel|drill|fall|split|strip|hoist|swing|drift|persuade|lower|twist|screw|roll|push|force|back|turn|let|ease|burn|put|hammer)$/;
const ON_ALONE = /^(fit|install|mount|refit|reinstall|remount|reattach|attach|replace|reconnect|connect|reassemble|renew|reseat|swap|bolt|rivet|exchange|marry|rehome|refasten)$/;
const ON_WITH = /^(put|bolt|press|drive|tap|shrink|slip|slide|drop|go|screw|thread|hook|get|set|lower|lift|push|knock|button|assemble|pop|stick|nail|couple|ease|pin|have|build|bring|seat|fasten|clip|pull|drift|swing|come|work|hammer|feed|turn|wind|hoist|snap|do|lay|roll|run|change|hitch|bed|fix|tie|close|hang|turn|spin|settle|bump|fire|sit)$/;
const TIGHT = /^(torque|retorque|tighten|retighten|adjust|readjust|gap|regap|tension|retension|preload|cinch)$/;
const HELD = /^(hold|hang|rehang|tack|prop|perch|rest|lash|wire|zip-tie|tie|balance)$/;

const TRIED = /\b(mock(ed|ing)?[- ]?up|dry[- ]?fit\w*|test[- ]?fit\w*|trial[- ]?fit\w*|(for|as) a (trial|try|look|test|check)|trial (run|assembly|basis)|offered \w* ?(up|it)|(just|only)? ?to (check|see|try|test|mark|measure|get the|line|gauge|size|make sure|find out|look)\b|(comes?|coming|came|has to come|will come|goes|going|to come) (back )?(off|out|apart) again|(comes?|coming|to come|come) (back )?(off|out)\b|try it for|tried (it|them|the|on|in|up)|trying (it|them)|laid in|for (size|fit|looks))/;
const TEMPORARY = /\b(finger[- ]?tight|hand[- ]?tight|fingertight|for now|for the (moment|time being)|temporar\w*|just (sitting|hung|hanging|resting|nipped|tacked|held|holding|to hold|to keep|till|until|for tonight)|(on|up|in) loose\b|loosely|only (there )?to hold|so (that )?i can|nipped|held (on|in|up|with|by)|cable[- ]tied|zip[- ]?tied|roughed in|tacked|until i|till i|till the|until the|slave bolts?|dummy|not for good|not tightened|not torqued|to keep it|borrowed|stand-in|in the meantime|meantime|pro tem|snugged?|baling wire|bailing wire|by hand|only on|just on|lightly|string|not for keeps|only (hung|nipped|tacked|sitting|resting|pinned|wired|clamped|held)|with one bolt|by one bolt|for the night)/;
export const ONLY_HOLDS = /\b(only|just) (there |holding|to hold|keeping|there holding)/;
const FOR_GOOD = /\b(for good|for keeps|permanent\w*|for real|final(ly)? (on|in|fitted)|to stay|all (done|buttoned) up)\b/;

/** The state a clause tells of its part, from its verb and particles or from the words after "is"; undefined when it tells none. */
export function fitState(t: Telling): FitState | undefined {
  const c = t.clause, text = around(t);
  if (c.items.slice(0, c.vi).some(i => i.t === 'verb' && /^(start|begin|commence|try|need|want|require)$/.test(i.base ?? ''))) return undefined;
  const base = c.pred === 'verb' || c.pred === 'have' ? byVerb(t, c) ?? byHand(c, text) : byState(t, c) ?? byHand(c, text);
  if (!base) return undefined;
  if (base === 'off' || base === 'tried') return base;
  if (FOR_GOOD.test(text) && base !== 'tight') return 'on';
  if (TRIED.test(text) && base !== 'tight') return 'tried';
  if (base === 'tight') return /finger[- ]?tight|hand[- ]?tight|by hand|nipped|roughly|roughed/.test(text) ? 'temporary' : 'tight';
  if (TEMPORARY.test(text)) return 'temporary';
  if (base === 'on' && /\b(torqued|tightened|tight|torqued (up|down)|done up|pulled (up|down) tight)\b/.test(text) && !/not (yet )?(torqued|tight)/.test(text)) return 'tight';
  return base;
}

/** "standing on four bolts finger tight", "only roughed in, hand tight": however it is said, it is held for now. */
const byHand = (c: Clause, text: string): FitState | undefined =>
  (/\b(finger|hand|fingers)[- ]?tight\b/.test(text) && (c.subj.length > 0 || c.obj.length > 0) ? 'temporary' : undefined);

/** The clause with the ones after it that say why it was so put ("…they come off again for paint"). */
function around(t: Telling): string {
  const own = lowText(t);
  const after = t.clauses[t.at + 1];
  if (!after || after.asks) return own;
  const text = lowText(t, after);
  const explains = /^(they|it|she|that|this|but (it|they)|so (it|they)|comes?|it'll|they'll|just|only|so i can|so that|to (check|see)|until|till|while)\b/.test(text) && /(off|out|apart|again|only|just|hold|for now|temporary|can|fit|see|check|until|till|finger)/.test(text);
  return explains || ONLY_HOLDS.test(text) ? `${own} , ${text}` : own;
}

function byVerb(t: Telling, c: Clause): FitState | undefined {
  const base = c.verb?.base ?? '', prt = c.prt.join(' ');
  if (!c.verb && c.pred === 'have' && c.obj.length && /\b(had|'ve|have)\b/.test(lowText(t))) return /\b(off|out|apart)$/.test(prt) ? 'off' : /\b(back (on|in|together)|together)$/.test(prt) ? 'on' : undefined;
  if (c.verb && (c.verb.form === 'base' || c.verb.form === 's') && !c.passive) return undefined;
  const off = /\b(off|out|apart|away|down)\b/.test(prt) || offFrom(c);
  const toward = !c.rest.some(i => i.np && isPlaceNoun(i.np) && !i.np.known) && c.rest.some(i => /^(into|onto)$/.test(i.low)) || c.rest.some((i, k) => (i.low === 'in' || i.low === 'on') && c.rest[k + 1]?.np && !isPlaceNoun(c.rest[k + 1]!.np!));
  const on = !/\b(off|out|apart)\b/.test(prt) && (/\b(on|in|back|up|together|home|down|over|through)\b/.test(prt) || toward);
  if (TIGHT.test(base)) return 'tight';
  if (/^(set|pull|bring|do|run|take|snug|nip|pinch|talk|wind|crank)$/.test(base) && dims(c.items, 'measure').some(m => /^(lb-ft|lb-in|N·m)$/.test(m.value.unit))) return 'tight';
  if (base === 'set' && dims(c.items, 'measure').some(m => /^(in|mm|°)$/.test(m.value.unit))) return 'tight';
  const last = t.told.at(-1)?.entry;
  if (base === 'set' && dims(c.items, 'number').length && last?.kind === 'reading' && last.unit === 'in') return 'tight';
  if (/^(nip|snug|pinch)$/.test(base)) return 'temporary';
  if (/^(mock|offer|dry-fit|dryfit|test-fit|trial-fit)$/.test(base) || base === 'try' && (on || /\bfor (size|fit)\b|\bin (place|position)\b/.test(lowText(t)))) return 'tried';
  if (base === 'bolt' || base === 'screw') { if (/\b(off|out)\b/.test(prt)) return 'off'; return on || base === 'bolt' ? 'on' : undefined; }
  if (c.ing && !c.who && !c.items.some(i => i.t === 'be') && !c.carriedSubj) return undefined;
  if (/^(cut|burn|make)$/.test(base) && /\bout of\b/.test(lowText(t))) return undefined;
  if (HELD.test(base) && /\bby\b/.test(lowText(t)) && c.rest.some((i, k) => i.low === 'by' && c.rest[k + 1]?.np && isFastener(c.rest[k + 1]!.np!.said))) return 'temporary';
  if (OFF_ALONE.test(base) && (off || !/\b(up|down|back|together|on|in)\b/.test(prt))) return base === 'pull' && c.obj.length === 0 && !c.passive && !off ? undefined : 'off';
  if (base === 'hang' && c.rest.some((i, k) => /^(on|off|from|in|by|behind|over|against)$/.test(i.low) && KEPT_ON.test(placeWords(c, k + 1)))) return undefined; // kept there, not held on the machine
  if (HELD.test(base) && c.ing && !on) return undefined;
  if (base === 'sit' && (on || prt === '')) return on ? 'on' : c.subj.length > 0 && /\bjust sitting (there|in|on)?\b/.test(lowText(t)) && !c.rest.some(i => i.np && isPlaceNoun(i.np)) ? 'temporary' : undefined;
  if (OFF_WITH.test(base) && off && !on) return loosening(base, c, prt) ? 'off' : undefined;
  if (HELD.test(base)) return /\b(on|in|up|back|over)\b/.test(prt) || toward && base !== 'rest' ? 'temporary' : base === 'hang' && !c.rest.some((i, k) => (i.t === 'prep' || i.t === 'prt' && c.rest[k + 1]?.np) && !/^(with|for|by)$/.test(i.low)) ? 'temporary' : undefined;
  if (base === 'lay' && on) return 'on';
  if (ON_ALONE.test(base)) return base === 'swap' && /\bfor a\b/.test(lowText(t)) ? 'on' : 'on';
  if (base === 'run' && /\bon the\b/.test(lowText(t)) && TRIED.test(lowText(t))) return 'tried';
  if (base === 'drop' && /\bright in|in like\b/.test(lowText(t))) return 'on';
  if (ON_WITH.test(base) && on && !(/\b(off|out|apart)\b/.test(prt))) return putting(base, c, prt, toward) ? 'on' : undefined;
  return undefined;
}

const KEPT_ON = /\b(door|wall|nail|hook|peg|rafters?|fence|rack|shed|barn|tree|loft|gate|shelf|bench|post|stall|line|clothesline)\b/;
const placeWords = (c: Clause, k: number): string => c.rest.slice(k, k + 3).map(i => i.low).join(' ');

const offFrom = (c: Clause): boolean => /^(take|get|lift|come|pull|drop|knock|drive|press|slide)$/.test(c.verb?.base ?? '') && c.rest.some(i => i.low === 'off' || i.low === 'out' || i.low === 'from' && c.verb?.base !== 'get');

/** Verb and particle that really take a part away: not "came out well", "turned out", "dropped off at the shop", "broke down". */
function loosening(base: string, c: Clause, prt: string): boolean {
  if (/^(drill|come)$/.test(base) && dims(c.items, 'measure').length) return false;
  if (base === 'drop' && /off/.test(prt)) return false;
  if (base === 'put' || base === 'turn' && /out/.test(prt) && c.obj.length === 0 || base === 'let') return false;
  if (/^(break|fall|split|crack|burn)$/.test(base)) return base === 'split' && /apart/.test(prt) && c.obj.length > 0;
  if (base === 'strip') return /down|apart|off/.test(prt);
  if (base === 'have') return true;
  if (/\bdown\b/.test(prt) && !/^(take|strip|let|pull|bring)$/.test(base)) return false;
  if (base === 'come' && /^(out|away)$/.test(prt) && c.rest.some(i => i.t === 'adj' || i.t === 'prep' && /^(like|of)$/.test(i.low) && i.low === 'like')) return false;
  if (base === 'cut' || base === 'work' || base === 'screw' || base === 'bring') return /off|out/.test(prt);
  if (/^(push|roll)$/.test(base)) return /off|out/.test(prt) && c.obj.length > 0;
  return true;
}

/** Verb and particle that put a part in its place: not "got on well", "put up with", "came in at". */
function putting(base: string, c: Clause, prt: string, toward: boolean): boolean {
  if (base === 'go') return (/\b(on|in|back|together)\b/.test(prt) || toward) && !/out/.test(prt) && c.subj.length > 0;
  if (base === 'come' ) return /\b(together)\b/.test(prt);
  if (base === 'get') return c.obj.length > 0 && /\b(on|in|back|together)\b/.test(prt) && !/\bback\b$/.test(prt);
  if (base === 'have') return c.obj.length > 0 && /\b(on|in)\b/.test(prt);
  if (base === 'do') return /up/.test(prt) && c.obj.length > 0;
  if (base === 'pull' || base === 'bring') return /\b(together|up tight|in)\b/.test(prt);
  if (/^(turn|change|run|work|close|build|swing|lift|hoist|roll|tie|fire)$/.test(base)) return /\b(in|on|back|together)\b/.test(prt) && c.obj.length > 0 && !toward;
  if (base === 'set' || base === 'sit' || base === 'lay') return /\b(in|on|back)\b/.test(prt);
  if (base === 'put' && prt === '' && toward) return c.rest.some(i => /^(in|on|into|onto)$/.test(i.low)) && !c.rest.some(i => i.np && isPlaceNoun(i.np));
  if (base === 'stick') return /\b(in|on|back)\b/.test(prt) && !toward;
  if (base === 'hang') return false;
  return !(prt === 'down' && /^(put|get|take)$/.test(base)) && !(prt === 'over');
}

/** States without a verb of their own: "carb off", "rings are on the piston", "belt's tight". */
function byState(_t: Telling, c: Clause): FitState | undefined {
  const rest = c.rest.filter(i => i.t !== 'adv' && i.t !== 'neg' && i.low !== ',');
  const first = rest[0], second = rest[1];
  if (!first || !c.subj.length && first.t !== 'prt') return undefined;
  const words = c.rest.map(i => i.low).join(' ');
  if (/^(still |only |just |all )*(finger|hand) ?-?tight/.test(words)) return 'temporary';
  if (/^(now |all |nice and |good and |nicely |up |done up |down )*tight\b/.test(words)) return c.items.some(i => /^(was|were)$/.test(i.low)) || /^tight to /.test(words) ? undefined : 'tight';
  if (first.t === 'prt') {
    if (first.low === 'on' || first.low === 'in') {
      if (second?.np) {
        if (first.low === 'in' && (isPlaceNoun(second.np) || /\b(bits|pieces|half|two|tatters|ribbons|shape|order|nick|condition|fettle|state|trouble|water|oil)$/.test(second.np.said))) return undefined;
        if (isPlaceNoun(second.np) && !isKnownPart(_t.sheet.ctx.parts, second.np!.name)) return undefined;
        if (/^(order|way|list|bench|back order|charge|stands?|jacks?|hand|stock|mail|post|hold|backorder|loan|blocks|place)$/.test(second.np.said)) return undefined;
      }
      if (second?.np && /^(on|in) the ([a-z-]+ )?(side|end|edge|face|top|bottom|front|back|middle) of\b/.test(words)) return undefined; // where on a part it was, not that it is fitted
      if (second?.f?.dim === 'when') return undefined;
      return 'on';
    }
    if (first.low === 'off') return second?.low === 'to' || second?.low === 'at' ? undefined : 'off';
    if (first.low === 'out') return second?.f ? undefined : second?.low === 'at' || second?.low === 'for' || second?.low === 'to' || second?.low === 'of' && /^(true|round|square|stock|line|shape|date)/.test(rest[2]?.low ?? '') ? undefined : 'off';
    if (first.low === 'apart') return 'off';
    if (first.low === 'back') return second?.t === 'prt' && /^(on|in|together)$/.test(second.low) && !(rest[2]?.np && isPlaceNoun(rest[2].np)) ? 'on' : undefined;
    if (first.low === 'together') return 'on';
    if (first.low === 'down' || first.low === 'up') return undefined;
  }
  return undefined;
}

export const isHeldVerb = (base: string): boolean => isClass(base, 'hang');
