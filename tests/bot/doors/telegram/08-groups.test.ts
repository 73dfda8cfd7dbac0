import { afterEach, beforeEach, expect, test } from 'vitest';
import { openHouse, OWNER, rowsIn, type House } from './harness.ts';
import { startLoopback, until, type Loopback } from './loopback/loopback.ts';

let cloud: Loopback;
let house: House;
const SHED = -1004001;
beforeEach(async () => { cloud = await startLoopback(); cloud.group(SHED, 'The shed'); });
afterEach(async () => { await house.close(); await cloud.close(); });

test('a group is a talk of its own, beside the private one', async () => {
  house = openHouse(cloud, { paired: [OWNER, 502] });
  cloud.sendText(OWNER, 'in private');
  cloud.sendText(OWNER, 'in the shed', { chat: SHED });
  cloud.sendText(502, 'me too', { chat: SHED });
  cloud.sendText(777, 'a visitor', { chat: SHED });
  cloud.sendText(502, 'from the other\'s room');
  const sent = await cloud.waitSent(4);
  expect(house.taken.map(m => [m.chat, m.target, m.text])).toEqual([
    ['bench', '501', 'in private'], [`tg:${SHED}`, String(SHED), 'in the shed'], [`tg:${SHED}`, String(SHED), 'me too'], ['bench', '502', 'from the other\'s room'],
  ]);
  expect(sent.map(s => s.chat).sort()).toEqual([SHED, SHED, 501, 502].sort());
  expect(rowsIn(house.store, 'intake')).toBe(4);
});

test('the bot\'s own name in front is its address; another\'s name is part of the note', async () => {
  house = openHouse(cloud);
  const mention = (text: string, length: number) => cloud.send(OWNER, { text, entities: [{ type: 'mention', offset: 0, length }] }, { chat: SHED });
  mention('@loopback_pawl_bot: what is next', 18);
  mention('@neighbour comes on Saturday', 10);
  await cloud.waitSent(2);
  expect(house.taken.map(m => m.text)).toEqual(['what is next', '@neighbour comes on Saturday']);
});

test('put into a group it says what it hears there, by what the platform shows it, once', async () => {
  house = openHouse(cloud);
  cloud.addToGroup(OWNER, SHED);
  const [hint] = await cloud.waitSent(1);
  // getMe.can_read_all_group_messages is false while privacy mode is on (Bot API, User).
  expect(hint).toMatchObject({ chat: SHED, text: expect.stringMatching(/only what begins with \/.*turn off group privacy/) as string });
  await house.close(true);
  cloud.repeatAll();
  house = openHouse(cloud, { dir: house.dir });
  await until(cloud.unconfirmed, u => u.length === 0);
  await house.outbox.idle();
  expect(cloud.sent()).toHaveLength(1);
  expect(house.taken).toEqual([]);
});

test('and with privacy off says that it hears all', async () => {
  cloud.cloud.readsAll = true;
  house = openHouse(cloud);
  cloud.addToGroup(OWNER, SHED);
  const [hint] = await cloud.waitSent(1);
  expect(hint!.text).toMatch(/^I hear this group/);
});
