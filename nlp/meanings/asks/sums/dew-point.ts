import { scaleNamed, scaleOf } from './degrees.ts';
import type { SumKind } from './kind.ts';
import type { Figure, Given } from './scope.ts';

/** What stands by the temperature of the air, and by one that the air is brought to. */
const AIR_AFTER = /^ ?(?:degrees|out(?:side)?|in (?:here|the)|here|,? ?and)/;
const AIR_BEFORE = /\b(?:its|at|temp(?:erature)?(?: is)?|about|air(?: is)?|(?:mercury|thermometer)(?: in the [a-z]+)? (?:says|reads|is at|shows)|thermometer:) $/;
const WARMED = /\b(?:hits|reaches|gets to) $|\b(?:up|down|warms?|cools?|gets?|heat it|drops?|rises?|goes) (?:up |down |it )*to $/;

export const DEW_POINT: SumKind = {
  of: 'dewPoint',
  ask: [/\b(?:dew|do|due) ?(?:points?|pt)\b/, /\bat what temp(?:erature)? [^.?!]{0,40}\bsweat/, /\bhow (?:warm|cold) (?:must|should|does|can|has|may) (?:the )?(?:steel|metal|panel|hood|iron|surface|parts?|tin)\b[^.?!]*\b(?:paint|prim|spray|coat)/, /\bhow warm (?:must|should|does|do|has) (?:the |my )?(?:steel|metal|panel|hood|part|surface|iron|sheet)/, /\b(?:will|is|does|going to|gonna|would) [^.?!]{0,30}\b(?:sweat|condensation|dew)\b/],
  unless: /\b(?:was the|was) dew ?point\b/,
  given(scope, prev) {
    const out: Given = {};
    const onSteel = (f: Figure): boolean => /\b(?:steel|metal|panel|hood|surface|iron)(?: (?:is|at|reads|of|temp(?:erature)?|about|s))* $/.test(scope.before(f));
    const surface = [...scope.measures('°F', '°C', '°'), ...scope.numbers()].find(onSteel);
    if (surface) { out.surface = surface.value; if (surface.unit && surface.unit !== '°') out.surfaceUnit = surface.unit; scope.take(surface); }
    const p = scope.values('percent')[0];
    const h = p ? { start: p.start, end: p.end, value: p.value.value } : scope.numbers().find(n => /^ ?(?:rh|relative|humid(?:ity)?\b|(?:for (?:the )?)?(?:damp|humidity)\b|on the hygrometer)/.test(scope.after(n)) || /\b(?:humiditys?|rh|hygrometers?|damp):?(?: (?:is|of|at|reads|says|about|s|sitting at|around|up|down|to))* $/.test(scope.before(n, 40)));
    const air = (f: Figure): boolean => !onSteel(f) && f.start !== h?.start;
    const t = scope.here(scope.measures('°F', '°C').filter(air))[0] ?? scope.here(scope.measures('°').filter(air))[0] ?? scope.numbers().filter(air).find(n => AIR_AFTER.test(scope.after(n)) || AIR_BEFORE.test(scope.before(n, 40)) || prev && WARMED.test(scope.before(n)));
    if (t) { out.temp = t.value; const u = t.unit && t.unit !== '°' ? t.unit : typeof prev?.tempUnit === 'string' && !scaleNamed(scope.text) ? prev.tempUnit : scaleOf(scope, t.value); if (u) out.tempUnit = u; }
    if (h) out.humidity = h.value;
    const steel = scope.seen(/\b(?:steel|metal|panel|surface|hood|iron|plate)(?: (?:is|at|s|reads|temp|temperature|sitting|itself))* #~*(?!~)/);
    if (steel) {
      out.surface = steel.nums[0];
      const unit = scope.measures('°F', '°C').find(f => f.start >= steel.start && f.start < steel.end)?.unit ?? out.tempUnit;
      if (unit) out.surfaceUnit = unit;
      const air = scope.seen(/\b(?:air|shop|room|in here|out)(?: (?:is|at|s|temp|temperature))* #~*(?!~)/);
      if (air) { out.temp = air.nums[0]; }
    }
    scope.take(t, h, steel);
    return out;
  },
  needs: ['temp', 'humidity'],
  telling: [['temp', 'humidity']],
  word: /\b(?:sweats?|sweating|condens[a-z]+|damp|humid[a-z]*|rh|dew|mist(?:s|ing)?)\b/,
  wants: ['temp', 'humidity'],
  weight: 3,
};
