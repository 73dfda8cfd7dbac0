import type { Answer } from '../../domain/model/answer.ts';
import { answer } from '../../domain/answers/answer.ts';
import { aheadCase, aheadFrom } from '../../domain/answers/ahead.ts';
import { finishCase, finishFrom } from '../../domain/answers/finish.ts';
import { orderByCase, orderByFrom } from '../../domain/answers/order-by.ts';
import { whatIfCase, whatIfFrom } from '../../domain/answers/what-if.ts';
import { catchUp } from '../../domain/log/keeper.ts';
import { planWork } from '../../domain/plan/plan.ts';
import { keepMedia } from '../../domain/store/media.ts';
import { drawHoldingUp } from '../draw/holding-up.ts';
import { png } from '../draw/png.ts';
import { overTimeSheet } from '../draw/over-time-sheet.ts';
import { drawWeeks } from '../draw/weeks.ts';
import type { Button } from '../incoming.ts';
import { sayAnswer } from '../say/answer.ts';
import { capital } from '../say/words.ts';
import { paged, type Page } from '../turn/pages.ts';
import type { Deps } from '../turn/deps.ts';
import { DRAW_IT } from './draw-button.ts';
import { factsFor } from './facts.ts';
import { simulateHere, type Simulate } from './simulate-here.ts';
import type { Drawing, Task } from './task.ts';

/** Words, things to tap and kept pictures; `page`: what "more" and "longer" add; `answer` for those who read facts. */
export interface WorkedOut { say: string; buttons: Button[]; files: string[]; page?: Page; answer?: Answer }

/** Works out what a turn handed out, from the log as it is now. */
export async function workOut(deps: Deps, task: Task, at: string, simulateIt: Simulate = simulateHere): Promise<WorkedOut> {
  catchUp(deps.log);
  if (task.kind === 'draw') return drawn(deps, task.drawing, at, simulateIt);
  const found = await answerOf(deps, task, at, simulateIt);
  const { buttons, ...spoken } = paged(sayAnswer(found, { at }));
  const drawable = found.kind === 'finish' ? found.p50 !== null : found.kind === 'ahead' && found.days.length > 0;
  return { ...spoken, buttons: [...buttons, ...(drawable ? [DRAW_IT] : [])], files: [], answer: found };
}

async function answerOf({ log, zone, ...deps }: Deps, task: Exclude<Task, { kind: 'draw' }>, at: string, simulateIt: Simulate): Promise<Answer> {
  const more = factsFor({ log, zone, ...deps }, at, task.machine);
  if (task.kind === 'finish') {
    const found = finishCase(log.shop, task.ask, { at, zone }, more);
    return 'kind' in found ? found : finishFrom(found, (await simulateIt([found.input]))[0]!);
  }
  if (task.kind === 'orderBy') {
    const found = orderByCase(log.shop, task.item, { at, zone }, more);
    return 'kind' in found ? found : orderByFrom(found, (await simulateIt([found.plan.input]))[0]!);
  }
  if (task.kind === 'ahead') {
    const found = aheadCase(log.shop, task.span, { at, zone }, more);
    return 'kind' in found ? found : aheadFrom(found, (await simulateIt([found.plan.input]))[0]!);
  }
  const found = whatIfCase(log.shop, task.supposed, task.words, { at, zone }, more);
  if ('kind' in found) return found;
  const [one, other] = await simulateIt([found.before.input, found.after.input]);
  return whatIfFrom(found, one!, other!);
}

const DRAWN: Partial<Record<Drawing['ask']['kind'], string>> = { finish: 'The weeks ahead.', spent: 'Money and hours so far.', timeSpent: 'Money and hours so far.' };

/** The drawing as a kept file. */
async function drawn(deps: Deps, { ask, machine }: Drawing, at: string, simulateIt: Simulate): Promise<WorkedOut> {
  const svg = await sheetOf(deps, { ask, machine }, at, simulateIt);
  if (typeof svg !== 'string') return { say: svg.none, buttons: [], files: [] };
  const result = await keepMedia(deps.log.store, png(svg), at);
  if ('refused' in result) return { say: result.refused, buttons: [], files: [] };
  return { say: DRAWN[ask.kind] ?? 'What holds it up.', buttons: [], files: [result.kept.hash] };
}

async function sheetOf(deps: Deps, { ask, machine }: Drawing, at: string, simulateIt: Simulate): Promise<string | { none: string }> {
  const { log, zone } = deps;
  const more = factsFor(deps, at, machine);
  if (ask.kind === 'blocked') {
    const found = answer(log.shop, ask, { at, zone }, more);
    return found.kind === 'blocked' && found.causes.length ? drawHoldingUp(found, at) : { none: 'Nothing holds it up, so there is nothing to draw.' };
  }
  if (ask.kind === 'spent' || ask.kind === 'timeSpent') return overTimeSheet(deps, ask, at, machine);
  if (ask.kind !== 'finish') return { none: 'There is nothing to draw.' };
  const found = finishCase(log.shop, ask, { at, zone }, more);
  if ('kind' in found) return { none: found.why ?? 'There is nothing to draw.' };
  const [simulated] = await simulateIt([found.input]);
  // The bars follow the order that the runs went by, so that bars and ticks speak of the same plan.
  const plan = planWork(found.input, { schedules: 1, orders: simulated?.ok ? [simulated.order] : [] });
  return plan.ok && simulated?.ok ? drawWeeks({ shop: found.plan, plan, simulated, title: ask.part ? `${capital(ask.part)}, week by week` : 'The weeks ahead' }) : { none: 'There is no plan to draw.' };
}
