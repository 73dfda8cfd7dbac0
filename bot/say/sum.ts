import type { SumAnswer, SumResult } from '../../domain/model/answer.ts';
import type { Spoken } from './spoken.ts';
import { capital, figure, stop } from './words.ts';

const NAMED: Record<string, string> = {
  clampLoad: 'clamp load', dewPoint: 'dew point', legLoad: 'each leg', endPlay: 'end play', rpm: 'speed', rise: 'heat by', hole: 'hole', stack: 'stack',
};
const spelled = (name: string): string => NAMED[name] ?? name.replace(/([a-z])([A-Z])/g, '$1 $2').toLowerCase();

function valued(r: SumResult): string {
  const v = Array.isArray(r.value) ? r.value.map(figure).join(' + ') : typeof r.value === 'number' ? figure(r.value) : r.value;
  const unit = r.unit && r.unit !== 'count' ? (r.unit === '%' || r.unit.startsWith('°') ? r.unit : ` ${r.unit}`) : '';
  return `${v}${unit}`;
}

/** Results of one name stand together: "Torque 75.4 lb-ft (102 N·m)". */
function grouped(results: readonly SumResult[]): string[] {
  const by = new Map<string, string[]>();
  for (const r of results) by.set(r.name, [...(by.get(r.name) ?? []), valued(r)]);
  return [...by].map(([name, [first, ...rest]]) => `${spelled(name)} ${first}${rest.length ? ` (${rest.join(', ')})` : ''}`);
}

export function saySum(a: SumAnswer): Spoken {
  if ('refused' in a) return { say: stop(capital(a.refused)) };
  if ('needs' in a) return { say: a.question };
  const [first, ...others] = grouped(a.results);
  const basis = a.basis ? ` ${stop(capital(a.basis))}` : '';
  const assumed = a.assumed.length ? ` ${stop(`Assumed: ${a.assumed.join('; ')}`)}` : '';
  return {
    say: `${stop(capital([first, ...others.slice(0, 2)].filter(Boolean).join('; ')))}${basis}${assumed}${a.caution ? ` ${stop(a.caution)}` : ''}`,
    longer: `${grouped(a.results).map(capital).join('\n')}\nSource: ${a.source}`,
  };
}
