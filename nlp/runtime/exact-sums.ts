import { Tensor } from 'onnxruntime-node';
import { openNow } from './session.ts';

/**
 * A model of one step, the product of unsigned and signed 8-bit matrices (MatMulInteger of ONNX, operator set 10): four rows of 8 by 16 columns that are all 127.
 * With rows of 255 each sum is 8 × 255 × 127; a processor without 8-bit dot products adds in pairs of 16 bits and stops at 32,767 a pair.
 */
const ONE_PRODUCT = 'CAUSADrWAQoYCgFhCgF3EgF5Ig1NYXRNdWxJbnRlZ2VyEgFnKowBCAgIEBADQgF3SoABf39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39/f39aEwoBYRIOCgwIAhIICgIIBAoCCAhiEwoBeRIOCgwIBhIICgIIBAoCCBBCBAoAEAo=';
const ROWS = 4, DEEP = 8, EXACT = DEEP * 255 * 127;

let options: object | undefined;

/** Options of a session for a model with 8-bit weights: told to be exact where sums run over, which takes twice the time, and left alone where they don't (found by trying, once). */
export function exactSums(): object {
  return (options ??= runOver() ? { extra: { session: { x64quantprecision: '1' } } } : {});
}

/** Whether 8-bit sums run over on this processor. A runtime in which it can't be tried is taken to let them. */
function runOver(): boolean {
  try {
    const sums = openNow(Buffer.from(ONE_PRODUCT, 'base64'), { intraOpNumThreads: 1, interOpNumThreads: 1 })({ a: new Tensor('uint8', new Uint8Array(ROWS * DEEP).fill(255), [ROWS, DEEP]) }, 'y') as Int32Array;
    return sums.some(sum => sum !== EXACT);
  } catch {
    return true;
  }
}
