import { answer, type LogAsk } from '../../../../domain/answers/answer.ts';
import type { Now } from '../../../../domain/answers/given.ts';
import type { AnswerOf, Cause } from '../../../../domain/model/answer.ts';
import type { BenchShop } from '../../log/tools/shop.ts';

/** The moment of the questions in these tests, unless one is given: a Tuesday. */
export const NOW: Now = { at: '2026-03-10T09:00:00+00:00', zone: 'UTC' };

export const ask = <K extends LogAsk['kind']>(shop: BenchShop, question: Extract<LogAsk, { kind: K }>, at = NOW.at, more: { machine?: string; mileRate?: number } = {}): AnswerOf<K> =>
  answer(shop.log.shop, question, { at, zone: 'UTC' }, { past: shop.log.past, machine: 'Heron', ...more }) as AnswerOf<K>;

/** A tree of causes in one line a cause: "rule bend the brake lines (act) [clears]", indented by depth. */
export const tree = (causes: readonly Cause[], depth = 0): string[] => causes.flatMap(c =>
  [`${'  '.repeat(depth)}${c.cause} ${c.what}${c.act ? ` (${c.act})` : ''}${c.clears ? ` [${c.clears}]` : ''}`, ...tree(c.causes, depth + 1)]);
