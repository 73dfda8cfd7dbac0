import { describe, expect, test } from 'vitest';
import { chooseMorning } from '../../../bot/reminders/settings.ts';
import { hoursFrom, reminderShop } from './shop.ts';

/** Wednesday 6 May 2026 in Paris, summer time (+02:00). No morning word, so that each occasion stands alone. */
const shopWithout = () => { const s = reminderShop(); chooseMorning(s.log.store, undefined); return s; };

describe('each occasion is said when it comes, once', () => {
  test('an order is late the day after its day', () => {
    const s = shopWithout();
    s.facts('2026-05-01T10:00:00+02:00', { kind: 'want', item: 'thermostat gasket', for: 'radiator' }, { kind: 'order', item: 'thermostat gasket', source: 'the counter', expected: '2026-05-05' });
    expect(s.look('2026-05-05T12:00:00+02:00')).toBeUndefined();
    expect(s.look('2026-05-06T08:00:00+02:00')).toContain("Thermostat gasket from the counter was due yesterday and isn't here; it is for the radiator.");
    expect(s.look('2026-05-06T08:01:00+02:00')).toBeUndefined();
    expect(s.look('2026-05-09T08:01:00+02:00')).toBeUndefined();
  });
  test('an order that came is not late', () => {
    const s = shopWithout();
    s.facts('2026-05-01T10:00:00+02:00', { kind: 'order', item: 'gasket', expected: '2026-05-05' }, { kind: 'arrival', item: 'gasket' });
    expect(s.look('2026-05-06T08:00:00+02:00')).toBeUndefined();
  });
  test('a recheck by a date', () => {
    const s = shopWithout();
    s.facts('2026-05-01T10:00:00+02:00', { kind: 'recheck', part: 'head bolts', do: 'retorque', due: '2026-05-06' });
    expect(s.look('2026-05-05T20:00:00+02:00')).toBeUndefined();
    expect(s.look('2026-05-06T07:00:00+02:00')).toContain('Due: retorque the head bolts, today.');
    expect(s.look('2026-05-07T07:00:00+02:00')).toBeUndefined();
  });
  test.each([['hours', 'running time', 'h', '2 hours running'], ['miles', 'distance', 'mi', '2 miles']] as const)('a recheck by %s', (unit, what, short, said) => {
    const s = shopWithout();
    s.facts('2026-05-01T10:00:00+02:00', { kind: 'reading', part: 'Heron', what, value: 100, unit: short }, { kind: 'recheck', part: 'head bolts', do: 'retorque', after: 2, unit });
    s.facts('2026-05-02T10:00:00+02:00', { kind: 'reading', part: 'Heron', what, value: 101.5, unit: short });
    expect(s.look('2026-05-02T11:00:00+02:00')).toBeUndefined();
    s.facts('2026-05-03T10:00:00+02:00', { kind: 'reading', part: 'Heron', what, value: 102, unit: short });
    expect(s.look('2026-05-03T11:00:00+02:00')).toContain(`Due: retorque the head bolts, ${said}.`);
    expect(s.look('2026-05-03T12:00:00+02:00')).toBeUndefined();
  });
  test('a part due back from outside work', () => {
    const s = shopWithout();
    s.facts('2026-05-01T10:00:00+02:00', { kind: 'out', part: 'block', where: 'the machinist', do: 'bore', until: '2026-05-06' });
    expect(s.look('2026-05-05T12:00:00+02:00')).toBeUndefined();
    expect(s.look('2026-05-06T07:30:00+02:00')).toContain('The block is due back from the machinist today.');
    expect(s.look('2026-05-07T07:30:00+02:00')).toBeUndefined();
  });
  test('a wait that the person set is over', () => {
    const s = shopWithout();
    s.facts('2026-05-04T10:00:00+02:00', { kind: 'wait', part: 'fuel tank', after: 48, unit: 'hours' }, { kind: 'job', do: 'fit', part: 'fuel tank' });
    expect(s.look('2026-05-06T09:59:00+02:00')).toBeUndefined();
    expect(s.look('2026-05-06T10:00:00+02:00')).toContain('The fuel tank was left alone as long as you said. Then: fit it.');
    expect(s.look('2026-05-06T10:01:00+02:00')).toBeUndefined();
  });
  test('a coat has had its usual time, and its sheet decides', () => {
    const s = shopWithout();
    s.facts('2026-05-05T16:00:00+02:00', { kind: 'work', part: 'hood', action: 'prime', product: 'primer' });
    expect(s.look('2026-05-06T07:59:00+02:00')).toBeUndefined();
    expect(s.look('2026-05-06T08:00:00+02:00')).toContain('The primer on the hood has had its usual 16 h; its sheet decides.');
  });
  test('a cure that ended long ago is no news', () => {
    const s = shopWithout();
    s.facts('2026-04-01T10:00:00+02:00', { kind: 'wait', part: 'fuel tank', after: 2, unit: 'days' });
    expect(s.look('2026-05-06T10:00:00+02:00')).toBeUndefined();
  });
  test('help tomorrow, what stands in its way and what else wants two', () => {
    const s = shopWithout();
    s.facts('2026-05-04T10:00:00+02:00', { kind: 'want', item: 'sling', for: 'lift engine' }, { kind: 'hands', when: '2026-05-07', for: 'lift engine' }, { kind: 'job', do: 'remove', part: 'rear axle' });
    expect(s.look('2026-05-05T12:00:00+02:00')).toBeUndefined();
    const said = s.look('2026-05-06T08:00:00+02:00');
    expect(said).toContain('Help tomorrow: lift engine. Still in the way: sling not bought yet. Also for two: remove the rear axle.');
    expect(said).toContain('Lifting: rated gear');
    expect(s.look('2026-05-06T09:00:00+02:00')).toBeUndefined();
  });
  test('only temporary for longer than three weeks', () => {
    const s = shopWithout();
    s.facts('2026-04-15T10:00:00+02:00', { kind: 'fit', part: 'seat', state: 'temporary', with: 'two bolts' }, { kind: 'fit', part: 'hood', state: 'on' });
    expect(s.look('2026-05-06T20:00:00+02:00')).toBeUndefined();
    expect(s.look('2026-05-07T07:00:00+02:00')).toContain('The seat has been only on for now since Wed 15 Apr (two bolts).');
    s.facts('2026-05-07T10:00:00+02:00', { kind: 'fit', part: 'seat', state: 'temporary' });
    expect(s.look('2026-05-08T10:01:00+02:00')).toBeUndefined();
    expect(s.look('2026-05-29T10:01:00+02:00')).toContain('The seat');
  });
});

describe('rain on its way', () => {
  test('onto what lies outside, and onto a fresh coat', () => {
    const s = shopWithout();
    s.facts('2026-05-06T09:00:00+02:00', { kind: 'stow', part: 'fender', where: 'out in the yard' }, { kind: 'stow', part: 'grille', where: 'shelf by the lathe' }, { kind: 'work', part: 'hood', action: 'paint', product: 'enamel' });
    s.weather(hoursFrom('2026-05-06T07:00:00Z', '........rr'));
    expect(s.look('2026-05-06T11:01:00+02:00')).toContain('Rain from 17:00: the fender is out in the yard.\nRain from 17:00: the enamel on the hood is fresh; get it under a roof if it is outside.');
    expect(s.look('2026-05-06T13:00:00+02:00')).toBeUndefined();
    // The licence of the data asks for its owner's name where it is used.
    expect(s.say('2026-05-06T13:01:00+02:00', 'why').say).toContain('Made up for a test, fetched 2 days ago');
  });
  test('not while it is far off, nor when it rains already, nor onto what is under a roof', () => {
    const s = shopWithout();
    s.facts('2026-05-06T09:00:00+02:00', { kind: 'stow', part: 'grille', where: 'shelf by the lathe' }, { kind: 'stow', part: 'fender', where: 'outside' });
    s.weather(hoursFrom('2026-05-06T07:00:00Z', '........rr'));
    expect(s.look('2026-05-06T09:30:00+02:00')).toBeUndefined();
    s.weather(hoursFrom('2026-05-06T07:00:00Z', 'rrrrrrrrrr'));
    expect(s.look('2026-05-06T12:30:00+02:00')).toBeUndefined();
  });
  test('in the night is said before the quiet begins', () => {
    const s = shopWithout();
    s.facts('2026-05-06T09:00:00+02:00', { kind: 'stow', part: 'fender', where: 'outside' });
    s.weather(hoursFrom('2026-05-06T16:00:00Z', '..........rr'));
    expect(s.look('2026-05-06T18:30:00+02:00')).toContain('Rain from tomorrow 04:00: the fender is outside.');
  });
  test("the person's word wins over the service", () => {
    const s = shopWithout();
    s.facts('2026-05-06T09:00:00+02:00', { kind: 'stow', part: 'fender', where: 'outside' }, { kind: 'weather', sky: 'dry', from: '2026-05-06', to: '2026-05-06' });
    s.weather(hoursFrom('2026-05-06T07:00:00Z', '....rrrr'));
    expect(s.look('2026-05-06T09:30:00+02:00')).toBeUndefined();
  });
});

describe('the morning word', () => {
  const jobs = (s: ReturnType<typeof reminderShop>) => s.facts('2026-05-05T20:00:00+02:00', { kind: 'job', do: 'rebuild', part: 'magneto' }, { kind: 'job', do: 'blast', part: 'rear wheel' });
  test('comes at seven until another hour is chosen, once a day', () => {
    const s = reminderShop();
    jobs(s);
    expect(s.look('2026-05-06T06:59:00+02:00')).toBeUndefined();
    expect(s.look('2026-05-06T07:00:00+02:00')).toMatch(/^Next: /);
    expect(s.look('2026-05-06T07:01:00+02:00')).toBeUndefined();
    expect(s.look('2026-05-07T07:00:00+02:00')).toMatch(/^Next: /);
  });
  test('a computer that slept says it late, but not in the afternoon', () => {
    const s = reminderShop();
    jobs(s);
    expect(s.look('2026-05-06T10:30:00+02:00')).toMatch(/^Next: /);
    const other = reminderShop();
    jobs(other);
    expect(other.look('2026-05-06T13:00:00+02:00')).toBeUndefined();
  });
  test('wet working hours: what can be done indoors', () => {
    const s = reminderShop();
    jobs(s);
    s.weather(hoursFrom('2026-05-06T04:00:00Z', `${'.'.repeat(11)}rrrr`));
    expect(s.look('2026-05-06T07:00:00+02:00')).toMatch(/^Rain from 17:00 to 21:00, in your hours\. Indoors: rebuild the magneto(?!.*rear wheel)/);
  });
  test('a dry spell that ends: outdoors first', () => {
    const s = reminderShop();
    jobs(s);
    s.weather(hoursFrom('2026-05-06T04:00:00Z', `${'.'.repeat(20)}${'r'.repeat(24)}`));
    expect(s.look('2026-05-06T07:00:00+02:00')).toMatch(/^Dry today, rain from tomorrow 02:00\. Outdoors first: blast the rear wheel/);
  });
  test('nothing to do, or a shop where nothing was noted for ten days: no word', () => {
    const s = reminderShop();
    s.facts('2026-05-05T20:00:00+02:00', { kind: 'remark', text: 'swept up' });
    expect(s.look('2026-05-06T07:00:00+02:00')).toBeUndefined();
    const asleep = reminderShop();
    jobs(asleep);
    expect(asleep.look('2026-05-15T07:00:00+02:00')).toMatch(/^Next/);
    expect(asleep.look('2026-05-16T07:00:00+02:00')).toBeUndefined();
  });
});

test('several at once: three lines, the rest on "more", all of them said', () => {
  const s = shopWithout();
  s.facts('2026-05-01T10:00:00+02:00', ...['belt', 'hose', 'cap', 'seal', 'clip'].map(item => ({ kind: 'order' as const, item, expected: '2026-05-04' })));
  const said = s.look('2026-05-06T08:00:00+02:00')!.split('\n');
  expect(said.filter(l => l.includes("isn't here"))).toHaveLength(3);
  expect(said).toContain('2 more; say "more".');
  expect(s.look('2026-05-06T08:01:00+02:00')).toBeUndefined();
  expect(s.say('2026-05-06T08:02:00+02:00', 'more').say).toContain('Seal was due');
});
