import { afterEach, beforeEach, expect, test } from 'vitest';
import { outbox as rows } from '../../domain/store/outbox.ts';
import { openStore, type Store } from '../../domain/store/open.ts';
import { openOutbox, putOut, SendLater, SendNever, type Outgoing } from '../../bot/outbox.ts';
import type { Loop } from '../../bot/loop.ts';

let store: Store;
let loop: Loop;
let now: number;
let sent: string[];
beforeEach(() => { store = openStore(':memory:'); now = 1_000_000; sent = []; });
afterEach(async () => { await loop.close(); store.close(); });

const put = (key: string, target = '1', door = 'telegram') =>
  putOut(store, { key, door, at: '2026-03-14T09:00:00Z' }, { target, say: key, buttons: [], files: [] });
const open = (send: (o: Outgoing) => void = () => {}) => { loop = openOutbox(store, 'telegram', async o => { send(o); sent.push(o.say); }, () => now); };
const later = async (ms: number) => { now += ms; loop.wake(); await loop.idle(); };
const row = (key: string) => rows.byKey(store, key)!;

test('replies leave in order, each once, also those that waited for a start', async () => {
  put('a');
  put('b');
  put('b');
  open();
  await loop.idle();
  put('c');
  await later(0);
  expect(sent).toEqual(['a', 'b', 'c']);
  expect(['a', 'b', 'c'].map(k => row(k).state)).toEqual(['done', 'done', 'done']);
});

test('only its own door\'s', async () => {
  put('mine');
  put('other', '1', 'elsewhere');
  open();
  await loop.idle();
  expect(sent).toEqual(['mine']);
  expect(row('other').state).toBe('new');
});

test('the sender is told which row it sends', async () => {
  put('a');
  let seq = 0;
  loop = openOutbox(store, 'telegram', async (_, r) => { seq = r.seq; }, () => now);
  await loop.idle();
  expect(seq).toBe(row('a').seq);
});

test('told to wait, it waits just so long and the chat with it; others go on', async () => {
  let limited = true;
  open(o => { if (limited && o.say === 'a1') throw new SendLater(4_000); });
  put('a1', 'a');
  put('a2', 'a');
  put('b1', 'b');
  await later(0);
  expect(sent).toEqual(['b1']);
  limited = false;
  await later(3_999);
  expect(sent).toEqual(['b1']);
  await later(1);
  expect(sent).toEqual(['b1', 'a1', 'a2']);
});

test('being told to wait is no failure, however often', async () => {
  let asked = 0;
  open(() => { if (++asked <= 40) throw new SendLater(1_000); if (asked <= 51) throw new Error('a fault'); });
  put('a');
  for (let i = 0; i < 100 && row('a').state === 'new'; i++) await later(300_000);
  expect([asked, row('a').state]).toEqual([52, 'done']);
});

test('what can never be delivered is set aside at once, with the reason, and the next goes out', async () => {
  open(o => { if (o.say === 'a') throw new SendNever('blocked'); });
  put('a');
  put('b');
  await later(0);
  expect(row('a')).toMatchObject({ state: 'parked', error: 'blocked' });
  expect(sent).toEqual(['b']);
});

test('twelve failures set it aside; it can be taken up again', async () => {
  let broken = true;
  let asked = 0;
  open(() => { asked++; if (broken) throw new Error('no'); });
  put('a');
  for (let i = 0; i < 100 && row('a').state === 'new'; i++) await later(300_000);
  expect([asked, row('a').state]).toEqual([12, 'parked']);
  broken = false;
  rows.revive(store, row('a').seq);
  await later(0);
  expect(sent).toEqual(['a']);
});
