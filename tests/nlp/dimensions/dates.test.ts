import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import { findDimensions } from '../../../nlp/dimensions/find.ts';
import { daysIn } from '../../../nlp/dimensions/when/rules.ts';
import { lineOf } from '../../../nlp/dimensions/line.ts';
import { isoOf } from '../../../nlp/dimensions/when/days.ts';
import { tokenize } from '../../../nlp/text/tokens.ts';

// Days as people say them, against Temporal's calendar (temporal-polyfill) on days spread over leap years, year ends and changes of clock.

const NAMES = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'];
const COUNTS = ['one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];
/** 260 days: every eleventh one from 2024 on, with the ends of years, leap days and clock changes. */
const TODAYS = [
  ...Array.from({ length: 250 }, (_, i) => Temporal.PlainDate.from('2024-01-05').add({ days: i * 11 })),
  ...['2024-02-28', '2024-02-29', '2028-02-29', '2025-12-31', '2026-01-01', '2026-03-08', '2026-03-29', '2026-10-25', '2026-11-01', '2027-12-31'].map(d => Temporal.PlainDate.from(d)),
];
const OFFSETS = ['-08:00', '+00:00', '+05:30', '+13:00'];

const said = (text: string, at: string): { from?: string; to?: string } | undefined => {
  const f = findDimensions(tokenize(text), { at }).find(x => x.dim === 'when');
  return f?.dim === 'when' ? { from: f.value.from, to: f.value.to } : undefined;
};
const coming = (today: Temporal.PlainDate, dow: number): Temporal.PlainDate => today.add({ days: ((dow - today.dayOfWeek + 6) % 7) + 1 });
const monday = (d: Temporal.PlainDate): Temporal.PlainDate => d.subtract({ days: d.dayOfWeek - 1 });

type Case = [text: string, from: Temporal.PlainDate, to?: Temporal.PlainDate];
function cases(today: Temporal.PlainDate, i: number): Case[] {
  const dow = (i % 7) + 1, name = NAMES[dow - 1]!, n = (i % 10) + 1, count = COUNTS[n - 1]!;
  const next = monday(today).add({ days: 7 }), month = today.with({ day: 1 });
  return [
    ['tomorrow', today.add({ days: 1 })], ['yesterday', today.subtract({ days: 1 })], ['the day after tomorrow', today.add({ days: 2 })],
    [name, coming(today, dow)], [`a week from ${name}`, coming(today, dow).add({ days: 7 })], [`${name} week`, coming(today, dow).add({ days: 7 })], ['a week from tomorrow', today.add({ days: 8 })],
    [`in ${count} days`, today.add({ days: n })], [`in ${count} weeks`, today.add({ weeks: n })], [`in ${count} months`, today.add({ months: n })], [`${count} days ago`, today.subtract({ days: n })],
    ['next week', next, next.add({ days: 6 })], ['last week', next.subtract({ days: 14 }), next.subtract({ days: 8 })],
    ['end of the month', month.add({ months: 1 }).subtract({ days: 1 })], ['next month', month.add({ months: 1 }), month.add({ months: 2 }).subtract({ days: 1 })],
    [`last ${name}`, today.subtract({ days: ((today.dayOfWeek - dow + 6) % 7) + 1 })], [`next ${name}`, next.add({ days: dow - 1 })],
  ];
}

describe('days against Temporal', () => {
  const all = TODAYS.flatMap((t, i) => cases(t, i).map(c => ({ at: `${t.toString()}T${i % 2 ? '23:45' : '00:15'}:00${OFFSETS[i % 4]}`, c })));
  it(`reads ${all.length} phrases on ${TODAYS.length} days`, () => {
    expect(all.length).toBeGreaterThan(4000);
    const wrong = all.map(({ at, c: [text, from, to] }) => ({ text, at, want: { from: from.toString(), to: (to ?? from).toString() }, got: said(text, at) })).filter(r => JSON.stringify(r.want) !== JSON.stringify(r.got));
    expect(wrong).toEqual([]);
  });

  it('takes an open day of the month forward to the next month that has it, and back likewise', () => {
    for (const [i, today] of TODAYS.entries()) {
      const n = (i % 31) + 1;
      let f = today.with({ day: 1 }), b = f;
      const day = (d: Temporal.PlainDate): Temporal.PlainDate | undefined => (n <= d.daysInMonth ? d.with({ day: n }) : undefined);
      while (!day(f) || Temporal.PlainDate.compare(day(f)!, today) < 0) f = f.add({ months: 1 });
      while (!day(b) || Temporal.PlainDate.compare(day(b)!, today) > 0) b = b.subtract({ months: 1 });
      const line = lineOf(tokenize(`by the ${n}${n % 10 === 1 && n !== 11 ? 'st' : n % 10 === 2 && n !== 12 ? 'nd' : n % 10 === 3 && n !== 13 ? 'rd' : 'th'}`));
      expect(isoOf(daysIn(line, today.toString())[0]!.from)).toBe(day(f)!.toString());
      expect(isoOf(daysIn(line, today.toString(), 'past')[0]!.from)).toBe(day(b)!.toString());
    }
  });

  it('counts by the calendar over a change of clocks: the day after 2026-03-07 in New York has 23 hours and is the 8th', () => {
    const before = Temporal.ZonedDateTime.from('2026-03-08T00:00[America/New_York]');
    expect(before.hoursInDay).toBe(23);
    expect(said('tomorrow', '2026-03-07T23:59:00-05:00')).toEqual({ from: '2026-03-08', to: '2026-03-08' });
    expect(said('the day after tomorrow', '2026-03-07T23:59:00-05:00')).toEqual({ from: '2026-03-09', to: '2026-03-09' });
  });
});
