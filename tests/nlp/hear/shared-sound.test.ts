import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { decodeSound, type Sound } from '../../../nlp/hear/decode/decode.ts';
import { BUILT_IN } from '../../../nlp/hear/model-files.ts';
import { Whisper } from '../../../nlp/hear/model.ts';
import { expectNames, transcribe } from '../../../nlp/hear/transcribe.ts';

test('readings that look at one row of sound hear what they hear with rows of their own, as a model that can\'t share needs them', async () => {
  const whisper = await Whisper.load(BUILT_IN);
  const { samples } = await decodeSound(readFileSync(new URL('../../../fixtures/clips/heron-where.ogg', import.meta.url))) as Sound;
  const hear = () => transcribe(whisper, samples, expectNames(whisper, ['exhaust manifold']));
  expect(whisper.decoder.sharesSound).toBe(true);
  const shared = await hear();
  whisper.decoder.sharesSound = false;
  expect(await hear()).toEqual(shared);
  expect(shared.text).toMatch(/exhaust manifold/i);
  await whisper.close();
});
