import { COMMON } from './common.ts';
import { BODY } from './parts/body.ts';
import { DRIVE } from './parts/drive.ts';
import { FIELD } from './parts/field.ts';
import { BODY_MORE, DRIVE_MORE, ENGINE_MORE } from './parts/systems.ts';
import { ENGINE } from './parts/engine.ts';
import { IMPLEMENT, MACHINE } from './parts/machines.ts';
import { CONSUMABLE, FASTENER, TOOL } from './parts/small.ts';
import { PLACES } from './places.ts';
import { QUANTITIES } from './quantities.ts';
import { SOURCES } from './sources.ts';

/** What a noun of the trade names. A word can be several: a "press" is a machine and a tool. */
type NounClass = 'part' | 'machine' | 'fastener' | 'consumable' | 'tool' | 'place' | 'source' | 'quantity';

const list = (s: string): string[] => s.trim().split(/,\s*/).map(w => w.trim());
const table = new Map<string, Set<NounClass>>();
const tails = new Set<string>();
const add = (names: Iterable<string>, cls: NounClass): void => {
  for (const name of names) {
    if (!table.has(name)) table.set(name, new Set());
    table.get(name)!.add(cls);
    for (const w of name.split(' ')) if (w !== 'and' && (!/ed$/.test(w) || name === w)) tails.add(w); // "hit and miss engine" makes no name of "and"
  }
};
/** Names whose words are no sign of the trade by themselves where the language has another use for them ("hold-down", "take-up", "sight feed"). */
const addNames = (names: Iterable<string>, cls: NounClass): void => {
  for (const name of names) {
    if (!table.has(name)) table.set(name, new Set());
    table.get(name)!.add(cls);
    for (const w of name.split(' ')) if (!COMMON.has(w) && !CLOSED.test(w)) tails.add(w);
  }
};
const CLOSED = /^(in|on|off|up|out|down|over|under|back|top|bottom|front|rear|left|right|upper|lower|inner|outer|and|of|by|with|no|high|low|long|short|make|half|great|cold|hot|wet|dry|old|new|raw|red|step|start|split|stop|self|make|break|cooling|gap|tension|adjusting|warning|charge|stick|sliding|splined|driving|bleed|rock|slack|swinging|towing|landing|joining|cranked|offset|welting|padding|trace|skim|rolling|wobble|lifting|tripping|dump|clean|returns|bagging|lean|setting|pit|pressing|crushing|striking|walking|polished|working|pulse|stall|chip|bending)$|^.$/;
for (const words of [ENGINE, DRIVE, BODY, IMPLEMENT]) add(list(words), 'part');
for (const words of [ENGINE_MORE, DRIVE_MORE, BODY_MORE, FIELD]) addNames(list(words), 'part');
add(list(MACHINE), 'machine');
add(list(FASTENER), 'fastener');
add(list(CONSUMABLE), 'consumable');
add(list(TOOL), 'tool');
add(list(QUANTITIES), 'quantity');
add(PLACES, 'place');
add(SOURCES, 'source');

/** Singular of a noun, by rule and the trade's few exceptions. */
export function singular(w: string): string {
  const odd = ODD[w];
  if (odd) return odd;
  if (w.length > 4 && /(sh|ch|x|ss)es$/.test(w)) return w.slice(0, -2);
  if (w.length > 4 && w.endsWith('ies')) return `${w.slice(0, -3)}y`;
  return w.length > 3 && w.endsWith('s') && !/(ss|us|is)$/.test(w) ? w.slice(0, -1) : w;
}
const ODD: Record<string, string> = Object.assign(Object.create(null), { teeth: 'tooth', knives: 'knife', leaves: 'leaf', shelves: 'shelf', axes: 'axe', feet: 'foot', boxes: 'box', bushes: 'bush', brasses: 'brass', lenses: 'lens', men: 'man', gas: 'gas', canvas: 'canvas', harness: 'harness', canvases: 'canvas', harnesses: 'harness', gases: 'gas', buses: 'bus', chassis: 'chassis', points: 'points', bus: 'bus', staves: 'stave', sieves: 'sieve', valves: 'valve', sleeves: 'sleeve', grooves: 'groove', axles: 'axle', sheaves: 'sheave', halves: 'half' });

/** Classes of a noun or compound (words joined by one space, any number); empty when the trade's lists do not hold it. */
export function nounClasses(low: string): ReadonlySet<NounClass> {
  const cut = low.lastIndexOf(' ');
  return table.get(low) ?? table.get(low.slice(0, cut + 1) + singular(low.slice(cut + 1))) ?? NONE;
}
const NONE: ReadonlySet<NounClass> = new Set();

/** Classes of a name of any number of words: its own where the trade's lists hold it, else those of its last word. */
export function nameClasses(name: string): ReadonlySet<NounClass> {
  const own = nounClasses(name);
  return own.size ? own : nounClasses(name.slice(name.lastIndexOf(' ') + 1));
}

const longest = new Map<string, number>();
for (const name of table.keys()) { const words = name.split(' '); longest.set(words[0]!, Math.max(longest.get(words[0]!) ?? 0, words.length)); }
/** How many words the longest of the trade's names has that begins with this word (the first, where a token holds several); 0 when none does. */
export const longestFrom = (low: string): number => longest.get(low) ?? longest.get(low.split(' ', 1)[0]!) ?? 0;

/** Whether a word stands in any of the trade's names. */
export const isTradeWord = (low: string): boolean => tails.has(low) || tails.has(singular(low));
/** All words of the trade's names, for mending. */
export const tradeWords = (): IterableIterator<string> => tails.values();

/** The trade's names of parts and fasteners, for finding which words stand together in them. */
export function* partNames(): IterableIterator<string> {
  for (const [name, classes] of table) if (classes.has('part') || classes.has('fastener')) yield name;
}
