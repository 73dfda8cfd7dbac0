import { z } from 'zod';
import type { SumAnswer, SumDone, SumNeeds, SumRefused } from './answer.ts';

/** What a calculation hands back; `kind` and `of` are put on by defineSum. */
export type Outcome = Omit<SumDone, 'kind' | 'of'> | Omit<SumRefused, 'kind' | 'of'> | Omit<SumNeeds, 'kind' | 'of'>;

export interface Sum {
  of: string;
  /** The question it answers, in the shop's words. */
  answers: string;
  /** Field of `given` -> what it is and its unit. */
  fields: Record<string, string>;
  compute(given: Record<string, unknown>): SumAnswer;
}

interface SumSpec<S extends z.ZodObject> {
  of: string;
  answers: string;
  fields: Record<string, string>;
  given: S;
  work(given: z.infer<S>): Outcome;
}

/**
 * Joins a calculation to the check of what it is given: a field of the wrong shape becomes a refusal that names it,
 * so `work` sees only sound figures in known units.
 */
export function defineSum<S extends z.ZodObject>(spec: SumSpec<S>): Sum {
  const { of, answers, fields } = spec;
  return {
    of,
    answers,
    fields,
    compute(given) {
      const read = spec.given.safeParse(withoutBlanks(given));
      if (!read.success) return { kind: 'sum', of, refused: sentence(read.error) };
      return { kind: 'sum', of, ...withoutEmptyAlso(spec.work(read.data)) };
    },
  };
}

/** A null or empty field is a field not given. */
function withoutBlanks(given: Record<string, unknown>): Record<string, unknown> {
  return Object.fromEntries(Object.entries(given).filter(([, value]) => value !== null && value !== undefined && value !== ''));
}

function withoutEmptyAlso(outcome: Outcome): Outcome {
  if (!('also' in outcome) || outcome.also?.length) return outcome;
  const { also: _none, ...rest } = outcome;
  return rest;
}

function sentence(error: z.ZodError): string {
  const [first] = error.issues;
  const field = first?.path.join('.') ?? '';
  return `I can't work that out: ${field ? `${field} ` : ''}${first?.message ?? 'is not understood'}.`;
}

export const refuse = (refused: string): Outcome => ({ refused });

export const ask = (need: string, question: string, choices?: readonly string[]): Outcome =>
  choices ? { needs: [need], question, choices: [...choices] } : { needs: [need], question };
