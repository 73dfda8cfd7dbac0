import { z } from 'zod';
import type { Answer } from '../../domain/model/answer.ts';
import type { Warning } from '../../domain/answers/warn.ts';
import { readSetting, writeSetting } from '../../domain/store/settings.ts';
import { compose } from '../say/reply.ts';
import type { Turn, TurnOut } from '../turn/types.ts';
import { refuseOrders } from './settings.ts';

/** Words that turn down a usual order just spoken of. */
const REFUSES = /^(?:no,? |nah,? |well,? |ah,? )*(?:ignore (?:that|it|this)(?: (?:order|rule|one))?|(?:that|the|this) (?:order|rule|one)? ?(?:doesn't|does not|don't|won't) (?:matter|apply)(?: (?:here|on (?:this|mine|my machine|this one|the \w+)|to (?:me|mine|this)))?|doesn't (?:matter|apply)(?: here)?|not (?:on )?(?:this|mine|my machine|here)(?: one)?|i don't (?:care|mind) about (?:that|the order)(?: order)?|(?:that|it)'s (?:all right|fine|ok(?:ay)?) (?:that way|like that|in (?:that|this|any|either) order)|(?:either|any) order (?:is fine|will do|works)(?: here)?|(?:don't|stop) (?:tell|remind|warn)(?:ing)? me (?:of |about )?that(?: again)?|drop that (?:order|rule)|never mind (?:that|the) order)[.!]*$/i;

const nameFor = (chat: string): string => `usual orders spoken of ${chat}`;

/** Keeps which usual orders a reply spoke of, so that the next words can turn them down; a reply without any forgets them. */
export function keepSpokenOf(turn: Turn, warnings: readonly Warning[], answers: readonly Answer[]): void {
  const spoken = answers.flatMap(a => (a.kind === 'blocked' && a.clear && !a.curing ? a.usual?.slice(0, 1).map(u => u.rule) ?? [] : []));
  const ids = [...warnings.flatMap(w => (w.kind === 'order' ? [w.rule] : [])), ...spoken];
  const { log: { store } } = turn.deps;
  if (ids.length || readSetting(store, nameFor(turn.incoming.chat)) !== undefined) writeSetting(store, nameFor(turn.incoming.chat), ids.length ? JSON.stringify(ids) : undefined);
}

/** "Ignore that": the usual orders just warned of stay turned down. Undefined: not these words, or none was spoken of. */
export function orderRefused(turn: Turn): TurnOut | undefined {
  const text = turn.incoming.text.trim().replace(/[’‘]/g, "'");
  if (!REFUSES.test(text)) return undefined;
  const { log } = turn.deps;
  const held = readSetting(log.store, nameFor(turn.incoming.chat));
  const ids = held === undefined ? undefined : z.array(z.string()).safeParse(JSON.parse(held)).data;
  if (!ids?.length) return undefined;
  refuseOrders(log, ids);
  writeSetting(log.store, nameFor(turn.incoming.chat), undefined);
  return { reply: compose({ note: turn.note.id, at: turn.incoming.at, lines: ['Right, that order doesn\'t count here; I won\'t bring it up again.'] }) };
}
