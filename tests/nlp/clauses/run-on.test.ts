import { describe, expect, it } from 'vitest';
import { readNote } from '../../../nlp/read.ts';

const AT = '2026-03-04T15:20:00-05:00';
const read = (text: string, parts: string[] = []): string[] => readNote(text, { at: AT, parts }).entries.map(e => {
  const x = e as Record<string, unknown>;
  return [e.kind, x.part ?? x.item ?? '', x.state ?? x.action ?? x.do ?? x.condition ?? ''].join(' ').trim();
});

/** Whole sentences, cut and framed: what each gives, and what it must not give. */
describe('sentences that a recogniser cut in two', () => {
  it.each([
    ['i lapped the. Exhaust valve in with fine paste', ['work exhaust valve lap']],
    ['torqued the head to thirty. Foot pounds', ['fit head tight', 'reading head']],
    ['the cover went on with. Four bolts', ['fit cover on']],
    ['need a. New gasket for the water pump', ['want gasket']],
    ['i put the new belt on. And tightened it', ['fit belt tight']],
  ])('%s', (text, gives) => { expect(read(text)).toEqual(gives); });
  it('stay apart where each can stand alone', () => {
    expect(read('I have the pump off. On Friday the seal comes.')).toEqual(['fit pump off']);
    expect(readNote("I can't. That's what it's for.", { at: AT }).entries).toEqual([]);
  });
});

describe('topics, headings, places first', () => {
  it.each([
    ['Radiator: core ok, bottom hose perished', ['finding radiator core ok', 'finding radiator bottom hose perished']],
    ['the front tyre now that one is perished', ['finding front tyre perished']],
    ['Both track rod ends were inspected. The left is serviceable.', ['finding left track rod end serviceable']],
    ["Now the pto shaft, that one I had to drive off with the big hammer", ['fit pto shaft off']],
    ['left and right track rods are on', ['fit left track rods on', 'fit right track rods on']],
    ["Hey, the block's back from the machine shop", ['arrival block']],
    ['left stub axle is in um the right one is bent', ['fit left stub axle on', 'finding right stub axle bent']],
  ])('%s', (text, gives) => { expect(read(text)).toEqual(gives); });
});

describe('what only says which one, and what was really so', () => {
  it.each([
    ['The clutch plate that was in it was down to the rivets', ['finding clutch plate down to the rivets']],
    ["It's only the grub screw had sheared", ['finding grub screw sheared']],
    ['I noted that the oil pump strainer was blocked', ['finding oil pump strainer blocked']],
    ['had the crank ground at the engine works', ['work crank grind']],
    ['gearbox has the new seal driven in', ['fit gearbox seal on']],
    ["thats it fitted", []],
    ['the spring was bent and thats it straightened', ['finding spring bent', 'work spring straighten']],
    ['tested the starting lamp, burns blue', ['work starting lamp test', 'finding starting lamp burns blue']],
    ["Tomorrow I grind the inlet valve", ['job inlet valve grind']],
    ['tomorrow the sieve gets cleaned', ['job sieve clean']],
    ['head, block and manifold are all cleaned', ['work head clean', 'work block clean', 'work manifold clean']],
    ['the ignition lock was fitted by whoever had it before', ['remark']],
    ['RH wheel not looked at', []],
  ])('%s', (text, gives) => { expect(read(text)).toEqual(gives); });
});

describe('sets and their rest', () => {
  it.each([
    ['The tines are off. Three are bent, the rest are grand.', ['fit tines off', 'finding tines three bent', 'finding tines rest grand']],
    ['Nine of the knives are sharp, the other three are scrap.', ['finding knives nine sharp', 'finding knives three scrap']],
  ])('%s', (text, gives) => { expect(read(text)).toEqual(gives); });
});
