import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { chooseMorning, reminderSettings } from '../../../bot/reminders/settings.ts';
import { outbox } from '../../../domain/store/outbox.ts';
import { pair } from '../../../domain/store/people.ts';
import { repliesTo } from '../../../domain/store/replies.ts';
import { readSetting } from '../../../domain/store/settings.ts';
import { hoursFrom, reminderShop } from './shop.ts';

const late = (s: ReturnType<typeof reminderShop>, ...items: string[]) => {
  chooseMorning(s.log.store, undefined);
  s.facts('2026-05-01T10:00:00+02:00', ...items.map(item => ({ kind: 'order' as const, item, expected: '2026-05-04' })));
};

describe('a word unasked can be', () => {
  test.each([
    ['later', '2026-05-06T11:02:00+02:00', 'Put off until 11:02.'],
    ['not now', '2026-05-06T11:02:00+02:00', 'Put off until 11:02.'],
    ['remind me in half an hour', '2026-05-06T08:32:00+02:00', 'Put off until 08:32.'],
    ['tomorrow', '2026-05-07T07:00:00+02:00', 'Put off until tomorrow 07:00.'],
    ['remind me Monday', '2026-05-11T07:00:00+02:00', 'Put off until Mon 11 May 07:00.'],
    ['remind me tonight', '2026-05-06T18:00:00+02:00', 'Put off until 18:00.'],
    ['put off word 1', '2026-05-06T11:02:00+02:00', 'Put off until 11:02.'],
  ])('put off: %s', (words, again, reply) => {
    const s = reminderShop();
    late(s, 'gasket');
    expect(s.look('2026-05-06T08:00:00+02:00')).toContain('Gasket was due');
    expect(s.say('2026-05-06T08:02:00+02:00', words).say).toBe(reply);
    expect(s.look(new Date(Date.parse(again) - 60_000).toISOString())).toBeUndefined();
    expect(s.look(again)).toContain('Gasket was due');
    expect(s.look(new Date(Date.parse(again) + 60_000).toISOString())).toBeUndefined();
  });
  test('put off, and dropped when it is over by then', () => {
    const s = reminderShop();
    late(s, 'gasket');
    s.look('2026-05-06T08:00:00+02:00');
    s.say('2026-05-06T08:02:00+02:00', 'remind me tomorrow');
    s.facts('2026-05-06T12:00:00+02:00', { kind: 'arrival', item: 'gasket' });
    expect(s.look('2026-05-07T08:00:00+02:00')).toBeUndefined();
  });
  test('stopped: rain onto one part on any later day, others still told', () => {
    const s = reminderShop();
    chooseMorning(s.log.store, undefined);
    s.facts('2026-05-06T09:00:00+02:00', { kind: 'stow', part: 'fender', where: 'outside' });
    s.weather(hoursFrom('2026-05-06T07:00:00Z', '...rr'));
    expect(s.look('2026-05-06T09:30:00+02:00')).toContain('fender');
    expect(s.say('2026-05-06T09:31:00+02:00', 'stop telling me that').say).toContain("I won't say that again");
    s.facts('2026-05-07T08:00:00+02:00', { kind: 'stow', part: 'grille', where: 'outside' });
    s.weather(hoursFrom('2026-05-07T07:00:00Z', '...rr'));
    const next = s.look('2026-05-07T09:30:00+02:00');
    expect(next).toContain('grille');
    expect(next).not.toContain('fender');
  });
  test('stopped for one thing by its name, and brought back', () => {
    const s = reminderShop();
    late(s, 'gasket', 'belt');
    expect(s.say('2026-05-06T07:30:00+02:00', "don't remind me about the gasket").say).toContain("won't speak of the gasket");
    expect(s.look('2026-05-06T08:00:00+02:00')).toMatch(/^(?!.*[Gg]asket).*[Bb]elt/s);
    s.say('2026-05-06T08:30:00+02:00', 'remind me about the gasket again');
    expect(s.look('2026-05-06T09:00:00+02:00')).toContain('Gasket was due');
  });
  test('stopped before it comes again', () => {
    const s = reminderShop();
    late(s, 'gasket');
    s.look('2026-05-06T08:00:00+02:00');
    s.say('2026-05-06T08:01:00+02:00', 'later');
    s.say('2026-05-06T08:02:00+02:00', 'stop word 1');
    expect(s.look('2026-05-06T15:00:00+02:00')).toBeUndefined();
  });
  test('asked why', () => {
    const s = reminderShop();
    late(s, 'gasket');
    s.look('2026-05-06T08:00:00+02:00');
    expect(s.say('2026-05-06T08:01:00+02:00', 'why').say).toContain('say it is here, or the new day');
  });
});

test('few words after another note are about that note', () => {
  const s = reminderShop();
  late(s, 'gasket');
  s.look('2026-05-06T08:00:00+02:00');
  s.say('2026-05-06T08:01:00+02:00', 'radiator is off');
  expect(s.say('2026-05-06T08:02:00+02:00', 'more').say).toBe('That was all.');
  expect(s.say('2026-05-06T08:02:30+02:00', 'later').say).not.toContain('Put off');
  expect(s.say('2026-05-06T08:03:00+02:00', 'remind me tomorrow').say).toContain('Put off until tomorrow');
});

describe('said once', () => {
  test('after a restart', async () => {
    const dir = mkdtempSync(join(tmpdir(), 'reminders-'));
    const s = reminderShop('Europe/Paris', dir);
    late(s, 'gasket');
    expect(s.look('2026-05-06T08:00:00+02:00')).toContain('Gasket');
    await s.close();
    const again = reminderShop('Europe/Paris', dir);
    expect(again.look('2026-05-06T08:01:00+02:00')).toBeUndefined();
    expect(again.say('2026-05-06T08:02:00+02:00', 'later').say).toContain('Put off');
    await again.close();
    const third = reminderShop('Europe/Paris', dir);
    expect(third.look('2026-05-06T11:03:00+02:00')).toContain('Gasket');
    await third.close();
  });
  test('by two programs on one log, each seeing what the other was told', async () => {
    const dir = mkdtempSync(join(tmpdir(), 'reminders-'));
    const one = reminderShop('Europe/Paris', dir);
    late(one, 'gasket');
    const two = reminderShop('Europe/Paris', dir);
    expect([two.look('2026-05-06T08:00:00+02:00'), one.look('2026-05-06T08:00:00+02:00')].filter(Boolean)).toHaveLength(1);
    one.facts('2026-05-06T09:00:00+02:00', { kind: 'order', item: 'hose', expected: '2026-05-05' });
    expect([one.look('2026-05-06T10:00:00+02:00'), two.look('2026-05-06T10:00:00+02:00')].filter(Boolean)).toHaveLength(1);
    await one.close();
    await two.close();
  });
  test('a program cut off before the word was kept says it again', () => {
    const s = reminderShop();
    late(s, 'gasket');
    expect(() => s.log.store.transaction(() => { s.look('2026-05-06T08:00:00+02:00'); throw new Error('power cut'); })).toThrow('power cut');
    expect(s.look('2026-05-06T08:01:00+02:00')).toContain('Gasket');
  });
});

test('it stands in the talk after the newest exchange, and goes to each paired person by the outbox with things to tap', () => {
  const s = reminderShop('Europe/Paris', ':memory:', 'telegram');
  pair(s.log.store, 'telegram', 41, '2026-05-01T10:00:00+02:00');
  pair(s.log.store, 'telegram', 42, '2026-05-01T10:00:00+02:00');
  late(s, 'gasket');
  s.look('2026-05-06T08:00:00+02:00');
  const sent = [outbox.byKey(s.log.store, 'unasked:1:41')!, outbox.byKey(s.log.store, 'unasked:1:42')!].map(r => JSON.parse(r.body));
  expect(sent.map(o => o.target)).toEqual(['41', '42']);
  expect(sent[0]!.say).toContain('Gasket was due');
  expect(sent[0]!.buttons.map((b: { send: string }) => b.send)).toEqual(['more of word 1', 'put off word 1', 'stop word 1']);
  expect(repliesTo(s.log.store, 1).map(r => JSON.parse(r).say)[1]).toContain('Gasket was due');
});

describe('choices by words', () => {
  const said = (words: string) => { const s = reminderShop(); return { s, reply: s.say('2026-05-06T08:00:00+02:00', words) }; };
  test('are acted on and read back in a line', () => {
    for (const [words, line] of [
      ['morning word at half six', 'Morning word at 06:30.'], ['no morning word', 'No morning word from now on.'], ['quiet from nine at night to seven', 'Quiet from 21:00 to 07:00.'],
      ['a mile costs 0.45', 'A mile counts as 0.45.'], ['no rain warnings', "I won't speak of rain on its way unasked."], ['no reminders', 'I will say nothing unasked.'],
      ["we're at 52.345, -7.654", 'The shop is at 52.35° north, 7.65° west: used for daylight; nothing is fetched unless you say "fetch the forecast".'],
    ]) expect(said(words!).reply.say).toBe(line);
  });
  test('change what is kept', () => {
    const { s } = said('Morning word at half six. Quiet from ten to six.');
    expect(reminderSettings(s.log.store)).toMatchObject({ morning: '06:30', quiet: { from: '22:00', to: '06:00' } });
    s.say('2026-05-06T08:00:00+02:00', 'no morning word and no rain warnings');
    expect(reminderSettings(s.log.store).morning).toBeUndefined();
    expect([...reminderSettings(s.log.store).off]).toEqual(['rain']);
    s.say('2026-05-06T08:00:00+02:00', "we're at 52.345, -7.654");
    expect(readSetting(s.log.store, 'place')).toBe('52.35,-7.65');
  });
  test('leave the rest of a note to be read', () => {
    const { s, reply } = said('No morning word. Radiator is off.');
    expect(reply.say).toContain('No morning word');
    expect(reply.entries.map(e => e.entry.kind)).toEqual(['fit']);
    expect(reminderSettings(s.log.store).morning).toBeUndefined();
  });
});
