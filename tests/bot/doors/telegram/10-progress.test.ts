import { afterEach, beforeEach, expect, test } from 'vitest';
import { showProgress } from '../../../../bot/doors/telegram/progress.ts';
import { fakeService } from '../page/fake-service.ts';
import { openHouse, OWNER, type House } from './harness.ts';
import { startLoopback, type Loopback } from './loopback/loopback.ts';

/** How far long hearing is, as the person in the chat sees it. */
let cloud: Loopback;
let house: House;
beforeEach(async () => { cloud = await startLoopback(); house = openHouse(cloud); cloud.sendText(OWNER, 'hello'); await cloud.waitSent(1); });
afterEach(async () => { await house.close(); await cloud.close(); });

const text = (id: number) => cloud.cloud.message(OWNER, id)?.text;

test('one message that changes in place, not oftener than the platform likes, and at the end says so', async () => {
  const service = fakeService();
  let at = 0;
  const stop = showProgress(house, service, () => at);
  const tell = (words: string, done = false) => service.progress('tg:1:m:5:6', words, { door: 'telegram', target: String(OWNER), done });
  tell('Hearing 3 min of talk… 0 %');
  const [, message] = await cloud.waitSent(2);
  expect(message!.text).toBe('Hearing 3 min of talk… 0 %');
  at = 1_000;
  tell('Hearing 3 min of talk… 10 %');
  at = 3_500;
  tell('Hearing 3 min of talk… 40 %');
  await expect.poll(() => text(message!.id)).toBe('Hearing 3 min of talk… 40 %');
  tell('Heard 3 min of talk.', true);
  await expect.poll(() => text(message!.id)).toBe('Heard 3 min of talk.');
  expect(cloud.calls('editMessageText')).toHaveLength(2);
  expect(cloud.sent()).toHaveLength(2);
  stop();
});

test('what is heard at another door, and what is over before it was told, is not shown; a platform in trouble harms nothing', async () => {
  const service = fakeService();
  const stop = showProgress(house, service);
  service.progress('page:1', 'Hearing 3 min of talk… 0 %');
  service.progress('tg:1:m:5:7', 'Heard 40 s of talk.', { door: 'telegram', target: String(OWNER), done: true });
  cloud.fault('sendMessage', 'gateway', 1);
  service.progress('tg:1:m:5:8', 'Hearing 1 min of talk… 0 %', { door: 'telegram', target: String(OWNER) });
  service.progress('tg:1:m:5:8', 'Heard 1 min of talk.', { door: 'telegram', target: String(OWNER), done: true });
  await expect.poll(() => cloud.calls('sendMessage').length).toBe(2);
  expect(cloud.sent()).toHaveLength(1);
  stop();
});
