import { Tensor } from '@xenova/transformers';

/** What the decoder has worked out so far, by the model's own input names. */
export type Cache = Record<string, Tensor>;

/** Rows of the first dimension in a new order; a row may be taken more than once. */
function takeRows(tensor: Tensor, order: number[]): Tensor {
  const [, ...rest] = tensor.dims;
  const size = rest.reduce((a, b) => a * b, 1);
  const from = tensor.data as Float32Array;
  const data = new Float32Array(size * order.length);
  order.forEach((row, i) => data.set(from.subarray(row * size, (row + 1) * size), i * size));
  return new Tensor('float32', data, [order.length, ...rest]);
}

const each = (cache: Cache, act: (tensor: Tensor) => Tensor): Cache =>
  Object.fromEntries(Object.entries(cache).map(([name, tensor]) => [name, act(tensor)]));

/**
 * The part of a decoder's answer that it wants back at the next step: what was said (`own`, a row a reading) and what was heard
 * (`sound`, 18 MB in one row).
 */
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

/** The same sound for several readings: as many rows of it. */
export const repeated = (sound: Cache, rows: number): Cache => each(sound, (tensor) => takeRows(tensor, new Array<number>(rows).fill(0)));
