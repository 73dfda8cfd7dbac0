import { describe, expect, it } from 'vitest';
import type { ReadContext } from '../../../domain/model/reading.ts';
import { weigh } from '../../../nlp/likely/net/weighed.ts';
import { stretchOf } from '../../../nlp/likely/stretch-of.ts';
import { Odds } from '../../../nlp/likely/odds.ts';
import { kindOf } from '../../../nlp/likely/sort.ts';
import { readByRules, readNote } from '../../../nlp/read.ts';
import { notesOf } from '../notes.ts';

const oddsOf = (text: string, ctx: ReadContext = { at: '2026-03-19T10:00:00-04:00' }): Odds[] => {
  const { clauses, sheet } = readByRules(text, ctx), net = weigh(text, ctx.prior?.at(-1))!;
  return clauses.flatMap(c => { const z = net.sorts(...stretchOf(sheet, c)); return z ? [new Odds({ z, loudest: () => '' })] : []; });
};

describe('what a clause most likely tells', () => {
  it.each([
    ['Took the radiator off.', 'fit off'], ['The radiator core is rotten.', 'finding'], ['Painted the bonnet.', 'work'], ['Ordered two hoses from the merchant.', 'order'],
    ['Put the studs in the blue tin.', 'stow'], ['Two and a half hours on the gearbox.', 'hours'],
  ])('%s', (text, sort) => expect(oddsOf(text)[0]!.sorts()[0]![0]).toBe(sort));

  it('is between none and all for any words, and strange words tell nothing', () => {
    for (const text of ['', '…', 'qwx zzgr', '\u0000', 'the the the', 'Lovely morning.']) for (const o of oddsOf(text)) for (const [sort, p] of o.sorts()) {
      expect(p).toBeGreaterThanOrEqual(0);
      expect(p, `${text} ${sort}`).toBeLessThan(0.5);
    }
  });

  // Notes by strangers that were neither learned from nor read by those who wrote the rules: only this share of them is looked at.
  it('in notes that were not learned from, most of the kinds it calls likely were said', () => {
    let said = 0, likely = 0;
    for (const n of notesOf(new URL('../../../fixtures/notes/kept/strangers.jsonl', import.meta.url))) {
      const ctx = { at: n.at, parts: n.known?.parts ?? [], machines: n.known?.machines ?? [], ...(n.prior ? { prior: n.prior } : {}) };
      for (const o of oddsOf(n.text, ctx)) for (const [sort, p] of o.sorts()) if (p > 0.5) {
        likely++;
        said += Number(n.entries!.some(e => e.kind === kindOf(sort)));
      }
    }
    expect(likely).toBeGreaterThan(200);
    expect(said / likely).toBeGreaterThan(0.85);
  });

  it('reads what no rule knew, and says so in the trace', () => {
    const r = readNote('Plasma cut the rot out of the seat pan.', { at: '2026-03-19T10:00:00-04:00' });
    expect(r.entries.map(e => [e.kind, 'part' in e && e.part, e.sure])).toEqual([['work', 'seat pan', 'implied']]);
    expect(r.trace.filter(x => x.rule === 'likely').map(x => x.gave)).toEqual(['work(part: seat pan, action: cut, product: Plasma)']);
  });

  it('corrects nothing that an earlier note said by a note about something else, and takes "it" for what this note names', () => {
    const prior = ['Ordered two hub bearings from the bearing house, 18 each, due Friday.', 'Took the water pump off.'];
    const read = (text: string) => readNote(text, { at: '2026-03-19T10:00:00-04:00', prior }).entries;
    expect(read('Clamped the guard on for now with two clamps.').map(e => e.kind)).not.toContain('amend');
    expect(read('Ran two passes of weld up the crack in the drawbar. It is not to be touched till morning.').filter(e => e.kind === 'wait').map(e => e.part)).toEqual(['drawbar']);
  });
  it('an order to oneself is a job, however barely it is said', () => {
    for (const text of ['check the oil', 'take the head off', 'drain the radiator']) expect(readNote(text, { at: '2026-03-19T10:00:00-04:00' }).entries.map(e => e.kind), text).toEqual(['job']);
  });
});
