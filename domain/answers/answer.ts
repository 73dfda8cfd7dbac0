import type { Answer } from '../model/answer.ts';
import type { Ask } from '../model/ask.ts';
import type { Shop } from '../log/shop.ts';
import type { More, Now } from './given.ts';
import { blocked } from './blocked.ts';
import { buy } from './buy.ts';
import { cheapest } from './cheapest.ts';
import { due } from './due.ts';
import { finish } from './finish.ts';
import { forecast } from './forecast.ts';
import { history } from './history.ts';
import { next } from './next.ts';
import { picture } from './picture.ts';
import { provisional } from './provisional.ts';
import { spent } from './spent.ts';
import { timeSpent } from './time-spent.ts';
import { wasHow } from './was-how.ts';
import { where } from './where.ts';

/** The asks answered from the log; sums are worked out elsewhere. */
export type LogAsk = Exclude<Ask, { kind: 'sum' }>;

/** Works out an answer from the state of the shop; what was never heard of comes back empty. */
export function answer(shop: Shop, ask: LogAsk, now: Now, more: More): Answer {
  switch (ask.kind) {
    case 'blocked': return blocked(shop, ask, now, more);
    case 'buy': return buy(shop, ask, now, more);
    case 'next': return next(shop, ask, now, more);
    case 'where': return where(shop, ask, more);
    case 'wasHow': return wasHow(shop, ask, more);
    case 'provisional': return provisional(shop, ask, more);
    case 'due': return due(shop, now);
    case 'history': return history(shop, ask, more);
    case 'spent': return spent(shop, ask, more);
    case 'timeSpent': return timeSpent(shop, ask, more);
    case 'finish': return finish(shop, ask, now, more);
    case 'cheapest': return cheapest(shop, ask, more);
    case 'forecast': return forecast(shop, ask, now, more);
    case 'picture': return picture(shop, ask, more);
  }
}
