import { fileTypeFromBuffer } from 'file-type';
import { describe, expect, test } from 'vitest';
import { segments } from '../../../../bot/doors/page/web/segments.ts';
import { joined, peak, wav } from '../../../../bot/doors/page/web/wav.ts';

const RATE = 16_000, FRAME = 512, FRAME_S = FRAME / RATE;

/** Runs stretches of [seconds, likelihood of speech] through the cutter; each sample is its own number, so that what is kept can be told. */
function cut(...stretches: [number, number][]): { from: number; to: number }[] {
  const s = segments(RATE);
  const got: Float32Array[] = [];
  let at = 0;
  for (const [seconds, likely] of stretches) {
    for (let n = Math.round(seconds / FRAME_S); n > 0; n--, at += FRAME) {
      const piece = s.frame(Float32Array.from({ length: FRAME }, (_, i) => at + i), likely);
      if (piece) got.push(piece);
    }
  }
  const last = s.end();
  if (last) got.push(last);
  return got.map(p => ({ from: p[0]! / RATE, to: p[p.length - 1]! / RATE }));
}

describe('cutting speech out of what is heard', () => {
  test('silence and a likeness of speech below a half give nothing', () => {
    expect(cut([30, 0.02], [5, 0.45], [30, 0])).toEqual([]);
  });
  test('a sentence is one piece, with half a second before it, ended by a pause', () => {
    const [piece, ...more] = cut([3, 0], [4, 0.9], [3, 0]);
    expect(more).toEqual([]);
    expect(piece!.from).toBeGreaterThan(2.45);
    expect(piece!.from).toBeLessThan(2.6);
    expect(piece!.to).toBeGreaterThan(7.5);
    expect(piece!.to).toBeLessThan(8.1);
  });
  test('a knock is too short to be speech', () => {
    expect(cut([2, 0], [0.2, 0.99], [3, 0])).toEqual([]);
  });
  test('a breath does not part a sentence, a pause does', () => {
    expect(cut([2, 0.9], [0.5, 0], [2, 0.9], [2, 0])).toHaveLength(1);
    expect(cut([2, 0.9], [1.2, 0], [2, 0.9], [2, 0])).toHaveLength(2);
  });
  test('long talk is cut at a breath once it is long, and always under 30 s, without losing a sample', () => {
    const breaths = cut([19, 0.9], [0.4, 0], [19, 0.9], [2, 0]);
    expect(breaths).toHaveLength(2);
    expect(breaths[0]!.to).toBeGreaterThan(19.2);
    expect(breaths[0]!.to).toBeLessThan(19.5);
    const unbroken = cut([100, 0.9], [2, 0]);
    expect(unbroken.length).toBeGreaterThan(3);
    for (const p of unbroken) expect(p.to - p.from).toBeLessThan(30);
    for (let i = 1; i < unbroken.length; i++) expect(unbroken[i]!.from).toBeCloseTo(unbroken[i - 1]!.to + 1 / RATE, 4);
  });
  test('what is being said when it is stopped is kept', () => {
    expect(cut([1, 0], [2, 0.9])).toHaveLength(1);
  });
});

describe('the WAV that is sent', () => {
  test('is one by another library’s measure, with the header of the 1991 specification byte for byte', async () => {
    const bytes = new Uint8Array(wav(new Float32Array([0, 1, -1, 0.5, 2, -2]), 16_000));
    expect(await fileTypeFromBuffer(bytes)).toMatchObject({ ext: 'wav' });
    expect(Buffer.from(bytes).toString('hex')).toBe(
      // RIFF size WAVE | "fmt " 16, PCM, mono, 16000 Hz, 32000 B/s, 2 B a frame, 16 bit | data size | samples, clipped at full scale
      `52494646${'30000000'}57415645${'666d7420'}${'10000000'}${'0100'}${'0100'}${'803e0000'}${'007d0000'}${'0200'}${'1000'}${'64617461'}${'0c000000'}${'0000ff7f01800040ff7f0180'}`,
    );
  });
  test('pieces are joined end to end, and the loudest sample found', () => {
    expect([...joined([new Float32Array([1, 2]), new Float32Array(0), new Float32Array([3])])]).toEqual([1, 2, 3]);
    expect(peak(new Float32Array([0.1, -0.75, 0.5]))).toBe(0.75);
    expect(peak(new Float32Array(0))).toBe(0);
  });
});
