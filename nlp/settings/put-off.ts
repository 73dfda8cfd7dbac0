import { isoOf, dayOf } from '../dimensions/when/days.ts';
import { simpleDays } from '../dimensions/when/simple.ts';
import { table } from '../words/table.ts';

/**
 * What the person says to a word unasked. `later`: in so many hours, or on a day (YYYY-MM-DD; `evening`: late in it). `word`: the number of the
 * word, as its buttons say. `plain`: few words that mean this only straight after one ("later", "tomorrow"), and something else elsewhere.
 */
export type UnaskedReply =
  | { do: 'later'; hours: number; word?: number; plain?: boolean }
  | { do: 'later'; day: string; evening?: boolean; word?: number; plain?: boolean }
  | { do: 'stop' | 'more'; word?: number; plain?: boolean };

const NUMBERS: Record<string, number> = table({ a: 1, an: 1, one: 1, two: 2, three: 3, four: 4, five: 5, six: 6, seven: 7, eight: 8, nine: 9, ten: 10, 'half an': 0.5, 'a couple of': 2, 'a few': 3 });
const COUNT = String.raw`(\d+(?:\.\d+)?|half an|a couple of|a few|an?|one|two|three|four|five|six|seven|eight|nine|ten)`;
/** A word that was put off without a time comes again in so many hours. */
const LATER_HOURS = 3;
/** A reply is a few words; a longer note is a note. */
const LONGEST = 120;

/** Reads such a reply out of a whole note; undefined when it is anything else. `at`: the moment of the note, ISO. */
export function readUnaskedReply(text: string, at: string): UnaskedReply | undefined {
  if (text.length > LONGEST) return undefined;
  const low = text.toLowerCase().replace(/[’‘]/g, "'").replace(/[.!?,]+/g, ' ').replace(/\s+/g, ' ').replace(/^(?:ok|okay|yes|no|please|thanks) (?=\w)/, '').replace(/ please$/, '').trim();
  const numbered = /^(put off|stop|more of) word (\d+)$/.exec(low);
  if (numbered) {
    const word = Number(numbered[2]);
    return numbered[1] === 'put off' ? { do: 'later', hours: LATER_HOURS, word } : { do: numbered[1] === 'stop' ? 'stop' : 'more', word };
  }
  if (/^(?:stop|don't|never|quit) (?:telling|tell|reminding|remind|warning|saying|say|nagging)(?: me)?(?: (?:of|about))?(?: (?:that|this|it|those|these|them))?(?: (?:again|any ?more|now))?$/.test(low)) return { do: 'stop' };
  if (/^(?:stop (?:that|it|this)|stop|enough(?: of that)?|that's enough|i know|don't want to know)$/.test(low)) return { do: 'stop', plain: true };
  if (/^(?:more|why|tell me more|and the rest|the rest|go on|show more|longer|what else|how so|why's that)$/.test(low)) return { do: 'more', plain: true };
  return later(low, at);
}

const ASKED = /^(?:remind me|tell me|say (?:it|that)|ask me|bring (?:it|that) up|come back(?: to (?:me|it|that))?|put (?:it|that) off)(?: again)?(?: (?:of|about|with) (?:that|it|this))?(?: (?:again|until|till|to|for)(?= |$))? ?/;

function later(low: string, at: string): UnaskedReply | undefined {
  const asked = ASKED.exec(low);
  const when = (asked ? low.slice(asked[0].length) : low.replace(/^(?:not (?:until|till|before) |not )(?=\w)(?!now|yet)/, '')).trim();
  const plain = asked ? {} : { plain: true };
  if (/^(?:later(?: on)?|not now|not yet|another time|some other time|in a (?:bit|while)|snooze|again|after a while)$/.test(when)) return when === 'again' && !asked ? undefined : { do: 'later', hours: LATER_HOURS, ...plain };
  const span = new RegExp(`^(?:in |after )?${COUNT} (hours?|minutes?|mins?|days?|weeks?)(?: (?:from now|time|later))?$`).exec(when);
  if (span && (asked || /^in |later$/.test(when))) {
    const count = NUMBERS[span[1]!] ?? Number(span[1]);
    if (/^h|^m/.test(span[2]!)) return { do: 'later', hours: span[2]!.startsWith('h') ? count : count / 60, ...plain };
    return { do: 'later', day: isoOf(dayOf(at) + Math.round(count * (span[2]!.startsWith('w') ? 7 : 1))), ...plain };
  }
  if (/^(?:tonight|this evening|in the evening|this afternoon)$/.test(when)) return { do: 'later', day: isoOf(dayOf(at)), evening: true, ...plain };
  const day = simpleDays(when.replace(/^(?:on|at) /, ''), dayOf(at), 'forward').find(d => when.replace(/^(?:on|at) /, '').length === d.end - d.start);
  return day ? { do: 'later', day: isoOf(day.from), ...plain } : undefined;
}
