import { z } from 'zod';
import { MANUAL_FIRST } from './answer.ts';
import { amount, measure, valueIn } from './given.ts';
import { pair, result } from './results.ts';
import { ask, defineSum, refuse, type Outcome } from './sum.ts';

const FLATS_OF_NUT = 6;
/** RP 618A window for heavy wheel ends, inches. */
const WINDOW: readonly [number, number] = [0.001, 0.005];

/** Axial travel of a nut, in, for so many flats of a hexagon. */
const travelOfFlats = (flats: number, tpi: number): number => flats / FLATS_OF_NUT / tpi;

export const endPlay = defineSum({
  of: 'endPlay',
  answers: 'How far a wheel-bearing nut moves for so many flats, or how many flats make a change of end play.',
  fields: {
    pitch: 'threads per inch (or mm a thread with pitchUnit "mm")',
    flats: 'flats of the hexagon backed off',
    turn: 'part of a turn, instead of flats',
    measured: 'end play now',
    wanted: 'end play wanted: answers the turn',
  },
  given: z.object({
    pitch: amount().optional(),
    pitchUnit: z.string().optional(),
    flats: amount().optional(),
    turn: amount().optional(),
    ...measure('measured', 'length', 'zero or more'),
    ...measure('wanted', 'length', 'zero or more'),
  }),
  work(given) {
    if (given.pitch === undefined) return ask('pitch', 'How many threads per inch has the spindle?');
    const metric = /mm|metric/i.test(given.pitchUnit ?? '');
    const tpi = metric ? 25.4 / given.pitch : given.pitch;
    if (tpi < 3 || tpi > 60) return refuse(`${given.pitch} is no spindle thread: say threads per inch, or the pitch in mm.`);
    const unit = metric ? 'mm' : 'in';
    if (given.measured !== undefined && given.wanted !== undefined) {
      return turnFor(valueIn(given, 'measured', unit) ?? 0, valueIn(given, 'wanted', unit) ?? 0, metric ? given.pitch : 1 / tpi, unit);
    }
    const flats = given.flats ?? (given.turn === undefined ? undefined : given.turn * FLATS_OF_NUT);
    if (flats === undefined) return ask('flats', 'How many flats is the nut backed off?');
    return travel(flats, tpi, metric);
  },
});

const CAUTION = `Preload is worse than play: pick the looser slot, then measure with a dial indicator; new cotter pin every time. ${MANUAL_FIRST}`;
const SOURCE = 'thread pitch times turn; window of the TMC RP 618A practice as reprinted, for heavy wheel ends';

function travel(flats: number, tpi: number, metric: boolean): Outcome {
  const inches = travelOfFlats(flats, tpi);
  const wide =
    inches > WINDOW[1]
      ? [`that is over the ${WINDOW[0]} to ${WINDOW[1]} in window of heavy wheel ends: the nut alone can't promise it`]
      : [];
  return {
    results: metric ? pair('endPlay', inches * 25.4, 'mm', 3, 4) : pair('endPlay', inches, 'in', 4, 3),
    basis: `${flats} of ${FLATS_OF_NUT} flats at ${Number(tpi.toFixed(2))} threads per inch`,
    assumed: ['a hexagon nut, from just touching: after a torqued seat, part of the turn only lets the squeeze out'],
    caution: CAUTION,
    source: SOURCE,
    also: [...wide, 'slots: six with one hole is 60° a step; two holes at 90° make it 30°'],
  };
}

function turnFor(measured: number, wanted: number, lead: number, unit: string): Outcome {
  const turn = Math.abs(measured - wanted) / lead;
  return {
    results: [result('turn', turn, 'turn', 3), result('angle', turn * 360, '°', 0), result('flats', turn * FLATS_OF_NUT, 'count', 2)],
    basis: `${measured > wanted ? 'tighten' : 'back off'} by ${Number(Math.abs(measured - wanted).toFixed(4))} ${unit}`,
    assumed: ['the play as measured, bearings dry of preload'],
    caution: CAUTION,
    source: SOURCE,
  };
}
