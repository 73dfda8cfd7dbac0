import { describe, expect, it } from 'vitest';
import { nameKey } from '../../../domain/model/names.ts';
import { CORPORA } from '../../../nlp/meanings/corpus/told/all.ts';
import type { ToldPhrase } from '../../../nlp/meanings/corpus/told/phrase.ts';
import { readNote } from '../../../nlp/read.ts';
import { traceText } from '../../../nlp/trace.ts';

// Every phrase of every corpus of statements is shown to all the meanings at once: it gives just what it says and nothing of another kind, so
// that no meaning steals another's; and the phrases a kind must never match give none of it. A failure prints how the note was read.

const AT = '2026-03-19T10:00:00-04:00';
const COMPARED: Record<string, string> = {
  fit: 'part state with', finding: 'part condition verdict', reading: 'part what value unit asWas', work: 'part action done product', job: 'do part', want: 'item qty spec for', order: 'item source price shipping expected',
  bought: 'item source price', quote: 'item source price shipping', arrival: 'item', rule: 'first then', recheck: 'part do after unit due', stow: 'part where', out: 'part where until do', wait: 'part until after unit',
  hours: 'hours part total', hands: 'when for', weather: 'sky from to', amend: 'undo field value', remark: 'text',
};

/** Articles, case, number and the order of words are no part of a name; dates and units are compared as they are. */
const plain = (field: string, v: unknown): unknown =>
  (typeof v !== 'string' || field === 'unit' || /^\d{4}-\d\d-\d\d$/.test(v) ? v : nameKey(v.replace(/,/g, ' ')).split(' ').filter(w => !/^(?:the|a|an|of)$/.test(w)).sort().join(' '));
const line = (e: Record<string, unknown>): string =>
  `${String(e.kind)}(${COMPARED[String(e.kind)]!.split(' ').filter(f => e[f] !== undefined).map(f => `${f}: ${String(plain(f, e[f]))}`).join(', ')})`;

const read = (p: Pick<ToldPhrase, 'text' | 'at' | 'parts' | 'machines' | 'prior'>) => readNote(p.text, { at: p.at ?? AT, parts: p.parts, machines: p.machines, prior: p.prior });

for (const corpus of CORPORA) {
  describe(corpus.kind, () => {
    it.each(corpus.phrases.map(p => [p.prior ? `${p.prior.join(' / ')} / ${p.text}` : p.text, p] as const))('%s', (_, p) => {
      const r = read(p);
      if (corpus.kind === 'remark') return expect(r.entries.map(e => e.kind), traceText(r.trace)).toEqual(p.entries.map(e => e.kind));
      expect(r.entries.filter(e => e.kind !== 'remark').map(e => line(e)).sort(), traceText(r.trace)).toEqual(p.entries.map(line).sort());
    });
    it.each(corpus.never)('never: %s', text => {
      const r = read({ text, ...(corpus.kind === 'amend' ? { prior: ['Need two bolts.'] } : {}) });
      expect(r.entries.filter(e => e.kind === corpus.kind).map(e => line(e)), traceText(r.trace)).toEqual([]);
    });
  });
}

describe('the corpora of statements', () => {
  it('hold a phrase that must match and one that must not for every kind', () => {
    for (const c of CORPORA) {
      expect(c.phrases.length, c.kind).toBeGreaterThan(0);
      expect(c.never.length, c.kind).toBeGreaterThan(0);
    }
  });
});
