import { writeSetting } from '../../domain/store/settings.ts';
import { compose } from '../say/reply.ts';
import type { Turn, TurnOut } from '../turn/types.ts';
import { HOIST } from './settings.ts';

const GEAR = String.raw`(?:(?:chain|engine|cherry|electric|hand|lever|proper|real|decent|small|big|two[- ]ton\w*|one[- ]ton\w*|overhead|old|new|second[- ]hand|borrowed|mobile|folding|\d+[- ]?(?:ton\w*|kg|t))[- ]?)*(?:hoist|crane|gantry|picker|block and tackle|chain block|chain fall|loader|forklift|fork ?lift|front loader|front[- ]end loader|a[- ]frame)s?`;
const REST = String.raw`(?: (?:now|here|again|today|at last|finally|in the (?:shop|shed|barn|garage)|over the bench|to (?:lift|use|hand)|of my own|on (?:loan|hand|hire)|from (?:the|my|a) [a-z ]+|for (?:the|a) (?:weekend|week|day|afternoon|lift)|for (?:lifting|the lift|heavy (?:stuff|lifts|things)|the engine|now)|any ?more|either|yet|set up|up|rigged(?: up)?))*`;
const HAS = new RegExp(String.raw`^(?:(?:and|so|ok(?:ay)?|right|well|oh|by the way|note)[, ]+)*(?:(?:i|we)(?:'ve| have)?(?: also| just| now| finally)*(?: got| have| own| bought| borrowed| hired| rented| rigged(?: up)?| set up| put up| hung)?|there(?:'s| is)|got|have)(?: me| us)?(?: an?| the| my| our| some| use of an?)? ?${GEAR}${REST}$`, 'i');
const HASNT = new RegExp(String.raw`^(?:(?:and|so|ok(?:ay)?|right|well|oh|by the way|note)[, ]+)*(?:(?:(?:i|we)(?:'ve| have)? (?:got )?|there(?:'s| is) |got |have )?no|(?:i|we) (?:don't|do not) (?:have|own)(?: an?| any)?|(?:i|we) (?:haven't|have not) got(?: an?| any)?|there(?:'s| is|) ?(?:n't|not) an?|without an?) ${GEAR}${REST}$`, 'i');
const WENT = new RegExp(String.raw`^(?:the|my|our) ${GEAR}(?:'s| is| has|'ve)? (?:(?:gone|been|went|had to go|taken) (?:back|away|gone)|(?:broken|broke|bust|knackered|dead|gone|no good|unsafe|condemned|returned|sold))(?: .{0,20})?$|^(?:i|we) (?:gave|took|sold|returned|sent) (?:the|my|our) ${GEAR}(?: back| on)?$`, 'i');
const BACK = new RegExp(String.raw`^(?:the|my|our) ${GEAR}(?:'s| is) (?:back|here|up|working|rigged(?: up)?|mended|fixed|set up)(?: again| now)*$`, 'i');

/** Whether the words say that there is a hoist (true) or none (false); undefined: neither. */
export function readHoist(text: string): boolean | undefined {
  const said = text.trim().replace(/[’‘]/g, "'").replace(/[.!\s]+$/, '');
  if (said.split(/\s+/).length > 16 || /\?$/.test(text.trim())) return undefined;
  if (HASNT.test(said) || WENT.test(said)) return false;
  return HAS.test(said) || BACK.test(said) ? true : undefined;
}

/** "I've got a chain hoist", "no hoist here": kept, so that heavy work is planned with it or with help. Undefined: not about that. */
export function hoistSaid(turn: Turn): TurnOut | undefined {
  const { incoming: { at, text }, deps: { log }, note } = turn;
  const has = readHoist(text);
  if (has === undefined) return undefined;
  writeSetting(log.store, HOIST, has ? 'yes' : 'no');
  const line = has ? 'A hoist: I\'ll plan heavy lifts without a second person. Rated gear, blocked and chocked, nobody under a load.' : 'No hoist: I\'ll plan heavy lifts for when there is help.';
  return { reply: compose({ note: note.id, at, lines: [line] }) };
}
