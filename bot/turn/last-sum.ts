import { z } from 'zod';

/** The last sum of a chat, so that "keep that" can put its result into the log, and "oiled" can ask it again with one thing changed. */
const Held = z.object({
  of: z.string(),
  /** The note that asked it. */
  note: z.number().int().optional(),
  /** What was asked, word for word. */
  said: z.string(),
  given: z.record(z.string(), z.unknown()),
  results: z.array(z.object({ name: z.string(), value: z.union([z.number(), z.string(), z.array(z.number())]), unit: z.string().optional() })),
});
export type LastSum = z.infer<typeof Held>;

export function lastSum(held: unknown): LastSum | undefined {
  const read = Held.safeParse(held);
  return read.success ? read.data : undefined;
}
