import { z } from 'zod';
import { Ask } from '../../domain/model/ask.ts';

/**
 * The question a conversation has open, as it is kept between turns. An answer completes what was said; no answer loses nothing, for the
 * note and its entries are kept already.
 */
export const OpenQuestion = z.discriminatedUnion('kind', [
  /** Which part was meant: fills `field` of a recorded entry. */
  z.object({ kind: z.literal('entry'), text: z.string(), choices: z.array(z.string()), entry: z.number().int(), field: z.string() }),
  /** Which part was asked about. */
  z.object({ kind: z.literal('ask'), text: z.string(), choices: z.array(z.string()), ask: Ask, field: z.string() }),
  /** An input that a sum needs; `said` is what was asked so far, word for word. */
  z.object({ kind: z.literal('sum'), text: z.string(), choices: z.array(z.string()), said: z.string(), of: z.string(), given: z.record(z.string(), z.unknown()), needs: z.array(z.string()) }),
  /** A doubtful hearing: nothing of that note is logged until it is confirmed. */
  z.object({ kind: z.literal('heard'), text: z.string(), choices: z.array(z.string()), note: z.number().int(), said: z.string() }),
  /** Whether a speech model may be fetched. */
  z.object({ kind: z.literal('model'), text: z.string(), choices: z.array(z.string()), model: z.object({ say: z.string(), model: z.string() }) }),
]);
export type OpenQuestion = z.infer<typeof OpenQuestion>;

/** What the chat row holds, checked; of an older shape or none: no question is open. */
export function openQuestion(held: unknown): OpenQuestion | undefined {
  const read = OpenQuestion.safeParse(held);
  return read.success ? read.data : undefined;
}
