import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import type { Update } from 'grammy/types';
import { startLoopback, until, type Loopback } from './loopback.ts';

/**
 * The loopback itself against the platform's rules: the Bot API's own documentation (as kept in @grammyjs/types 5.0.0) and the open
 * server's source (tdlib/telegram-bot-api, Client.cpp). Spoken to by plain fetch, without the chat library.
 */
let cloud: Loopback;
beforeEach(async () => { cloud = await startLoopback(); });
afterEach(() => cloud.close());

interface Said { ok: boolean; result?: unknown; error_code?: number; description?: string; parameters?: { retry_after?: number; migrate_to_chat_id?: number } }
const call = async (method: string, fields: object = {}, token = cloud.token): Promise<Said> =>
  (await fetch(`${cloud.url}/bot${token}/${method}`, { method: 'POST', headers: { 'content-type': 'application/json' }, body: JSON.stringify(fields) })).json() as Promise<Said>;
const poll = async (fields: object = {}) => (await call('getUpdates', fields)).result as Update[];
const texts = (updates: Update[]) => updates.map(u => u.message?.text);
const U = 77;

describe('getUpdates', () => {
  test('an offset confirms what lies below it; until then the same comes again', async () => {
    for (const t of ['a', 'b', 'c']) cloud.sendText(U, t);
    const first = await poll();
    expect(texts(first)).toEqual(['a', 'b', 'c']);
    expect(texts(await poll())).toEqual(['a', 'b', 'c']);
    expect(texts(await poll({ offset: first[1]!.update_id }))).toEqual(['b', 'c']);
    expect(texts(await poll())).toEqual(['b', 'c']);
  });
  test('a negative offset counts from the end, and all before is forgotten', async () => {
    for (const t of ['a', 'b', 'c', 'd']) cloud.sendText(U, t);
    expect(texts(await poll({ offset: -2 }))).toEqual(['c', 'd']);
    expect(texts(await poll())).toEqual(['c', 'd']);
  });
  test('an offset of another numbering confirms nothing', async () => {
    cloud.sendText(U, 'a');
    expect(texts(await poll({ offset: 900_000_000 }))).toEqual(['a']);
  });
  test('gives at most 100 at once, or as few as asked for', async () => {
    for (let i = 0; i < 120; i++) cloud.sendText(U, `${i}`);
    expect((await poll()).length).toBe(100);
    expect((await poll({ limit: 3 })).length).toBe(3);
    expect((await poll({ limit: 500 })).length).toBe(100);
  });
  test('a long poll ends with the first message, or empty after its time', async () => {
    const waiting = poll({ timeout: 20 });
    setTimeout(() => cloud.sendText(U, 'now'), 50);
    expect(texts(await waiting)).toEqual(['now']);
    expect(await poll({ offset: cloud.cloud.lastUpdateId + 1, timeout: 1 })).toEqual([]);
  });
  test('a second long poll ends the first with 409', async () => {
    const first = call('getUpdates', { timeout: 20 });
    await until(() => cloud.calls('getUpdates').length, n => n === 1);
    const second = call('getUpdates', { timeout: 1 });
    expect(await first).toMatchObject({ ok: false, error_code: 409, description: expect.stringMatching(/^Conflict: terminated by other getUpdates/) as string });
    expect(await second).toEqual({ ok: true, result: [] });
  });
  test('only wanted kinds come', async () => {
    cloud.sendText(U, 'a');
    cloud.group(-5, 'x');
    cloud.addToGroup(U, -5);
    expect((await poll({ allowed_updates: ['my_chat_member'] })).map(u => Object.keys(u)[1])).toEqual(['my_chat_member']);
  });
  test('a message is kept for a day, a tap for 150 s', async () => {
    cloud.sendText(U, 'a');
    await call('sendMessage', { chat_id: U, text: 'pick', reply_markup: { inline_keyboard: [[{ text: 'x', callback_data: 'x' }]] } });
    cloud.press(U, cloud.sent()[0]!, 'x');
    cloud.advance(151);
    expect(texts(await poll())).toEqual(['a']);
    cloud.advance(86_400);
    expect(await poll()).toEqual([]);
  });
});

describe('refusals', () => {
  const refused = async (method: string, fields: object) => { const { error_code, description } = await call(method, fields); return `${error_code} ${description}`; };
  beforeEach(() => { cloud.sendText(U, 'hello'); });
  test('a token that is wrong, revoked or misshapen', async () => {
    expect((await call('getMe', {}, '1:abc')).error_code).toBe(401);
    expect((await call('getMe', {}, 'abc')).error_code).toBe(404);
    cloud.cloud.revoked = true;
    expect(await call('getMe')).toEqual({ ok: false, error_code: 401, description: 'Unauthorized' });
  });
  test('text of 1 to 4096, button data of 1 to 64 bytes', async () => {
    expect(await refused('sendMessage', { chat_id: U, text: 'x'.repeat(4097) })).toMatch(/^400 .*too long/);
    expect(await refused('sendMessage', { chat_id: U, text: ' ' })).toMatch(/^400 .*empty/);
    const button = (callback_data: string) => ({ chat_id: U, text: 'x', reply_markup: { inline_keyboard: [[{ text: 'x', callback_data }]] } });
    expect(await refused('sendMessage', button('é'.repeat(33)))).toBe('400 Bad Request: BUTTON_DATA_INVALID');
    expect((await call('sendMessage', button('é'.repeat(32)))).ok).toBe(true);
  });
  test('an edit that changes nothing, a chat that is unknown, one who blocked the bot', async () => {
    await call('sendMessage', { chat_id: U, text: 'same' });
    const { id } = cloud.sent()[0]!;
    expect(await refused('editMessageText', { chat_id: U, message_id: id, text: 'same' })).toMatch(/^400 Bad Request: message is not modified/);
    expect((await call('editMessageText', { chat_id: U, message_id: id, text: 'other' })).ok).toBe(true);
    expect(await refused('sendMessage', { chat_id: 404, text: 'x' })).toBe('400 Bad Request: chat not found');
    cloud.cloud.blocked.add(U);
    expect(await refused('sendMessage', { chat_id: U, text: 'x' })).toBe('403 Forbidden: bot was blocked by the user');
  });
  test('a tap is answered in time or never', async () => {
    await call('sendMessage', { chat_id: U, text: 'pick', reply_markup: { inline_keyboard: [[{ text: 'x', callback_data: 'x' }]] } });
    const id = cloud.press(U, cloud.sent()[0]!, 'x');
    expect((await call('answerCallbackQuery', { callback_query_id: id })).ok).toBe(true);
    cloud.advance(151);
    expect(await refused('answerCallbackQuery', { callback_query_id: id })).toMatch(/^400 Bad Request: query is too old/);
  });
  test('a file over 20 MB is not handed out', async () => {
    const id = cloud.sendPhoto(U, new Uint8Array(3), { says: 20 * 1024 * 1024 + 1 });
    const { file_id } = cloud.cloud.message(U, id)!.photo!.at(-1)!;
    expect(await refused('getFile', { file_id })).toBe('400 Bad Request: file is too big');
  });
  test('too many requests say how long to wait', async () => {
    cloud.fault('getMe', { retryAfter: 4 });
    expect(await call('getMe')).toEqual({ ok: false, error_code: 429, description: 'Too Many Requests: retry after 4', parameters: { retry_after: 4 } });
    expect((await call('getMe')).ok).toBe(true);
  });
  test('a connection broken before the effect leaves none, after it leaves one', async () => {
    for (const kind of ['reset-before', 'reset-after'] as const) {
      cloud.fault('sendMessage', kind);
      await expect(call('sendMessage', { chat_id: U, text: kind })).rejects.toThrow();
    }
    expect(cloud.sent().map(s => s.text)).toEqual(['reset-after']);
  });
});
