import type { CheapestAnswer, LandedQuote } from '../../domain/model/answer.ts';
import type { Spoken } from './spoken.ts';
import { capital, money } from './words.ts';

const said = (q: LandedQuote): string => `${money(q.landed)} landed${q.source ? `, ${q.source}` : ''}${q.shipping ? ` (${money(q.price)} and ${money(q.shipping)} shipping)` : ''}`;

export function sayCheapest(a: CheapestAnswer): Spoken {
  if (!a.best) return { say: `No price heard for ${a.item} yet.` };
  const next = a.others[0] ? ` Next is ${said(a.others[0])}.` : '';
  return { say: `${capital(a.item)}: ${said(a.best)}.${next}`, longer: [a.best, ...a.others].map(said).join('\n') };
}
