import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { mediaByHash, readMedia } from '../../../domain/store/media.ts';
import { askToDraw } from '../../../bot/planning/draw-named.ts';
import type { Task } from '../../../bot/planning/task.ts';
import { workOut } from '../../../bot/planning/work-out.ts';
import { shopInMemory } from '../shop-in-memory.ts';

const AT = '2026-06-01T18:00:00+02:00';
let dir: string;
let shop: ReturnType<typeof shopInMemory>;
beforeEach(() => {
  dir = mkdtempSync(join(tmpdir(), 'pawl-draw-'));
  shop = shopInMemory(dir);
  for (const w of ['switch to Heron', 'hood is off', 'paint the hood', 'need a fan belt for the radiator', 'radiator is off']) shop.say(w, AT);
});
afterEach(() => { shop.close(); rmSync(dir, { recursive: true }); });

const isPng = (bytes: Uint8Array): boolean => Buffer.from(bytes.slice(0, 8)).equals(Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]));

describe('draw it', () => {
  it.each([["what's holding up the radiator?", 'What holds it up.'], ['when will the machine be done?', 'The weeks ahead.']])('after "%s" gives a picture that is kept', async (question, say) => {
    shop.say(question, AT);
    const reply = shop.say('draw it', AT);
    expect(reply.later).toHaveLength(1);
    const out = await workOut(shop.deps, reply.later![0] as Task, AT);
    expect(out.say).toBe(say);
    const media = mediaByHash(shop.deps.log.store, out.files[0]!)!;
    expect(media.mime).toBe('image/png');
    expect(isPng(readMedia(shop.deps.log.store, media))).toBe(true);
  });
  it.each([
    ["draw me what's holding up the radiator", 'What holds it up.'], ['picture of what the radiator waits for', 'What holds it up.'], ['show me the weeks ahead', 'The weeks ahead.'],
    ['draw the plan', 'The weeks ahead.'], ['chart of my hours', 'Money and hours so far.'], ['graph the money', 'Money and hours so far.'],
  ])('without an answer before it: "%s"', async (words, say) => {
    shop.say('paid 40 for the magneto', AT);
    const out = await workOut(shop.deps, shop.say(words, AT).later![0] as Task, AT);
    expect({ say: out.say, files: out.files.length }).toEqual({ say, files: 1 });
  });
  it.each(['draw the bearing off the shaft', 'show me the pictures of the hood', 'sketch the bracket before it comes off', 'show me what is blocking the radiator'])
  ('is not meant by: %s', words => { expect(askToDraw(words)).toBeUndefined(); });
  it('before any such answer asks for one', () => expect(shop.say('draw it', AT)).toMatchObject({ say: expect.stringContaining('then I can draw it') }));
  it('is offered with what can be drawn only', () => {
    expect(shop.say("what's holding up the radiator?", AT).buttons.map(b => b.send)).toContain('draw it');
    expect(shop.say("what's due?", AT).buttons.map(b => b.send)).not.toContain('draw it');
  });
});
