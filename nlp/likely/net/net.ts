import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { Tensor } from 'onnxruntime-node';
import type { Ask } from '../../../domain/model/ask.ts';
import { exactSums } from '../../runtime/exact-sums.ts';
import { openNow } from '../../runtime/session.ts';
import type { Sort } from '../sort.ts';

/**
 * What was learned beside the weights: the sorts, attributes and questions told apart, each with its bias; for each sort what is asked of a piece to find its name
 * (`seeks`), and the bias of that (`found`); for each field of a kind ("fit with") what is asked of a piece that says it, and its bias (`held`);
 * and what a word or a figure may tell by itself (`spots`).
 */
export interface Heads { sorts: Sort[]; attributes: string[]; asks: Ask['kind'][]; bias: number[]; seeks: number[][]; found: number; fields: string[]; fieldSeeks: number[][]; held: number[]; spots: string[] }

export interface Net { heads: Heads; vocabulary: ReadonlyMap<string, number>; run(ids: readonly number[], types: readonly number[]): Float32Array }

let loaded: Net | undefined, missing = false;

/** The net, loaded when it is first asked: a row of numbers for each piece, in the order of `weighed.ts`. Throws when its files are missing or damaged. */
export function net(): Net {
  if (loaded) return loaded;
  const here = (file: string): URL => new URL(`./${file}`, import.meta.url);
  // One thread and no arena: a note is so short that handing work over costs more than doing it.
  const run = openNow(fileURLToPath(here('net.onnx')), { intraOpNumThreads: 1, interOpNumThreads: 1, enableCpuMemArena: false, ...exactSums() });
  const vocabulary = new Map(readFileSync(here('pieces.txt'), 'utf8').trimEnd().split('\n').map((piece, i) => [piece, i]));
  const heads = JSON.parse(readFileSync(here('heads.json'), 'utf8')) as Heads;
  const tensor = (of: readonly number[]): Tensor => new Tensor('int64', BigInt64Array.from(of, BigInt), [1, of.length]);
  return (loaded = {
    heads, vocabulary,
    run: (ids, types) => run({ ids: tensor(ids), types: tensor(types) }, 'told') as Float32Array,
  });
}

/** Whether the net can be loaded here. Where it can't (a machine that the runtime isn't made for), notes are read by the rules alone, and one warning says so. */
export function hasNet(): boolean {
  if (loaded) return true;
  if (missing) return false;
  try {
    net();
    return true;
  } catch (error) {
    missing = true;
    process.emitWarning(`The net that reads beside the rules can't be loaded, so notes are read without it: ${(error as Error).message}`);
    return false;
  }
}
