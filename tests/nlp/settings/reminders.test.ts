import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { NOT_PLACES, PLACE_PHRASES } from '../../../nlp/settings/corpus/place.ts';
import { AT, NOT_REPLIES, REPLY_PHRASES } from '../../../nlp/settings/corpus/put-off.ts';
import { NOT_REMINDERS, REMINDER_PHRASES } from '../../../nlp/settings/corpus/reminders.ts';
import { clockTime } from '../../../nlp/settings/clock-time.ts';
import { readShopSetting } from '../../../nlp/settings/place.ts';
import { readUnaskedReply } from '../../../nlp/settings/put-off.ts';
import { readReminderSetting } from '../../../nlp/settings/reminders.ts';

const readers = (text: string) => ({ reminder: readReminderSetting(text), reply: readUnaskedReply(text, AT), shop: readShopSetting(text) });
const nothing = { reminder: undefined, reply: undefined, shop: undefined };

describe('a sentence means its setting and no other', () => {
  test.each(REMINDER_PHRASES)('%s', (text, means) => expect(readers(text)).toEqual({ ...nothing, reminder: means }));
  test.each(REPLY_PHRASES)('%s', (text, means) => expect(readers(text)).toEqual({ ...nothing, reply: means }));
  test.each(PLACE_PHRASES)('%s', (text, means) => expect(readers(text)).toEqual({ ...nothing, shop: means }));
});

describe('what must never be taken for a setting', () => {
  test.each(NOT_REMINDERS)('no choice: %s', text => expect(readReminderSetting(text)).toBeUndefined());
  test.each(NOT_REPLIES)('no reply: %s', text => expect(readUnaskedReply(text, AT)).toBeUndefined());
  test.each(NOT_PLACES)('no place: %s', text => expect(readShopSetting(text)).toBeUndefined());
});

/** Everything that other readers are shown: none of it is a setting, and only few words could be a reply. */
const texts = (): string[] => {
  const dir = join(import.meta.dirname, '../../../nlp/meanings/corpus');
  const corpora = readdirSync(dir, { recursive: true, encoding: 'utf8' }).filter(f => f.endsWith('.ts')).flatMap(f => [...readFileSync(join(dir, f), 'utf8').matchAll(/'((?:[^'\\\n]|\\.)+)'|"((?:[^"\\\n]|\\.)+)"/g)].map(m => (m[1] ?? m[2])!.replace(/\\'/g, "'")));
  return corpora.filter(t => t.includes(' ') && !t.startsWith('.'));
};
test('the corpora of other meanings hold no setting', () => {
  expect(texts().length).toBeGreaterThan(200);
  expect(texts().filter(t => readReminderSetting(t) ?? readShopSetting(t) ?? readUnaskedReply(t, AT))).toEqual([]);
});
const notes = join(import.meta.dirname, '../../../../shared/contract/dev-notes.jsonl');
test.skipIf(!existsSync(notes))('nor do annotated notes (skipped where ../shared/contract is not there)', () => {
  const all = readFileSync(notes, 'utf8').split('\n').filter(Boolean).map(l => (JSON.parse(l) as { text: string }).text);
  expect(all.filter(t => readReminderSetting(t) ?? readShopSetting(t))).toEqual([]);
  expect(all.filter(t => { const r = readUnaskedReply(t, AT); return r && !r.plain; })).toEqual([]);
});

test('times of day, the bare ones before or after noon', () => {
  expect([['half six', 'am'], ['half six', 'pm'], ['quarter past nine', 'pm'], ['9.45', 'pm'], ['2130', 'am'], ['12', 'am'], ['noon', 'am'], ['one at night', 'pm'], ['25', 'am'], ['6:75', 'am']].map(([t, bare]) => clockTime(t!, bare as 'am')))
    .toEqual(['06:30', '18:30', '21:15', '21:45', '21:30', '00:00', '12:00', '01:00', undefined, undefined]);
});
