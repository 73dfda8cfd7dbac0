import { digitsForWords } from './number-words.ts';
import { METRIC, NUMBERED, UNIFIED, type UnifiedSize } from './thread-series.ts';

/** A straight thread, its standing in the standards told in `note` where it isn't the plain one. */
interface InchThread {
  system: 'inch';
  label: string;
  d: number;
  tpi: number;
  area: number;
  note?: string;
}
interface MetricThread {
  system: 'metric';
  label: string;
  d: number;
  pitch: number;
  area: number;
  note?: string;
}
export type Thread = InchThread | MetricThread;
type ThreadReading = Thread | { problem: string };

/** Tensile stress area of an inch thread, in². ASME B1.1: 0.7854 (D - 0.9743/n)². */
export const inchStressArea = (d: number, tpi: number): number => 0.7854 * (d - 0.9743 / tpi) ** 2;

/** Stress area of a metric thread, mm², to the three figures the standard prints. ISO 898-1: pi/4 (d - 0.9382 P)². */
export const metricStressArea = (d: number, pitch: number): number => Number(((Math.PI / 4) * (d - 0.9382 * pitch) ** 2).toPrecision(3));

const BRITISH = /\b(bsw|bsf|bsb|whit(?:worth)?|ba|british|cei)\b/;
const PIPE = /\b(npt|npsm|bspt?|bsp|pipe)\b/;

/**
 * Reads a thread as people write it: "5/8-11", "UNC 5/8", "#10-32", "M16", "m12 x 1.25", "1 1/8-7".
 * Where the pitch isn't said, coarse is taken and noted. Old British forms and pipe threads come back as a problem with its reason.
 */
export function parseThread(text: string): ThreadReading {
  const plain = tidy(text);
  if (BRITISH.test(plain)) {
    return { problem: "British threads (Whitworth, BSF, BA) have their own form and grades and no table here: go by the machine's manual" };
  }
  if (PIPE.test(plain)) return { problem: 'that is a pipe thread, not a bolt thread: it seals on its taper' };
  const series = /\b(fine|unf|nf|mf)\b/.test(plain) ? 'fine' : /\b(coarse|unc|nc)\b/.test(plain) ? 'coarse' : undefined;
  const bare = plain
    .replace(/\b(fine|coarse|unc|unf|uns|un|nc|nf|mf|thread|threads|tpi|bolt|bolts|screw|per inch)\b/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();
  return /^m\s*\d/.test(bare) ? readMetric(bare, series, text) : readInch(bare, series, text);
}

const tidy = (text: string): string =>
  digitsForWords(text.toLowerCase())
    .replace(/^\s*(\d+(?:\.\d+)?)\s*mm\b/, 'm$1')
    .replace(/\bmm\b/g, ' ')
    .replace(/[×*]/g, 'x')
    .replace(/["”″]|\binch(es)?\b|\bin\b/g, ' ')
    .replace(/[–—]/g, '-')
    .replace(/½/g, ' 1/2')
    .replace(/¼/g, ' 1/4')
    .replace(/¾/g, ' 3/4')
    .replace(/-\s*[123][ab]\b/g, ' ')
    .replace(/\s+/g, ' ')
    .trim();

function readMetric(text: string, series: string | undefined, said: string): ThreadReading {
  const match = /^m\s*(\d+(?:\.\d+)?)(?:\s*(?:x|-|\s)\s*(\d*\.?\d+))?/.exec(text);
  const d = Number(match?.[1]);
  const known = METRIC.find((each) => each.d === d);
  const pitch = match?.[2] ? Number(match[2]) : series === 'fine' ? known?.fine[0] : known?.coarse;
  if (!pitch) return { problem: `I have no standard pitch for "${said}"; the table runs M3 to M36: say the pitch too` };
  if (pitch > d / 4 || pitch < d / 60) return { problem: `a pitch of ${pitch} mm on M${d} is no bolt thread` };
  const label = `M${d}x${pitch}`;
  const thread: MetricThread = { system: 'metric', label, d, pitch, area: metricStressArea(d, pitch) };
  const note = metricNote(match?.[2] !== undefined, series, known, pitch, label);
  return note ? { ...thread, note } : thread;
}

function metricNote(
  pitchSaid: boolean,
  series: string | undefined,
  known: (typeof METRIC)[number] | undefined,
  pitch: number,
  label: string,
) {
  if (!pitchSaid) {
    if (series === 'fine' && (known?.fine.length ?? 0) > 1)
      return `fine taken as ${label}; M${known?.d}x${known?.fine[1]} is fine too: say the pitch`;
    return series ? undefined : `coarse thread, ${label}; say the pitch if it is a fine one`;
  }
  const standard = known && (known.coarse === pitch || known.fine.includes(pitch));
  return standard ? undefined : `${label} is not a usual pitch: check it with a thread gauge`;
}

function readInch(text: string, series: string | undefined, said: string): ThreadReading {
  const numbered = readNumbered(text);
  const size = numbered ?? readNominal(text);
  if (!size) return { problem: `I can't read "${said}" as a thread size; say it like 5/8-11, #10-32 or M12x1.75` };
  const known = numbered?.known ?? UNIFIED.find((each) => Math.abs(each.d - size.d) < 0.0006);
  const tpi = size.tpi ?? (series === 'fine' ? known?.fine : (known?.coarse ?? (series ? undefined : known?.fine)));
  if (!tpi) return { problem: `I have no ${series ?? 'standard'} thread for "${said}": say the threads per inch` };
  const d = known?.d ?? size.d;
  if (d * tpi < 3 || d * tpi > 40) return { problem: `${tpi} threads per inch on ${d} in is no bolt thread` };
  const label = `${known?.name ?? d}-${tpi}`;
  const thread: InchThread = { system: 'inch', label, d, tpi, area: inchArea(known, d, tpi) };
  const note = inchNote(size.tpi, series, known, label);
  return note ? { ...thread, note } : thread;
}

const inchArea = (known: UnifiedSize | undefined, d: number, tpi: number): number =>
  (tpi === known?.coarse ? known.coarseArea : tpi === known?.fine ? known.fineArea : undefined) ?? inchStressArea(d, tpi);

function inchNote(
  tpiSaid: number | undefined,
  series: string | undefined,
  known: UnifiedSize | undefined,
  label: string,
): string | undefined {
  if (!tpiSaid) return series ? undefined : `coarse thread, ${label}; say fine if it is`;
  if (tpiSaid === known?.coarse || tpiSaid === known?.fine) return undefined;
  const usual = known ? ` (${[known.coarse, known.fine].filter(Boolean).join(' or ')} is)` : '';
  return `${label} is not a usual thread${usual}: check it with a thread gauge, old machines carry British ones`;
}

/** "#10-32", "no 10", and "10-24" where a gauge number with that pitch exists ("1-8" stays one inch). */
function readNumbered(text: string): { d: number; tpi?: number; known: UnifiedSize } | undefined {
  const match = /^(#|no\.?\s*|number\s*)?(\d{1,2})(?:[\s-]+(\d+))?(?:\s*x.*)?$/.exec(text);
  const known = match && NUMBERED.find((each) => each.name === `#${Number(match[2])}`);
  if (!match || !known) return undefined;
  const tpi = match[3] ? Number(match[3]) : undefined;
  if (!match[1] && (tpi === undefined ? known.d < 0.19 : tpi !== known.coarse && tpi !== known.fine)) return undefined;
  return { d: known.d, tpi, known };
}

/** "5/8-11", "1-1/8-7", "1 1/8", ".625-11", "1-8". */
function readNominal(text: string): { d: number; tpi?: number } | undefined {
  const match = /^(?:(?:(\d+)[\s-]+)?(\d+)\/(\d+)|(\d*\.?\d+))(?:[\s-]+(\d+))?(?:\s*(?:-|x).*)?$/.exec(text);
  if (!match) return undefined;
  const d = match[4] !== undefined ? Number(match[4]) : Number(match[1] ?? 0) + Number(match[2]) / Number(match[3]);
  return d > 0 && d <= 4 ? { d, tpi: match[5] ? Number(match[5]) : undefined } : undefined;
}
