import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { entriesAfter } from '../../../../domain/store/entries.ts';
import { lastNotes, noteCount } from '../../../../domain/store/notes.ts';
import { mediaByHash, mediaOfNote, mediaPath } from '../../../../domain/store/media.ts';
import { pair } from '../../../../domain/store/people.ts';
import type { Store } from '../../../../domain/store/open.ts';
import { BENCH } from '../../../../bot/incoming.ts';
import { openOutbox } from '../../../../bot/outbox.ts';
import { receiver } from '../../../../bot/receive.ts';
import { createService } from '../../../../bot/serve.ts';
import { openShop } from '../../../../bot/shop.ts';
import { telegramLine } from '../../../../bot/doors/telegram/line.ts';
import { openTelegram } from '../../../../bot/doors/telegram/open.ts';
import { sendTelegram } from '../../../../bot/doors/telegram/send.ts';
import { unpackTelegram } from '../../../../bot/doors/telegram/unpack.ts';
import { days } from '../../day-script.ts';
import { shopInMemory } from '../../shop-in-memory.ts';
import { jpeg, OWNER } from './harness.ts';
import { startLoopback, until, type Loopback } from './loopback/loopback.ts';

/** The whole program behind the real bot: a day said over the Bot API gives the log and the answers that the bare turn gives. */
let cloud: Loopback;
let shop: ReturnType<typeof wholeShop>;
beforeEach(async () => { cloud = await startLoopback(); shop = wholeShop(cloud); });
afterEach(async () => { await shop.close(); await cloud.close(); });

function wholeShop({ url, token }: Loopback) {
  const dir = mkdtempSync(join(tmpdir(), 'pawl-day-'));
  const zone = 'Europe/Paris';
  const { log, deps } = openShop(dir, zone);
  const { store } = log;
  pair(store, 'telegram', OWNER, '2026-01-01T00:00:00Z');
  const line = telegramLine({ token, api: url, zone });
  const media = (hash: string) => { const m = mediaByHash(store, hash); return m && mediaPath(store, m); };
  const outbox = openOutbox(store, 'telegram', sendTelegram({ store, line, media }));
  const onOut = () => outbox.wake();
  const receiving = receiver({ store, unpack: { telegram: unpackTelegram({ store, line, onOut }) } });
  const service = createService({ deps, receiving, outboxDoors: ['telegram'], onOut });
  const door = openTelegram({ store, line, intake: service.intake, onOut, log: () => {} });
  return { store, service, async close() { await door.close(); await service.close(); await outbox.close(); store.close(); rmSync(dir, { recursive: true, force: true }); } };
}

const logOf = (store: Store) => entriesAfter(store, 0, 1_000).map(({ at, machine, entry, refs }) => ({ at, machine, entry, refs }));
const seconds = (iso: string) => Math.floor(Date.parse(iso) / 1000);

describe.each(days())('$name', day => {
  test('gives the same log and the same answers as without a door', async () => {
    const bare = shopInMemory();
    for (const { at, you } of day.exchanges) {
      const before = cloud.sent().length;
      const reply = bare.say(you, at);
      cloud.sendText(OWNER, you, { date: seconds(at) });
      const sent = await cloud.waitSent(before + 1);
      expect({ you, say: sent.slice(before).map(s => s.text).join('\n') }).toEqual({ you, say: reply.say });
      expect(sent.at(-1)!.buttons.map(b => b.text)).toEqual(reply.buttons.map(b => b.label));
    }
    expect(logOf(shop.store)).toEqual(logOf(bare.deps.log.store));
    expect(lastNotes(shop.store, BENCH, 100).map(n => [n.at, n.text])).toEqual(day.exchanges.map(e => [e.at, e.you]));
    bare.close();
  });
});

test('a button does what its words do, an edit re-reads its note, a photo stays with the part in its caption', async () => {
  const say = (text: string) => { const n = cloud.sent().length; const id = cloud.sendText(OWNER, text); return cloud.waitSent(n + 1).then(() => id); };
  await say('switch to Heron');
  const id = await say('head torqued to 65 foot-pounds');
  const values = () => logOf(shop.store).flatMap(e => ('value' in e.entry ? [e.entry.value] : []));
  expect(values()).toEqual([65]);
  cloud.edit(OWNER, id, 'head torqued to 68 foot-pounds');
  await until(values, v => v.includes(68));
  expect(logOf(shop.store).some(e => e.entry.kind === 'amend')).toBe(true);
  const said = await cloud.waitSent(s => s.length >= 3 && s.at(-1)!.buttons.length > 0);
  const before = logOf(shop.store).length;
  cloud.press(OWNER, said.at(-1)!, said.at(-1)!.buttons[0]!.text);
  await until(() => logOf(shop.store).length, n => n > before);
  const notes = noteCount(shop.store);
  cloud.sendPhoto(OWNER, jpeg('magneto'), { caption: 'magneto' });
  await until(() => noteCount(shop.store), n => n > notes);
  expect(mediaOfNote(shop.store, lastNotes(shop.store, BENCH, 1)[0]!.id)).toHaveLength(1);
});
