import type { Entry } from '../../../../domain/model/entry.ts';
import type { Weighed } from '../../../likely/net/weighed.ts';
import type { Telling } from '../../telling.ts';
import { deeds } from './deeds.ts';
import { prices } from './prices.ts';
import { readings } from './readings.ts';
import { states } from './states.ts';
import { things } from './things.ts';

/** What single words and figures of a clause tell by themselves and nothing read so far: one clause may tell several deeds, figures of several parts, and of several things how they are. */
export function alone(t: Telling, net: Weighed): Entry[] {
  return [...deeds(t, net), ...readings(t, net), ...prices(t, net), ...states(t, net), ...things(t, net)];
}
