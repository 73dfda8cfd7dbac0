import { table } from './table.ts';

/** Words that tell one of a pair or set from another; they belong to the name of a part. */
export const SIDES: ReadonlySet<string> = new Set('left right front rear back top bottom upper lower inner outer inside outside near far off-side offside nearside near-side left-hand right-hand lefthand righthand port starboard middle centre center lh rh outboard inboard'.split(' '));

/** The other of a pair. */
export const OPPOSITE: Readonly<Record<string, string>> = table({ left: 'right', right: 'left', front: 'rear', rear: 'front', back: 'front', top: 'bottom', bottom: 'top', upper: 'lower', lower: 'upper', inner: 'outer', outer: 'inner', inside: 'outside', outside: 'inside', near: 'far', far: 'near', nearside: 'offside', offside: 'nearside', 'near-side': 'off-side', 'off-side': 'near-side', inboard: 'outboard', outboard: 'inboard', port: 'starboard', starboard: 'port', 'left-hand': 'right-hand', 'right-hand': 'left-hand', first: 'second', second: 'first' });

/** Whether words name one of a pair and the other at once, as no thing's name does. */
export const oneAndOther = (words: readonly string[]): boolean => words.some(w => words.includes(OPPOSITE[w] ?? ''));
