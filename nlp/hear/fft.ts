/** Smallest radix first: 200 = 2·2·2·5·5. */
function factorise(n: number): number[] {
  const factors: number[] = [];
  for (let p = 2; n > 1; p++) while (n % p === 0) { factors.push(p); n /= p; }
  return factors;
}

/** cos and sin of −2πk/n for k < n, as pairs. */
function roots(n: number): Float64Array {
  const table = new Float64Array(2 * n);
  for (let k = 0; k < n; k++) {
    table[2 * k] = Math.cos((-2 * Math.PI * k) / n);
    table[2 * k + 1] = Math.sin((-2 * Math.PI * k) / n);
  }
  return table;
}

/**
 * Power spectrum |X(k)|², k = 0…n/2, of real frames of an even length n that has only small prime factors
 * (the recogniser's 400 among them, which a radix-2 transform can't do without padding).
 * Two real samples are packed into one complex number, so the transform runs at half length
 * (mixed-radix decimation in time; Cooley and Tukey 1965).
 */
export class PowerSpectrum {
  private readonly half: number;
  private readonly factors: number[];
  private readonly small: Float64Array;
  private readonly full: Float64Array;
  private readonly packed: Float64Array;
  private readonly scratch: Float64Array;

  constructor(length: number) {
    this.half = length / 2;
    this.factors = factorise(this.half);
    this.small = roots(this.half);
    this.full = roots(length);
    this.packed = new Float64Array(length);
    this.scratch = new Float64Array(2 * Math.max(2, ...this.factors));
  }

  /** `frame` holds `length` samples; `out` takes length/2 + 1 powers. */
  compute(frame: Float64Array, out: Float64Array): void {
    this.transform(frame, 0, 1, 0, this.half, 0);
    this.unpack(out);
  }

  /** Transforms the `n` complex numbers at frame[2·(start + i·stride)] into packed[2·to…]. */
  private transform(frame: Float64Array, start: number, stride: number, to: number, n: number, depth: number): void {
    if (n === 1) {
      this.packed[2 * to] = frame[2 * start]!;
      this.packed[2 * to + 1] = frame[2 * start + 1]!;
      return;
    }
    const radix = this.factors[depth]!;
    const part = n / radix;
    for (let r = 0; r < radix; r++) this.transform(frame, start + r * stride, stride * radix, to + r * part, part, depth + 1);
    for (let k = 0; k < part; k++) this.butterfly(to + k, part, radix, k * stride, stride);
  }

  /** Joins `radix` partial transforms at one place: out[q] = Σ_r in[r] · w^(r·(k + q·part)). */
  private butterfly(at: number, part: number, radix: number, turn: number, stride: number): void {
    const { packed, scratch, small, half } = this;
    for (let q = 0; q < radix; q++) {
      let re = 0;
      let im = 0;
      const step = (turn + q * part * stride) % half;
      for (let r = 0, w = 0; r < radix; r++, w = (w + step) % half) {
        const x = packed[2 * (at + r * part)]!;
        const y = packed[2 * (at + r * part) + 1]!;
        re += x * small[2 * w]! - y * small[2 * w + 1]!;
        im += x * small[2 * w + 1]! + y * small[2 * w]!;
      }
      scratch[2 * q] = re;
      scratch[2 * q + 1] = im;
    }
    for (let q = 0; q < radix; q++) {
      packed[2 * (at + q * part)] = scratch[2 * q]!;
      packed[2 * (at + q * part) + 1] = scratch[2 * q + 1]!;
    }
  }

  /** Separates the spectra of even and odd samples and joins them into the real frame's own. */
  private unpack(out: Float64Array): void {
    const { packed: z, half, full } = this;
    for (let k = 0; k <= half; k++) {
      const a = 2 * (k % half);
      const b = 2 * ((half - k) % half);
      const evenRe = (z[a]! + z[b]!) / 2;
      const evenIm = (z[a + 1]! - z[b + 1]!) / 2;
      const oddRe = (z[a + 1]! + z[b + 1]!) / 2;
      const oddIm = (z[b]! - z[a]!) / 2;
      const wRe = k === half ? -1 : full[2 * k]!;
      const wIm = k === half ? 0 : full[2 * k + 1]!;
      const re = evenRe + oddRe * wRe - oddIm * wIm;
      const im = evenIm + oddRe * wIm + oddIm * wRe;
      out[k] = re * re + im * im;
    }
  }
}
