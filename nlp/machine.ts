import { phraseAt } from './dimensions/part/phrase.ts';
import { isMachine } from './clauses/name-kinds.ts';
import type { Sheet } from './types.ts';

interface Machine { machine: string; switches?: boolean; /** Tokens that only name it, and give no entry. */ cut?: [number, number] }

/**
 * The machine that a note names for itself: "on the sawmill: …", "Treadle lathe. …", "switch to the baler"; else a known machine that is
 * named anywhere in it ("…on the crawler").
 */
export function machineOf(sheet: Sheet): Machine | undefined {
  const { tokens } = sheet;
  const low = (k: number): string => tokens[k]?.low ?? '';
  let k = 0;
  while (sheet.tags[k] === 'intj' || low(k) === ',' || low(k) === 'so' || low(k) === 'right' || low(k) === 'now') k++;
  const switching = /^(switch|change|go|move|swap|back|over)$/.test(low(k)) && (low(k + 1) === 'to' || low(k + 2) === 'to' || low(k + 1) === 'over');
  if (switching) {
    const to = low(k + 1) === 'to' ? k + 2 : k + 3;
    const p = phraseAt(sheet, to);
    if (p && isMachine(sheet, p.name)) return { machine: p.name, switches: true, cut: [0, endMark(sheet, p.to)] };
  }
  const at = low(k) === 'on' || low(k) === 'for' || low(k) === 'at' ? k + 1 : k;
  const p = phraseAt(sheet, at);
  const after = p ? low(p.to) : '';
  if (p && !p.stands && isMachine(sheet, p.name) && (after === ':' || (after === '.' || after === '-' || after === '–' || after === ',' && at > k) && p.to + 1 < tokens.length)) return { machine: p.name, cut: [0, p.to + 1] };
  return mentioned(sheet);
}

const endMark = (sheet: Sheet, to: number): number => (/^[.,:!]$/.test(sheet.tokens[to]?.low ?? '') ? to + 1 : to);

/** "…on the crawler", "the crawler's radiator": a machine of the shop named in passing. */
function mentioned(sheet: Sheet): Machine | undefined {
  const known = new Set((sheet.ctx.machines ?? []).map(m => m.toLowerCase()));
  if (!known.size) return undefined;
  for (let k = 0; k < sheet.tokens.length; k++) {
    if (!/^(on|in|of|off|from|for|the)$/.test(sheet.tokens[k]!.low)) continue;
    const p = phraseAt(sheet, k + 1);
    if (p && known.has(p.name)) return { machine: p.name };
  }
  return undefined;
}
