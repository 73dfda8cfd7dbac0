import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Entry } from '../../domain/model/entry.ts';
import { Ask } from '../../domain/model/ask.ts';
import { CORPORA } from '../../nlp/meanings/corpus/told/all.ts';
import { readNote } from '../../nlp/read.ts';

const AT = '2026-03-19T10:00:00-04:00';
const PARTS = ['left kingpin', 'right kingpin', 'piston rings', 'water pump', 'magneto'];
const WORDS = ['constructor', 'the', 'left', 'pump', 'kingpin', 'is', 'off', 'on', 'cracked', 'need', 'two', '3/8', 'bolts', 'and', 'cleaned', 'it', '.', ',', 'before', 'before', 'torqued', 'to', '45', 'foot-pounds', 'ordered', '$', '18', 'tomorrow', 'if', 'not', "it's", 'in', 'drawer', '?', 'no', 'of', 'them', 'three', 'thou', 'with', 'grease', 'said', 'he', 'will', 'rain', 'hours', 'for', "'", '-', '’s', 'M8', 'x', 'um'];

const anyText = fc.string({ unit: 'grapheme', maxLength: 200 });
const shopText = fc.array(fc.constantFrom(...WORDS), { maxLength: 40 }).map(w => w.join(' '));

describe('any note', () => {
  it('gives a reading whose entries and questions are of their shapes', () => {
    fc.assert(fc.property(fc.oneof(anyText, shopText), text => {
      const r = readNote(text, { at: AT, parts: PARTS });
      for (const e of r.entries) expect(Entry.safeParse(e).success, JSON.stringify(e)).toBe(true);
      for (const a of r.asks) expect(Ask.safeParse(a).success, JSON.stringify(a)).toBe(true);
    }), { numRuns: 400 });
  });

  it('has spans that lie in it, and unread stretches that are its own words', () => {
    fc.assert(fc.property(shopText, text => {
      const r = readNote(text, { at: AT, parts: PARTS });
      for (const { span } of [...r.entries, ...r.asks]) {
        expect(span![0]).toBeGreaterThanOrEqual(0);
        expect(span![1]).toBeLessThanOrEqual(text.length);
        expect(span![0]).toBeLessThan(span![1]);
      }
      for (const u of r.unread) expect(text).toContain(u);
    }), { numRuns: 400 });
  });

  it('reads the same twice, and in any zone of the machine', () => {
    const text = 'Primed the hood. Leave it till Saturday. Ordered two bolts, should be here Friday.';
    const zone = process.env.TZ;
    const read = (tz: string) => { process.env.TZ = tz; return JSON.stringify(readNote(text, { at: AT }).entries); };
    const all = ['UTC', 'Pacific/Auckland', 'America/Los_Angeles', 'UTC'].map(read);
    if (zone === undefined) delete process.env.TZ; else process.env.TZ = zone;
    expect(new Set(all).size).toBe(1);
  });

  it('leaves no word of a statement unaccounted for', () => {
    for (const c of CORPORA) for (const p of c.phrases.slice(0, 6)) {
      const r = readNote(p.text, { at: AT, parts: p.parts, machines: p.machines, prior: p.prior });
      const dropped = r.trace.filter(t => t.stage === 'tidy' || t.stage === 'refine').map(t => t.text).join(' ');
      const covered = (k: number): boolean => [...r.entries, ...r.asks].some(e => e.span![0] <= k && k < e.span![1]);
      for (const m of p.text.matchAll(/[\p{L}\p{N}]{4,}/gu)) {
        const kept = covered(m.index) || r.unread.some(u => u.includes(m[0])) || dropped.includes(m[0]) || r.machine !== undefined || r.trace.some(t => t.stage === 'meaning' && t.rule !== 'none' && t.text.includes(m[0]));
        expect(kept, `${m[0]} of: ${p.text}`).toBe(true);
      }
    }
  });
});

describe('the machine of a note', () => {
  const machines = ['sawmill', 'baler', 'crawler'];
  it('is named in front', () => { expect(readNote('On the sawmill: greased the arbor.', { at: AT, machines }).machine).toBe('sawmill'); });
  it('is switched to', () => { expect(readNote('switch to the baler', { at: AT, machines })).toMatchObject({ machine: 'baler', switches: true, entries: [] }); });
  it('is named in passing', () => { expect(readNote('Pulled the radiator on the crawler.', { at: AT, machines }).machine).toBe('crawler'); });
  it('is none where none is named', () => { expect(readNote('Pulled the radiator.', { at: AT, machines }).machine).toBeUndefined(); });
});

describe('acts of the conversation', () => {
  it.each([['more', 'more'], ['longer', 'longer'], ['Scratch that.', 'undo'], ['undo', 'undo'], ['keep that', 'keep'], ['help', 'help'], ['yes', 'yes'], ['No.', 'no']])('%s', (text, act) => {
    expect(readNote(text, { at: AT }).act).toBe(act);
  });
  it('is none in a note of the shop', () => { expect(readNote('No more bolts on the bench.', { at: AT }).act).toBeUndefined(); });
});

describe('a part that several names fit', () => {
  it('is asked about, with its entry and field', () => {
    const r = readNote('Greased the kingpin.', { at: AT, parts: ['left kingpin', 'right kingpin'] });
    expect(r.questions).toMatchObject([{ choices: ['left kingpin', 'right kingpin'], fills: { list: 'entries', index: 0, field: 'part' } }]);
  });
  it('is the one just spoken of', () => {
    const r = readNote('Right kingpin is in. Greased the kingpin.', { at: AT, parts: ['left kingpin', 'right kingpin'] });
    expect(r.questions).toEqual([]);
    expect(r.entries.map(e => 'part' in e && e.part)).toEqual(['right kingpin', 'right kingpin']);
  });
});

describe('across notes', () => {
  const prior = ['Cleaned and greased the left kingpin.'];
  it.each(['Same for the right one.', 'Same on the right.', 'Ditto the right one.', 'Did the same on the right.'])('%s', text => {
    expect(readNote(text, { at: AT, prior }).entries.map(e => [e.kind, 'part' in e && e.part])).toEqual([['work', 'right kingpin'], ['work', 'right kingpin']]);
  });
  it('"it" is the last thing named', () => {
    expect(readNote('Painted it.', { at: AT, prior: ['The seat pan is off.'] }).entries).toMatchObject([{ kind: 'work', part: 'seat pan', action: 'paint' }]);
  });

  it('takes a word that every object has for a word', () => {
    for (const text of ['constructor', 'Painted the constructor.', 'The constructor is cracked, need two constructors.', 'constructor constructor off 3 constructor', 'Where did I put the constructor?', '5 constructor of constructor at 4 constructor each']) {
      for (const e of readNote(text, { at: '2026-05-05T10:00:00-04:00' }).entries) for (const v of Object.values(e)) expect(typeof v, text).not.toBe('function');
    }
  });
});
