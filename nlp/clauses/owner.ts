import { snap } from '../dimensions/part/snap.ts';
import type { Phrase } from '../dimensions/part/phrase.ts';
import type { Sheet } from '../types.ts';
import { nameClasses, nounClasses, singular } from '../words/nouns.ts';
import { NAMED } from '../words/quantities.ts';
import { SIDES } from '../words/sides.ts';
import type { Item } from './items.ts';
import { oneWord, type Memory } from './memory.ts';
import { isMachine, isPlaceNoun, isPlural, isSource, isStuff, partLike } from './name-kinds.ts';

/** The owner's name in front; undefined when the tail is no owner (a place, a person) and the clause goes on. */
export function withOwner(sheet: Sheet, name: string, owner: Phrase, prep: string, memory: Memory): string | undefined {
  if (/^(bits|pieces|half|two|three|tatters|ribbons|shreds|rags|flakes|layers|lumps|strips|places|spots|parts|scale|scales|total|general|particular|the end)$/.test(owner.said) && !owner.known) return undefined; // "cage in bits"
  if (/^(order|back order|backorder|hold|loan|approval|trial|mail|post|parcel|packet)$/.test(owner.said)) return undefined;
  const known = snap(`${owner.said} ${name}`, sheet.ctx);
  if (known.known) return known.name;
  if (isMachine(sheet, owner.name) || isSomeMachine(owner.name)) return name;
  if (SIDES.has(owner.name) || /^(end|side|edge|face|bottom|top|back|front)$/.test(owner.said.split(' ').at(-1)!) && owner.said.split(' ').length === 1) {
    if (/^(left|right)$/.test(owner.name)) { const of = memory.sided(owner.name, sheet); return of ? `${of} ${name}` : `${owner.name} ${name}`; }
    return prep === 'of' ? `${owner.name} ${name}` : `${name} ${prep} the ${owner.name}`;
  }
  if (prep === 'in' && isStuff(owner.said)) return undefined;
  if (prep !== 'of' && (isPlaceNoun(owner) && !isPartNoun(owner.said) || isSource(owner))) return undefined;
  if (owner.stands) { const of = standIn(owner, memory, sheet); return of ? `${of} ${name}` : name; }
  if (prep !== 'of' && isTool(owner.said)) return undefined; // "ground it on the wet stone"
  const mass = owner.nameFrom === owner.from && !owner.known && !nounClasses(owner.said.split(' ').at(-1)!).size && !isPlural(owner.said);
  if (prep === 'in' && (mass && !isPlaceNoun(owner) || (mass || !partLike(sheet, owner.name)) && nounClasses(name.split(' ').at(-1)!).has('part')) && !/(end|side|half|part|corner|middle)$/.test(owner.said)) return undefined; // "boiled it in lemon juice"
  return before(owner.name, name);
}

/** What "the left one", "both", "the other" stands for, from what was named before. */
export function standIn(np: Phrase, memory: Memory, sheet: Sheet): string | undefined {
  const words = np.said.split(' ').filter(w => w !== 'one' && w !== 'ones' && w !== 'new' && w !== 'old' && w !== 'last' && w !== 'another' && w !== 'such');
  const topic = (/\bones\b/.test(np.said) ? memory.plural() : memory.topic())?.name;
  if (!words.length || /^(both|all|each|neither|either|lot|same)$/.test(words.join(' '))) return topic ?? undefined;
  if (/^(rest|others?|other|remaining)$/.test(words.join(' ')) && (np.count === undefined ? words[0] !== 'other' : np.count > 1)) { const set = memory.group(); if (set) return set.name; }
  const side = oneWord(words.join(' ')).split(' ').filter(w => SIDES.has(w) || /^(other|first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|last|top|big|small|long|short|same)$/.test(singular(w)));
  if (side.length) return memory.sided(words.join(' ').replace(/s$/, m => (SIDES.has(words.at(-1)!) ? m : '')), sheet, /ones$/.test(np.said) || /s$/.test(np.name) && np.stands) ?? words.join(' ');
  if (topic && words.every(w => nounClasses(w).has('consumable') || MADE_OF.test(w))) return topic; // "pressed a bronze one in": what it is made of is no name
  const one = /\bones?$/.test(np.said) && !/ones$/.test(np.said);
  return topic ? `${words.join(' ')} ${one ? topic.replace(/\S+$/, w => singular(w)) : topic}` : words.join(' ');
}
const MADE_OF = /^(bronze|brass|steel|iron|wooden|oak|ash|rubber|copper|nylon|leather|plastic|fibre|cast|stainless|good|better|decent|proper|cheap|genuine|pattern|secondhand|second-hand|used|rebuilt|reconditioned|homemade|home-made|made-up)$/;

/** The owner ahead of what it owns, in the singular; the side that tells the owned one from its fellow goes first ("left beater shaft bearing"). */
export function before(owner: string, name: string): string {
  if (name.includes(' ') && singular(owner.split(' ').at(-1)!) === singular(name.split(' ').at(-1)!)) { const of = /^(.+)'s /.exec(owner)?.[1]; return of ? `${of} ${name}` : name; } // "the mandrel's saw-end journal… Its pulley-end journal"
  if (name.startsWith(`${owner.split(' ').at(-1)!} `)) return `${owner}${name.slice(name.indexOf(' '))}`; // "the water pump… its pump shaft"
  const words = name.split(' '), one = NAMED.test(words.at(-1)!) ? owner : owner.replace(/\S+$/, w => singular(w));
  return words.length > 1 && SIDES.has(words[0]!) && !SIDES.has(owner.split(' ')[0]!) ? `${words[0]} ${one} ${words.slice(1).join(' ')}` : `${one} ${name}`;
}

/** "filter bowl" is of the machine though a bowl is a place too; "scrap bucket" is none. */
const isPartNoun = (said: string): boolean => nounClasses(said).has('part') || !nounClasses(said).size && said.includes(' ') && said.split(' ').every(w => nounClasses(w).has('part'));
/** "the wee tractor", "the old grey baler": a machine with words that only say which. */
const isSomeMachine = (name: string): boolean => { const words = name.split(' '), k = nounClasses(words.at(-1)!); return words.length > 1 && words.length < 4 && k.has('machine') && !k.has('part') && words.slice(0, -1).every(w => WHICH.test(w)); };
const WHICH = /^(wee|little|big|small|old|new|other|grey|gray|red|blue|green|yellow|orange|black|white|neighbour's|neighbor's|second|first|spare|whole|entire|same|dead|good)$/;

/** Parts that are named by what they close, cover or end: with "off" or "back on" before it, what they come off is their owner ("the cap off the radiator"). */
const CLOSES = /^(cap|lid|cover|plug|bung|element|glass|lens|knob|stopper|door|bulb|liner|lining|facing|leather)s?$/;
/** The name of a part of the kind that closes something, with what it was taken off or put back on in front; the name alone where nothing says. */
export function closing(sheet: Sheet, name: string, items: readonly Item[], next: number, memory: Memory): string {
  if (!CLOSES.test(name)) return name;
  let k = next;
  while (items[k] && /^(back|off|on|onto|of|down|from|out)$/.test(items[k]!.low)) k++;
  const owner = items[k]?.np;
  if (k === next || !owner || owner.stands || isMachine(sheet, owner.name) || isSomeMachine(owner.name) || isPlaceNoun(owner) && !isPartNoun(owner.said) || !isPartNoun(owner.said) && !owner.known) return name;
  return withOwner(sheet, name, owner, 'of', memory) ?? name;
}

/** "on the end of the kingpin", "on the side of the carb": the place on an owner is passed over. Gives the owner and how many items the tail takes. */
export function ownerAt(items: readonly Item[], next: number): { owner: Phrase; length: number } | undefined {
  const tail = items[next + 1], of = items[next + 3];
  if (!tail?.np) return undefined;
  const spot = /^(end|side|top|bottom|back|front|face|inside|outside|tip|nose|far side|near side|other side|other end|far end|near end|underside)$/.test(tail.np.said) && items[next + 2]?.low === 'of' && of?.np && !of.np.stands;
  return spot ? { owner: of.np!, length: 4 } : { owner: tail.np, length: 2 };
}
/** What is used on a part and is none itself. */
const isTool = (said: string): boolean => { const k = nameClasses(said); return k.has('tool') && !k.has('part'); };
