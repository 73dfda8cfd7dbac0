import type { SumAnswer, SumResult } from '../../domain/sums/answer.ts';
import type { Spoken } from './spoken.ts';
import { capital, figure, stop } from './words.ts';

const NAMED: Record<string, string> = { legLoad: 'each leg', rpm: 'speed', rise: 'heat by', converted: '', verdict: '' };
const spelled = (name: string): string => NAMED[name] ?? name.replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase();

/** Four figures that count, five from a thousand on: as much as a shop can use. */
const rounded = (n: number): string => figure(Number(n.toPrecision(Math.abs(n) >= 1000 ? 5 : 4)));

function valued({ value, unit }: SumResult): string {
  const v = Array.isArray(value) ? value.map(figure).join(' + ') : typeof value === 'number' ? rounded(value) : value;
  return `${v}${!unit || unit === 'count' ? '' : unit === '%' || unit.startsWith('°') ? unit : ` ${unit}`}`;
}

/**
 * Figures of one name stand together: the same figure in other units in brackets ("torque 75.4 lb-ft (102 N·m)"), another figure of that
 * name by what sets it apart ("by wire 0.6 V, by the frame 0.3 V"), and whole stacks of leaves one or the other.
 */
function grouped(results: readonly SumResult[]): string[] {
  const names = [...new Set(results.map(r => r.name))];
  return names.map(name => {
    const own = results.filter(r => r.name === name);
    if (own.every(r => Array.isArray(r.value))) return `${spelled(name)} ${own.slice(0, 4).map(valued).join(', or ')}`.trim();
    const notes = [...new Set(own.map(r => r.note ?? ''))];
    const figures = notes.map(note => {
      const [first, ...rest] = own.filter(r => (r.note ?? '') === note).map(valued);
      return `${first}${rest.length ? ` (${rest.join(', ')})` : ''}${note ? ` ${note}` : ''}`;
    });
    return `${spelled(name)} ${figures.join(', ')}`.trim();
  });
}

export function saySum(a: SumAnswer): Spoken {
  if ('refused' in a) return { say: stop(capital(a.refused)) };
  if ('needs' in a) return { say: a.question };
  const all = grouped(a.results);
  const assumed = a.assumed.length ? `Assumed: ${a.assumed.join('; ')}` : '';
  return {
    say: [all.slice(0, 3).join('; '), a.basis, assumed, a.caution ?? ''].filter(Boolean).map(l => stop(capital(l))).join('\n'),
    longer: [...all.map(capital), ...(a.also ?? []), `Source: ${a.source}`].join('\n'),
  };
}
