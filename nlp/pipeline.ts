import { amend } from './meanings/amend.ts';
import { arrival } from './meanings/arrival.ts';
import { bath } from './meanings/bath.ts';
import { bought } from './meanings/bought.ts';
import { finding } from './meanings/finding.ts';
import { tally } from './meanings/finding/fragment.ts';
import { outright } from './meanings/finding/outright.ts';
import { fit } from './meanings/fit.ts';
import { hands } from './meanings/hands.ts';
import { hours } from './meanings/hours.ts';
import { job } from './meanings/job.ts';
import { order } from './meanings/order.ts';
import { out } from './meanings/out.ts';
import { quote } from './meanings/quote.ts';
import { reading } from './meanings/reading.ts';
import { recheck } from './meanings/recheck.ts';
import { rule } from './meanings/rule.ts';
import { same } from './meanings/same.ts';
import { stow } from './meanings/stow.ts';
import type { Meaning } from './meanings/telling.ts';
import { curing, wait } from './meanings/wait.ts';
import { want } from './meanings/want.ts';
import { weather } from './meanings/weather.ts';
import { work } from './meanings/work.ts';

/**
 * The meanings of statements, in the order in which a clause is shown to them; the first that knows it has it. `gives`: the kinds that it is not asked for where the
 * odds speak plainly against them; none for what speaks of other clauses.
 */
export const MEANINGS: readonly (readonly [name: string, meaning: Meaning, gives: readonly string[]])[] = [
  ['amend', amend, ['amend']], // a correction speaks of an earlier note, whatever its words look like
  ['same', same, []], // says nothing of its own, so it must not be taken for a finding
  ['rule', rule, ['rule']], // joins two clauses, so it must see them before either is taken alone
  ['weather', weather, ['weather']], // "dry", "hot", "clear" are also conditions of parts
  ['hands', hands, ['hands']], // people, not parts
  ['recheck', recheck, ['recheck']], // a job with a time after it
  ['wait', wait, ['wait']], // "leave it till Thursday" is no job and no place
  ['bath', bath, ['work']], // before out and stow: a bath is no place where a thing is kept
  ['out', out, ['out']], // before fit and stow: "took the cooler in to the shop"
  ['arrival', arrival, ['arrival']], // before fit: "it's back"
  ['order', order, ['order']], // money and a seller, not in hand
  ['bought', bought, ['bought']], // money, in hand
  ['quote', quote, ['quote', 'bought']], // money, nothing bought; "he had one for 14 so I bought it" begins as one
  ['finding', outright, ['finding']], // what looks like a want, a job, a fit, a place or work and is how a part was found
  ['want', want, ['want']], // "need" a thing, before "need" a deed
  ['job', job, ['job']], // work not yet done, before work done
  ['fit', fit, ['fit']], // before work: "pressed", "bolted", "packed" may be either
  ['stow', stow, ['stow']], // after fit: "on the piston" is no place
  ['work', work, ['work']],
  ['finding', tally, ['finding']], // "4 chipped" is no figure
  ['reading', reading, ['reading']], // figures
  ['finding', finding, ['finding']], // what is left of "is", "has" and verbs of parts
];

/** Read beside whatever else a clause means: "lapped the face, half an hour". */
export const BESIDE: readonly (readonly [name: string, meaning: Meaning])[] = [
  ['hours', hours],
  ['curing', curing],
];
