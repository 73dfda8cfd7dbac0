import { inOne } from './in-one.ts';
import { type Figure, type Given, put, type Scope } from './scope.ts';
import { table } from '../../../words/table.ts';

const AUGHTS: Record<string, string> = table({ one: '1', two: '2', three: '3', four: '4' });

/** The word after a figure as it was written: "30 A through" is amperes, "30 a side" is not. */
const writtenAfter = (scope: Scope, f: Figure): string | undefined => scope.desk.sheet.tokens[scope.desk.line.tokenAt[f.end + 1] ?? -1]?.text;

/** What supplies and batteries are called by. */
const MAINS: ReadonlySet<number> = new Set([6, 12, 24, 36, 48, 110, 115, 120, 208, 220, 230, 240, 380, 400, 415, 440, 480]);

/** Volts, amps, watts, wire and its length, out of the stretch; in a follow-up a bare number is read by the words beside it. */
export function circuit(scope: Scope, prev?: Given): Given {
  const out: Given = {};
  const one = (name: string, ...units: string[]): Figure | undefined => {
    const f = scope.measures(...units)[0];
    if (f) { out[name] = f.value; scope.take(f); }
    return f;
  };
  one('volts', 'V'); one('amps', 'A'); one('watts', 'W');
  // "two 35 watt headlights" draw together.
  const lot = out.watts === undefined ? undefined : scope.seen(/#~* #~*(?!~)(?: |-)?w(?:att)?s?\b/);
  if (lot && lot.nums.length === 2 && Number.isInteger(lot.nums[0]) && lot.nums[0]! <= 12) out.watts = lot.nums[0]! * lot.nums[1]!;
  const milli = scope.measures('mA')[0];
  if (milli && out.amps === undefined) out.amps = milli.value / 1000;
  // "6 m" may be money or minutes elsewhere; beside a wire it is metres.
  const metres = scope.numbers().find(n => /^ ?m(?:et(?:er|re)s?)?\b/.test(scope.after(n)));
  const long = scope.measures('ft', 'm', 'yd')[0] ?? (metres && { ...metres, unit: 'm' });
  put(out, 'length', long);
  scope.take(long);
  const aught = /\b([1-4])\/0\b/.exec(scope.text) ?? /\b(one|two|three|four) (?:aught|ought|nought)\b/.exec(scope.text);
  const wire = scope.measures('AWG')[0];
  const cable = (f: Figure): boolean => /^ ?(?:cable|wire|flex|square|csa|twin|core)/.test(scope.after(f)) || /\b(?:on|of|in)(?: (?:an?|the))? $/.test(scope.before(f)) && /^ ?(?:$|[.?,]|to\b|for\b|run\b|feeding\b)/.test(scope.after(f));
  const square = scope.measures('mm²')[0] ?? (long || prev ? scope.measures('mm', 'mil').find(f => f.value < 150 && cable(f)) ?? scope.numbers().find(f => f.value < 150 && /^ ?(?:square|sq)\b/.test(scope.after(f))) : undefined);
  if (/\b(?:frame|chassis|body|earth|ground(?:ed)?) return\b|\b(?:return(?:s|ing|ed)?|grounds?|grounded|earthed|back) (?:by|through|via|on|to|thru) (?:the )?(?:frame|chassis|body|axle|tractor)\b/.test(scope.text)) out.return = 'frame';
  if (/\btinned\b/.test(scope.text)) out.wire = 'tinned';
  if (aught) out.gauge = `${AUGHTS[aught[1]!] ?? aught[1]!}/0`;
  else if (wire) { out.gauge = wire.value; scope.take(wire); }
  else if (square) { out.gauge = square.value; out.gaugeUnit = 'mm²'; scope.take(square); }
  else { const n = scope.seen(/\b(?:number|no\.?|№|awg|gauge|ga) ?#~*(?!~)/); if (n) { out.gauge = n.nums[0]; scope.take(n); } }
  if (out.volts === undefined && out.amps !== undefined) { // "at 230 and 6 amps"
    const mains = scope.numbers().find(n => MAINS.has(n.value) && /\b(?:at|on|off|from)(?: (?:about|a|the))? $/.test(scope.before(n)));
    if (mains) { out.volts = mains.value; scope.take(mains); }
  }
  for (const n of scope.numbers()) {
    if (/^ ?v\b/.test(scope.after(n)) && out.volts === undefined) { out.volts = n.value; scope.take(n); }
    else if (/^ ?a\b/.test(scope.after(n)) && (!/^ ?a (?!drop\b|loss\b|what\b|how\b)[a-z]/.test(scope.after(n)) || writtenAfter(scope, n) === 'A' || inOne(scope, n)) && out.amps === undefined) { out.amps = n.value; scope.take(n); }
    else if (prev && out.gauge === undefined && Object.keys(out).length === 0 && prev.gauge !== undefined) { out.gauge = n.value; scope.take(n); }
  }
  return out;
}
