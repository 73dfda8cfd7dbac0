import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import type { Bot } from 'grammy';
import { outbox } from '../../../../domain/store/outbox.ts';
import { openStore, type Store } from '../../../../domain/store/open.ts';
import { pair } from '../../../../domain/store/people.ts';
import { telegramLine } from '../../../../bot/doors/telegram/line.ts';
import { watchPolling, type Watch } from '../../../../bot/doors/telegram/watch.ts';

const HOUR = 3_600_000;
let store: Store;
let watch: Watch;
let log: string[];
beforeEach(() => { vi.useFakeTimers({ now: Date.parse('2026-03-14T09:00:00Z') }); store = openStore(':memory:'); log = []; });
afterEach(() => { watch.stop(); store.close(); vi.useRealTimers(); });

/** A watch over polls that are answered when told. */
const watching = () => {
  watch = watchPolling({ store, line: telegramLine({ token: '42:x', zone: 'Europe/Dublin' }), now: Date.now, log: l => log.push(l) });
  let through: (call: () => Promise<unknown>, method: string) => Promise<unknown> = () => Promise.resolve();
  watch.on({ api: { config: { use: (t: typeof through) => { through = t; } } } } as unknown as Bot);
  return { answered: () => through(() => Promise.resolve({ ok: true }), 'getUpdates'), refused: () => through(() => Promise.resolve({ ok: false }), 'getUpdates') };
};
const said = () => store.all<{ chat: string; body: string }>('SELECT chat, body FROM outbox').map(r => [r.chat, (JSON.parse(r.body) as { say: string }).say]);

test('silence of 90 s is said once, and the end of it', async () => {
  const { answered, refused } = watching();
  vi.advanceTimersByTime(85_000);
  expect(log).toEqual([]);
  await refused(); // a refusal is no sign of life
  vi.advanceTimersByTime(300_000);
  expect(log).toEqual(['No answer from Telegram for 90 s; still trying. The other doors work.']);
  await answered();
  expect(log[1]).toBe('Telegram answers again.');
  vi.advanceTimersByTime(89_000);
  expect(log).toHaveLength(2);
});

test('out of reach for over 24 h is told to everyone who is paired, once; for less it is not', async () => {
  pair(store, 'telegram', 1, '2026-03-01');
  pair(store, 'telegram', 2, '2026-03-02');
  await watching().answered();
  watch.stop();
  vi.setSystemTime(Date.now() + 23 * HOUR);
  await watching().answered();
  expect(said()).toEqual([]);
  watch.stop();
  vi.setSystemTime(Date.now() + 25 * HOUR);
  const { answered } = watching();
  await answered();
  await answered();
  expect(said().map(([chat]) => chat)).toEqual(['1', '2']);
  // Last heard on 15 March at 08:00 UTC, which is the time of Dublin in winter.
  expect(said()[0]![1]).toMatch(/^I was out of reach from 2026-03-15 08:00 until now/);
  expect(outbox.parked(store)).toEqual([]);
});
