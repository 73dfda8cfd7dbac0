import { afterEach, beforeEach, expect, test } from 'vitest';
import { BENCH } from '../../../../bot/incoming.ts';
import { keyboardOf } from '../../../../bot/doors/telegram/buttons.ts';
import { openHouse, OWNER, type Answering, type House } from './harness.ts';
import { startLoopback, until, type Loopback } from './loopback/loopback.ts';

let cloud: Loopback;
let house: House;
beforeEach(async () => { cloud = await startLoopback(); });
afterEach(async () => { await house.close(); await cloud.close(); });

const long = `No, I meant the ${'very '.repeat(20)}old tie rod end on the left — the one with the torn boot`;
const asks: Answering = m => (m.text.startsWith('greased') ? { say: 'Left or right?', buttons: [{ label: 'left', send: 'left' }, { label: 'right', send: 'right' }, { label: 'neither', send: long }] } : {});

test('a tap says the words of its button, and the telephone is told that it arrived', async () => {
  house = openHouse(cloud, { answer: asks });
  cloud.sendText(OWNER, 'greased the tie rod end');
  const [question] = await cloud.waitSent(1);
  expect(question!.buttons.map(b => b.text)).toEqual(['left', 'right', 'neither']);
  // 1-64 bytes (Bot API, InlineKeyboardButton); the words themselves are longer.
  for (const b of question!.buttons) expect(Buffer.byteLength(b.data)).toBeLessThanOrEqual(64);
  const press = cloud.press(OWNER, question!, 'neither');
  await cloud.waitSent(2);
  expect(house.taken[1]).toMatchObject({ key: `tg:${cloud.botId}:cb:${press}`, chat: BENCH, text: long, target: String(OWNER) });
  await until(() => cloud.cloud.answers, a => a.length === 1);
  expect(cloud.cloud.answers).toEqual([{ id: press, text: undefined }]);
});

test('short labels stand two in a row, long ones alone; no button, no keyboard', () => {
  const rows = (...labels: string[]) => keyboardOf(labels.map(label => ({ label, send: label })), 7)?.inline_keyboard.map(r => r.map(b => b.text));
  expect(rows('a', 'b', 'c')).toEqual([['a', 'b'], ['c']]);
  expect(rows('a', 'the whole of the front axle', 'b', 'c')).toEqual([['a'], ['the whole of the front axle'], ['b', 'c']]);
  expect(rows()).toBeUndefined();
});

test('a button outlives a restart', async () => {
  house = openHouse(cloud, { answer: asks });
  cloud.sendText(OWNER, 'greased the tie rod end');
  const [question] = await cloud.waitSent(1);
  await house.close(true);
  house = openHouse(cloud, { dir: house.dir, answer: asks });
  cloud.press(OWNER, question!, 'right');
  await cloud.waitSent(2);
  expect(house.taken.map(m => m.text)).toEqual(['right']);
});

test('a tap that can\'t be answered any more is kept all the same', async () => {
  house = openHouse(cloud, { answer: asks });
  cloud.sendText(OWNER, 'greased the tie rod end');
  const [question] = await cloud.waitSent(1);
  const realAnswer = cloud.cloud.answerPress.bind(cloud.cloud);
  cloud.cloud.answerPress = () => false; // as 150 s later: 400 query is too old
  cloud.press(OWNER, question!, 'left');
  await cloud.waitSent(2);
  cloud.cloud.answerPress = realAnswer;
  expect(house.taken[1]!.text).toBe('left');
  expect(house.log).toEqual([]);
});

test('a limit on answering taps holds up nothing', async () => {
  house = openHouse(cloud, { answer: asks });
  cloud.sendText(OWNER, 'greased the tie rod end');
  const [question] = await cloud.waitSent(1);
  cloud.fault('answerCallbackQuery', 'hang');
  cloud.press(OWNER, question!, 'left');
  cloud.sendText(OWNER, 'and on with it');
  await cloud.waitSent(3);
  expect(house.taken.map(m => m.text)).toEqual(['greased the tie rod end', 'left', 'and on with it']);
});

test('made-up data, and a button of another chat, are nothing but a sentence', async () => {
  house = openHouse(cloud, { answer: asks });
  cloud.group(-2001, 'The shed');
  cloud.sendText(OWNER, 'greased the tie rod end', { chat: -2001 });
  const [inGroup] = await cloud.waitSent(1);
  cloud.sendText(OWNER, 'hello');
  const [, own] = await cloud.waitSent(2);
  for (const data of [inGroup!.buttons[0]!.data, '1.99', '0.0', '../../etc', '999999.0', '']) cloud.press(OWNER, own!, data);
  const sent = await cloud.waitSent(8);
  expect(new Set(sent.slice(2).map(s => s.text))).toEqual(new Set(['I no longer know what that button meant; say it in words.']));
  expect(house.taken).toHaveLength(2);
});
