import { readdirSync, readFileSync } from 'node:fs';
import { isDeepStrictEqual } from 'node:util';
import { shopInMemory } from '../shop-in-memory.ts';
import type { SumAnswer, SumResult } from '../../../domain/sums/answer.ts';

/** One result looked for: a figure within `tol` in that unit, a list of leaves, a name, or a pattern that the name is `like`. */
interface Expected { name: string; value?: number | string | number[]; unit?: string; tol?: number; like?: string }

/** Turns of talk that end in a sum, and what must come of it. `source` is a key of the handbook of check values, a page read, or `calc`. */
export interface SumQuestion {
  say: string[];
  of: string;
  expect?: Expected[];
  refused?: true;
  /** What the only turn must ask back for. */
  needs?: string;
  /** What the first of several turns must ask back for. */
  asksFirst?: string;
  source: string;
  /** Why it is not answered yet; the test then holds that it is not. */
  gap?: string;
}

const AT = '2026-03-04T15:20:00-05:00';

export const topicsIn = (dir: string): string[] => readdirSync(dir).filter(f => f.endsWith('.jsonl')).map(f => f.replace(/\.jsonl$/, ''));

export const questionsOf = (dir: string, topic: string): SumQuestion[] =>
  readFileSync(`${dir}/${topic}.jsonl`, 'utf8').split('\n').filter(Boolean).map(line => JSON.parse(line) as SumQuestion);

/** Says the turns in a shop of their own; what is wrong with the outcome, or undefined. */
export function faultOf(question: SumQuestion): string | undefined {
  const { say, close } = shopInMemory();
  try {
    const turns = question.say.map(text => say(text, AT).answers.filter((a): a is SumAnswer => a.kind === 'sum'));
    const first = turns[0]?.[0];
    if (question.asksFirst && !(first && 'needs' in first && first.needs[0] === question.asksFirst)) return `first: ${shown(first)}`;
    const last = turns.at(-1)?.find(a => a.of === question.of);
    return last ? faultIn(last, question) : `no ${question.of}: ${turns.at(-1)?.map(shown).join('; ') || 'nothing worked out'}`;
  } finally {
    close();
  }
}

function faultIn(answer: SumAnswer, { expect, refused, needs }: SumQuestion): string | undefined {
  if (refused) return 'refused' in answer ? undefined : shown(answer);
  if (needs) return 'needs' in answer && answer.needs[0] === needs ? undefined : shown(answer);
  if (!('results' in answer)) return shown(answer);
  const wrong = (expect ?? []).find(each => !agrees(answer.results.find(r => r.name === each.name), each));
  return wrong && `${wrong.name} should be ${JSON.stringify(wrong.value ?? wrong.like)} ${wrong.unit ?? ''}: ${shown(answer)}`;
}

/** The first result of a name counts, in its own unit; leaves of a stack in any order. */
function agrees(got: SumResult | undefined, { value, unit, tol, like }: Expected): boolean {
  if (!got) return false;
  if (like !== undefined) return typeof got.value === 'string' && new RegExp(like).test(got.value);
  if (unit !== undefined && got.unit !== unit) return false;
  if (typeof value === 'number') return typeof got.value === 'number' && Math.abs(got.value - value) <= (tol ?? 0) + 1e-9;
  return isDeepStrictEqual(inOrder(got.value), inOrder(value));
}

const inOrder = (value: unknown): unknown => (Array.isArray(value) ? [...value].sort((a, b) => a - b) : value);

function shown(answer: SumAnswer | undefined): string {
  if (!answer) return 'nothing';
  if ('refused' in answer) return `${answer.of} refused: ${answer.refused}`;
  if ('needs' in answer) return `${answer.of} needs ${answer.needs.join()}: ${answer.question}`;
  return `${answer.of} ${answer.results.slice(0, 4).map(r => `${r.name} ${JSON.stringify(r.value)} ${r.unit}`).join(', ')} (${answer.basis})`;
}
