/** Room is taken in steps of so many numbers, so that it need not grow at every word piece. */
const STEP = 64 * 1024;

/** Room for rows of numbers, by what they are, that is used again instead of being made anew; it only grows. */
export class Room {
  private readonly held = new Map<string, Float32Array>();

  /** The first `size` numbers of what is held under a name: those that were put there before, as far as they go, unless it had to grow. */
  numbers(name: string, size: number): Float32Array {
    let held = this.held.get(name);
    if (!held || held.length < size) this.held.set(name, held = new Float32Array(Math.ceil(size / STEP) * STEP));
    return held.subarray(0, size);
  }
}
