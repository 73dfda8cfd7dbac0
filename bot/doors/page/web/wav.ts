/** One channel of samples (-1 to 1) as a WAV file of 16-bit PCM (RIFF, "Multimedia Programming Interface and Data Specifications 1.0", 1991). */
export function wav(samples: Float32Array, rate: number): ArrayBuffer {
  const bytes = samples.length * 2;
  const view = new DataView(new ArrayBuffer(44 + bytes));
  const word = (at: number, text: string) => { for (let i = 0; i < 4; i++) view.setUint8(at + i, text.charCodeAt(i)); };
  word(0, 'RIFF'); view.setUint32(4, 36 + bytes, true); word(8, 'WAVE');
  word(12, 'fmt '); view.setUint32(16, 16, true); view.setUint16(20, 1, true); view.setUint16(22, 1, true);
  view.setUint32(24, rate, true); view.setUint32(28, rate * 2, true); view.setUint16(32, 2, true); view.setUint16(34, 16, true);
  word(36, 'data'); view.setUint32(40, bytes, true);
  for (let i = 0; i < samples.length; i++) {
    const s = Math.max(-1, Math.min(1, samples[i]!));
    view.setInt16(44 + i * 2, Math.round(s * 32_767), true);
  }
  return view.buffer;
}

/** Pieces of sound end to end. */
export function joined(pieces: readonly Float32Array[]): Float32Array {
  const whole = new Float32Array(pieces.reduce((n, p) => n + p.length, 0));
  let at = 0;
  for (const p of pieces) { whole.set(p, at); at += p.length; }
  return whole;
}

/** The loudest sample, 0 to 1. */
export function peak(samples: Float32Array): number {
  let most = 0;
  for (const s of samples) most = Math.max(most, Math.abs(s));
  return most;
}
