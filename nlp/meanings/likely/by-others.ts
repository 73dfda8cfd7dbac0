import { lowText, type Telling } from '../telling.ts';

const BY_OTHERS = /\bby (whoever|somebody|someone|some (one|body)|the (last|previous|first) (owner|man|fella|bloke|lot))\b/;

/** Whether a clause tells what somebody did before the machine came here: "was fitted by whoever had it before". */
export const byOthers = (t: Telling): boolean => BY_OTHERS.test(lowText(t));
