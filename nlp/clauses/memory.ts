import { snap } from '../dimensions/part/snap.ts';
import type { Sheet } from '../types.ts';
import { singular } from '../words/nouns.ts';
import { SIDES } from '../words/sides.ts';
import type { Thing } from './clause.ts';
import { isStuff } from './things.ts';

const OPPOSITE: Record<string, string> = { left: 'right', right: 'left', front: 'rear', rear: 'front', back: 'front', top: 'bottom', bottom: 'top', upper: 'lower', lower: 'upper', inner: 'outer', outer: 'inner', inside: 'outside', outside: 'inside', near: 'far', far: 'near', first: 'second', second: 'first' };

/** What has been named so far, latest first, so that "it" and "the other one" can be read. Begins with what the notes before named. */
export class Memory {
  private named: Thing[][] = [];
  private mentioned: Thing[] = [];

  note(things: readonly Thing[]): void {
    const own = things.filter((t, i) => !t.machine && things.findIndex(o => o.name === t.name) === i);
    if (own.length) this.named.unshift(own);
  }

  copy(): Memory { const m = new Memory(); m.named = [...this.named]; m.mentioned = [...this.mentioned]; return m; }

  /** Things named in passing ("with the old nuts"), for "new ones". */
  mention(things: readonly Thing[]): void { this.mentioned.unshift(...[...things].reverse()); }
  /** What was named last, in whatever part of a clause: "no split pin, I need two of those". */
  lastMention(): Thing | undefined { return this.mentioned[0] ?? this.topic(); }
  /** The last plural named in any part of a clause. */
  plural(): Thing | undefined { return this.mentioned.find(t => t.plural) ?? this.topic(); }

  /** The last thing named; machines are passed over while a part is to be had. */
  topic(): Thing | undefined { return this.named[0]?.[0] ?? this.mentioned.find(t => !t.machine && !isStuff(t.name)) ?? this.mentioned.find(t => !t.machine); }
  /** The last list or plural, for "they", "both". */
  several(): Thing[] {
    const list = this.named.find(n => n.length > 1 || n[0]!.plural);
    return list ?? this.named[0] ?? [];
  }
  /** The set that "the rest" and "the other two" are of: the last plural that no side tells from another. */
  group(): Thing | undefined { const all = this.all(); return all.find(t => t.plural && !t.name.split(' ').some(w => SIDES.has(w))) ?? all.find(t => t.plural) ?? this.topic(); }
  lastGroup(): Thing[] { return this.named[0] ?? []; }
  all(): Thing[] { return this.named.flat(); }

  /** "left" with "cab corners" before it: "left cab corner", or the shop's own name for that. */
  sided(word: string, sheet: Sheet, plural = false): string | undefined {
    for (const t of this.all()) {
      const words = t.name.split(' ');
      let side = singular(word) === 'one' ? '' : word;
      if (/^other$/.test(side)) {
        const have = words.find(w => OPPOSITE[w]);
        if (!have) { if (t === this.topic()) return `other ${t.name}`; continue; }
        side = OPPOSITE[have]!;
      }
      const base = words.filter(w => !SIDES.has(w) && !/^(other|first|second|third)$/.test(w));
      if (!base.length) continue;
      const last = base.at(-1)!;
      const name = [singular(side), ...base.slice(0, -1), plural ? last : singular(last)].join(' ');
      const hit = snap(name, sheet.ctx);
      return hit.known ? hit.name : name;
    }
    return undefined;
  }
}
