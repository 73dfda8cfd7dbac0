import { z } from 'zod';
import { MANUAL_FIRST } from './answer.ts';
import { measure, sharedUnit, valueIn } from './given.ts';
import { pair } from './results.ts';
import { ask, defineSum, refuse, type Outcome } from './sum.ts';
import { convert } from './units.ts';

const given = z.object({
  ...measure('bore', 'length'),
  ...measure('rod', 'length', 'zero or more'),
  ...measure('pressure', 'pressure'),
  ...measure('flow', 'flow'),
  ...measure('force', 'force'),
});
type Given = z.infer<typeof given>;

export const hydraulic = defineSum({
  of: 'hydraulic',
  answers: 'Force and speed of a hydraulic cylinder, or the pressure a force takes.',
  fields: {
    bore: 'bore',
    rod: 'rod (for the return stroke)',
    pressure: 'pressure',
    flow: 'flow (for the speed)',
    force: 'force wanted (pressure asked)',
  },
  given,
  work(said) {
    if (said.bore === undefined) return ask('bore', 'What is the bore of the cylinder?');
    if (said.pressure === undefined && said.flow === undefined && said.force === undefined) return ask('pressure', 'What pressure?');
    const assumed: string[] = [];
    const unit = sharedUnit(said, ['bore', 'rod'], 'in', 'mm', assumed);
    const [bore, rod] = ['bore', 'rod']
      .map((name) => valueIn(said, name, unit))
      .map((each) => (each === undefined ? undefined : convert(each, unit, 'in')));
    if ((rod ?? 0) >= (bore ?? 0)) return refuse('The rod cannot be as thick as the bore.');
    return finish(
      said,
      (Math.PI / 4) * (bore ?? 0) ** 2,
      rod === undefined ? undefined : (Math.PI / 4) * ((bore ?? 0) ** 2 - rod ** 2),
      unit === 'in',
      assumed,
    );
  },
});

/** Areas in square inches; the answer leads in the system of the bore. */
function finish(said: Given, area: number, ring: number | undefined, inch: boolean, assumed: string[]): Outcome {
  const lead = (name: string, value: number, unit: string, decimals: number, metric: string, metricDecimals: number, note?: string) =>
    inch
      ? pair(name, value, unit, decimals, metricDecimals, note)
      : pair(name, convert(value, unit, metric), metric, metricDecimals, decimals, note);
  const force = (psi: number) => [
    ...lead('force', psi * area, 'lbf', 0, 'N', 0, 'pushing'),
    ...(ring === undefined ? [] : lead('force', psi * ring, 'lbf', 0, 'N', 0, 'pulling')),
  ];
  const pressure = said.pressure === undefined ? undefined : convert(said.pressure, said.pressureUnit ?? 'psi', 'psi');
  const wanted = said.force === undefined ? undefined : convert(said.force, said.forceUnit ?? (inch ? 'lbf' : 'N'), 'lbf');
  const gpm = said.flow === undefined ? undefined : convert(said.flow, said.flowUnit ?? 'gpm', 'gpm');
  const speed = (gallons: number) => [
    ...lead('speed', (231 * gallons) / (60 * area), 'in/s', 2, 'm/s', 4, 'out'),
    ...(ring === undefined ? [] : lead('speed', (231 * gallons) / (60 * ring), 'in/s', 2, 'm/s', 4, 'in')),
  ];
  return {
    results: [
      ...(pressure === undefined ? [] : force(pressure)),
      ...(wanted !== undefined && pressure === undefined ? lead('pressure', wanted / area, 'psi', 0, 'kPa', 0) : []),
      ...(gpm === undefined ? [] : speed(gpm)),
    ],
    basis: 'pressure times area; flow over area',
    assumed: [
      ...assumed,
      ...(said.pressure !== undefined && !said.pressureUnit ? ['pressure in psi; say bar if not'] : []),
      'no friction and no loss in the hoses',
      ...(ring === undefined ? ['pushing stroke; say the rod for the pull'] : []),
    ],
    caution: `Oil under pressure goes through skin: look for leaks with a card, never a hand; lower and let down the pressure first. ${MANUAL_FIRST}`,
    source: 'F = p A, v = 231 gpm / 60 A',
  };
}
