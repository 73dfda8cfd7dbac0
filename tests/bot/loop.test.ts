import { expect, test, vi } from 'vitest';
import { startLoop } from '../../bot/loop.ts';

/** A loop over a list of numbers; each step takes one off. */
const overList = (list: number[], done: number[]) => startLoop(async () => {
  const next = list.shift();
  if (next === undefined) return undefined;
  done.push(next);
  return 0;
}, 60_000);

test('works while there is work, one piece after another', async () => {
  const done: number[] = [];
  const loop = overList([1, 2, 3], done);
  await loop.idle();
  expect(done).toEqual([1, 2, 3]);
  await loop.close();
});

test('wakes for new work without waiting for its slow look', async () => {
  const [list, done]: [number[], number[]] = [[], []];
  const loop = overList(list, done);
  await loop.idle();
  list.push(7);
  loop.wake();
  await vi.waitFor(() => expect(done).toEqual([7]));
  await loop.close();
});

test('a wake in the middle of a step that found nothing is not lost', async () => {
  let found = false;
  let release: () => void = () => {};
  let steps = 0;
  const loop = startLoop(async () => {
    if (steps++ === 0) { await new Promise<void>(r => { release = r; }); return undefined; }
    found = true;
    return undefined;
  }, 60_000);
  loop.wake();
  release();
  await vi.waitFor(() => expect(found).toBe(true));
  await loop.close();
});

test('looks on its own when another process may have added work', async () => {
  const [list, done]: [number[], number[]] = [[], []];
  const loop = startLoop(async () => { const next = list.shift(); if (next !== undefined) done.push(next); return undefined; }, 20);
  list.push(5);
  await vi.waitFor(() => expect(done).toEqual([5]));
  await loop.close();
});

test('a step that throws stops nothing; the loop looks again', async () => {
  const seen: string[] = [];
  const quiet = vi.spyOn(console, 'error').mockImplementation((...words) => { seen.push(String(words[0])); });
  let steps = 0;
  const loop = startLoop(async () => { if (++steps === 1) throw new Error('the disk is full'); return undefined; }, 10);
  await vi.waitFor(() => expect(steps).toBeGreaterThan(1));
  await loop.close();
  quiet.mockRestore();
  expect(seen).toEqual(['the disk is full']);
});

test('closing lets the step in hand end, takes up no other, and frees whoever waits', async () => {
  const done: number[] = [];
  let release: () => void = () => {};
  const loop = startLoop(async () => { await new Promise<void>(r => { release = r; }); done.push(done.length); return 0; }, 60_000);
  const idle = loop.idle();
  const closed = loop.close();
  expect(done).toEqual([]);
  release();
  await closed;
  await idle;
  expect(done).toEqual([0]);
  await loop.idle();
});
