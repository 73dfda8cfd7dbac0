import { table } from './table.ts';

/** The trade's own short names of parts, each with the long one. */
const SHORT: Readonly<Record<string, string>> = table({ mag: 'magneto', carb: 'carburettor', rad: 'radiator', gen: 'generator', alt: 'alternator', diff: 'differential', trans: 'transmission', mani: 'manifold', stat: 'thermostat', pto: 'power take off', con: 'connecting', 'con rod': 'connecting rod', conrod: 'connecting rod', tach: 'tachometer', plug: 'spark plug', shocker: 'shock absorber', shocky: 'shock absorber', shock: 'shock absorber', dizzy: 'distributor', tranny: 'transmission', prop: 'propeller', crank: 'crankshaft', cam: 'camshaft' });

/** A name's key with every short word read out in full, unless the long name is there already ("shock absorber" has its absorber). */
export const spelledOut = (key: string): string => key.split(' ').map(w => (SHORT[w] && !` ${key} `.includes(` ${SHORT[w]} `) ? SHORT[w] : w)).join(' ');

/** The long name of a short one that hardly any annotated note has, so that the net never learned it; "mag" and "carb" it has met. */
export const longName = (word: string): string | undefined => (/^(?:rad|mani|tach|dizzy|tranny|conrod)$/.test(word) ? SHORT[word] : undefined);
