import { z } from 'zod';
import { amount, measure } from './given.ts';
import { result, round } from './results.ts';
import { ask, defineSum, refuse, type Outcome } from './sum.ts';
import { convert } from './units.ts';
import { FUSE_OF_GAUGE, gaugeName, ohmsPerFoot, ohmsPerMetre, parseGauge, STOCK_GAUGES, TINNED_OHMS } from './wire.ts';

const given = z.object({
  volts: amount().optional(),
  amps: amount().optional(),
  watts: amount().optional(),
  ...measure('length', 'length'),
  gauge: z.union([z.number(), z.string()], { error: 'must be a wire gauge' }).optional(),
  gaugeUnit: z.string().optional(),
  percent: amount().max(50, { error: 'over 50 is no limit' }).optional(),
  return: z.string().optional(),
  wire: z.string().optional(),
  ...measure('temp', 'temperature', 'any'),
});
type Given = z.infer<typeof given>;
/** Lost at the load, percent: common practice, no source. */
const USUAL_LIMIT = 3;

export const voltDrop = defineSum({
  of: 'voltDrop',
  answers: 'How many volts a wire loses, or which wire keeps the loss in bounds.',
  fields: {
    volts: 'of the system',
    amps: 'current',
    watts: 'of the load (instead of amps)',
    length: 'of the wire one way, ft or m',
    gauge: 'AWG, or mm² with gaugeUnit "mm²"; left out: the gauge is answered',
    percent: `most loss allowed (${USUAL_LIMIT} where not said)`,
    return: '"wire" or "frame"',
    wire: '"tinned" for the aircraft table',
    temp: 'of the wire (20 °C where not said)',
  },
  given,
  work(said) {
    const amps = said.amps ?? (said.watts !== undefined && said.volts !== undefined ? said.watts / said.volts : undefined);
    if (amps === undefined)
      return said.watts === undefined ? ask('amps', 'How many amps does it draw?') : ask('volts', 'Six volts or twelve?', ['6', '12']);
    if (said.length === undefined) return ask('length', 'How long is the wire, one way?');
    if (said.gauge === undefined && said.volts === undefined) return ask('volts', 'Six volts or twelve?', ['6', '12']);
    const celsius = said.temp === undefined ? 20 : convert(said.temp, said.tempUnit ?? '°F', '°C');
    if (celsius < -60 || celsius > 200) return refuse('No wire works at that temperature.');
    const assumed = [
      ...(said.lengthUnit ? [] : ['the length in feet; say metres if not']),
      ...(said.temp === undefined ? ['copper at 20 °C; warm wire loses more'] : []),
    ];
    const frame = { amps, feet: convert(said.length, said.lengthUnit ?? 'ft', 'ft'), celsius, assumed };
    return said.gauge === undefined ? sizeWire(said, frame) : dropOf(said, said.gauge, frame);
  },
});

interface Frame {
  amps: number;
  feet: number;
  celsius: number;
  assumed: string[];
}

const byFrame = (said: Given): boolean => /frame|chassis|ground|earth|single|one wire/i.test(said.return ?? '');
const CAUTION = 'Take the grounded post off the battery first, and fuse the wire for its own gauge; many old machines are positive ground.';

/** Ohms a foot of the wire meant, and its name; or why there is none. */
function resistance(said: Given, gauge: number | string, celsius: number): { ohms: number; name: string } | { answer: Outcome } {
  if (/mm|sq/i.test(said.gaugeUnit ?? '') || /mm/i.test(String(gauge))) {
    const mm2 = parseFloat(String(gauge));
    return mm2 > 0
      ? { ohms: ohmsPerMetre(mm2, celsius) * 0.3048, name: `${mm2} mm²` }
      : { answer: refuse(`"${gauge}" is not a wire section.`) };
  }
  const n = parseGauge(gauge);
  if (n === undefined) return { answer: refuse(`There is no ${gauge} gauge wire; gauges run 4/0 to 40.`) };
  if (!/tinned|aircraft/i.test(said.wire ?? '')) return { ohms: ohmsPerFoot(n, celsius), name: gaugeName(n) };
  const tinned = TINNED_OHMS.get(n);
  return tinned
    ? { ohms: (tinned / 1000) * ((234.5 + celsius) / 254.5), name: `${gaugeName(n)} tinned` }
    : { answer: refuse(`The aircraft table has no ${gaugeName(n)}.`) };
}

function dropOf(said: Given, gauge: number | string, { amps, feet, celsius, assumed }: Frame): Outcome {
  const wire = resistance(said, gauge, celsius);
  if ('answer' in wire) return wire.answer;
  const single = amps * wire.ohms * feet;
  const ways = [
    [single * 2, 'return by wire, both lengths'],
    [single, 'return by the frame, its own loss neglected'],
  ] as const;
  const ordered = byFrame(said) ? [...ways].reverse() : ways;
  if (!said.return) assumed.push('return by a second wire first; say by the frame where the frame carries it back');
  if (said.volts !== undefined && single > said.volts)
    return refuse(`That wire would lose more than the ${said.volts} V there is: check the amps and the length.`);
  const percents =
    said.volts === undefined ? [] : ordered.map(([volts, note]) => result('percent', (volts / (said.volts ?? 1)) * 100, '%', 1, note));
  return {
    results: [...ordered.map(([volts, note]) => result('drop', volts, 'V', 3, note)), ...percents],
    basis: `${round(amps, 2)} A through ${round(feet, 1)} ft of ${wire.name} copper, ${round(wire.ohms * 1000, 4)} Ω per 1,000 ft at ${round(celsius, 0)} °C`,
    assumed,
    caution: CAUTION,
    source: /tinned|aircraft/i.test(said.wire ?? '') ? 'FAA AC 43.13-1B table 11-9' : 'ASTM B258 gauge, copper 10.371 Ω·cmil/ft',
  };
}

/** Thinnest stock wire that keeps the loss in bounds and may carry the current. */
function thinnest(frame: Frame, ways: number, most: number): number | undefined {
  return STOCK_GAUGES.find(
    (n) => frame.amps * ohmsPerFoot(n, frame.celsius) * frame.feet * ways <= most && (FUSE_OF_GAUGE.get(n) ?? 0) >= frame.amps,
  );
}

function sizeWire(said: Given, frame: Frame): Outcome {
  const volts = said.volts ?? 0;
  const limit = said.percent ?? USUAL_LIMIT;
  const most = (volts * limit) / 100;
  const ordered = byFrame(said) ? [1, 2] : [2, 1];
  const found = ordered.map((ways) => ({ ways, n: thinnest(frame, ways, most) }));
  const first = found[0];
  if (first?.n === undefined)
    return refuse(`No wire up to 1/0 in the fuse table carries ${round(frame.amps, 0)} A that far within ${limit} %.`);
  const note = (ways: number) => (ways === 2 ? 'return by wire' : 'return by the frame');
  const { assumed } = frame;
  if (said.percent === undefined)
    assumed.push(`no more than ${limit} % lost (practice for lights, 10 % for cranking); say another percent`);
  if (!said.return) assumed.push('return by a second wire first; say by the frame where the frame carries it back');
  return {
    results: [
      ...found.flatMap(({ ways, n }) => (n === undefined ? [] : [{ name: 'gauge', value: gaugeName(n), unit: '', note: note(ways) }])),
      result('drop', frame.amps * ohmsPerFoot(first.n, frame.celsius) * frame.feet * first.ways, 'V', 3, note(first.ways)),
    ],
    basis: `thinnest stock copper losing at most ${limit} % of ${volts} V, and rated for ${round(frame.amps, 1)} A`,
    assumed,
    caution: CAUTION,
    source: 'ASTM B258 gauge, copper 10.371 Ω·cmil/ft; FAA AC 43.13-1B table 11-3 for what a gauge may carry',
  };
}
