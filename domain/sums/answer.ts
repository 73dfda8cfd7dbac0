import { z } from 'zod';

/** One figure of an answer. The first result of a name is in the units asked; a second of the same name is the other unit system. */
const sumResult = z.object({
  name: z.string(),
  /** A number; a list of leaves for a shim stack; a string where the figure is a name ("27/64", "12 AWG"). */
  value: z.union([z.number(), z.array(z.number()), z.string()]),
  unit: z.string(),
  /** What sets this figure apart from another of the same name ("return by the frame"). */
  note: z.string().optional(),
});
export type SumResult = z.infer<typeof sumResult>;

const sumDone = z.object({
  kind: z.literal('sum'),
  of: z.string(),
  results: z.array(sumResult).min(1),
  basis: z.string(),
  /** What was taken for granted, each with how to change it. */
  assumed: z.array(z.string()),
  caution: z.string().optional(),
  source: z.string(),
  /** Further short facts worth a line, never needed to use the results. */
  also: z.array(z.string()).optional(),
});

const sumRefused = z.object({ kind: z.literal('sum'), of: z.string(), refused: z.string() });

const sumNeeds = z.object({
  kind: z.literal('sum'),
  of: z.string(),
  /** Fields of `given` still missing, the one to ask for first. */
  needs: z.array(z.string()).min(1),
  question: z.string(),
  choices: z.array(z.string()).optional(),
});

export const sumAnswer = z.union([sumDone, sumRefused, sumNeeds]);
export type SumDone = z.infer<typeof sumDone>;
export type SumRefused = z.infer<typeof sumRefused>;
export type SumNeeds = z.infer<typeof sumNeeds>;
export type SumAnswer = SumDone | SumRefused | SumNeeds;

/** Said wherever a maker's figure may exist. */
export const MANUAL_FIRST = "The machine's own manual beats this.";
