import { momentWords, obstacleWords, type Naming } from '../../domain/answers/why.ts';
import type { Reason } from '../../domain/plan/reason.ts';

/** Why a job starts no earlier: `waits for prime the hood to dry until Sat 10:00`. */
export function reasonWords(reason: Reason, naming: Naming): string {
  const until = reason.until === undefined ? '' : ` until ${momentWords(reason.until, naming)}`;
  switch (reason.why) {
    case 'after': return `waits for ${naming.nameOf(reason.job)}${until}`;
    case 'lag': return `waits for ${naming.nameOf(reason.job)} to ${reason.lag === 'recoat' ? 'take another coat' : reason.lag}${until}`;
    case 'supply': return reason.until === undefined ? `waits for ${naming.nameOf(reason.supply)}, no date` : `waits for ${naming.nameOf(reason.supply)}${until}`;
    case 'date': return `waits for ${reason.what}${until}`;
    case 'busy': return `your hours go to ${naming.nameOf(reason.job)}${until}`;
    case 'hours': return reason.until === undefined ? 'no free hours known' : `no free hours${until}`;
    case 'stretch': return `no unbroken stretch long enough${until}`;
    case 'tooLong': return `longer than your longest free stretch of ${reason.hours} hours, so in pieces`;
    case 'help': return reason.until === undefined ? `${obstacleWords('help')}, none promised` : `${obstacleWords('help')}${until}`;
    default: return reason.expected ? 'allowing for wet days' : `${obstacleWords(reason.why)}${until}`;
  }
}
