import type { OneSupposed } from '../../domain/answers/what-if.ts';
import { dayOf } from '../../domain/log/days.ts';
import type { ReadContext } from '../../domain/model/reading.ts';
import { PERSONS } from '../../nlp/words/persons.ts';
import { COMES, dayIn } from './comes-when.ts';
import { readHoist } from './hoist-said.ts';

const HELP = /^(?:i|we)\s+(?:get|got|have|had|find|found)\s+(?:some |a bit of )?(?:help|a (?:second |spare )?(?:pair of )?hands?|somebody|someone)\b(.*)$/i;

/** Nobody there to help at any time: "I do it all alone", "nobody helps me", "there's no help". */
export function aloneOf(rest: string): OneSupposed | undefined {
  const alone = /\b(?:without (?:any |the |some )?(?:help|a (?:second |spare )?(?:pair of )?hands?)|(?:all )?alone|on my own|by myself|single[- ]handed)\b[ a-z]{0,12}$/i.test(rest) && /^(?:i|we)\b/i.test(rest);
  const nobody = /^(?:nobody|no one|no-one) (?:helps?|can help|comes?(?: to help)?|is (?:here|there|around)(?: to help)?)(?: me| us| out| at all)*$/i.test(rest)
    || /^(?:(?:i|we) (?:had|have|get|got|find|found)|there(?:'s| is| was)) no (?:help|helper|second pair of hands)(?: at all| for .+)?$/i.test(rest);
  return alone || nobody ? { kind: 'noHelp', ever: true } : undefined;
}

export const hoistOf = (rest: string): OneSupposed | undefined => {
  const has = readHoist(rest.replace(/^(i|we) (?:hire|rent|borrow|buy|get|find|rig(?: up)?|had|own|did have)\b/i, '$1 have').replace(/^(.+ (?:hoist|crane)) (?:breaks|goes back|fails)$/i, '$1 broke').replace(/^(i|we) (?:didn't|did not) have/i, "$1 don't have"));
  return has === undefined ? undefined : { kind: 'hoist', has };
};

/** "My neighbour comes Saturday", "I get help on Sunday". */
export function helpOf(rest: string, ctx: ReadContext): OneSupposed | undefined {
  const person = COMES.exec(rest);
  const comes = person && isPerson(person[1]!);
  const after = comes ? person[2]! : HELP.exec(rest)?.[1];
  if (after === undefined) return undefined;
  const when = dayIn(after, ctx) ?? (comes ? undefined : dayOf(ctx.at));
  return when === undefined ? undefined : { kind: 'entries', entries: [{ kind: 'hands', when }] };
}

const isPerson = (said: string): boolean => PERSONS.test(said) || /^(?:help|somebody|someone|nobody|he|she|they|a (?:second |spare )?pair of hands)$/i.test(said);

/** "My cousin doesn't come", "nobody comes Saturday". */
export function noHelpOf(rest: string, ctx: ReadContext): OneSupposed | undefined {
  const m = /^(?:my |the |our )?(.+?)\s+(?:(?:doesn't|don't|won't|can't|cannot|does not|will not|isn't|is not|aren't)\s+(?:\w+\s+)?(?:come|coming|show up|turn up|make it|help|here)|(?:falls|drops|backs|cries|calls) off|(?:backs|drops|cries) out|cancels|comes?)\b(.*)$/i.exec(rest);
  if (!m || !isPerson(m[1]!) || (/\bcomes?\b/.test(m[0]) && !/n't|\bnot\b|cannot|^nobody/i.test(rest)) || /\b(?:till|until|before)\b/.test(m[2]!)) return undefined;
  const on = dayIn(m[2]!, ctx);
  return { kind: 'noHelp', ...(on === undefined ? {} : { on }) };
}
