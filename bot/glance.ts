import type { Answer } from '../domain/model/answer.ts';
import { readChat } from '../domain/store/chats.ts';
import { BENCH } from './incoming.ts';
import { factsFor } from './planning/facts.ts';
import type { Ask } from '../domain/model/ask.ts';
import { answer } from '../domain/answers/answer.ts';
import { catchUp } from '../domain/log/keeper.ts';
import { sayAnswer } from './say/answer.ts';
import { causeLine } from './say/blocked.ts';
import { capital } from './say/words.ts';
import type { Glance } from './service.ts';
import type { Deps } from './turn/deps.ts';

/** What stands beside the talk: the same answers that the words give, each as a headline and its lines. */
export function glance(deps: Deps, at: string): Glance[] {
  const { log, zone } = deps;
  catchUp(log);
  const { machine } = readChat(log.store, BENCH);
  const facts = factsFor(deps, at, machine);
  const give = (ask: Exclude<Ask, { kind: 'sum' }>): Answer => answer(log.shop, ask, { at, zone }, facts);
  const panel = (title: Glance['title'], ask: Exclude<Ask, { kind: 'sum' }>): Glance => {
    const a = give(ask);
    // A tag has room for what stands in the way line by line, where the talk says the first few of it in a sentence.
    if (a.kind === 'blocked' && a.causes.length) return { title, say: a.part, lines: a.causes.map(c => capital(causeLine(c, { at }))) };
    const spoken = sayAnswer(a, { at });
    return { title, say: spoken.say, lines: spoken.list ?? [] };
  };
  return [
    panel('Next', { kind: 'next' }), panel('Holding up', { kind: 'blocked' }), panel('To get', { kind: 'buy' }),
    panel('Not for good', { kind: 'provisional' }), panel('Look again', { kind: 'due' }),
  ];
}
