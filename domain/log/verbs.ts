/**
 * The works of the trade and which of them are the same work said otherwise. Common practice, no source.
 * Kept narrow: welding a panel does not end the job of patching it, for the person may mean more.
 */
const SAME: readonly (readonly string[])[] = [
  ['fit', 'mount', 'install', 'put', 'hang', 'hook', 'hitch', 'attach', 'assemble', 'bolt', 'slide', 'drop', 'press', 'seat'],
  ['remove', 'take', 'pull', 'strip', 'dismantle', 'disassemble', 'unbolt', 'detach', 'drag'],
  ['replace', 'swap', 'change', 'renew'],
  ['tighten', 'torque', 'snug'],
  ['adjust', 'set', 'gap', 'align', 'tension', 'time'],
  ['check', 'inspect', 'look', 'examine', 'watch'],
  ['measure', 'gauge', 'mike'],
  ['repair', 'fix', 'mend'],
  ['clean', 'wash'],
  ['paint', 'spray'],
  ['grease', 'lube', 'lubricate'],
  ['test', 'try'],
  ['bend'], ['polish'], ['prime'], ['sand'], ['weld'], ['braze'], ['solder'], ['grind'], ['file'], ['drill'], ['tap'], ['ream'], ['hone'], ['bore'],
  ['machine'], ['turn'], ['mill'], ['cut'], ['patch'], ['straighten'], ['pour'], ['cast'], ['rebuild', 'overhaul'], ['seal'], ['mask'], ['unmask'],
  ['drain'], ['fill'], ['flush'], ['bleed'], ['soak'], ['oil'], ['wire', 'rewire'], ['crimp'], ['charge'], ['glue'], ['clamp'],
  ['varnish'], ['scrape'], ['degrease'], ['derust'], ['blast'], ['lap'], ['shim'], ['balance'], ['rivet'], ['thread'], ['knock'], ['free'],
  ['lift', 'hoist', 'raise', 'jack'], ['flip'], ['stand'], ['swing'], ['start', 'run'], ['order'], ['buy', 'get', 'find', 'source'], ['collect', 'fetch', 'pick'],
  ['send'], ['label', 'tag', 'mark'], ['photograph'], ['plane'], ['saw'], ['sharpen'], ['harden'], ['anneal'], ['chase'], ['extract'], ['sleeve'], ['line'],
  ['plug'], ['pack'], ['boil'], ['coat'], ['etch'], ['make', 'fabricate', 'build'], ['sew'], ['upholster'], ['finish'],
];

const HEAD = new Map<string, string>();
for (const family of SAME) for (const verb of family) if (!HEAD.has(verb)) HEAD.set(verb, family[0]!);

/** A verb under its family's name; "regrease" is "grease" again. A verb not listed is its own family. */
export function verbFamily(verb: string): string {
  const said = verb.trim().toLowerCase().split(/\s+/);
  const word = said.find(w => HEAD.has(w) || HEAD.has(withoutAgain(w))) ?? said[0] ?? '';
  return HEAD.get(word) ?? HEAD.get(withoutAgain(word)) ?? word;
}
const withoutAgain = (verb: string): string => verb.replace(/^re-?(?=[a-z]{3})/, '');

/** Words that name a part as readily as a work: "drain plug", "oil pump", "seat spring". */
const ALSO_NOUNS = new Set(['press', 'seat', 'bolt', 'drop', 'slide', 'hook', 'hitch', 'hang', 'set', 'gap', 'time', 'look', 'watch', 'gauge', 'tension', 'test', 'change', 'file', 'tap', 'bore',
  'machine', 'turn', 'mill', 'cut', 'patch', 'seal', 'mask', 'drain', 'oil', 'grease', 'wire', 'charge', 'clamp', 'lap', 'shim', 'thread', 'lift', 'jack', 'hoist', 'stand', 'swing',
  'start', 'run', 'sleeve', 'line', 'plug', 'pack', 'plane', 'saw', 'tag', 'mark', 'label', 'cast', 'balance', 'rivet', 'paint', 'spray', 'prime', 'strip', 'chase', 'coat', 'finish']);
export const alsoNoun = (word: string): boolean => ALSO_NOUNS.has(word);

export const isVerb = (word: string): boolean => HEAD.has(word) || HEAD.has(withoutAgain(word));
export const sameWork = (a: string, b: string): boolean => verbFamily(a) === verbFamily(b);

export const isFitting = (verb: string): boolean => verbFamily(verb) === 'fit';
export const isRemoving = (verb: string): boolean => verbFamily(verb) === 'remove';
export const isTightening = (verb: string): boolean => ['tighten', 'adjust'].includes(verbFamily(verb));
export const isReplacing = (verb: string): boolean => verbFamily(verb) === 'replace';
/** Works that a finding or a reading answers. */
export const isLooking = (verb: string): boolean => ['check', 'measure', 'test'].includes(verbFamily(verb));
export const isGetting = (verb: string): boolean => ['order', 'buy', 'collect'].includes(verbFamily(verb));

/** Works on the surface or around the fault, which leave a part that needs repair as it was. */
const LEAVES_FAULT = new Set(['clean', 'degrease', 'derust', 'blast', 'sand', 'prime', 'paint', 'varnish', 'mask', 'unmask', 'soak', 'check', 'measure', 'test', 'label', 'photograph', 'drain', 'fill', 'flush', 'grease', 'oil', 'free']);
export const mends = (action: string): boolean => !LEAVES_FAULT.has(verbFamily(action));
