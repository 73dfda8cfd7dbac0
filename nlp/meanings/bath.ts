import type { Entry } from '../../domain/model/entry.ts';
import { isMachine, partLike } from '../clauses/name-kinds.ts';
import { lowText, type Meaning } from './telling.ts';

const FLUID = '(?:(?:neat|clean|old|fresh|warm|hot|red|white|methylated|penetrating|transmission|tranny|brake|citric|oxalic|phosphoric|rust|parts|carb|carburettor|carburetor|degreasing|molasses|washing)[ -]+)*(?:diesel|paraffin|kerosene|kero|petrol|gasoline|gas|vinegar|acetone|solvent|cleaner|degreaser|oil|spirits?|thinners?|turps|molasses|acid|remover|caustic|lye|soda|fluid|derv|coke|detergent|brine)';
const VESSEL = '(?:jars?|cans?|tins?|buckets?|tubs?|trays?|baths?|pails?|tanks?|drums?|bowls?|pans?|bins?|kettles?|bottles?|basins?|coffee can|biscuit tin)';
const BATH = new RegExp(`\\b(?:in|into) (?:(?:the|a|an|some|that|my|his|her) )?(?:(?:\\w+ ){0,3}${VESSEL} (?:full )?(?:of|with) )?(?:(?:the|some|a bit of) )?(${FLUID})\\b(?: and (${FLUID})\\b)?|\\b(?:in|into) (?:the|a) ((?:dip|hot|acid|electrolysis|rust|caustic|molasses) tank|parts washer|ultrasonic(?: (?:bath|cleaner|tank))?|electrolysis(?: (?:bath|tank|bucket))?)\\b`);

/** "left the bolts in a jar of vinegar", "the block is in the dip tank overnight": put to soak, which is work begun and no place where a thing is kept. */
export const bath: Meaning = t => {
  const c = t.clause, text = lowText(t), m = BATH.exec(text);
  if (!m || c.neg || c.asks || c.reality !== 'deed' || c.sub && /^(if|unless|until|till|before|that|when|so)$/.test(c.sub)) return undefined;
  const base = c.verb?.base ?? '';
  if (c.pred === 'be' && /\b(free|loose|clean|clear|off|out|better|good|moving|bright)\b/.test(text) && /\bafter\b/.test(text)) return undefined; // "it's free again after three days in diesel"
  const put = /^(put|leave|drop|stick|chuck|set|throw|pop|dunk|submerge|steep|have|get)$/.test(base) && c.verb!.form !== 'base' && c.obj.length > 0;
  const lies = c.pred === 'be' && !c.verb || /^(sit|soak|lie|steep|stew|bubble)$/.test(base) && !c.obj.length || c.pred === 'none' && /\b(soaking|overnight)\b/.test(text);
  if (!put && !lies || /^(leaks?|found|full|rust|water|metal|glitter)\b/.test(text) || put && /^(get|have)$/.test(base) && !/\bsoak/.test(text)) return undefined;
  const parts = (put ? c.obj : c.subj).filter(s => s.name && partLike(t.sheet, s.name) && !isMachine(t.sheet, s.name));
  const product = (m[3] ?? [m[1], m[2]].filter(Boolean).join(' and ')).trim();
  return parts.length ? parts.map(p => ({ kind: 'work', part: p.name, action: 'soak', done: false, product }) as Entry) : undefined;
};
