import { Tensor } from '@xenova/transformers';

/** What the decoder has worked out so far, by the model's own input names. */
export type Cache = Record<string, Tensor>;

/** Rows of the first dimension in a new order; a row may be taken more than once. `into`: room for the copy, of any content. */
function takeRows(tensor: Tensor, order: number[], into?: Float32Array): Tensor {
  const [, ...rest] = tensor.dims;
  const size = rest.reduce((a, b) => a * b, 1);
  const from = tensor.data as Float32Array;
  const data = into ?? new Float32Array(size * order.length);
  order.forEach((row, i) => data.set(from.subarray(row * size, (row + 1) * size), i * size));
  return new Tensor('float32', data, [order.length, ...rest]);
}

const each = (cache: Cache, act: (tensor: Tensor) => Tensor): Cache =>
  Object.fromEntries(Object.entries(cache).map(([name, tensor]) => [name, act(tensor)]));

/** The part of a decoder's answer that it wants back at the next step: what was said (`own`) and what was heard (`sound`). */
export function splitCache(output: Record<string, Tensor>): { own: Cache; sound: Cache } {
  const own: Cache = {};
  const sound: Cache = {};
  for (const [name, tensor] of Object.entries(output)) {
    if (!name.startsWith('present')) continue;
    (name.includes('encoder') ? sound : own)[name.replace('present', 'past_key_values')] = tensor;
  }
  return { own, sound };
}

/** Makes the rows of the cache follow the readings that live on. */
export function follow(own: Cache, order: number[], rows: number): Cache {
  const same = order.length === rows && order.every((row, i) => row === i);
  return same ? own : each(own, (tensor) => takeRows(tensor, order));
}

/**
 * The same sound for several readings at once. A copy is 18 MB a reading: its room is kept from one note to the next,
 * since the collector would let a dozen of them pile up.
 */
export class SoundCopies {
  private readonly room = new Map<string, Float32Array>();
  private copies = new Map<number, Cache>();

  /** Begins a new sound; copies of the last one are no longer good. */
  begin(one: Cache): void {
    this.copies = new Map([[1, one]]);
  }

  forRows(rows: number): Cache {
    let copy = this.copies.get(rows);
    if (!copy) {
      const order = new Array<number>(rows).fill(0);
      copy = Object.fromEntries(Object.entries(this.copies.get(1)!).map(([name, one]) => [name, takeRows(one, order, this.roomFor(name, rows, one))]));
      this.copies.set(rows, copy);
    }
    return copy;
  }

  private roomFor(name: string, rows: number, one: Tensor): Float32Array {
    const key = `${rows} ${name}`;
    const size = rows * (one.data as Float32Array).length;
    if (this.room.get(key)?.length !== size) this.room.set(key, new Float32Array(size));
    return this.room.get(key)!;
  }
}
