import { z } from 'zod';
import { MANUAL_FIRST, type SumResult } from './answer.ts';
import { amount, measure } from './given.ts';
import { freezingPoint, GLYCOLS, percentFor, volumePercent, type Glycol } from './glycol.ts';
import { pair, result, round } from './results.ts';
import { ask, defineSum, refuse, type Outcome } from './sum.ts';
import { convert } from './units.ts';

const given = z.object({
  ...measure('temp', 'temperature', 'any'),
  percent: amount('zero or more').optional(),
  percentNow: amount('zero or more').optional(),
  ...measure('capacity', 'volume'),
  glycol: z.string().optional(),
  by: z.string().optional(),
});
type Given = z.infer<typeof given>;

export const antifreeze = defineSum({
  of: 'antifreeze',
  answers: 'How strong a mix must be for a cold, how cold a mix holds, how much to pour, and how much to drain and refill.',
  fields: {
    temp: 'coldest it must hold, °F or °C',
    percent: 'percent by volume wanted',
    percentNow: 'percent in it now (drain and refill asked)',
    capacity: 'of the system, qt, gal or L',
    glycol: 'ethylene or propylene (ethylene where not said)',
    by: '"weight" where the percent is by weight',
  },
  given,
  work(said) {
    const kind = glycolNamed(said.glycol);
    if (!kind) return ask('glycol', 'Ethylene or propylene?', ['ethylene', 'propylene']);
    if (said.temp === undefined && said.percent === undefined) {
      return said.percentNow !== undefined && said.capacity === undefined
        ? protection(said, kind, said.percentNow)
        : ask('temp', 'How cold must it hold?');
    }
    const unit = said.tempUnit ?? '°F';
    const cold = said.temp === undefined ? undefined : convert(said.temp, unit, '°F');
    if (cold !== undefined && cold >= 32) return refuse('It does not freeze there: plain water with an inhibitor would do.');
    const percent = said.percent === undefined ? percentFor(kind, cold ?? 32) : volume(said, kind, said.percent);
    const most = kind.points.at(-1)?.[0] ?? 0;
    if (percent === undefined)
      return refuse(`The ${kind.name} table stops at ${most} % and ${kind.points.at(-1)?.[1]} °F: past that go by the maker.`);
    const past = tooStrong(percent, most, kind);
    if (past) return past;
    return said.capacity === undefined ? protection(said, kind, percent) : amounts(said, kind, percent);
  },
});

const glycolNamed = (text: string | undefined): Glycol | undefined =>
  text === undefined || /ethyl|green|eg\b/i.test(text)
    ? GLYCOLS.ethylene
    : /propyl|pg\b|low.?tox/i.test(text)
      ? GLYCOLS.propylene
      : undefined;

const volume = (said: Given, kind: Glycol, percent: number): number =>
  /weight|mass/i.test(said.by ?? '') && percent < 100 ? volumePercent(kind, percent) : percent;

function tooStrong(percent: number, most: number, kind: Glycol): Outcome | undefined {
  if (percent > 90) return refuse('Never straight glycol: it freezes near 0 °F and carries heat poorly. Keep it between 40 and 60 %.');
  return percent > most
    ? refuse(`Over ${most} % the ${kind.name} table stops, and stronger freezes sooner again: keep it at 40 to ${most} %.`)
    : undefined;
}

const CAUTION = `Glycol poisons stock and pets; open the system only when cold; never straight glycol. ${MANUAL_FIRST}`;
const SOURCE = "printed glycol freezing tables, the warmest of them kept; propylene of Lange's Handbook 15th ed.";

function holds(said: Given, kind: Glycol, percent: number): SumResult[] {
  const fahrenheit = freezingPoint(kind, percent) ?? 32;
  const unit = said.tempUnit ?? '°F';
  return pair('temp', convert(fahrenheit, '°F', unit), unit, 0, 0, `${round(percent, 0)} % freezes here`);
}

function assumptions(said: Given, kind: Glycol): string[] {
  return [
    ...(said.glycol ? [] : [`${kind.name} glycol; say propylene if it is`]),
    'percent by volume of full-strength antifreeze, not of ready-mixed',
    ...(said.temp !== undefined && !said.tempUnit ? ['degrees Fahrenheit; say Celsius if not'] : []),
  ];
}

function protection(said: Given, kind: Glycol, percent: number): Outcome {
  const most = kind.points.at(-1)?.[0] ?? 0;
  const past = tooStrong(percent, most, kind);
  if (past) return past;
  const asked = result('percent', percent, '%', 0);
  return {
    results: said.temp === undefined ? [...holds(said, kind, percent), asked] : [asked, ...holds(said, kind, percent)],
    basis: `${kind.name} glycol, straight lines between printed points, within 3 °F to 50 %`,
    assumed: assumptions(said, kind),
    caution: CAUTION,
    source: SOURCE,
  };
}

function amounts(said: Given, kind: Glycol, percent: number): Outcome {
  const capacity = said.capacity ?? 0;
  const unit = said.capacityUnit ?? 'qt';
  const refill = said.percentNow !== undefined;
  const now = volume(said, kind, said.percentNow ?? 0);
  if (now > 90) return refuse('There is nothing to strengthen: it is straight glycol now, drain some and add water.');
  const raise = now <= percent;
  const drain = !refill ? (capacity * percent) / 100 : raise ? (capacity * (percent - now)) / (100 - now) : capacity * (1 - percent / now);
  const assumed = [...assumptions(said, kind), ...(said.capacityUnit ? [] : ['the capacity in quarts; say gallons or litres if not'])];
  const what = refill ? `drain, then as much ${raise ? 'straight antifreeze' : 'water'} back` : 'straight antifreeze, the rest water';
  return {
    results: [
      ...pair('volume', drain, unit, 2, 2, what),
      ...(refill ? [] : pair('water', capacity - drain, unit, 2, 2)),
      result('percent', percent, '%', 0),
      ...holds(said, kind, percent),
    ],
    basis: refill ? `${round(now, 0)} % to ${round(percent, 0)} % by draining mix and refilling` : `${round(percent, 0)} % of the capacity`,
    assumed,
    caution: CAUTION,
    source: SOURCE,
  };
}
