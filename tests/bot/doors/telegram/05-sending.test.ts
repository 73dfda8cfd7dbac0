import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { outbox } from '../../../../domain/store/outbox.ts';
import { putOut, type Outgoing } from '../../../../bot/outbox.ts';
import { splitText, TEXT_LIMIT } from '../../../../bot/doors/telegram/split.ts';
import { jpeg, openHouse, OWNER, type House } from './harness.ts';
import { startLoopback, until, type Loopback } from './loopback/loopback.ts';

let cloud: Loopback;
let house: House;
beforeEach(async () => { cloud = await startLoopback(); house = openHouse(cloud); cloud.sendText(OWNER, 'hello'); await cloud.waitSent(1); });
afterEach(async () => { await house.close(); await cloud.close(); });

let n = 0;
/** Something said unasked. */
const say = (o: Partial<Outgoing>) => {
  const key = `unasked:${++n}`;
  putOut(house.store, { key, door: 'telegram', at: '2026-03-14T09:00:00Z' }, { target: String(OWNER), say: '', buttons: [], files: [], ...o });
  house.outbox.wake();
  return key;
};
const state = (key: string) => { const row = outbox.byKey(house.store, key)!; return [row.state, row.error] as const; };
/** A kept picture as the log has it. */
const keep = (mark: string, ext = 'jpg', bytes: Uint8Array = jpeg(mark)) => {
  const hash = Buffer.from(mark.padEnd(32, '_')).toString('hex');
  mkdirSync(join(house.dir, 'media'), { recursive: true });
  writeFileSync(join(house.dir, 'media', `${hash}.${ext}`), bytes);
  house.store.run('INSERT INTO media (hash, mime, ext, bytes, at) VALUES (?, ?, ?, ?, ?)', hash, 'image/jpeg', ext, bytes.length, '2026-03-14');
  return hash;
};

describe('cutting at 4096', () => {
  test('at line ends, whole signs, nothing lost but the blanks at a cut', () => fc.assert(fc.property(
    fc.array(fc.oneof(fc.string({ unit: 'binary' }), fc.constant('\n'), fc.constant('🚜'), fc.constant(' ')), { maxLength: 60 }), fc.integer({ min: 4, max: 40 }), (parts, limit) => {
      const text = parts.join('');
      const pieces = splitText(text, limit);
      expect(pieces.every(p => p.length <= limit && p.trim() !== '')).toBe(true);
      expect(pieces.join('').replace(/\s/g, '')).toBe(text.replace(/\s/g, ''));
      // No piece begins with the second half of a sign, unless the text had it alone.
      const torn = (t: string) => /\p{Surrogate}/u.test(t);
      if (!torn(text)) expect(pieces.some(torn)).toBe(false);
    })));

  test('a long list goes in pieces that end with a line; the buttons stand under the last', async () => {
    const lines = Array.from({ length: 400 }, (_, i) => `${i + 1}. a bolt of some length for the front axle`);
    say({ say: lines.join('\n'), buttons: [{ label: 'More', send: 'more' }] });
    const pieces = (await cloud.waitSent(6)).slice(1);
    expect(pieces.flatMap(p => p.text.split('\n'))).toEqual(lines);
    expect(pieces.every(p => p.text.length <= TEXT_LIMIT)).toBe(true);
    expect(pieces.map(p => p.buttons.length)).toEqual([0, 0, 0, 0, 1]);
  });

  test('4096 signs of four bytes each go out whole', async () => {
    say({ say: '🚜'.repeat(4096) });
    expect((await cloud.waitSent(3)).slice(1).map(s => s.text).join('')).toBe('🚜'.repeat(4096));
  });

  test('marks of any markup are plain words', async () => {
    say({ say: '<b>5/8</b> *bolt* _x_ [a](b) & more' });
    expect((await cloud.waitSent(2))[1]!.text).toBe('<b>5/8</b> *bolt* _x_ [a](b) & more');
  });
});

describe('pictures', () => {
  test('one goes as a photo, several as albums of ten, another file as a file, a lost one is passed over', async () => {
    say({ files: [keep('one')] });
    expect((await cloud.waitSent(2))[1]!.files).toMatchObject([{ kind: 'photo', bytes: jpeg('one') }]);
    const twelve = Array.from({ length: 12 }, (_, i) => keep(`p${i}`));
    say({ say: 'the hub', files: [...twelve, keep('movie', 'mp4'), 'no-such-hash'] });
    const sent = (await cloud.waitSent(16)).slice(2);
    expect(sent[0]!.text).toBe('the hub');
    expect(sent.slice(1).map(s => s.files[0]!.kind)).toEqual([...Array<string>(12).fill('photo'), 'document']);
    expect([cloud.calls('sendMediaGroup').length, cloud.calls('sendDocument').length]).toEqual([2, 1]);
  });

  test('one too heavy for a photo goes as a file', async () => {
    say({ files: [keep('big', 'jpg', Buffer.concat([jpeg('big'), Buffer.alloc(10 * 1024 * 1024)]))] });
    expect((await cloud.waitSent(2))[1]!.files[0]!.kind).toBe('document');
  });
});

describe('what goes wrong on the way out', () => {
  test('a rate limit is obeyed, costs no try, and holds up neither intake nor another chat', async () => {
    cloud.group(-3001, 'The shed');
    cloud.fault('sendMessage', { retryAfter: 2 }, 1, String(OWNER));
    const from = Date.now();
    const key = say({ say: 'late' });
    await until(() => state(key)[1], e => e === 'told to wait 2000 ms');
    cloud.sendText(OWNER, 'meanwhile');
    await until(() => house.taken, t => t.at(-1)?.text === 'meanwhile');
    say({ say: 'elsewhere', target: '-3001' });
    await cloud.waitSent(s => s.some(m => m.text === 'elsewhere'));
    // Both were done with while the first still waited.
    expect(cloud.sent().some(m => m.text === 'late')).toBe(false);
    const sent = await cloud.waitSent(4);
    expect(sent.slice(2).map(s => s.text)).toEqual(['late', 'noted: meanwhile']);
    expect(Date.now() - from).toBeGreaterThanOrEqual(2000);
  });

  test('a limit in the middle of a long reply does not send its beginning twice', async () => {
    cloud.fault('sendMessage', { retryAfter: 1 }, 1, 'second');
    say({ say: `first ${'x'.repeat(4090)}\nsecond` });
    const sent = await cloud.waitSent(3);
    await house.outbox.idle();
    expect(sent.slice(1).map(s => s.text.slice(0, 6))).toEqual(['first ', 'second']);
  });

  test('a connection that breaks before the effect costs a second sending, after it a double; neither loses it', async () => {
    cloud.fault('sendMessage', 'reset-before');
    say({ say: 'once' });
    await cloud.waitSent(s => s.some(m => m.text === 'once'));
    cloud.fault('sendMessage', 'reset-after');
    const key = say({ say: 'twice' });
    await until(() => state(key)[0], s => s === 'done');
    expect(cloud.sent().slice(1).map(s => s.text)).toEqual(['once', 'twice', 'twice']);
  });

  test('a gateway\'s page instead of an answer is waited out', async () => {
    cloud.fault('sendMessage', 'gateway');
    say({ say: 'through' });
    await cloud.waitSent(2);
  });

  test('who blocked the bot, and a chat that is gone, are set aside with the reason', async () => {
    cloud.cloud.blocked.add(OWNER);
    const blocked = say({ say: 'x' });
    const gone = say({ say: 'x', target: '-9999' });
    await until(() => [state(blocked)[0], state(gone)[0]], s => s.every(x => x === 'parked'));
    expect(state(blocked)[1]).toBe('sendMessage: 403 Forbidden: bot was blocked by the user');
    expect(state(gone)[1]).toBe('sendMessage: 400 Bad Request: chat not found');
  });

  test('a group that was given another number is followed, and stays the same talk', async () => {
    cloud.group(-3002, 'The shed', 'group');
    cloud.sendText(OWNER, 'before', { chat: -3002 });
    await cloud.waitSent(2);
    cloud.group(-1003002, 'The shed');
    cloud.cloud.moved.set(-3002, -1003002);
    say({ say: 'after the move', target: '-3002' });
    say({ say: 'and again', target: '-3002' });
    const sent = await cloud.waitSent(4);
    expect(sent.slice(2).map(s => [s.chat, s.text])).toEqual([[-1003002, 'after the move'], [-1003002, 'and again']]);
    expect(cloud.calls('sendMessage')).toHaveLength(5); // asked the old number once only
    cloud.sendText(OWNER, 'there', { chat: -1003002 });
    await until(() => house.taken, t => t.length === 3);
    expect(house.taken.slice(1).map(m => [m.chat, m.target])).toEqual([['tg:-3002', '-3002'], ['tg:-3002', '-1003002']]);
  });

  test('replies wait for a platform that is out of reach', async () => {
    await cloud.down();
    const key = say({ say: 'patience' });
    await until(() => state(key)[1], e => /out of reach|wait/.test(e ?? ''));
    await cloud.up();
    await cloud.waitSent(2, 15_000);
    expect(cloud.sent()[1]!.text).toBe('patience');
  });
});
