import { afterEach, describe, expect, it } from 'vitest';
import { readList } from '../../../bot/planning/list-asked.ts';
import { shopInMemory } from '../shop-in-memory.ts';

const AT = '2026-06-02T10:00:00+02:00';
let shop = shopInMemory();
afterEach(() => { shop.close(); shop = shopInMemory(); });
const say = (...words: string[]): string => words.map(w => shop.say(w, AT).say).at(-1)!;

describe('what of the shop is asked to be listed', () => {
  it.each([
    ["what's out", 'out'], ['what have I got out for work?', 'out'], ["what's still at the machinist", 'out'], ["what's due back", 'out'],
    ["what's curing", 'curing'], ['is anything still wet', 'curing'], ['what must I leave alone', 'curing'], ['how long till I can recoat the primer', 'curing'], ['when can I put another coat on', 'curing'],
    ['what rules do I have', 'rules'], ['list the rules', 'rules'], ['what needs two people', 'hands'], ['which jobs need a hoist', 'hands'], ['what do I need help for', 'hands'],
    ['when do I work', 'hours'], ['what are my hours', 'hours'], ['what hours do you plan with', 'hours'],
    ["how's the clutch", { state: 'clutch' }], ["what's the state of the front axle?", { state: 'front axle' }], ['what needs doing on the brakes', { state: 'brakes' }], ['how are the wheels coming along', { state: 'wheels' }],
    ["what's driving the finish", { kind: 'finish' }], ["what's the critical path?", { kind: 'finish' }], ['who has the magneto', { kind: 'where', part: 'magneto' }],
  ])('%s', (words, means) => { expect(readList(words)).toEqual(means); });
  it.each(["what's out of round", "what's next", 'what do I need to buy', 'who has the cheapest belt', 'how long till the radiator is back', 'the rules are simple', 'what needs a coat of paint', 'when is the tractor ready', 'how was the radiator', "how's the radiator held on", 'how is the weather', "how's it going"])
  ('is not asked by: %s', words => { expect(readList(words)).toBeUndefined(); });
});

describe('the lists', () => {
  it('have what is away with its day, and not what is back', () => {
    say('switch to Heron', 'sent the magneto to the rewinder, back on the 20th', 'radiator is out at the radiator shop');
    expect(say("what's out")).toMatch(/^2 away for work:\n• Magneto.*back Sat 20 Jun\n• Radiator.*no day said/);
    say('the magneto is back');
    expect(say("what's out")).toMatch(/^1 away/);
  });
  it('have what cures, by the word said or by its usual time', () => {
    say('switch to Heron', 'sealed the tank, leave it till Friday', 'primed the bonnet');
    const told = say("what's curing");
    expect(told).toContain('Tank: until Fri 5 Jun');
    expect(told).toMatch(/Bonnet \(.*\): until .*, by its usual time/);
  });
  it('have the person\'s own orders, those met last and marked', () => {
    say('switch to Heron', 'fan goes on before the radiator', 'pump goes on before the fan', 'the pump is on for good');
    expect(say('list the rules')).toBe('1 in an order of yours:\n• Fan before radiator\n• Pump before fan (done)');
  });
  it('tell how a part stands, and what belongs to it', () => {
    say('switch to Heron', 'clutch plate is worn but it will do', 'clutch fingers are set', 'need a clutch bearing', 'grease the clutch shaft');
    const told = say("how's the clutch");
    for (const line of ['Clutch plate: worn', 'will do', 'Clutch bearing: to get', 'Clutch shaft: to do: grease']) expect(told).toContain(line);
    say('radiator core is leaking', 'sent the radiator core to the radiator shop', 'the radiator core is back');
    expect(say("how's the radiator core")).not.toContain('leaking');
    say('magneto is hung on one bolt for now');
    expect(say("where's the magneto")).toBe('Magneto: on the machine, on for now.');
  });
  it('say so where there is nothing', () => {
    expect([say("what's out"), say("what's curing"), say('list the rules'), say('what needs two people')]).toEqual(['Nothing is away for work.', 'Nothing has to be left alone now.', 'You put nothing in order.', 'Nothing that is open takes two.']);
  });
  it('tell the hours that are planned with, and where they come from', () => {
    expect(say('when do I work')).toContain('assumed, as you never said');
    say('two hours most evenings');
    expect(say('when do I work')).toContain('Mon–Thu 18:00–20:00, as you said');
  });
});
