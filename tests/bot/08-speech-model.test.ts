import { copyFileSync, existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, expect, test } from 'vitest';
import { canHear, hearKept, hearWith } from '../../bot/ears.ts';
import { modelShelf } from '../../bot/model-shelf.ts';
import { receiver } from '../../bot/receive.ts';
import { createService } from '../../bot/serve.ts';
import { openShop } from '../../bot/shop.ts';
import { unheardNotes } from '../../domain/store/heard.ts';
import type { Fetched } from '../../nlp/hear/fetch-model.ts';
import { createHearer, type Hearer } from '../../nlp/hear/hear.ts';
import { BUILT_IN, MODEL_FILES } from '../../nlp/hear/model-files.ts';

/** Another speech model at the person's yes, through a whole turn; the hub itself is tested in nlp/hear. */
const SMALL = 'Xenova/whisper-small.en';
let dir: string;
let shop: ReturnType<typeof openShop>;
let asked: string[];
let used: (string | undefined)[];

beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'shelf-'));
  shop = openShop(dir, 'Europe/Paris');
  asked = [];
  used = [];
});
afterEach(() => {
  shop.log.store.close();
  rmSync(dir, { recursive: true, force: true });
});

/** An ear that fetches what it is told to and can load anything but `broken`. */
function ear(fetched: Fetched, broken?: string): Hearer {
  return {
    hear: () => Promise.reject(new Error('not asked to hear')),
    async use({ model }) { used.push(model); return model === broken || model === undefined ? BUILT_IN.model : model; },
    async fetch({ model }, onProgress) { asked.push(model); onProgress?.(0, 250e6); onProgress?.(0.4, 250e6); return fetched; },
    async close() {},
  };
}

function serving(hearer: Hearer, byHand = {}) {
  const shelf = modelShelf(shop.log.store, dir, byHand);
  const told: string[] = [];
  const progress: string[] = [];
  const service = createService({
    deps: { ...shop.deps, models: shelf.models }, receiving: receiver({ store: shop.log.store }),
    workOut: async (task, _, tell) => ({ say: task.kind === 'model' ? await shelf.change(hearer, task.model, tell) : '', buttons: [], files: [] }),
  });
  service.onTalk(t => told.push(t.say));
  service.onProgress(p => progress.push(p.text));
  let n = 0;
  const say = (text: string) => service.take({ key: `test:${++n}`, door: 'terminal', chat: 'bench', at: '2026-05-01T10:00:00+02:00', text });
  return { shelf, told, progress, say, close: () => service.close() };
}

test('nothing is fetched before the yes; then its coming is told, it is used, and it is still used after a restart', async () => {
  const it = serving(ear({ ok: true, checked: 'size and hash' }));
  const question = await it.say('get the speech model small.en');
  expect(question.say).toMatch(/about 250 MB.*Fetch it\?/);
  expect(question.buttons.map(b => b.label)).toEqual(['yes', 'no']);
  expect(asked).toEqual([]);
  await it.say('yes');
  await it.close();
  expect(asked).toEqual([SMALL]);
  expect(it.progress).toEqual(['Fetching small.en, 250 MB… 0 %', 'Fetching small.en, 250 MB… 40 %']);
  expect(it.told.at(-1)).toBe('I hear with small.en from now on; its files are right by size and hash.');
  expect(modelShelf(shop.log.store, dir, {}).options()).toEqual({ modelsDir: join(dir, 'models'), model: SMALL });
});

test('no, or any other word, fetches nothing', async () => {
  const it = serving(ear({ ok: true, checked: 'size' }));
  await it.say('get the speech model small.en');
  expect((await it.say('no')).say).toContain('Nothing is fetched');
  await it.say('get the speech model small.en');
  expect((await it.say('radiator is off')).entries).toHaveLength(1);
  await it.close();
  expect([asked, used]).toEqual([[], []]);
});

test('no network: the sentence says that the one it has stays, and it does', async () => {
  const it = serving(ear({ ok: false, why: 'I could not get it: there is no connection. I go on with the model I have.' }));
  await it.say('get the speech model small.en');
  await it.say('yes');
  await it.close();
  expect(it.told.at(-1)).toContain('I go on with the model I have');
  expect(used).toEqual([]);
  expect(it.shelf.options()).toEqual({});
});

test('one that can\'t be loaded is left again', async () => {
  const it = serving(ear({ ok: true, checked: 'size' }, SMALL));
  await it.say('get the speech model small.en');
  await it.say('yes');
  await it.close();
  expect(it.told.at(-1)).toContain('go on with the model that came along');
  expect(it.shelf.options()).toEqual({});
});

test('what the environment says is not changed in talk, and a command sends to the running program', async () => {
  const it = serving(ear({ ok: true, checked: 'size' }), { model: 'openai/whisper-base' });
  expect((await it.say('use the built-in speech model')).say).toContain('PAWL_MODEL');
  await it.close();
  const alone = createService({ deps: shop.deps, receiving: receiver({ store: shop.log.store }) });
  expect((await alone.take({ key: 'c', door: 'command', chat: 'bench', at: '2026-05-01T10:00:00+02:00', text: 'get the speech model small.en' })).say).toContain('npm start');
  await alone.close();
});

/** The whole way with a folder of models that is empty at first, as when the program's own is gone. */
test('no model: two lines say what to do, the sound is kept, and it is heard when a model is there', async () => {
  const models = join(dir, 'models');
  const put = () => MODEL_FILES.forEach(file => {
    mkdirSync(dirname(join(models, 'a/model', file)), { recursive: true });
    copyFileSync(join(BUILT_IN.modelsDir, BUILT_IN.model, file), join(models, 'a/model', file));
  });
  const options = { modelsDir: models, model: 'a/model' };
  const hearer = createHearer(options, []);
  const service = createService({ deps: shop.deps, receiving: receiver({ store: shop.log.store, hear: hearWith(hearer, shop.log, () => undefined) }) });
  const bytes = readFileSync(join(import.meta.dirname, '../../fixtures/clips/heron-radiator.ogg'));
  const reply = await service.take({ key: 'voice:1', door: 'page', chat: 'bench', at: '2026-05-01T10:00:00+02:00', text: '', files: [{ bytes, use: 'sound' }] });
  expect(reply.say.split('\n').slice(0, 2)).toEqual([expect.stringMatching(/can't hear yet.*recording is kept/), expect.stringMatching(/Put the files.*PAWL_MODELS/)]);
  const able = () => canHear(options, []);
  await hearKept(service, shop.log.store, able);
  expect(unheardNotes(shop.log.store)).toHaveLength(1);
  put();
  expect(existsSync(join(models, 'a/model', MODEL_FILES[0]!))).toBe(true);
  await hearKept(service, shop.log.store, able);
  expect(unheardNotes(shop.log.store)).toEqual([]);
  expect(service.talk(undefined, 5).at(-1)!.say).toMatch(/radiator/i);
  await service.close();
  await hearer.close();
}, 120_000);
