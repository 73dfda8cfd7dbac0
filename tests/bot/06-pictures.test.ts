import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { png } from '../../bot/draw/png.ts';
import { sheet, text } from '../../bot/draw/paper.ts';
import { receiver } from '../../bot/receive.ts';
import { createService, type RunningService } from '../../bot/serve.ts';
import { openShop } from '../../bot/shop.ts';

/** A photo kept with its caption, shown again when its part is asked for. */
let dir: string;
let service: RunningService;
let close: () => Promise<void>;
beforeAll(() => {
  dir = mkdtempSync(join(tmpdir(), 'pictures-'));
  const { log, deps } = openShop(dir, 'Europe/Paris');
  service = createService({ deps, receiving: receiver({ store: log.store }) });
  close = async () => { await service.close(); log.store.close(); };
});
afterAll(async () => { await close(); rmSync(dir, { recursive: true, force: true }); });

let n = 0;
const say = (words: string, photo?: Uint8Array) => service.take({
  key: `test:${++n}`, door: 'page', chat: 'bench', at: '2026-05-01T10:00:00+02:00', text: words, ...(photo ? { files: [{ bytes: photo, use: 'photo' as const }] } : {}),
});
const photo = png(sheet(60, 40, 'pump', text(5, 20, 'pump')));

test('a photo is tied to the part in its caption', async () => {
  await say('switch to Heron');
  await say('water pump', photo);
  const reply = await say('show me the pictures of the water pump');
  expect(reply.answers).toMatchObject([{ kind: 'picture', part: 'water pump', files: [expect.stringMatching(/\.png$/)] }]);
  expect(reply.answers[0]!.kind === 'picture' && existsSync(reply.answers[0].files[0]!)).toBe(true);
  expect(service.media(reply.files[0]!)).toMatchObject({ type: 'image/png', bytes: Buffer.from(photo) });
});

test('a caption that says more is a note as well', async () => {
  const noted = await say('Radiator is off', photo);
  expect(noted.entries.map(e => e.entry)).toMatchObject([{ kind: 'fit', part: 'radiator', state: 'off' }]);
  expect((await say('show me photos of the radiator')).files).toHaveLength(1);
});

test('a part without pictures has none, and a file that is no picture is refused with its words kept', async () => {
  expect((await say('pictures of the magneto please')).files).toEqual([]);
  const refused = await say('Magneto is off', new TextEncoder().encode('<html>not a photo</html>'));
  expect(refused.say).toContain('neither a photo nor sound');
  expect(refused.entries).toHaveLength(1);
});
