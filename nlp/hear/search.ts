import type { Heard } from './decoder.ts';
import { bestCandidates, scoreOf } from './candidates.ts';
import { endsInLoop } from './doubt.ts';
import { expect, type Expectation, type WordNode } from './word-tree.ts';
import type { Whisper } from './model.ts';

/** What a search found: the pieces, the log-probability of each, and how likely the model held it that nobody speaks. */
export interface Found {
  pieces: number[];
  scores: number[];
  noSpeech: number;
}

interface SearchSetting {
  /** Readings followed side by side; 1 takes the likeliest piece every time. */
  readings: number;
  /** Log-probability given for each piece of an expected word. */
  bonus: number;
  expected: WordNode;
  /** Most pieces to write: speech has a rate, and a loop has none. */
  most: number;
}

interface Reading extends Expectation {
  row: number;
  pieces: number[];
  scores: number[];
  total: number;
}

/** A reading that is this far (in log-probability) behind a finished one won't catch up. */
const HOPELESS = 3;

/**
 * Beam search over what the model hears, with a bonus for the words that this shop uses: several readings are kept side
 * by side, so that a word that looked unlikely at its first piece can still win. `heard` is the encoder's answer,
 * `prompt` the pieces before the transcript.
 */
export async function search(whisper: Whisper, heard: Heard, prompt: number[], setting: SearchSetting): Promise<Found> {
  const logits = await whisper.decoder.begin(heard, prompt);
  const width = logits.length / prompt.length;
  const rowAt = (position: number) => logits.subarray(position * width, (position + 1) * width);
  const noSpeech = Math.exp(scoreOf(rowAt(prompt.indexOf(whisper.ids.start)), whisper.ids.noSpeech));
  const start: Reading = { row: 0, pieces: [], scores: [], total: 0, node: setting.expected, lent: 0 };
  const best = await extend(whisper, setting, start, rowAt(prompt.length - 1));
  return { pieces: best.pieces, scores: best.scores, noSpeech };
}

async function extend(whisper: Whisper, setting: SearchSetting, start: Reading, firstRow: Float32Array): Promise<Reading> {
  const begins = setting.bonus > 0 ? [...setting.expected.next.keys()] : [];
  let readings = [start];
  let rows = [firstRow];
  let finished: Reading | undefined;
  for (let step = 0; step < setting.most; step++) {
    const next: Reading[] = [];
    for (const reading of spread(readings, rows, begins, whisper, setting, step === 0)) {
      if (reading.pieces.at(-1) === whisper.ids.end) {
        if (!finished || perPiece(reading) > perPiece(finished)) finished = reading;
        if (setting.readings === 1) return finished;
      } else if (next.push(reading) === setting.readings) break;
    }
    if (next.length === 0 || (finished && next[0]!.total < finished.total - HOPELESS)) break;
    const logits = await whisper.decoder.step(next.map((r) => r.pieces.at(-1)!), next.map((r) => r.row));
    const width = logits.length / next.length;
    rows = next.map((_, row) => logits.subarray(row * width, (row + 1) * width));
    readings = next.map((reading, row) => ({ ...reading, row }));
  }
  return finished ?? readings[0]!;
}

/** Longer readings have more pieces to lose on: they are compared by what a piece cost. */
const perPiece = (reading: Reading) => reading.total / reading.pieces.length;

/** All continuations of all readings, likeliest first; those that run in a circle are left out. `begins`: pieces that an expected word may begin with. */
function spread(readings: Reading[], rows: Float32Array[], begins: number[], whisper: Whisper, setting: SearchSetting, first: boolean): Reading[] {
  const all: Reading[] = [];
  for (const [index, reading] of readings.entries()) {
    const favoured = setting.bonus > 0 && reading.node !== setting.expected ? [...begins, ...reading.node.next.keys()] : begins;
    const banned = first ? whisper.bannedFirst : whisper.banned;
    for (const { piece, score } of bestCandidates(rows[index]!, setting.readings + 1, banned, favoured, 3 * setting.bonus)) {
      const { gain, ...expectation } = expect(reading, setting.expected, piece, setting.bonus);
      const pieces = [...reading.pieces, piece];
      if (endsInLoop(pieces)) continue;
      all.push({ ...expectation, row: index, pieces, scores: [...reading.scores, score], total: reading.total + score + gain });
    }
  }
  return all.sort((a, b) => b.total - a.total);
}
