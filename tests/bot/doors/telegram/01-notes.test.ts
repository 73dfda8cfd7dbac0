import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { intake } from '../../../../domain/store/intake.ts';
import { BENCH } from '../../../../bot/incoming.ts';
import { openHouse, OWNER, rowsIn, type House } from './harness.ts';
import { startLoopback, until, type Loopback } from './loopback/loopback.ts';

let cloud: Loopback;
let house: House;
beforeEach(async () => { cloud = await startLoopback(); });
afterEach(async () => { await house.close(); await cloud.close(); });

describe('a typed note', () => {
  test('is kept as it came, taken once, and answered where it was said', async () => {
    house = openHouse(cloud);
    expect(await house.door.opened).toBe('loopback_pawl_bot');
    const id = cloud.sendText(OWNER, 'left front wheel is off', { date: 1_773_480_000 });
    const [reply] = await cloud.waitSent(1);
    expect(reply).toMatchObject({ chat: OWNER, text: 'noted: left front wheel is off' });
    const key = `tg:${cloud.botId}:m:${OWNER}:${id}`;
    // 1773480000 is 2026-03-14T09:20:00Z (date -u -d @1773480000); Dublin keeps UTC until the last Sunday of March.
    expect(house.taken).toMatchObject([{ key, door: 'telegram', chat: BENCH, at: '2026-03-14T09:20:00+00:00', text: 'left front wheel is off', target: String(OWNER) }]);
    expect(JSON.parse(intake.byKey(house.store, key)!.body)).toMatchObject({ message: { text: 'left front wheel is off' } });
  });

  test('in summer time bears the offset of the place', async () => {
    house = openHouse(cloud);
    // 1785578400 is 2026-08-01T10:00:00Z; Ireland is an hour ahead from 29 March to 25 October 2026.
    cloud.sendText(OWNER, 'hot in the shop', { date: 1_785_578_400 });
    await cloud.waitSent(1);
    expect(house.taken[0]!.at).toBe('2026-08-01T11:00:00+01:00');
  });

  test('odd signs come through as they are', async () => {
    house = openHouse(cloud);
    const odd = ['a\0b', '\ud800 alone', '\u202egnirts', '🚜'.repeat(1000), "'; DROP TABLE note; --", '" OR NEAR('];
    for (const text of odd) cloud.sendText(OWNER, text);
    await cloud.waitSent(odd.length);
    expect(house.taken.map(m => m.text)).toEqual(odd);
  });

  test('notes of a chat are taken in their order, many in one batch', async () => {
    house = openHouse(cloud);
    const said = Array.from({ length: 150 }, (_, i) => `note ${i + 1}`);
    said.forEach(text => cloud.sendText(OWNER, text));
    await until(() => house.taken, t => t.length === 150);
    expect(house.taken.map(m => m.text)).toEqual(said);
  });

  test('the same message under another update number is one note', async () => {
    house = openHouse(cloud);
    cloud.sendText(OWNER, 'five nuts in the blue tin');
    await cloud.waitSent(1);
    cloud.update({ message: cloud.cloud.message(OWNER, 1) } as never);
    cloud.cloud.jumpUpdateId(17); // after a quiet week the numbers begin anew (Bot API, Update)
    cloud.update({ message: cloud.cloud.message(OWNER, 1) } as never);
    cloud.sendText(OWNER, 'and the last');
    await cloud.waitSent(2);
    expect(house.taken.map(m => m.text)).toEqual(['five nuts in the blue tin', 'and the last']);
  });

  test('a start is greeted and is no note; a stroke before a word is no part of it', async () => {
    house = openHouse(cloud);
    const command = (text: string, length: number) => cloud.send(OWNER, { text, entities: [{ type: 'bot_command', offset: 0, length }] });
    command('/start', 6);
    command('/next', 5);
    command('/what_next@loopback_pawl_bot on Heron', 28);
    const sent = await cloud.waitSent(3);
    expect(sent[0]!.text).toMatch(/^Say what you do/);
    expect(house.taken.map(m => m.text)).toEqual(['next', 'what next on Heron']);
  });
});

describe('an edit', () => {
  test('comes as a message of its own that names the one it replaces', async () => {
    house = openHouse(cloud);
    const id = cloud.sendText(OWNER, 'torqued to 65', { date: 1_773_480_000 });
    await cloud.waitSent(1);
    cloud.edit(OWNER, id, 'torqued to 68', { date: 1_773_480_060 });
    // Within the same second: the date is the same, what is said is not.
    cloud.edit(OWNER, id, 'torqued to 66', { date: 1_773_480_060 });
    cloud.edit(OWNER, id, 'torqued to 66', { date: 1_773_480_060 });
    await cloud.waitSent(3);
    const original = `tg:${cloud.botId}:m:${OWNER}:${id}`;
    expect(house.taken.slice(1)).toMatchObject([
      { edits: original, text: 'torqued to 68', at: '2026-03-14T09:20:00+00:00' }, { edits: original, text: 'torqued to 66' },
    ]);
    expect(new Set(house.taken.map(m => m.key)).size).toBe(3);
    expect(rowsIn(house.store, 'intake')).toBe(3);
  });
});
