import { CLOCK, clockTime } from './clock-time.ts';

/** What words unasked are about; the person can turn each off. */
export const TOPICS = ['morning', 'rain', 'recheck', 'late', 'cured', 'back', 'help', 'temporary'] as const;
export type Topic = (typeof TOPICS)[number];

/** A choice about words unasked. Times HH:MM. */
export type ReminderSetting =
  | { set: 'morning'; at: string }
  | { set: 'morning'; on: boolean }
  | { set: 'quiet'; from: string; to: string }
  | { set: 'quiet'; on: false }
  | { set: 'topic'; topic: Topic | 'all'; on: boolean }
  /** Words unasked about one thing, by its name as said. */
  | { set: 'about'; name: string; on: boolean };

const WORD = String.raw`(?:word|words|message|briefing|update|summary|reminder|brief|report|note)`;
const MORNING = String.raw`(?:(?:the |my |a |your |that )?(?:morning|daily|day'?s) ${WORD})`;
const ABOUT: readonly (readonly [RegExp, Topic | 'all'])[] = [
  [/^(?:the )?(?:morning|daily) (?:word|words|message|briefing|update|summary|reminder|brief|report)s?$/, 'morning'],
  [/^(?:the )?(?:rain|weather)(?: (?:coming|warnings?|words?|reminders?|alerts?))?$/, 'rain'],
  [/^(?:the )?(?:rechecks?|retorques?|re-?checks|checks that are due|what(?:'s| is) due)(?: (?:words?|reminders?|being due))?$/, 'recheck'],
  [/^(?:the )?(?:late (?:parts|orders|things|deliveries)|orders being late|parts being late)(?: (?:words?|reminders?))?$/, 'late'],
  [/^(?:the )?(?:cures?|curing|cure times?|paint drying|what(?:'s| is| has) cured)(?: (?:words?|reminders?))?$/, 'cured'],
  [/^(?:the )?(?:parts (?:that are )?(?:out|back|due back)|outside work)(?: (?:words?|reminders?))?$/, 'back'],
  [/^(?:the )?(?:help|helpers)(?: (?:coming|words?|reminders?|tomorrow))?$/, 'help'],
  [/^(?:the )?(?:temporary (?:fits|things|parts)|what(?:'s| is) (?:only )?temporary|things being temporary)(?: (?:words?|reminders?))?$/, 'temporary'],
  [/^(?:any ?(?:more )?|the |your )?(?:reminders|nudges|unasked words|words unasked|unasked reminders)$/, 'all'],
  [/^(?:anything|things) (?:unasked|i didn't ask(?: for| about)?)$/, 'all'],
];
const OFF = /^(?:no(?: more)?|stop(?: (?:telling|reminding|warning) me (?:about|of|on)| (?:sending|giving)(?: me)?| with| all)?|turn off|switch off|don't (?:remind|tell|warn) me (?:about|of)|i don't (?:want|need)(?: any| the)?|skip|quit|leave off|end|drop) (?:all )?(.+?)(?: (?:any ?more|please|again))?$/;
const ON = /^(?:turn on|switch on|start|bring back|give me|send me|i (?:do )?want|do (?:tell|remind|warn) me (?:about|of)|(?:tell|remind|warn) me (?:again )?about|resume) (?:all )?(.+?)(?: (?:again|please|back))?$/;

const tidy = (text: string): string => text.toLowerCase().replace(/[’‘]/g, "'").replace(/[.!?]+\s*$/, '').replace(/,/g, '').replace(/\s+/g, ' ').replace(/^(?:please|ok|okay|and|can you|could you|let's have|i'd like) /, '').replace(/ please$/, '').trim();

/** Reads a choice about words unasked out of a whole sentence; undefined when it is about anything else. */
export function readReminderSetting(text: string): ReminderSetting | undefined {
  const low = tidy(text);
  return morningAt(low) ?? quiet(low) ?? topic(low) ?? about(low);
}

function morningAt(low: string): ReminderSetting | undefined {
  const said = new RegExp(`^(?:(?:give|send|say|bring|have|tell|put|set|move|make|shift|i want|i'll have)(?: me)? )?${MORNING} (?:is |to be |to |for )?(?:at |around |about |by )?(${CLOCK})(?: (?:from now on|instead|then))?$`).exec(low)
    ?? new RegExp(`^(?:(?:give|send|say|have|tell)(?: me)? )?${MORNING} (?:from now on )?at (${CLOCK})(?: .*)?$`).exec(low);
  const at = said && clockTime(said[1]!, 'am');
  return at ? { set: 'morning', at } : undefined;
}

function quiet(low: string): ReminderSetting | undefined {
  if (/^(?:no|drop the|turn off|end|without) quiet(?: hours| time)?$/.test(low)) return { set: 'quiet', on: false };
  const said = new RegExp(`^(?:(?:keep|be|stay|have|set|i want|make(?: it)?) )?(?:quiet|silent|silence|no (?:words|reminders|messages)|nothing|don't (?:disturb|bother|wake|message|remind) me)(?: hours| time)?(?: unasked)? (?:is |are |to |be )?(?:from |between |after )(${CLOCK})(?: (?:to|till|until|and|through to|-|–) | ?[-–] ?)(${CLOCK})$`).exec(low);
  const [from, to] = said ? [clockTime(said[1]!, 'pm'), clockTime(said[2]!, 'am')] : [];
  return from && to && from !== to ? { set: 'quiet', from, to } : undefined;
}

function topic(low: string): ReminderSetting | undefined {
  const off = OFF.exec(low);
  const on = off ? null : ON.exec(low);
  const about = (off ?? on)?.[1];
  const found = about === undefined ? undefined : ABOUT.find(([re]) => re.test(about))?.[1];
  // "No rain" is the weather and "drop the help" is nobody's business here: a bare no must name the words themselves.
  if (!found || (/^(?:no|skip|drop|end|quit)\b/.test(low) && !/(?:words?|warnings?|reminders?|alerts?|nudges|messages?|briefing|update|summary|unasked|report|note|brief)\b/.test(low))) return undefined;
  return found === 'morning' ? { set: 'morning', on: !off } : { set: 'topic', topic: found, on: !off };
}

const ABOUT_OFF = /^(?:stop|quit|don't|never|no need to|no more) (?:reminding|remind|reminders|warning|warn|warnings|telling|tell|nagging|nag|bothering|bother)(?: me)? (?:about|of|on) (?:the|my) (.+?)(?: (?:any ?more|again|please))?$/;
const ABOUT_ON = /^(?:do )?(?:remind|warn|tell|nag) me (?:again )?(?:about|of) (?:the|my) (.+?) (?:again|after all)$/;

/** "Don't remind me about the gasket", "remind me about the gasket again". */
function about(low: string): ReminderSetting | undefined {
  const off = ABOUT_OFF.exec(low), on = off ? null : ABOUT_ON.exec(low);
  const name = (off ?? on)?.[1];
  // A sentence that goes on is about more than one thing.
  return name && name.split(' ').length <= 5 && !/\b(?:that|if|when|before|until|till|to|and|or)\b/.test(name) ? { set: 'about', name, on: !off } : undefined;
}
