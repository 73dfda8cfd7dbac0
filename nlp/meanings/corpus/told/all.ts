import { AMENDS } from './amend.ts';
import { ARRIVALS } from './arrival.ts';
import { BOUGHTS } from './bought.ts';
import { ERRANDS } from './errands.ts';
import { FINDINGS } from './finding.ts';
import { FITS } from './fit.ts';
import { HANDS } from './hands.ts';
import { JOBS } from './job.ts';
import { ORDERS } from './order.ts';
import { OUTS } from './out.ts';
import type { ToldCorpus } from './phrase.ts';
import { NAMES } from './names.ts';
import { QUOTES } from './quote.ts';
import { READINGS } from './reading.ts';
import { REALITY } from './reality.ts';
import { REMARKS } from './remark.ts';
import { RULES } from './rule.ts';
import { STOWS } from './stow.ts';
import { HOURS, RECHECKS, WAITS, WEATHERS } from './times.ts';
import { WANTS } from './want.ts';
import { WORKS } from './work.ts';

/** The corpora of statements, one a kind of entry. */
export const CORPORA: readonly ToldCorpus[] = [WANTS, ORDERS, BOUGHTS, QUOTES, ARRIVALS, OUTS, STOWS, HANDS, WEATHERS, WAITS, RECHECKS, HOURS, AMENDS, NAMES, ERRANDS, FITS, FINDINGS, READINGS, REALITY, WORKS, JOBS, RULES, REMARKS];
