import type { Answer } from '../../domain/model/answer.ts';
import { sayAhead } from './ahead.ts';
import { sayBlocked } from './blocked.ts';
import { sayBuy } from './buy.ts';
import { sayCheapest } from './cheapest.ts';
import { sayDue } from './due.ts';
import { sayFinish } from './finish.ts';
import { sayForecast, sayPicture } from './forecast.ts';
import { sayHistory } from './history.ts';
import { sayList } from './list.ts';
import { sayNext } from './next.ts';
import { sayOrderBy } from './order-by.ts';
import { sayProvisional } from './provisional.ts';
import { saySpent, sayTimeSpent } from './spent.ts';
import type { Saying, Spoken } from './spoken.ts';
import { sayState } from './state.ts';
import { saySum } from './sum.ts';
import { sayWasHow } from './was-how.ts';
import { sayWhatIf } from './what-if.ts';
import { sayWhere } from './where.ts';

/** The words of an answer; the same at every door. */
export function sayAnswer(a: Answer, saying: Saying): Spoken {
  switch (a.kind) {
    case 'blocked': return sayBlocked(a, saying);
    case 'buy': return sayBuy(a, saying);
    case 'next': return sayNext(a);
    case 'where': return sayWhere(a, saying);
    case 'wasHow': return sayWasHow(a);
    case 'provisional': return sayProvisional(a, saying);
    case 'due': return sayDue(a, saying);
    case 'history': return sayHistory(a, saying);
    case 'spent': return saySpent(a, saying);
    case 'timeSpent': return sayTimeSpent(a, saying);
    case 'cheapest': return sayCheapest(a);
    case 'forecast': return sayForecast(a, saying);
    case 'finish': return sayFinish(a, saying);
    case 'whatIf': return sayWhatIf(a, saying);
    case 'orderBy': return sayOrderBy(a, saying);
    case 'ahead': return sayAhead(a, saying);
    case 'list': return sayList(a, saying);
    case 'state': return sayState(a, saying);
    case 'picture': return sayPicture(a);
    case 'sum': return saySum(a);
  }
}
