import type { ReadContext } from '../domain/model/reading.ts';
import { solidTokens } from './dimensions/part/solid.ts';
import { findDimensions } from './dimensions/find.ts';
import { tagTokens } from './text/tag.ts';
import { mend } from './refiners/mend.ts';
import { restart } from './refiners/restart.ts';
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
  return sheet;
}
