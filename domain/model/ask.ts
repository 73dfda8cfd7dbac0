import { z } from 'zod';
import { Day, Phrase } from './fields.ts';

/** What a note can ask, by the contract of notes. `span`: offsets [from, to) into the note's text. */
const span = z.tuple([z.number().int(), z.number().int()]).optional();
const ask = <K extends string, S extends z.ZodRawShape>(k: K, shape: S) => z.object({ kind: z.literal(k), ...shape, span });
const part = Phrase.optional();
const from = Day.optional();
const to = Day.optional();

const BUY_STATUS = ['needed', 'ordered', 'late'] as const;
const PLACES = ['indoors', 'outdoors'] as const;

export const Ask = z.discriminatedUnion('kind', [
  ask('blocked', { part }),
  ask('buy', { status: z.enum(BUY_STATUS).optional(), part }),
  ask('next', { minutes: z.number().positive().optional(), place: z.enum(PLACES).optional() }),
  ask('where', { part }),
  ask('wasHow', { part, what: Phrase.optional() }),
  ask('provisional', { part }),
  ask('due', {}),
  ask('history', { part, from, to }),
  ask('spent', { part }),
  ask('timeSpent', { part, from, to }),
  /** `by`: the day whose chance is asked for. */
  ask('finish', { part, by: Day.optional() }),
  ask('cheapest', { item: Phrase }),
  ask('forecast', { for: Phrase.optional(), from, to }),
  ask('sum', { of: z.string(), given: z.record(z.string(), z.unknown()) }),
  ask('picture', { part }),
]);
export type Ask = z.infer<typeof Ask>;
type AskKind = Ask['kind'];
export type AskOf<K extends AskKind> = Extract<Ask, { kind: K }>;
