import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { inspect } from 'node:util';
import { GrammyError, HttpError } from 'grammy';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { StoreError } from '../../../../domain/store/errors.ts';
import { cleaned, inWords, redactor, troubleOf } from '../../../../bot/doors/telegram/errors.ts';
import { telegramLine } from '../../../../bot/doors/telegram/line.ts';
import { openTelegram } from '../../../../bot/doors/telegram/open.ts';
import { oggOpus, openHouse, OWNER, type House } from './harness.ts';
import { startLoopback, until, type Loopback } from './loopback/loopback.ts';

let cloud: Loopback;
let house: House;
beforeEach(async () => { cloud = await startLoopback(); });
afterEach(async () => { await house?.close(); await cloud.close(); });

describe('the poller', () => {
  test('goes on after a broken connection, a limit on polling and a gateway\'s page, and loses nothing', async () => {
    house = openHouse(cloud);
    await house.door.opened;
    cloud.fault('getUpdates', 'reset-after');
    cloud.fault('getUpdates', { retryAfter: 1 });
    cloud.fault('getUpdates', 'gateway');
    for (const text of ['one', 'two', 'three']) cloud.sendText(OWNER, text);
    await until(() => house.taken, t => t.length === 3, 15_000);
    expect(house.taken.map(m => m.text)).toEqual(['one', 'two', 'three']);
  });

  test('gives up a poll that is never answered, and polls again', async () => {
    cloud.fault('getUpdates', 'hang');
    house = openHouse(cloud, { callSeconds: 2 });
    cloud.sendText(OWNER, 'anyone there');
    await cloud.waitSent(1, 15_000);
  });

  test('when another takes over with the same token says so, tries again, and takes up what is left', async () => {
    house = openHouse(cloud);
    await house.door.opened;
    await until(() => cloud.calls('getUpdates').length, n => n > 0);
    const rival = fetch(`${cloud.url}/bot${cloud.token}/getUpdates`, { method: 'POST', headers: { 'content-type': 'application/json' }, body: '{"timeout":30}' });
    await until(() => house.log, l => l.length > 0);
    expect(house.log[0]).toMatch(/Another program is taking this bot's messages/);
    // Ours comes back, and ends the rival's poll in its turn.
    expect((await rival).status).toBe(409);
    cloud.sendText(OWNER, 'still here');
    await cloud.waitSent(1);
  });

  test('starts when the network comes back', async () => {
    await cloud.down();
    house = openHouse(cloud);
    await until(() => house.log, l => l.length > 0);
    expect(house.log[0]).toMatch(/^The Telegram door could not go on \(Network request for 'getMe' failed: ECONNREFUSED\); nothing is lost/);
    await cloud.up();
    cloud.sendText(OWNER, 'back');
    await cloud.waitSent(1, 15_000);
  });

  test('a revoked token shuts this door with a sentence; the rest of the house lives', async () => {
    house = openHouse(cloud);
    await house.door.opened;
    cloud.cloud.revoked = true;
    cloud.sendText(OWNER, 'x'); // ends the poll in hand
    await until(() => house.log, l => l.length > 0);
    expect(house.log).toEqual([expect.stringMatching(/^Telegram refuses the bot token: .*revoked.*PAWL_TELEGRAM_TOKEN/)]);
    const polls = cloud.calls('getUpdates').length;
    house.intake.put({ key: 'tg:x', door: 'telegram', chat: 'bench', at: '2026-03-14T09:00:00Z', body: '{}' });
    await house.intake.idle();
    await new Promise(next => setTimeout(next, 1500));
    expect(cloud.calls('getUpdates').length).toBe(polls);
  });

  test('a token that never was shuts it at the start', async () => {
    for (const token of ['4242001:NotTheLoopbackTokenNotTheLoopback', 'nonsense-nonsense-nonsense-nonsense']) {
      house = openHouse(cloud, { token });
      expect(await house.door.opened).toBeUndefined();
      expect(house.log).toHaveLength(1);
      expect(house.log[0]).toMatch(/bot token/);
      expect(house.log[0]).not.toContain(token);
      await house.close();
    }
  });

  test('tells of messages that the platform may have let go, after more than a day away', async () => {
    let ahead = 0;
    const now = () => Date.now() + ahead;
    house = openHouse(cloud, { now });
    cloud.sendText(OWNER, 'hello');
    await cloud.waitSent(1);
    await house.close(true);
    cloud.sendText(OWNER, 'lost on the way');
    ahead = 25 * 3_600_000;
    cloud.advance(25 * 3600);
    cloud.sendText(OWNER, 'in time');
    house = openHouse(cloud, { dir: house.dir, now });
    const sent = await cloud.waitSent(3);
    expect(sent.slice(1).map(s => s.text)).toEqual(expect.arrayContaining(['noted: in time', expect.stringMatching(/^I was out of reach from .* 24 hours only.*say it again/)]));
    expect(house.taken.map(m => m.text)).toEqual(['in time']);
  });
});

describe('a note that can\'t be written down', () => {
  test('is not confirmed to the platform and comes again until it can', async () => {
    let full = true;
    house = openHouse(cloud, {
      put: intake => m => {
        if (full && m.body.includes('three')) throw new StoreError('full', 'The disk is full. Nothing was written; make room and say it again.');
        return intake.put(m);
      },
    });
    for (const text of ['one', 'two', 'three', 'four', 'five']) cloud.sendText(OWNER, text);
    await until(() => house.log, l => l.length > 0);
    expect(house.log).toEqual([expect.stringMatching(/The disk is full/)]);
    await house.intake.idle();
    // The whole batch is still the platform's to give; nothing after the one that failed was taken out of turn.
    expect(cloud.unconfirmed()).toHaveLength(5);
    expect(house.taken.map(m => m.text)).toEqual(['one', 'two']);
    full = false;
    await until(() => house.taken, t => t.length === 5, 15_000);
    expect(house.taken.map(m => m.text)).toEqual(['one', 'two', 'three', 'four', 'five']);
    await until(cloud.unconfirmed, u => u.length === 0);
  });

  test('is not confirmed by closing either', async () => {
    house = openHouse(cloud, { put: () => () => { throw new StoreError('full', 'The disk is full.'); } });
    cloud.sendText(OWNER, 'one');
    await until(() => house.log, l => l.length > 0);
    await house.close(true);
    expect(cloud.unconfirmed()).toHaveLength(1);
    house = openHouse(cloud, { dir: house.dir });
    await cloud.waitSent(1);
    expect(house.taken.map(m => m.text)).toEqual(['one']);
  });
});

describe('closing', () => {
  test('confirms what is written down and stops polling; what comes later waits for the next start', async () => {
    house = openHouse(cloud);
    await house.door.opened;
    for (let i = 0; i < 20; i++) cloud.sendText(OWNER, `n${i}`);
    await house.close(true);
    cloud.sendText(OWNER, 'after');
    const polls = cloud.calls('getUpdates').length;
    await new Promise(next => setTimeout(next, 300));
    expect(cloud.calls('getUpdates').length).toBe(polls);
    const first = house.taken.map(m => m.text);
    house = openHouse(cloud, { dir: house.dir });
    await until(() => first.length + house.taken.length, n => n === 21);
    expect([...first, ...house.taken.map(m => m.text)]).toEqual([...Array.from({ length: 20 }, (_, i) => `n${i}`), 'after']);
  });

  test('ends with no network, and when the last call to the platform is never answered', async () => {
    house = openHouse(cloud);
    await house.door.opened;
    await cloud.down();
    await house.close(true);
    await cloud.up();
    house = openHouse(cloud, { dir: house.dir });
    await house.door.opened;
    await until(() => cloud.calls('getUpdates').length, n => n > 0);
    cloud.fault('getUpdates', 'hang', 9);
    // Would be 90 s with the limit of a call; the door's own limit is 5 s.
    await house.door.close();
  }, 30_000);
});

describe('the token', () => {
  const secret = () => cloud.token.split(':')[1]!;
  test('is in no log line, no row and no file of the house, whatever goes wrong', async () => {
    house = openHouse(cloud);
    await house.door.opened;
    for (const method of ['getUpdates', 'sendMessage', 'getFile', 'file']) { cloud.fault(method, 'reset-before', 1); cloud.fault(method, 'gateway', 1); }
    cloud.sendVoice(OWNER, oggOpus('x'));
    cloud.sendText(OWNER, 'y');
    await until(() => house.taken, t => t.length >= 1, 20_000);
    await until(() => house.store.all<{ error: string | null }>('SELECT error FROM outbox').some(r => r.error !== null), Boolean);
    await cloud.down();
    await house.door.close();
    for (const name of readdirSync(house.dir)) if (name !== 'media') expect(readFileSync(join(house.dir, name), 'latin1')).not.toContain(secret());
    expect(house.log.join('\n')).not.toContain(secret());
    await cloud.up();
  });

  test('is in no error that is thrown on, however it is printed', async () => {
    await cloud.down();
    const line = telegramLine({ token: cloud.token, api: cloud.url, zone: 'UTC' });
    const error: unknown = await line.api.getMe().catch((e: unknown) => e);
    expect(error).toBeInstanceOf(HttpError);
    expect(inspect(error, { depth: 9, showHidden: true })).not.toContain(secret());
    expect(`${inspect(line)} ${JSON.stringify(line)}`.includes(secret())).toBe(false);
    await cloud.up();
    // What the same call prints without this door's care: the reason for it.
    const { Api } = await import('grammy');
    const bare: unknown = await new Api('1:BareSecretBareSecretBareSecret', { apiRoot: 'http://127.0.0.1:1' }).getMe().catch((e: unknown) => e);
    expect(inspect(bare, { depth: 9 })).toContain('BareSecret');
  });

  test('is taken out of whatever is said at the console', async () => {
    house = openHouse(cloud);
    const said: string[] = [];
    const door = openTelegram({ store: house.store, line: house.line, log: l => said.push(l), intake: { put() { throw new Error(`boom at ${cloud.url}/bot${cloud.token}/x`); } } });
    await house.door.close();
    cloud.sendText(OWNER, 'x');
    await until(() => said, s => s.some(l => l.includes('boom')));
    await door.close();
    expect(said.join('\n')).toMatch(/bot<token>/);
    expect(said.join('\n')).not.toContain(secret());
  });

  test('is known in its parts and as it stands in an address', () => {
    const redact = redactor('12:ab-cd');
    expect(redact('x 12:ab-cd y ab-cd z 12%3Aab-cd')).toBe('x <token> y <token> z <token>');
  });
});

describe('sentences', () => {
  const refused = (error_code: number) => new GrammyError('m', { ok: false, error_code, description: 'd' }, 'getUpdates', { text: 'what the note said' });
  test('say what to do, and only a bad token is final', () => {
    expect([401, 404, 409, 500].map(c => troubleOf(refused(c)).final)).toEqual([true, true, false, false]);
  });
  test('never show what a note said', () => {
    expect(inWords(refused(400))).toBe('getUpdates: 400 d');
    expect(inWords(cleaned(new HttpError('Network request for \'x\' failed!', new Error('at /bot1:abc/x')), redactor('1:abc')))).toBe('Network request for \'x\' failed: at /bot<token>/x');
  });
});
