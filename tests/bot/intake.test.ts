import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { StoreError } from '../../domain/store/errors.ts';
import { intake as rows } from '../../domain/store/intake.ts';
import { openStore, type Store } from '../../domain/store/open.ts';
import type { Queued } from '../../domain/store/queue.ts';
import { openIntake, type Handling, type Intake } from '../../bot/intake.ts';

let store: Store;
let queue: Intake;
let now: number;
let taken: string[];
beforeEach(() => { store = openStore(':memory:'); now = 1_000_000; taken = []; });
afterEach(async () => { await queue.close(); store.close(); });

const message = (key: string, chat = 'bench') => ({ key, door: 'page' as const, chat, at: '2026-03-14T09:00:00Z', body: key });
const take = (row: Queued) => { if (rows.done(store, row.seq)) taken.push(row.key); };
const open = (handling: Partial<Handling> = {}) => { queue = openIntake(store, { handle: async row => take(row), now: () => now, ...handling }); };
const row = (key: string) => rows.byKey(store, key)!;
/** Moves the clock on until nothing is left that waits. */
const later = async (ms: number) => { now += ms; queue.wake(); await queue.idle(); };

test('a message is taken once, however often it comes', async () => {
  open();
  expect([queue.put(message('a')), queue.put(message('a'))]).toEqual([true, false]);
  await queue.idle();
  expect(queue.put(message('a'))).toBe(false);
  await queue.idle();
  expect(taken).toEqual(['a']);
});

test('what another process put in, or what was left by one that died, is taken too', async () => {
  rows.put(store, message('left'));
  open();
  await queue.idle();
  expect(taken).toEqual(['left']);
});

test('one that fails holds back the later ones of its chat, in order, and of no other', async () => {
  let broken = true;
  open({ handle: async r => { if (broken && r.key === 'a1') throw new Error('no'); take(r); } });
  for (const m of [message('a1', 'a'), message('a2', 'a'), message('b1', 'b'), message('b2', 'b')]) queue.put(m);
  await queue.idle();
  expect(taken).toEqual(['b1', 'b2']);
  broken = false;
  await later(1_999);
  expect(taken).toEqual(['b1', 'b2']);
  await later(1);
  expect(taken).toEqual(['b1', 'b2', 'a1', 'a2']);
});

test('tries grow apart, and after eight it is set aside with the reason and the chat goes on', async () => {
  const tries: number[] = [];
  open({ handle: async r => { if (r.key === 'bad') { tries.push(now); throw new Error('why not'); } take(r); } });
  queue.put(message('bad'));
  queue.put(message('good'));
  await queue.idle();
  for (let i = 0; i < 600 && row('bad').state === 'new'; i++) await later(1_000);
  expect(tries.slice(1).map((t, i) => (t - tries[i]!) / 1000)).toEqual([2, 4, 8, 16, 32, 64, 128]);
  expect(row('bad')).toMatchObject({ state: 'parked', error: 'why not' });
  expect(taken).toEqual(['good']);
  expect(rows.parked(store).map(p => p.key)).toEqual(['bad']);
});

test('a full disk or a held database is waited out for as long as it lasts, and costs none of the tries', async () => {
  let failures = 0;
  open({ handle: async r => {
    failures++;
    if (failures <= 20) throw new StoreError('full', 'The disk is full.');
    if (failures <= 27) throw new Error('a fault of another kind');
    take(r);
  } });
  queue.put(message('a'));
  for (let i = 0; i < 60 && row('a').state === 'new'; i++) await later(300_000);
  expect([failures, row('a').state, taken]).toEqual([28, 'done', ['a']]);
});

test('what takes long is handled beside the loop: other chats go on, its own waits, a mere question does not', async () => {
  let heard: () => void = () => {};
  open({
    handle: async r => { if (r.key === 'sound') await new Promise<void>(done => { heard = done; }); take(r); },
    isSlow: r => r.key === 'sound',
    onlyAsks: async r => r.key === 'question',
  });
  queue.put(message('sound'));
  queue.put(message('elsewhere', 'other'));
  await vi.waitFor(() => expect(taken).toEqual(['elsewhere']));
  queue.put(message('note'));
  queue.put(message('question'));
  await vi.waitFor(() => expect(taken).toEqual(['elsewhere', 'question']));
  heard();
  await queue.idle();
  expect(taken).toEqual(['elsewhere', 'question', 'sound', 'note']);
});

test('closing waits for what is in hand', async () => {
  let heard: () => void = () => {};
  open({ handle: async r => { await new Promise<void>(done => { heard = done; }); take(r); }, isSlow: () => true });
  queue.put(message('sound'));
  await new Promise(next => setTimeout(next, 10));
  let closed = false;
  const closing = queue.close().then(() => { closed = true; });
  await new Promise(next => setTimeout(next, 20));
  expect(closed).toBe(false);
  heard();
  await closing;
  expect(taken).toEqual(['sound']);
});

test('putting throws when the store can\'t write, so that the message comes again', () => {
  open();
  const broken = vi.spyOn(store, 'run').mockImplementation(() => { throw new StoreError('full', 'The disk is full.'); });
  expect(() => queue.put(message('a'))).toThrow(StoreError);
  broken.mockRestore();
});
