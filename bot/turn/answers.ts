import { parse } from 'node:path';
import type { Answer } from '../../domain/model/answer.ts';
import type { Ask, AskOf } from '../../domain/model/ask.ts';
import { nameKey } from '../../domain/model/names.ts';
import type { Shop } from '../../domain/log/shop.ts';
import { answer } from '../../domain/answers/answer.ts';
import { forecast } from '../../domain/answers/forecast.ts';
import type { SumAnswer } from '../../domain/sums/answer.ts';
import { computeSum } from '../../domain/sums/compute.ts';
import type { Later } from '../incoming.ts';
import { withDay } from '../planning/asked-day.ts';
import { factsFor } from '../planning/facts.ts';
import { keepDrawable } from '../planning/draw-it.ts';
import { sayAnswer } from '../say/answer.ts';
import type { Turn } from './types.ts';
import { givenFromLog } from './given-from-log.ts';
import type { LastSum } from './last-sum.ts';
import type { OpenQuestion } from './open-question.ts';
import { paged, type Page } from './pages.ts';
import { unitAsked } from './unit-asked.ts';

/** Answers in words and as facts, and what the chat keeps of them. */
export interface Answered { answers: Answer[]; lines: string[]; files: string[]; later: Later[]; open?: OpenQuestion; page?: Page; sum?: LastSum }

/** Answers every ask of a note, in order; what takes long is handed out and said to be on its way. */
export function answerAsks(asks: readonly Ask[], turn: Turn): Answered {
  const out: Answered = { answers: [], lines: [], files: [], later: [] };
  const { incoming: { at, text } } = turn;
  const dated = asks.map(ask => (ask.kind === 'finish' ? withDay(ask, text, { at }) : ask));
  for (const ask of dated) {
    if (ask.kind === 'finish' && turn.deps.handsOut?.(ask)) out.later.push({ kind: 'finish', ask, machine: turn.machine });
    else take(out, answered(ask, turn), ask, turn);
  }
  keepDrawable(turn, dated);
  return out;
}

/** A machine asked about has its own name in the answer, with the capital it was given. */
function withMachineName<A extends Ask>(ask: A, shop: Shop): A {
  const machine = 'part' in ask && ask.part ? shop.machines.get(nameKey(ask.part)) : undefined;
  return machine?.name ? { ...ask, part: machine.name } : ask;
}

/** One answer worked out from the state of the shop. */
function answered(asked: Ask, turn: Turn): Answer {
  const ask = withMachineName(asked, turn.deps.log.shop);
  const { deps, deps: { log, zone, elsewhere, weather }, incoming: { at }, machine } = turn;
  const other = elsewhere?.(ask, at);
  if (other) return other;
  if (ask.kind === 'forecast') return forecast(log.shop, ask, { at, zone }, { past: log.past, machine }, weather?.fetched());
  if (ask.kind === 'sum') {
    const unit = ask.of === 'convert' ? undefined : unitAsked(turn.incoming.text);
    return computeSum(ask.of, { ...(unit ? { unit } : {}), ...givenFromLog(ask, log.shop, machine) });
  }
  return answer(log.shop, ask, { at, zone }, factsFor(deps, at, machine));
}

function take(out: Answered, a: Answer, ask: Ask, turn: Turn): void {
  const { say, page } = paged(sayAnswer(a, { at: turn.incoming.at }));
  out.answers.push(a);
  // A sum that lacks an input says nothing of its own: its question stands at the end of the reply.
  if (!('needs' in a)) out.lines.push(say);
  if (page) out.page = page;
  // Doors know a kept file by its hash, which is its name without the ending.
  if (a.kind === 'picture') out.files.push(...a.files.map(path => parse(path).name));
  if (a.kind === 'sum') sumKept(out, a, ask as AskOf<'sum'>, turn);
}

/** A finished sum can be kept to the log by the next words; one that lacks an input asks for it. */
function sumKept(out: Answered, a: SumAnswer, ask: AskOf<'sum'>, turn: Turn): void {
  const said = [...(turn.sumSaid ?? []), turn.incoming.text].join(', ');
  if ('results' in a) out.sum = { of: a.of, note: turn.note.id, said, given: ask.given, results: a.results };
  if ('needs' in a) out.open = { kind: 'sum', text: a.question, choices: a.choices ?? [], said, of: a.of, given: ask.given, needs: a.needs };
}
