import { snap } from '../dimensions/part/snap.ts';
import type { Sheet } from '../types.ts';
import { singular } from '../words/nouns.ts';
import { OPPOSITE, SIDES } from '../words/sides.ts';
import type { Thing } from './clause.ts';
import { isStuff } from './name-kinds.ts';


/** Sides that tell along one line: a left wheel may be a front wheel as well. */
const AXES = [/^(left|right|near|off|nearside|offside|port|starboard|left-hand|right-hand|near-side|off-side|lh|rh|lefthand|righthand)$/, /^(front|rear|back)$/, /^(top|bottom|upper|lower)$/, /^(inner|outer|inside|outside|inboard|outboard)$/];

/** What tells one of two sets by its size. */
const SIZED = /^(long|short|big|small)$/;

/** "near side", "left hand" as one word, as the other sides are. */
export const oneWord = (name: string): string => name.replace(/\b(near|off|left|right) (side|hand)\b/g, '$1-$2');

/** What has been named so far, latest first, so that "it" and "the other one" can be read. Begins with what the notes before named. */
export class Memory {
  private named: Thing[][] = [];
  private mentioned: Thing[] = [];
  /** The objects of a group of subjects and objects, which are no list together. */
  private apart = new Map<Thing[], Thing[]>();

  /** So many of the lists above are of notes before this one. */
  private old = { named: 0, mentioned: 0 };

  /** A new note begins: what it names itself, though in passing, is nearer than what the notes before were about. */
  begin(): void { this.old = { named: this.named.length, mentioned: this.mentioned.length }; }

  /** `done` are those of the things that a clause says something is done to; the others are its subjects. */
  note(things: readonly Thing[], done: readonly string[] = []): void {
    const own = things.filter((t, i) => !t.machine && things.findIndex(o => o.name === t.name) === i);
    if (!own.length) return;
    this.named.unshift(own);
    if (done.length && done.length < own.length) this.apart.set(own, own.filter(t => done.includes(t.name)));
  }

  copy(): Memory { const m = new Memory(); m.named = [...this.named]; m.mentioned = [...this.mentioned]; m.apart = this.apart; m.old = this.old; return m; }

  /** Things named in passing ("with the old nuts"), for "new ones". */
  mention(things: readonly Thing[]): void { this.mentioned.unshift(...[...things].reverse()); }
  /** What was named last, in whatever part of a clause: "no split pin, I need two of those". */
  lastMention(): Thing | undefined { return this.mentioned[0] ?? this.topic(); }
  /** The last plural named in any part of a clause. */
  plural(): Thing | undefined { return this.mentioned.find(t => t.plural) ?? this.topic(); }

  /** The last thing named; machines are passed over while a part is to be had. */
  topic(): Thing | undefined { return this.namedInPassing() ?? this.named[0]?.[0] ?? this.mentioned.find(t => !t.machine && !isStuff(t.name)) ?? this.mentioned.find(t => !t.machine); }
  /** What this note named in passing, while nothing of it is what the note is about. */
  private namedInPassing(): Thing | undefined {
    return this.named.length > this.old.named ? undefined : this.mentioned.slice(0, this.mentioned.length - this.old.mentioned).find(t => !t.machine && !isStuff(t.name));
  }
  /** The last list or plural, for "they", "both". */
  several(): Thing[] {
    for (const n of this.named) {
      const objects = this.apart.get(n), subjects = n.filter(t => !objects?.includes(t));
      for (const list of objects ? [objects, subjects] : [n]) if (list.length > 1 || list[0]?.plural) return list;
    }
    const passing = this.named.length ? undefined : this.mentioned.find(t => t.plural);
    return this.named[0] ?? (passing ? [passing] : []);
  }
  /** The last two things of this note, each named alone, for "both": two single ones, or two of a kind ("hub nuts …, wheel nuts …"). */
  pair(): Thing[] | undefined {
    const [last, before] = this.named, head = (t: Thing): string => t.name.split(' ').at(-1)!;
    const [a, b] = [before?.[0], last?.[0]];
    if (!a || !b || this.named.length < this.old.named + 2 || last!.length > 1 || before!.length > 1 || a.name === b.name || a.machine || b.machine) return undefined;
    return a.plural || b.plural ? (a.plural && b.plural && head(a) === head(b) ? [a, b] : undefined) : [a, b];
  }
  /** The set that "the rest" and "the other two" are of: the last plural that no side tells from another. */
  group(): Thing | undefined { const all = this.all(); return all.find(t => t.plural && !t.name.split(' ').some(w => SIDES.has(w))) ?? all.find(t => t.plural) ?? this.topic(); }
  lastGroup(): Thing[] { return this.named[0] ?? []; }
  all(): Thing[] { return this.named.flat(); }
  /** Things named in whatever part of a clause. */
  passing(): readonly Thing[] { return this.mentioned; }

  /** "left" with "cab corners" before it: "left cab corner", or the shop's own name for that. */
  sided(word: string, sheet: Sheet, plural = false): string | undefined {
    const asked = oneWord(word);
    for (const t of this.sidedFirst(asked)) {
      const words = oneWord(t.name).split(' ');
      let side = singular(asked) === 'one' ? '' : asked;
      if (/^other$/.test(side)) {
        const have = words.find(w => OPPOSITE[w]);
        if (!have) { if (t === this.topic()) return `other ${t.name}`; continue; }
        side = OPPOSITE[have]!;
      }
      const axis = AXES.find(a => a.test(side));
      const base = words.filter(w => !(SIZED.test(side) && SIZED.test(w)) && !(SIDES.has(w) && (!axis || axis.test(w) || plural || !words.some(o => axis.test(o)) && /^(middle|centre|center)$/.test(w))) && !/^(other|first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth)$/.test(w));
      if (!base.length) continue;
      const last = base.at(-1)!;
      const name = [singular(side), ...base.slice(0, -1), plural ? last : singular(last)].join(' ').replace(/\b(near|off|left|right)-(side|hand)\b/g, m => (`${word} ${t.name}`.includes(m) ? m : m.replace('-', ' ')));
      const hit = snap(name, sheet.ctx);
      return hit.known ? hit.name : name;
    }
    return undefined;
  }

  /** "left brake drum has a groove a fingernail goes in, right one is smooth": what was told by its other side goes before what was named since; what was told by any side before a single thing without one. */
  private sidedFirst(word: string): Thing[] {
    const all = this.all(), axis = AXES.find(a => a.test(word)), sides = (t: Thing): string[] => oneWord(t.name).split(' ').filter(w => SIDES.has(w));
    const same = axis ? all.filter(t => sides(t).some(w => w !== word && axis.test(w))) : [];
    const any = axis && !all[0]?.plural ? all.filter(t => sides(t).length > 0) : [];
    return [...new Set([...same, ...any, ...all])];
  }
}
