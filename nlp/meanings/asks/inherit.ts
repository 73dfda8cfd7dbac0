import type { Ask } from '../../../domain/model/ask.ts';
import { type Desk, type Hit, sentenceAt } from './desk.ts';

type Whole = Extract<Ask, { kind: 'spent' | 'timeSpent' | 'finish' }>;
const whole = (a: Ask): a is Whole => a.kind === 'spent' || a.kind === 'timeSpent' || a.kind === 'finish';
const partOf = (a: Ask): string | undefined => ('part' in a ? a.part : undefined);
/** What one calls the machine without naming it: "this wretched thing", "the yoke". */
const THING = String.raw`(?:thing|machine|heap|contraption|project|beast|pile|outfit|yoke|crate|hole|money pit)`;
export const UNNAMED = new RegExp(String.raw`^(?:(?:wretched|blessed|damn|damned|bloody|old) )?(?:${THING}|rig|money standing)$`);
const THIS = new RegExp(String.raw`\b(?:this|that|the) (?:(?:wretched|blessed|damn|damned|bloody|old) )?${THING}\b`);
/** All that there is, whatever was spoken of before. */
const ALL = /^(?:(?:whole|entire) [a-z]+|lot)$/;
/** What the words of such a question leave hanging on the name: "the tractor total", "the edger money". */
const HANGING = / (?:money|total|totals|lot|dollars|pounds|quid|altogether|so far|hours)$/;

/**
 * "how much is in the tractor, and how many hours since June", "what did I do on the binder in April and how long did it take": money, hours and the
 * finish are asked of what the question before was about, or of what the other half of a pair is about ("how many hours and how much money have I in
 * the winch"). What is called a thing and not named is the one machine of a shop that has but one; money for which nothing is named is all of it.
 */
export function inherit(desk: Desk, hits: readonly Hit[]): Hit[] {
  let last: string | undefined;
  const { machines } = desk.sheet.ctx, only = machines?.length === 1 ? machines[0] : undefined;
  const named = (said: string | undefined): string | undefined => (said === undefined || UNNAMED.test(said) && (said !== 'rig' || only) || ALL.test(said) ? undefined : said.replace(HANGING, ''));
  return hits.map((h, i) => {
    const asks = h.asks.map((a): Ask => {
      if (a.kind === 'buy' && a.status === 'needed' && !a.part) { const of = bought(desk, h, hits[i - 1]); return of ? { ...a, part: of } : a; }
      if ((a.kind === 'provisional' || a.kind === 'history') && a.part !== undefined && UNNAMED.test(a.part)) { const { part: _, ...rest } = a; return { ...rest, ...(only ? { part: only } : {}) }; }
      if (!whole(a)) return a;
      const { part: said, ...rest } = a, thing = said !== undefined && UNNAMED.test(said) || said === undefined && THIS.test(desk.text.slice(h.start, h.end));
      const of = said !== undefined && ALL.test(said) ? undefined : named(said) ?? last ?? (said === undefined && !thing ? paired(desk, h, hits[i + 1], named) : undefined) ?? (thing || a.kind === 'finish' ? only : undefined);
      return { ...rest, ...(of ? { part: of } : {}), ...daysOfThat(desk, h, hits[i - 1], rest) } as Ask;
    });
    const own = asks.find(a => (whole(a) || a.kind === 'history' || a.kind === 'provisional') && partOf(a));
    if (own) last = partOf(own);
    return { ...h, asks };
  });
}

/** "how many hours and how much money in the winch": the thing is named once, at the end of the pair. */
function paired(desk: Desk, h: Hit, next: Hit | undefined, named: (said: string | undefined) => string | undefined): string | undefined {
  const other = next?.asks.find(whole);
  return other && sentenceAt(desk, h.start) === sentenceAt(desk, next!.start) && /^[ ,]*(?:and |or |plus )?$/.test(desk.text.slice(h.end, next!.start)) ? named(other.part) : undefined;
}

/** "which parts are on order for the lathe, and what remains to be bought": for the same thing. */
function bought(desk: Desk, h: Hit, before: Hit | undefined): string | undefined {
  const last = before?.asks.at(-1);
  return last?.kind === 'buy' && sentenceAt(desk, before!.start) === sentenceAt(desk, h.start) && /,? and $/.test(desk.text.slice(before!.end, h.start)) ? last.part : undefined;
}

/** "what was done since Easter, and how many hours is that": of the same days. */
function daysOfThat(desk: Desk, h: Hit, before: Hit | undefined, rest: object): { from?: string; to?: string } {
  const last = before?.asks.at(-1);
  if (last?.kind !== 'history' || 'from' in rest || !/^[^.?!]*\b(?:is|was|did|does|were) that\b/.test(desk.text.slice(h.start, sentenceAt(desk, h.start).end))) return {};
  return { ...(last.from ? { from: last.from } : {}), ...(last.to ? { to: last.to } : {}) };
}
