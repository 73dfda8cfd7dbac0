import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Message, MessageOrigin } from 'grammy/types';
import { isPaired, newPairingCode, PAIRING_MS, pairedPeople, revoke } from '../../../../domain/store/people.ts';
import { pairingLine } from '../../../../bot/doors/telegram/pairing.ts';
import { jpeg, openHouse, OWNER, rowsIn, STRANGER, type House } from './harness.ts';
import { startLoopback, until, type Loopback } from './loopback/loopback.ts';

let cloud: Loopback;
let house: House;
beforeEach(async () => { cloud = await startLoopback(); });
afterEach(async () => { await house.close(); await cloud.close(); });

/** Everything sent so far has been looked at once the poller has confirmed it. */
const seen = () => until(cloud.unconfirmed, u => u.length === 0);
const nothingKept = () => { expect([rowsIn(house.store, 'intake'), rowsIn(house.store, 'outbox'), cloud.sent().length, cloud.downloads().length]).toEqual([0, 0, 0, 0]); };
const otherThan = (code: string) => (code.startsWith('2') ? `3${code.slice(1)}` : `2${code.slice(1)}`);

describe('pairing', () => {
  test('nobody is let in before it; then a code of 40 bits is printed, and none once somebody is', async () => {
    house = openHouse(cloud, { paired: [] });
    // 8 signs out of 32: 2^40.
    expect(pairingLine(house.store, Date.now())).toMatch(/^Pairing code: [2-9A-Z]{4}-[2-9A-Z]{4}$/);
    cloud.sendText(OWNER, 'left front wheel is off');
    await seen();
    nothingKept();
  });

  test('the code typed in private binds the number of its sender, once', async () => {
    house = openHouse(cloud, { paired: [] });
    const code = newPairingCode(house.store, Date.now());
    cloud.sendText(OWNER, ` ${code.toLowerCase()} `);
    const [welcome] = await cloud.waitSent(1);
    expect(welcome).toMatchObject({ chat: OWNER, text: expect.stringMatching(/^Paired\..*24 hours/) as string });
    expect(pairedPeople(house.store, 'telegram')).toEqual([OWNER]);
    expect(pairingLine(house.store, Date.now())).toBeUndefined();
    cloud.sendText(STRANGER, code);
    cloud.sendText(OWNER, 'left front wheel is off');
    await cloud.waitSent(2);
    expect(house.taken.map(m => m.text)).toEqual(['left front wheel is off']);
    expect(isPaired(house.store, 'telegram', STRANGER)).toBe(false);
  });

  test('a repeat of the pairing message after a restart is no note, and the code lies nowhere on the disk', async () => {
    house = openHouse(cloud, { paired: [] });
    const code = newPairingCode(house.store, Date.now());
    cloud.sendText(OWNER, code);
    await cloud.waitSent(1);
    await house.close(true);
    cloud.repeatAll();
    house = openHouse(cloud, { dir: house.dir, paired: [] });
    await seen();
    expect(rowsIn(house.store, 'intake')).toBe(0);
    for (const name of readdirSync(house.dir)) expect(readFileSync(join(house.dir, name), 'latin1')).not.toMatch(new RegExp(`${code}|${code.replace('-', '')}`));
  });

  test('five wrong tries lock it, also for the right code; other words cost no try', async () => {
    house = openHouse(cloud, { paired: [] });
    const code = newPairingCode(house.store, Date.now());
    for (let i = 0; i < 10; i++) cloud.sendText(STRANGER, 'hello there');
    for (let i = 0; i < 5; i++) cloud.sendText(STRANGER, otherThan(code));
    cloud.sendText(OWNER, code);
    await seen();
    nothingKept();
    expect(pairedPeople(house.store, 'telegram')).toEqual([]);
    expect(house.log.join('\n')).toMatch(/wrong pairing code[\s\S]*no longer works/);
    expect(house.log.join('\n')).not.toContain(code);
  });

  test('four wrong tries do not', async () => {
    house = openHouse(cloud, { paired: [] });
    const code = newPairingCode(house.store, Date.now());
    for (let i = 0; i < 4; i++) cloud.sendText(STRANGER, otherThan(code));
    cloud.sendText(OWNER, code);
    await cloud.waitSent(1);
    expect(pairedPeople(house.store, 'telegram')).toEqual([OWNER]);
  });

  test('it expires', async () => {
    let ahead = 0;
    house = openHouse(cloud, { paired: [], now: () => Date.now() + ahead });
    const code = newPairingCode(house.store, Date.now());
    ahead = PAIRING_MS + 1000;
    cloud.sendText(OWNER, code);
    await seen();
    nothingKept();
    expect(house.log.join()).toMatch(/expired/);
  });

  test('forwarded, through another bot, edited in, as a caption or in a group it is refused', async () => {
    house = openHouse(cloud, { paired: [] });
    const code = newPairingCode(house.store, Date.now());
    cloud.group(-1001, 'The shed');
    const origin = { type: 'user', date: 1, sender_user: { id: OWNER, is_bot: false, first_name: 'x' } } as MessageOrigin;
    cloud.sendText(OWNER, code, { extra: { forward_origin: origin } as Partial<Message> });
    cloud.sendText(OWNER, code, { extra: { via_bot: { id: 7, is_bot: true, first_name: 'x' } } as Partial<Message> });
    cloud.sendText(OWNER, code, { chat: -1001 });
    cloud.sendPhoto(OWNER, jpeg('code'), { caption: code });
    const id = cloud.sendText(OWNER, 'x');
    cloud.edit(OWNER, id, code);
    await seen();
    nothingKept();
    expect(pairedPeople(house.store, 'telegram')).toEqual([]);
  });
});

describe('who is let in', () => {
  test('a stranger gets no reply, leaves no row and causes no download', async () => {
    house = openHouse(cloud);
    cloud.sendText(STRANGER, 'what have you got');
    cloud.sendPhoto(STRANGER, jpeg('s'), { caption: 'look' });
    cloud.send(STRANGER, { text: '/start', entities: [{ type: 'bot_command', offset: 0, length: 6 }] });
    cloud.group(-1002, 'Elsewhere');
    cloud.addToGroup(STRANGER, -1002);
    await seen();
    nothingKept();
  });

  test('the number counts and not the name', async () => {
    house = openHouse(cloud);
    cloud.sendText(STRANGER, 'let me in', { from: { id: STRANGER, is_bot: false, first_name: 'Owner', username: 'owner' } });
    cloud.sendText(OWNER, 'renamed', { from: { id: OWNER, is_bot: false, first_name: 'Quite', username: 'another' } });
    await cloud.waitSent(1);
    expect(house.taken.map(m => m.text)).toEqual(['renamed']);
  });

  test('channel posts, admins behind their group, copies from a linked channel and other bots are nobody', async () => {
    house = openHouse(cloud, { paired: [OWNER, 1087968824, 777000] });
    cloud.group(-1003, 'The shed');
    const group = cloud.cloud.chats.get(-1003)!;
    const behind = (id: number) => ({ chat: -1003, from: { id, is_bot: id === 1087968824, first_name: 'x' }, extra: { sender_chat: group } as Partial<Message> });
    cloud.sendText(0, 'as the group', behind(1087968824)); // the platform's stand-in for anonymous admins
    cloud.sendText(0, 'from the channel', behind(777000)); // its stand-in for linked channels
    cloud.sendText(0, 'as a channel of mine', behind(OWNER));
    cloud.sendText(0, 'beep', { chat: -1003, from: { id: OWNER, is_bot: true, first_name: 'bot' } });
    cloud.update({ channel_post: { message_id: 1, date: 1, chat: { id: -1009, type: 'channel', title: 'x' }, text: 'post' } } as never);
    cloud.sendText(OWNER, 'me', { chat: -1003 });
    await cloud.waitSent(1);
    expect(house.taken.map(m => m.text)).toEqual(['me']);
  });

  test('a tap by another on the owner\'s button is refused', async () => {
    house = openHouse(cloud, { answer: () => ({ buttons: [{ label: 'Strike', send: 'scratch that' }] }) });
    cloud.group(-1004, 'The shed');
    cloud.sendText(OWNER, 'wheel is off', { chat: -1004 });
    const [sent] = await cloud.waitSent(1);
    cloud.press(STRANGER, sent!, 'Strike');
    await seen();
    expect(house.taken).toHaveLength(1);
    expect(cloud.cloud.answers).toEqual([]);
  });

  test('one who is put out is out at once, for what is on its way to them too', async () => {
    house = openHouse(cloud);
    cloud.sendText(OWNER, 'first');
    await cloud.waitSent(1);
    cloud.fault('sendMessage', { retryAfter: 1 });
    cloud.sendText(OWNER, 'second');
    await until(() => house.taken, t => t.length === 2);
    revoke(house.store, 'telegram', OWNER, '2026-03-14T10:00:00Z');
    cloud.sendText(OWNER, 'third');
    await until(() => house.store.get<{ state: string }>('SELECT state FROM outbox ORDER BY seq DESC LIMIT 1')!.state, s => s === 'parked');
    await seen();
    expect(cloud.sent().map(s => s.text)).toEqual(['noted: first']);
    expect(house.taken.map(m => m.text)).toEqual(['first', 'second']);
  });
});
