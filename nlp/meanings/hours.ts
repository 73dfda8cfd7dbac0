import type { Entry } from '../../domain/model/entry.ts';
import { lows, type Clause } from '../clauses/clause.ts';
import type { Found } from '../types.ts';
import { on, spent, TOTAL } from './hours/spent.ts';
import { trim } from './lib/fields.ts';
import { namesPart } from './lib/named.ts';
import { meter } from './reading/meter.ts';
import { lowText, type Meaning, type Telling } from './telling.ts';

/** Time spent: "two hours on the sweep", "spent an hour scraping", "that took me three hours"; a sum so far where it says so. */
export const hours: Meaning = t => {
  const c = t.clause;
  if (/^(something|anything|what)$/.test(c.who ?? '') || /^(something|anything)\b/.test(lowText(t))) return undefined; // "something for inside, twenty minutes" asks for a job
  if (c.neg || c.asks || !/^(deed)$/.test(c.reality) || c.sub && /^(if|unless|until|till|before|when|once)$/.test(c.sub)) return undefined;
  const text = lowText(t);
  if (meter(t) || /\b(more|another) \S* ?hours?\b.*\b(will|should|'ll|ought|to go|would)\b|\bhours? (to go|yet)\b/.test(text)) return undefined;
  if (elsewhere(t, c, text)) return undefined;
  const both = withSum(t, c) ?? thenSum(t, c);
  if (both) return both;
  const each = eachOn(c) ?? byDay(t, c) ?? further(t, c);
  if (each) return each;
  const f = timeIn(t, c);
  if (!f) return bareTotal(t, c, text);
  if (!spent(t, c, f, text)) return undefined;
  const unit = f.value.unit, mended = corrected(t, c, f);
  if (unit === 'minutes' && c.pred === 'none' && !c.items.some(i => /^(on|at|into|spent)$/.test(i.low) || i.np && namesPart(t.sheet, i.np.name)) && !c.obj.length) return undefined; // a run of minutes
  const value = mended ?? (unit === 'hours' ? f.value.amount : unit === 'minutes' && f.value.amount >= 15 ? Math.round(f.value.amount / 0.6) / 100 : undefined);
  if (value === undefined) return undefined;
  const part = on(t, c, f);
  return [trim({ kind: 'hours', hours: value, part, total: TOTAL.test(`${text} ${t.sheet.text.slice(t.sheet.tokens[f.to - 1]!.end, (t.sheet.tokens[c.to - 1]?.end ?? 0) + 18).toLowerCase().replace(/[ ,]+(and |so )?(that|which)\b.*$|[.;!?]\s+\S*\d.*$/, '')}`) || undefined }) as Entry];
};

/** Time that goes into no machine: in a queue, on the road, or time still to come that a question is about. */
const elsewhere = (t: Telling, c: Clause, text: string): boolean =>
  /\b(in line|in traffic|in (the|a) (queue|waiting room)|on the road|on the phone|at the (weigh station|dump|tip|store|dealers?|doctors?|dentists?|hospital|airport|bank|pub))\b/.test(text)
  || /^[^.!]{0,30}\b(what|anything|which|how much|how many)('s| is| are| can| could| should| jobs?| do| will|)\b[^.!]*\?|^,? ?(inside|indoors|outside|outdoors)?,? ?what (can|could|should) /.test(t.sheet.text.slice(t.sheet.tokens[c.to - 1]?.end ?? 0).toLowerCase()) && /\b(call it|got|have|free|only|min|mins|minutes)\b/.test(text);

/** "four hours no call it four and a half": the number after the correction holds. */
function corrected(t: Telling, c: Clause, f: Found): number | undefined {
  const tail = t.sheet.tokens.slice(f.to, c.to).map(x => x.low).join(' ');
  if (!/^,? ?(no|wait|sorry|rather|make that|make it|call it|well)\b/.test(tail)) return undefined;
  const n = t.sheet.found.filter(x => x.dim === 'number' && x.from > f.to && x.to <= c.to).sort((a, b) => a.from - b.from || b.to - a.to)[0];
  return n?.dim === 'number' && f.dim === 'span' && f.value.unit === 'hours' ? n.value.value : undefined;
}

/** "an hour and three quarters on the brake, that makes six and a half on it all told": time added, and its sum. */
function withSum(t: Telling, c: Clause): Entry[] | undefined {
  const spans = t.sheet.found.filter((x): x is Extract<Found, { dim: 'span' }> => x.dim === 'span' && x.from >= c.from && x.to <= c.to && x.value.unit === 'hours');
  const f = spans[0], k = c.items.findIndex(i => i.t === 'verb' && /^(make|bring)$/.test(i.base ?? '') && i.form !== 'ing');
  if (!f || k < 0 || c.items[k]!.from < f.to) return undefined;
  const n = c.items.slice(k + 1).find(i => i.f?.dim === 'number' || i.f?.dim === 'span')?.f;
  const sum = n?.dim === 'number' ? n.value.value : n?.dim === 'span' && n.value.unit === 'hours' ? n.value.amount : undefined;
  if (sum === undefined || sum <= f.value.amount) return undefined;
  const part = on(t, { ...c, items: c.items.slice(0, k) }, f);
  return [trim({ kind: 'hours', hours: f.value.amount, part }) as Entry, trim({ kind: 'hours', hours: sum, part, total: true }) as Entry];
}

/** "6 hours on the sweeper this week, 71 hours total": time added, and the sum in hours of its own. */
function thenSum(t: Telling, c: Clause): Entry[] | undefined {
  const [f, sum, more] = c.items.flatMap(i => (i.f?.dim === 'span' && /^(hours|minutes)$/.test(i.f.value.unit) ? [i.f] : []));
  if (!f || !sum || more || sum.value.unit !== 'hours') return undefined;
  const time = f.value.unit === 'hours' ? f.value.amount : Math.round(f.value.amount / 0.6) / 100, between = t.sheet.tokens.slice(f.to, sum.from).map(x => x.low).join(' ');
  if (time >= sum.value.amount || TOTAL.test(between) || /\b(no|sorry|wait|rather|or)\b/.test(between) || !TOTAL.test(t.sheet.tokens.slice(sum.to, c.to).map(x => x.low).join(' ')) || !spent(t, c, f, lowText(t))) return undefined;
  const part = on(t, { ...c, items: c.items.filter(i => i.from < sum.from) }, f);
  return [trim({ kind: 'hours', hours: time, part }) as Entry, trim({ kind: 'hours', hours: sum.value.amount, part, total: true }) as Entry];
}

/** "against the boom: 1.75 hours on Saturday and 2.5 hours yesterday": each day's own. */
function byDay(t: Telling, c: Clause): Entry[] | undefined {
  const spans = c.items.flatMap((i, k) => (i.f?.dim === 'span' && i.f.value.unit === 'hours' && (c.items[k + 1]?.f?.dim === 'when' || c.items[k + 1]?.low === 'on' && c.items[k + 2]?.f?.dim === 'when') ? [i.f] : []));
  if (spans.length < 2) return undefined;
  const before = t.clauses[t.at - 1], np = c.items.find((i, k) => i.np && !i.np.stands && /^(on|against|for|into|in)$/.test(c.items[k - 1]?.low ?? ''))?.np ?? (c.join === ':' ? before?.items.findLast(i => i.np && !i.np.stands)?.np : undefined);
  const part = np?.name ?? t.memory.topic()?.name;
  return spans.map(s => trim({ kind: 'hours', hours: s.value.amount, part }) as Entry);
}

/** "an hour on the hub and two hours on the carb": each with its own part. */
function eachOn(c: Clause): Entry[] | undefined {
  const got = c.items.flatMap((i, k) => {
    const np = c.items[k + 2]?.np, f = i.f;
    const some = f?.dim === 'number' ? f.value.value : i.low === 'one' && i.t === 'pron' ? 1 : undefined;
    if (some !== undefined && k > 0 && c.items.slice(0, k).some(x => x.f?.dim === 'span') && c.items[k + 1]?.low === 'on' && np && !np.stands && some <= 24) return [{ part: np.name, hours: some }]; // "5 hrs on the frame, 2 on the axle"
    return f?.dim === 'span' && /^(hours|minutes)$/.test(f.value.unit) && /^(on|in|at)$/.test(c.items[k + 1]?.low ?? '') && np && !np.stands && !/shop|shed|barn|morning|afternoon|evening/.test(np.said) ? [{ part: np.name, hours: f.value.unit === 'hours' ? f.value.amount : Math.round(f.value.amount / 0.6) / 100 }] : [];
  });
  return got.length > 1 ? got.map(g => ({ kind: 'hours', ...g }) as Entry) : undefined;
}

/** "four hours on the knotter Sunday, two and a half tonight", "eighteen so far and four of them today": further time on the same thing. */
function further(t: Telling, c: Clause): Entry[] | undefined {
  const k = c.items.findIndex(i => i.f?.dim === 'span' && i.f.value.unit === 'hours'), f = c.items[k]?.f;
  const n = c.items.findIndex((i, m) => m > k && i.f?.dim === 'number' && (c.items[m + 1]?.f?.dim === 'when' || c.items[m + 1]?.low === 'of' && c.items[m + 2]?.t === 'pron' && c.items[m + 3]?.f?.dim === 'when' || TOTAL.test(lows(c.items.slice(k + 1))) && m === c.items.findLastIndex(x => x.t !== 'mark')));
  const more = c.items[n]?.f;
  if (k < 0 || n < 0 || f?.dim !== 'span' || more?.dim !== 'number' || more.value.value > 24 && !TOTAL.test(lows(c.items.slice(n + 1))) || !spent(t, c, f, lowText(t))) return undefined;
  const part = on(t, { ...c, items: c.items.slice(0, n) }, f), last = n === c.items.findLastIndex(x => x.t !== 'mark') && TOTAL.test(lows(c.items.slice(k + 1, n))), sum = (from: number, to: number): true | undefined => (from > 0 && last ? true : from === 0 && last ? undefined : TOTAL.test(lows(c.items.slice(from, to))) || undefined);
  return [trim({ kind: 'hours', hours: f.value.amount, part, total: sum(0, n) }) as Entry, trim({ kind: 'hours', hours: more.value.value, part, total: sum(n + 1, c.items.length) }) as Entry];
}

/** "…makes eleven all told": a figure alone that sums up the hours just said. */
function bareTotal(t: Telling, c: Clause, text: string): Entry[] | undefined {
  const last = t.told.at(-1)?.entry, n = c.items.find(i => i.f?.dim === 'number')?.f;
  const said = `${text} ${t.sheet.text.slice(t.sheet.tokens[c.from]!.start, (t.sheet.tokens[c.to - 1]?.end ?? 0) + 14).toLowerCase()}`;
  const headed = c.join === ':' && t.clauses[t.at - 1] && /\b(running total|total|in all|altogether|so far)\b/.test(lowText(t, t.clauses[t.at - 1]!)); // "Running total for them: 19"
  return last?.kind === 'hours' && n?.dim === 'number' && (headed || /\b(makes?|brings?|that's|total)\b/.test(text) && TOTAL.test(said)) ? [trim({ kind: 'hours', hours: n.value.value, part: last.part, total: true }) as Entry] : undefined;
}

/** The length of time in the clause; the last of several where the one before was taken back: "an hour and a half... no, two hours". */
function timeIn(t: Telling, c: Clause): Extract<Found, { dim: 'span' }> | undefined {
  const all = t.sheet.found.filter((f): f is Extract<Found, { dim: 'span' }> => f.dim === 'span' && f.from >= c.from && f.to <= c.to && /^(hours|minutes)$/.test(f.value.unit)).sort((a, b) => a.from - b.from);
  const last = all.at(-1), first = all[0];
  return last && first && t.sheet.tokens.slice(first.to, last.from).some(x => /^(no|sorry|wait|rather|make|call|correction|\.\.\.|…)$/.test(x.low)) || all.length === 2 && first!.to > last!.from ? last : all.length > 1 && c.subj.some(s => !s.carried) ? first : last;
}
