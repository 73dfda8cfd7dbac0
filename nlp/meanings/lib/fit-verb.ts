import { dims, type Clause } from '../../clauses/clause.ts';
import { isPlaceNoun, partLike } from '../../clauses/name-kinds.ts';
import { isClass } from '../../words/verbs.ts';
import { lowText, type Telling } from '../telling.ts';
import { isFastener } from './fields.ts';
import { HOLDERS, TEMPORARY, TRIED } from './fit-phrases.ts';
import type { FitState } from './fit-state.ts';

const OFF_ALONE = /^(pull|remove|unbolt|unscrew|dismount|detach|disconnect|uncouple|extract|unpin|unhook|unhitch|dismantle|disassemble|undo|unship|withdraw|yank|draw|unshackle|unhang|unrivet|unclamp|unlace|unclip|demount|decouple|withdraw)$/;
const OFF_WITH = /^(take|rip|peel|winkle|wrench|lever|worm|bash|nurse|manhandle|fish|dig|gas|heave|walk|tug|batter|saw|grind|torch|snap|unwind|wind|spin|get|come|knock|drive|press|punch|tap|lift|slide|drop|pop|break|slip|draw|drag|haul|whip|prise|pry|wrestle|jack|crack|bring|have|cut|work|tease|coax|beat|chisel|drill|fall|split|strip|hoist|swing|drift|persuade|lower|twist|screw|roll|push|force|back|turn|let|ease|burn|put|hammer|shift|fetch)$/;
const ON_ALONE = /^(fit|install|mount|refit|reinstall|remount|reattach|attach|replace|reconnect|connect|reassemble|renew|reseat|swap|bolt|rivet|exchange|marry|mate|rehome|refasten|rehang)$/;
const ON_WITH = /^(put|bolt|press|drive|tap|shrink|slip|slide|drop|go|screw|thread|hook|get|set|lower|lift|push|knock|button|assemble|pop|stick|nail|couple|ease|pin|have|build|bring|seat|fasten|clip|pull|drift|swing|come|work|hammer|feed|turn|wind|hoist|snap|do|lay|roll|run|change|hitch|bed|fix|tie|close|hang|turn|spin|settle|bump|fire|sit|bond|dog|stitch|locate|plumb|key|circlip|spin|spring|chuck|bung|throw|whack|lob|sling)$/;
const TIGHT = /^(torque|retorque|tighten|retighten|adjust|readjust|gap|regap|tension|retension|preload|cinch)$/;
const HELD = /^(hold|hang|rehang|tack|prop|perch|rest|lash|wire|zip-tie|cable-tie|tie|balance|strap|clamp|wedge|chock)$/;
/** Ways of fastening that say nothing of for how long: the words around them do. */
const FASTENS = /^(pin|screw|nail|clip|peg|hook|chain|tape|key|cotter|button)$/;
/** Verbs whose "out" and "off" take no part away: "sorted the carb out", "shut the tap off". */
const NOT_REMOVAL = /^(blank|cap|mask|close|seal|plug|wall|fence|rope|rinse|wash|clean|wipe|brush|dust|blow|hose|steam|sort|check|figure|find|work|turn|give|hold|mark|lay|set|rough|measure|send|call|finish|square|level|top|start|shut|switch|leave|write|pick|pay|even|point|line|make|try|see|go|run|rule|miss|ask|order|stand|keep|put|show|read|try|kick|drain|fire|store|box|ship|post|mail|carry|rent|hire|lend|loan|head|figure|throw|chuck|toss|rig|let|look|help|bottom|max|wear|stretch|dish|map|draw|drop|slacken|loosen)$/;

/** "a quarter turn", "one flat", "two clicks": brought to its adjustment by so much. */
const ADJUSTS = /^(nip|snug|pinch|give|take|wind|turn|back|screw|tweak|slacken|ease|let|run|bring|draw|move|drop|crank)$/;
export const BY_TURNS = /\b(a|an|one|two|three|four|five|six|half|quarter|another|couple|\d+)( (of|a|an|more|half|quarter|full))* (turns?|flats?|notch(es)?|clicks?|flats|splines?)\b/;
const ADJUSTER = /(nuts?|screws?|adjusters?|glands?|turnbuckles?|tensioners?|bolts?|locknuts?|needles?|jets?|stops?|toggles?|cones?|cups?|(track|tie|radius|top|drag|reach) (rods?|links?)|brakes?|clutch|caps?|studs?)$/;

/** The state that a verb with its particles gives its part: "took off", "pressed in", "torqued to". */
export function byVerb(t: Telling, c: Clause): FitState | undefined {
  const base = c.verb?.base ?? '', prt = c.prt.join(' ');
  if (!c.verb && c.pred === 'have' && c.obj.length && /\b(had|'ve|have)\b/.test(lowText(t))) return /\b(off|out|apart)$/.test(prt) ? 'off' : /\b(back (on|in|together)|together)$/.test(prt) ? 'on' : TRIED.test(lowText(t)) && (/\b(on|in|up)$/.test(prt) || c.rest.some((i, k) => /^(on|in)$/.test(i.low) && c.rest[k + 1]?.np)) ? 'tried' : undefined;
  if (c.verb && (c.verb.form === 'base' || c.verb.form === 's') && !c.passive) return undefined;
  const off = away(c, prt);
  const toward = !c.rest.some(i => i.np && isPlaceNoun(i.np) && !i.np.known) && c.rest.some(i => /^(into|onto)$/.test(i.low)) || c.rest.some((i, k) => (i.low === 'in' || i.low === 'on') && c.rest[k + 1]?.np && !isPlaceNoun(c.rest[k + 1]!.np!));
  const on = !/\b(off|out|apart)\b/.test(prt) && !off && (/\b(on|in|back|up|together|home|down|over|through)\b/.test(prt) || toward);
  if (/^(knock|run|whip|rough|cobble|fold|make|turn)$/.test(base) && prt === 'up' && c.obj.length > 0 && !dims(c.items, 'measure').length && (/\b(a|an|another|some|new|two|three|four)\b/.test(lowText(t)) || c.rest.some(i => i.low === 'from' || i.low === 'out'))) return undefined; // made, not fitted
  if (TIGHT.test(base)) return 'tight';
  if (/^(set|pull|bring|do|run|take|snug|nip|pinch|talk|wind|crank|draw|screw|wrench)$/.test(base) && dims(c.items, 'measure').some(m => /^(lb-ft|lb-in|N·m)$/.test(m.value.unit))) return 'tight';
  if (base === 'set' && dims(c.items, 'measure').some(m => /^(in|mm|°|psi|bar|rpm|V)$/.test(m.value.unit))) return 'tight';
  if (/^(do|bring|take|wind|tweak|dial|reset|space|shim|nip|pinch|snug|close|screw)$/.test(base) && c.items.some((i, k) => i.f?.dim === 'measure' && /^(to|at)$/.test(c.items[k - 1]?.low ?? '') && (i.f.value.unit === 'in' && i.f.value.value < 0.2 || i.f.value.unit === 'mm' && i.f.value.value < 5))) return 'tight'; // "tappets done to 12 thou"
  const last = t.told.at(-1)?.entry;
  if (base === 'set' && (dims(c.items, 'number').length || dims(c.items, 'money').some(m => !m.value.certainCurrency)) && last?.kind === 'reading' && last.unit === 'in') return 'tight';
  if (pulledDown(c, base, prt) && !off) return 'tight';
  if (ADJUSTS.test(base) && BY_TURNS.test(lowText(t)) && !t.sheet.tokens.some((x, k) => x.low === 'end' && t.sheet.tokens[k + 1]?.low === 'play') && [...c.obj, ...c.subj].some(o => ADJUSTER.test(o.name))) return 'tight'; // "nipped the gland up a quarter turn"
  if (/^(nip|snug|pinch)$/.test(base)) return /\b(nipped|snugged|pinched) (?:it |them |the \S+ |\S+ \S+ )?(?:up |down )?(?:good and |nice and |properly |right )?tight\b/.test(lowText(t)) ? 'tight' : 'temporary';
  if (/^(mock|dummy|offer|dry-fit|dryfit|test-fit|trial-fit)$/.test(base) || base === 'try' && !dims(c.items, 'measure').length && (on || /\bfor (size|fit)\b|\bin (place|position)\b/.test(lowText(t)))) return 'tried';
  if (base === 'bolt' || base === 'screw') { if (/\b(off|out)\b/.test(prt)) return 'off'; return on || base === 'bolt' ? 'on' : undefined; }
  if (c.ing && !c.who && !c.items.some(i => i.t === 'be') && !c.carriedSubj) return base === 'sit' && /\bin (its|place|position)\b/.test(lowText(t)) ? 'on' : undefined;
  if ((/^(cut|burn|make)$/.test(base) || /^(turn|knock|bend|saw|carve|forge|fold|machine)$/.test(base) && prt === 'up') && /\bout of\b/.test(lowText(t))) return undefined;
  if (HELD.test(base) && !KEPT_ON.test(placeWords(c, c.rest.findIndex(i => i.low === 'on' || i.low === 'from') + 1)) && c.rest.some((i, k) => /^(by|on|from|off|with)$/.test(i.low) && c.rest.slice(k + 1, k + 4).some(x => x.np && (isFastener(x.np.said) || HOLDERS.test(x.np.said))))) return 'temporary';
  if (OFF_ALONE.test(base) && (off || !/\b(up|down|back|together|on|in)\b/.test(prt))) return /^(pull|draw)$/.test(base) && (c.obj.length === 0 && !c.passive && c.verb!.form !== 'part' || base === 'draw' && /\b(on paper|sketch\w*|to scale|amps?)\b/.test(lowText(t))) && !off ? undefined : 'off';
  if (base === 'hang' && c.rest.some((i, k) => /^(on|off|from|in|by|behind|over|against)$/.test(i.low) && KEPT_ON.test(placeWords(c, k + 1)))) return undefined; // kept there, not held on the machine
  if (base === 'tack' && /\boff\b/.test(prt)) return undefined; // wiped with a tack cloth
  if (HELD.test(base) && c.ing && !on) return undefined;
  if (base === 'sit' && c.passive && c.rest.some((i, k) => /^(on|by|with)$/.test(i.low) && c.rest[k + 1]?.np && (isFastener(c.rest[k + 1]!.np!.said) || HOLDERS.test(c.rest[k + 1]!.np!.said)))) return 'temporary'; // "is sat on two studs"
  if (base === 'sit' && (on || prt === '')) return on ? 'on' : c.subj.length > 0 && /\b(just|only) (sitting|sat)\b/.test(lowText(t)) && !c.rest.some(i => i.np && isPlaceNoun(i.np)) ? 'temporary' : undefined;
  if (OFF_WITH.test(base) && off) return loosening(base, c, prt) ? 'off' : undefined;
  if (HELD.test(base)) return /\b(on|in|up|back|over|down)\b/.test(prt) && !(/^(on|to|from|in|by|against|over|behind|under)$/.test(c.rest[0]?.low ?? '') && KEPT_ON.test(placeWords(c, 0))) || TEMPORARY.test(lowText(t)) && base !== 'hang' || toward && !/^(rest|wire|tie|clamp|wedge|strap)$/.test(base) ? 'temporary' : base === 'hang' && !c.rest.some((i, k) => (i.t === 'prep' || i.t === 'prt' && c.rest[k + 1]?.np) && !/^(with|for|by)$/.test(i.low)) ? 'temporary' : undefined;
  if (base === 'thread' && /^(on|onto)$/.test(c.rest[0]?.low ?? '') && /\b(wire|string|rope|cord|twine|nail|rod|stick)\b/.test(placeWords(c, 1))) return undefined; // kept on a wire
  if (base === 'lay' && on && !wentOff(t)) return 'on';
  if (ON_ALONE.test(base)) return 'on';
  if (FASTENS.test(base) && (c.passive || c.obj.length > 0) && TEMPORARY.test(lowText(t))) return 'temporary';
  if (base === 'run' && /\bon the\b/.test(lowText(t)) && TRIED.test(lowText(t))) return 'tried';
  if (base === 'drop' && /\bright in|in like\b/.test(lowText(t))) return 'on';
  if (base === 'drop' && prt === '' && c.obj.length > 0 && c.obj.every(o => DROPPED.test(o.name)) && !c.rest.some(i => i.np || /^(in|into|on|onto)$/.test(i.low))) return 'off'; // "dropped the sump"
  if (SEATS.test(base) && (c.passive || c.obj.length > 0) && /\b(flush|home|square|up tight|hard home|fully in|to the shoulder|to depth)\b/.test(lowText(t))) return 'on'; // "seal tapped flush"
  if (/^(press|slide|slip|drive|shrink|drop|fit|pull|tap|push|thread|ease)$/.test(base) && c.obj.length > 0 && c.rest.some((i, k) => i.low === 'over' && c.rest[k + 1]?.np && !isPlaceNoun(c.rest[k + 1]!.np!))) return 'on'; // "pressed a sleeve over the groove"
  if (ON_WITH.test(base) && on && !(/\b(off|out|apart)\b/.test(prt))) return putting(base, c, prt, toward) ? 'on' : undefined;
  if ((c.obj.length || c.passive) && (isClass(base, 'stow') || isClass(base, 'on') || isClass(base, 'hang') || base === 'get' || base === 'have') && TO_SEE.test(lowText(t))) return 'tried';
  return carried(t, c, base, prt);
}

/** Put there to see something. */
const TO_SEE = /\b(just |only )?to (see|check|try|test|find out) (if|how|would|does|do|did|will|is|whether|what|where|the|it|was)\b|\bto (see|look at)( it| them)?$|\bfor a (trial|try|dry run)\b/;

/** Any verb of handling a part with "off", "out" or "back on": "manhandled the gearbox out", "coaxed the crank back in". */
function carried(t: Telling, c: Clause, base: string, prt: string): FitState | undefined {
  if (!c.obj.length || !c.obj.every(o => partLike(t.sheet, o.name)) || !c.verb || c.verb.form === 'ing' || NOT_REMOVAL.test(base) || isClass(base, 'work') || isClass(base, 'fail') || isClass(base, 'state') || isClass(base, 'stow') || isClass(base, 'say')) return undefined;
  if (!c.rest.every(i => i.t === 'adv' || i.f || i.t === 'mark' || /^(with|by|from|of|before|after|without|in|on)$/.test(i.low) || i.np)) return undefined;
  if (/^(off|out|apart)( of)?$/.test(prt)) return 'off';
  return /^(back (on|in|together|into place)|together)$/.test(prt) || /\b(in|into) (its )?(place|position)\b/.test(lowText(t)) ? 'on' : undefined;
}

/** "pulled the head down", "brought the nuts down in three goes": tightened onto its seat. */
const pulledDown = (c: Clause, base: string, prt: string): boolean => /^(pull|draw|bring)$/.test(base) && /^(down|up tight)\b/.test(prt) && [...c.obj, ...c.subj].some(o => /\b(head|caps?|nuts?|bolts?|studs?|flange|cover|manifold|bearings?|barrel|gland|clamps?|screws?)$/.test(o.name));

/** "swung the boom off and laid it on two sleepers": what was just taken off is put down, not on. */
const wentOff = (t: Telling): boolean => { const last = t.told.at(-1)?.entry, c = t.clause; return last?.kind === 'fit' && last.state === 'off' && c.obj.length > 0 && c.obj.every(o => o.carried || o.name === last.part) && !/\bback\b/.test(c.prt.join(' ')) && c.rest.some((i, k) => /^(on|in|over|across|against|under|onto|into)$/.test(i.low) && c.rest[k + 1]?.np); };

/** What hangs under a machine, and is dropped to get it off. */
const DROPPED = /\b(sump|pan|oil pan|transmission|gearbox|trans|tank|axle|diff|differential|exhaust|subframe|driveshaft|drive shaft|propshaft|prop shaft|muffler|silencer|skid plate|belly pan|transfer case|final drive)s?$/;
const SEATS = /^(tap|press|drive|knock|push|seat|pull|drift|bump)$/;

const KEPT_ON = /\b(door|wall|nail|hook|peg|rafters?|fence|rack|shed|barn|tree|loft|gate|shelf|bench|post|stall|line|clothesline)\b/;
const placeWords = (c: Clause, k: number): string => c.rest.slice(k, k + 3).map(i => i.low).join(' ');

/** Whether the particles or what follows say that it went away from where it sat. */
function away(c: Clause, prt: string): boolean {
  const base = c.verb?.base ?? '';
  if (/\b(off|out|apart|away)\b/.test(prt) || offFrom(c)) return true;
  if (/^(lift|hoist|swing|slide|pull|jack|raise|winch|sling|draw|roll)$/.test(base) && c.rest[0]?.low === 'clear') return true;
  return /\bdown\b/.test(prt) && (/^(take|strip)$/.test(base) || /^(get|bring|let|lower|lift|haul|come|pull)$/.test(base) && /^(off|from|out)$/.test(c.rest[0]?.low ?? ''));
}

const offFrom = (c: Clause): boolean => /^(take|get|lift|come|pull|drop|knock|drive|press|slide|bring|let|lower|haul|pop|prise|pry|punch|tap|drift|slip|draw|whip|drag|unscrew|unbolt|hoist|wrestle|ease|coax|tease|jack|hammer|twist|swing|roll|push|strip)$/.test(c.verb?.base ?? '') && c.rest.some((i, k) => (i.low === 'off' || i.low === 'out') && !c.rest.slice(0, k).some(x => x.t === 'adj' || x.t === 'verb') || i.low === 'from' && c.verb?.base !== 'get' && c.verb?.base !== 'bring');

/** Verb and particle that really take a part away: not "came out well", "turned out", "dropped off at the shop", "broke down". */
function loosening(base: string, c: Clause, prt: string): boolean {
  if (/^(drill|come)$/.test(base) && dims(c.items, 'measure').length) return false;
  if (base === 'drop' && /off/.test(prt)) return false;
  if (base === 'put' || base === 'turn' && /out/.test(prt) && c.obj.length === 0 || base === 'let' && !/down/.test(prt)) return false;
  if (/^(beat|hammer|knock|press|push|work|tap|roll)$/.test(base) && /^out/.test(prt) && [...c.obj, ...c.subj].some(o => /\b(dents?|creases?|pan|panels?|fenders?|mudguards?|wings?|bonnet|hood|guards?|tin|tinwork|grille|cowl|shroud|doors?|tank|bumps?|kinks?|dings?)$/.test(o.name))) return false; // a dented sheet is beaten out
  if (/^(break|fall|split|crack|burn)$/.test(base)) return base === 'split' && /apart/.test(prt) && c.obj.length > 0;
  if (base === 'strip') return /down|apart|off/.test(prt);
  if (base === 'have') return true;
  if (base === 'come' && /\b(out|away)$/.test(prt) && c.rest.some(i => i.t === 'adj' && /^(clean|black|clear|white|brown|rusty|dirty|red|green|grey|milky|dry|wet)$/.test(i.low) && !c.rest.some(x => x.low === 'again') || i.t === 'prep' && i.low === 'like')) return false;
  if (base === 'cut' || base === 'work' || base === 'screw' || base === 'bring' && !/down/.test(prt)) return /off|out/.test(prt);
  if (/^(push|roll)$/.test(base)) return /off|out/.test(prt) && c.obj.length > 0;
  return true;
}

/** Verb and particle that put a part in its place: not "got on well", "put up with", "came in at". */
function putting(base: string, c: Clause, prt: string, toward: boolean): boolean {
  if (base === 'go') return (/\b(on|in|back|together)\b/.test(prt) || toward) && !/out/.test(prt) && c.subj.length > 0;
  if (base === 'come') return /\b(together)\b/.test(prt);
  if (base === 'get') return c.obj.length > 0 && /\b(on|in|back|together)\b/.test(prt) && !/\bback\b$/.test(prt);
  if (base === 'have') return c.obj.length > 0 && /\b(on|in)\b/.test(prt);
  if (base === 'do') return /up/.test(prt) && (c.obj.length > 0 || c.passive);
  if (base === 'pull' || base === 'bring') return /\b(together|up tight|in)\b/.test(prt) || base === 'pull' && /\bon\b/.test(prt) && (c.passive || c.obj.length > 0);
  if (/^(spin|slip)$/.test(base) && !c.obj.length && !c.passive) return false; // "it had spun in its housing"
  if (/^(turn|change|run|work|close|build|swing|lift|hoist|roll|tie|fire)$/.test(base)) return /\b(in|on|back|together)\b/.test(prt) && c.obj.length > 0 && !toward;
  if (base === 'set' || base === 'sit' || base === 'lay') return /\b(in|on|back)\b/.test(prt);
  if (base === 'put' && prt === '' && toward) return c.rest.some(i => /^(in|on|into|onto)$/.test(i.low)) && !c.rest.some(i => i.np && isPlaceNoun(i.np));
  if (base === 'stick' && !c.obj.length && c.rest.some(i => /^(full|empty|open|shut|closed|high|low|half|max|maximum|zero|solid|fast|one)$/.test(i.low))) return false; // "stuck on full"
  if (base === 'stick') return /\b(in|on|back)\b/.test(prt) && !toward;
  if (base === 'hang') return false;
  if (/^(chuck|bung|throw|whack|lob|sling)$/.test(base)) return /^(back )?(in|on|up)$/.test(prt) && (prt !== 'up' || base === 'sling') && c.obj.length > 0 && !c.rest.some((i, k) => i.np && /^(in|on|into|onto)$/.test(c.rest[k - 1]?.low ?? ''));
  return !(prt === 'down' && /^(put|get|take)$/.test(base)) && !(prt === 'over');
}
