import type { Ask } from '../../../domain/model/ask.ts';
import { dayOf, isoOf } from '../../dimensions/when/days.ts';
import { sheetBefore } from '../../sheet.ts';
import { daysOf, type Desk, foundIn, type Hit, sentenceAt } from './desk.ts';
import { readAsks } from './read.ts';
import { thingsAt } from './things-at.ts';
import { OPPOSITE } from '../../words/sides.ts';
import { table } from '../../words/table.ts';

/** What turns a question to another thing: "and the springs?", "what about the wee cap", "also the pins, I had them a minute ago". */
const TURN = /^ ?(?:(?:and|or|also|but|ok|okay|right|so|then|now) )*(?:(?:what|how) ?(?:a?bout)(?: for| on| in| with)? |same (?:again |question |thing |story )?(?:for|with|on|but for|again for|but) |(?:now |and )?do (?:the )?(?:same (?:for )?)?|ditto (?:for )?|any (?:more )?(?:of|for) |same (?:question|thing|again),? |how (?:much|many)(?: hours)? (?:of (?:that|it|those|them) )?(?:was|is|were|went (?:on|in|into|to)|on|for|into|in|at|to) |when (?:will |shall |does |is |did )?|(?<=(?:and|or|also|so|then) )(?:for |on |in |into |at |of |with |to )?|(?:for|on|into|of) )(?=(?:the|my|that|those|these|[a-z]+)\b)/;
const SIDES: Readonly<Record<string, string>> = table({ 'near side': 'off side', 'off side': 'near side', ...OPPOSITE });
const SIDE = new RegExp(String.raw`\b(?:${Object.keys(SIDES).join('|')})\b`);
const STANDS = new RegExp(String.raw`^(?:the |my )?(?:(other|opposite)(?: (?:one|ones|side|end|half|hand))?|(${Object.keys(SIDES).join('|')})(?: hand)?(?: (?:one|ones|side|end))?)(?= ?(?:$|[?.,!]))`);
const HAS_PART = /^(?:blocked|buy|where|wasHow|provisional|history|spent|timeSpent|finish|picture)$/;
const MONEY = /^(?:in |for |the )?(?:money|dollars|costs?|expenses?|outlay|bill|cash|quid|bucks|pounds|spend|euros)(?: wise| spent| terms)?(?=(?:,? whil(?:e|st)\b[^.?!]*)? ?(?:$|[?.,!]))/, HOURS = /^(?:in |for |the |my )?(?:hours|time|labou?r)(?: wise| spent| terms)?(?= ?(?:$|[?.,!]))/;

const PICTURES = /^(?:(?:the|any|some|and) )?(?:photos?|photographs?|pictures?|pics?|snaps?)(?: (?:of (?:it|that|them|the same)|and all|too|as well|please|also))*(?= ?(?:$|[?.,!]))/;

/**
 * A sentence that only names another thing, side or day after a question asks the same of it: "Where are the pins? And the springs?". The question may
 * stand in the note just before. Sums have their own follow-ups.
 */
export function likewise(desk: Desk, hits: readonly Hit[]): Hit[] {
  const out: Hit[] = [];
  desk.sentences.forEach((s, i) => {
    if (hits.some(h => h.start < s.end && s.start < h.end)) return;
    const before = desk.sentences[i - 1];
    const last = before ? [...hits, ...out].filter(h => h.start < before.end && before.start < h.end).sort((a, b) => a.start - b.start).at(-1)?.asks.at(-1) : priorAsk(desk);
    if (!last || last.kind === 'sum') return;
    const text = desk.text.slice(s.start, s.end), m = TURN.exec(text), bare = !m && (s.asked || PICTURES.test(text) || /^[a-z ]{3,40} (?:too|as well|also|likewise)[ .!]*$/.test(text)) ? /^ ?(?:(?:the|my) )?/.exec(text)! : m;
    if (!bare) return;
    const asks = again(desk, last, s.start + (m ? m[0].length : 0), s.end);
    if (asks) out.push({ start: s.start, end: s.end, asks, rule: 'likewise', weight: 3 });
  });
  return [...out, ...hits.flatMap(h => alsoOf(desk, h, hits))];
}

/** What joins another thing to what was asked about: "spent on the riddle, and on the engine". */
const ALSO = /^ ?,? ?(?:and|or|plus|then) (?:also )?(?:(?:how (?:much|many|long)|when|what|the ones?|the pictures|the photos|into)(?: (?:hours|money|of (?:those|them|it)))?(?: (?:was|were|is|are|did|does|do|have|went|will|shall))? )?(?:(?:on|of|for|in|into|at|with) )?(?=(?:the|my|that|this)\b)/;
/** "and how many in total": the same of all days. */
const IN_ALL = /^ ?,? ?(?:and|plus) how (?:many|much|long)(?: hours)? (?:in total|altogether|all told|in all|all in all|over ?all)(?= ?(?:$|[?.,!])| since\b| from\b)/;
/** Days and the like between what was asked about and what is asked further. */
const DAYS = /^ ?(?:since|in|from|until|till|this|last|so far|up to|to date|alone|before|pls|please)\b[^,.?!]*?(?=,? (?:and|or|plus|then)\b)|^,? (?:pls|please)(?=,)/;
/** What a thing may be followed by where it ends what is asked. */
const ENDS = /^ ?(?:(?:one|ones|as well|too|then|now|also|please|instead|alone|separately|by itself|on its own|yet|so far) ?)*(?:$|[?.,!])/;

/** The same asked of another thing that the sentence goes on to. */
function alsoOf(desk: Desk, h: Hit, hits: readonly Hit[]): Hit[] {
  const last = h.asks.at(-1)!, { end } = sentenceAt(desk, h.start), part = /^(?:spent|timeSpent|picture|buy|finish|blocked|provisional)$/.test(last.kind) && 'part' in last ? last.part : undefined;
  const named = part ? desk.text.indexOf(part.split(' ').at(-1)!, h.start) : -1, past = named < 0 ? end : Math.max(h.end, named + /^[a-z]*/.exec(desk.text.slice(named))![0].length), done = past + (DAYS.exec(desk.text.slice(past, end))?.[0].length ?? 0);
  const all = last.kind === 'timeSpent' ? IN_ALL.exec(desk.text.slice(done, end)) : undefined;
  if (all) {
    const { from: _f, to: _t, ...rest } = last as Extract<Ask, { kind: 'timeSpent' }>, days = daysOf(desk, done, end, 'past');
    return [{ start: done, end, asks: [days.from ? { kind: 'timeSpent', ...days } : rest as Ask], rule: 'likewise', weight: 3 }];
  }
  const m = ALSO.exec(desk.text.slice(done, end));
  if (!m || hits.some(o => o.start >= done && o.start < done + m[0].length)) return [];
  const things = thingsAt(desk, done + m[0].length, end);
  const led = m[0].trim().split(' ').length > 1 || /^(?:spent|timeSpent|picture|finish|blocked)$/.test(last.kind) && things !== undefined && ENDS.test(desk.text.slice(things.end, end));
  return led && things?.names.length ? [{ start: done, end: things.end, asks: things.names.map((name): Ask => ({ ...last, part: name }) as Ask), rule: 'likewise', weight: 3 }] : [];
}

/** The same question of what is named from here to the end of its sentence, when nothing else is said there. */
function again(desk: Desk, last: Ask, from: number, end: number): Ask[] | undefined {
  const rest = desk.text.slice(from, end), ends = (at: number): boolean => ENDS.test(desk.text.slice(at, end));
  const part = 'part' in last ? last.part : undefined;
  if (last.kind === 'spent' && HOURS.test(rest)) return [{ kind: 'timeSpent', ...(part ? { part } : {}) }];
  if (last.kind === 'timeSpent' && MONEY.test(rest)) return [{ kind: 'spent', ...(part ? { part } : {}) }];
  if (part && PICTURES.test(rest)) return [{ kind: 'picture', part }];
  const stands = STANDS.exec(rest), side = part && SIDE.exec(part)?.[0];
  if (stands && part) return stands[2] ? [{ ...last, part: side ? part.replace(side, stands[2]) : `${stands[2]} ${part}` } as Ask] : side ? [{ ...last, part: part.replace(side, SIDES[side]!) } as Ask] : undefined;
  if (/^(?:forecast|history|timeSpent|spent)$/.test(last.kind)) {
    const days = daysOf(desk, from - 1, end, last.kind === 'forecast' ? 'forward' : 'past');
    const shift = /^(?:the )?(day|week) (before|after)(?: that| last)?(?= ?(?:$|[?.,!]))/.exec(rest), was = last as Ask & { from?: string; to?: string };
    if (shift && was.from && was.to) { const by = (shift[1] === 'week' ? 7 : 1) * (shift[2] === 'after' ? 1 : -1); return [{ ...last, from: isoOf(dayOf(was.from) + by), to: isoOf(dayOf(was.to) + by) } as Ask]; }
    if (days.from && last.kind === 'spent') return [last];
    if (days.from && rest.split(' ').length <= 6) { const { from: _f, to: _t, ...same } = last as Ask & { from?: string; to?: string }; return [{ ...same, ...days } as Ask]; }
  }
  if (last.kind === 'next') {
    const span = foundIn(desk, from, end).find(f => f.dim === 'span' && /^(?:minutes|hours)$/.test(f.value.unit));
    const place = /\b(?:indoors?|inside|under cover)\b/.test(rest) ? 'indoors' as const : /\b(?:outdoors?|outside)\b/.test(rest) ? 'outdoors' as const : undefined;
    if (span?.dim !== 'span' && !place) return undefined;
    return [{ ...last, ...(span?.dim === 'span' ? { minutes: Math.round(span.value.amount * (span.value.unit === 'hours' ? 60 : 1)) } : {}), ...(place ? { place } : {}) }];
  }
  if (!(part || last.kind === 'cheapest' || /^(?:buy|provisional|spent|timeSpent|finish|history)$/.test(last.kind) && /(?:for|on|in|bout) $/.test(desk.text.slice(0, from)))) return undefined;
  const things = thingsAt(desk, from, end);
  if (!things || !ends(things.end) || last.kind !== 'cheapest' && !HAS_PART.test(last.kind)) return undefined;
  return things.names.map((name): Ask => (last.kind === 'cheapest' ? { ...last, item: name } : { ...last, part: name } as Ask));
}

/** What the note just before asked last. */
function priorAsk(desk: Desk): Ask | undefined {
  const before = sheetBefore(desk.sheet.ctx);
  return before && readAsks(before).at(-1)?.ask;
}
