import { AutoProcessor, env } from '@xenova/transformers';
import { expect, test } from 'vitest';
import { asFeatures, LogMel } from '../../../nlp/hear/features.ts';
import { PowerSpectrum } from '../../../nlp/hear/fft.ts';
import { BUILT_IN } from '../../../nlp/hear/model-files.ts';
import { shopNoise } from './shop-noise.ts';

test('the spectrum is the one of the definition (a discrete Fourier transform worked out term by term)', () => {
  const frame = Float64Array.from(shopNoise('shop', 400 / 16_000, 3));
  const out = new Float64Array(201);
  new PowerSpectrum(400).compute(frame, out);
  for (const k of [0, 1, 7, 100, 199, 200]) {
    let re = 0;
    let im = 0;
    frame.forEach((x, n) => {
      re += x * Math.cos((2 * Math.PI * k * n) / 400);
      im -= x * Math.sin((2 * Math.PI * k * n) / 400);
    });
    expect(out[k]).toBeCloseTo(re * re + im * im, 9);
  }
});

// Checked against the speech library's own extractor, which pads to 30 s and transforms the padding too.
test.each([['a short note', 1.234], ['a long one', 17.5], ['the whole window', 30], ['less than a frame', 0.01]])(
  'features of %s are those of the library', async (_, seconds) => {
    env.allowRemoteModels = false;
    env.localModelPath = BUILT_IN.modelsDir;
    const processor = await AutoProcessor.from_pretrained(BUILT_IN.model);
    const { window, config } = processor.feature_extractor as unknown as { window: Float64Array; config: { mel_filters: number[][] } };
    const samples = shopNoise('hammer', seconds, 5);
    const theirs = (await processor(samples)).input_features.data as Float32Array;
    const ours = asFeatures(new LogMel({ window, filters: config.mel_filters, hop: 160, frames: 3000 }).measure(samples));
    expect(ours.length).toBe(theirs.length);
    expect(ours.reduce((most, x, i) => Math.max(most, Math.abs(x - theirs[i]!)), 0)).toBeLessThan(1e-5);
  });
