import { readdirSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readAsks } from '../../../nlp/meanings/asks/read.ts';
import type { AskCorpus, AskPhrase } from '../../../nlp/meanings/corpus/phrase.ts';
import { openSheet } from '../../../nlp/sheet.ts';

// Every phrase of every corpus of questions is read by all the rules at once: it asks just what it says, nothing of another kind, and the
// statements beside it ask nothing at all.

const AT = '2026-03-19T10:00:00-05:00';
/** Articles are no part of a name. */
const plain = (x: unknown): unknown => Array.isArray(x) ? x.map(plain)
  : x && typeof x === 'object' ? Object.fromEntries(Object.entries(x).filter(([, v]) => v !== undefined).map(([k, v]) => [k, plain(v)]))
  : typeof x === 'string' ? x.replace(/\bthe /g, '') : x;
const asks = (p: Pick<AskPhrase, 'text' | 'at' | 'parts' | 'machines' | 'prior'>) => {
  const sheet = openSheet(p.text, { at: p.at ?? AT, ...(p.parts ? { parts: p.parts } : {}), ...(p.machines ? { machines: p.machines } : {}), ...(p.prior ? { prior: p.prior } : {}) });
  return readAsks(sheet);
};

const root = new URL('../../../nlp/meanings/corpus/', import.meta.url);
const files = ['', 'sums/'].flatMap(dir => readdirSync(new URL(dir || '.', root)).filter(f => f.endsWith('.ts') && f !== 'phrase.ts').map(f => `${dir}${f}`));
const corpora: [string, AskCorpus][] = [];
for (const f of files) {
  for (const value of Object.values(await import(new URL(f, root).href) as Record<string, unknown>)) {
    const c = value as AskCorpus;
    if (Array.isArray(c?.phrases) && c.phrases[0] && 'asks' in c.phrases[0]) corpora.push([f, c]);
  }
}

for (const [file, corpus] of corpora) {
  describe(file, () => {
    it.each(corpus.phrases.map(p => [p.prior ? `${p.prior.join(' / ')} / ${p.text}` : p.text, p] as const))('%s', (_, p) => {
      expect(asks(p).map(r => plain(r.ask))).toEqual(p.asks.map(plain));
    });
    it.each(corpus.never)('asks nothing: %s', text => { expect(asks({ text }).map(r => r.ask)).toEqual([]); });
  });
}

describe('the corpora', () => {
  it('hold at least ten wordings of each contract sum', () => {
    const ways = new Map<string, number>();
    for (const [, c] of corpora) for (const p of c.phrases) for (const a of p.asks) if (a.kind === 'sum') ways.set(String(a.of), (ways.get(String(a.of)) ?? 0) + 1);
    for (const of of ['torque', 'belt', 'sheave', 'tapDrill', 'shims', 'voltDrop', 'dewPoint', 'antifreeze', 'sling', 'endPlay', 'shrinkFit', 'coverage', 'convert', 'landed']) expect(ways.get(of), of).toBeGreaterThanOrEqual(10);
  });
});
