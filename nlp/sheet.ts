import type { ReadContext } from '../domain/model/reading.ts';
import { solidTokens } from './dimensions/part/solid.ts';
import { findDimensions } from './dimensions/find.ts';
import { tagTokens } from './text/tag.ts';
import { mend } from './refiners/mend.ts';
import { restart } from './refiners/restart.ts';
import { softStops } from './text/soft-stops.ts';
import { tidy } from './text/tidy.ts';
import { tokenize } from './text/tokens.ts';
import type { Sheet } from './types.ts';

/** A note laid out for reading: words tidied and tagged, dimensions found. */
export function openSheet(text: string, ctx: ReadContext): Sheet {
  const sheet: Sheet = { text, tokens: tokenize(text), tags: [], found: [], ctx, trace: [] };
  tidy(sheet);
  mend(sheet);
  sheet.found = findDimensions(sheet.tokens, ctx);
  for (let tries = 0; tries < 3 && restart(sheet); tries++) sheet.found = findDimensions(sheet.tokens, ctx);
  sheet.tags = tagTokens(sheet.tokens, solidTokens(sheet.tokens, ctx), sheet.found);
  join(sheet);
  return sheet;
}

const before = new WeakMap<readonly string[], Sheet>();

/** The note just before, laid out with those before it for its own: once for each list of notes, whoever asks. */
export function sheetBefore(ctx: ReadContext): Sheet | undefined {
  const text = ctx.prior?.at(-1);
  if (text === undefined) return undefined;
  const have = before.get(ctx.prior!);
  if (have && have.text === text && have.ctx.at === ctx.at && have.ctx.parts === ctx.parts && have.ctx.machines === ctx.machines) return have;
  const made = openSheet(text, { ...ctx, prior: ctx.prior!.slice(0, -1) });
  before.set(ctx.prior!, made);
  return made;
}

/** Drops the full stops that end no sentence; what they cut in two (a measure, a name) is found and tagged anew. */
function join(sheet: Sheet): void {
  const soft = new Set(softStops(sheet));
  if (!soft.size) return;
  for (const i of soft) sheet.trace.push({ stage: 'tidy', rule: 'soft stop', text: sheet.tokens.slice(i - 1, i + 2).map(t => t.text).join(' ') });
  sheet.tokens = sheet.tokens.filter((_, k) => !soft.has(k));
  sheet.found = findDimensions(sheet.tokens, sheet.ctx);
  sheet.tags = tagTokens(sheet.tokens, solidTokens(sheet.tokens, sheet.ctx), sheet.found);
}
