import type { SpanValue } from '../../types.ts';

/** A span as the time after which something is looked at again; minutes are no time for that. */
export function afterSpan({ amount, unit }: SpanValue): { after: number; unit: Exclude<SpanValue['unit'], 'minutes' | 'years'> } | undefined {
  return unit === 'minutes' ? undefined : unit === 'years' ? { after: amount * 12, unit: 'months' } : { after: amount, unit };
}
