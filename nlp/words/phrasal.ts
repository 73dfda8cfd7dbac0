import { table } from './table.ts';

/** Verbs that are another deed with their particle: building up a worn eye is not building it. */
export const PHRASAL: Readonly<Record<string, RegExp>> = table({
  build: /^up$/, go: /^(over|round|around)$/, run: /^(over|round)$/, rod: /^out$/, drill: /^out$/, rub: /^down$/, touch: /^up$/, send: /^(out|off|back)$/, post: /^back$/, line: /^up$/, let: /^in$/, vee: /^out$/, knock: /^out$/, nip: /^up$/, dig: /^out$/, press: /^out$/, take: /^up$/, draw: /^out$/, blow: /^(out|through)$/,
});
