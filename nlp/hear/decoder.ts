import { Tensor } from 'onnxruntime-node';
import { Room } from './room.ts';

/** The runtime's session, as far as it is used: inputs by name in; outputs by name, into the given tensors or, for null, new ones. */
export interface Session {
  inputNames: readonly string[];
  run(feeds: Record<string, Tensor>, fetches: Record<string, Tensor | null>): Promise<Record<string, { data: unknown }>>;
}

/** What the encoder made of a sound: [1, positions, width]. */
export interface Heard {
  data: Float32Array;
  dims: number[];
}

/** Sizes of a decoder. */
interface DecoderShape {
  heads: number;
  width: number;
  vocabulary: number;
}

/** Room is only written to when it comes in the runtime's own kind of tensor; the speech library's has a class of its own. */
const floats = (data: Float32Array, dims: number[]): Tensor => new Tensor('float32', data, dims);
const written = (name: string): string => name.replace('past_key_values', 'present');

/**
 * The half of the recogniser that writes: pieces in, log-odds of the next piece out, for several readings of one sound side by side.
 * What it works out is kept here between the pieces, in room that is used again and again: room made anew at each piece (megabytes of it,
 * outside the heap) would have the collector run at every word, on the core that the sums need. One search at a time.
 */
export class Decoder {
  /** Whether all readings may look at one row of the sound; `tryShared` finds out. */
  sharesSound = false;
  private readonly ownNames: string[];
  private readonly soundNames: string[];
  private readonly share: number;
  /** What was said so far, a row a reading; `spare` is written to next. */
  private own = new Room();
  private spare = new Room();
  private readonly sound = new Room();
  private readonly answer = new Room();
  private rows = 0;
  private length = 0;
  private positions = 0;

  constructor(private readonly session: Session, private readonly shape: DecoderShape) {
    const past = session.inputNames.filter((name) => name.startsWith('past_key_values'));
    this.ownNames = past.filter((name) => name.includes('.decoder.'));
    this.soundNames = past.filter((name) => name.includes('.encoder.'));
    this.share = shape.width / shape.heads;
  }

  /** Begins anew, on what was heard and the pieces before the transcript; the log-odds after each of these, one row after another. */
  async begin(heard: Heard, prompt: number[]): Promise<Float32Array> {
    [this.rows, this.length, this.positions] = [1, prompt.length, heard.dims[1]!];
    const none = floats(new Float32Array(0), [1, this.shape.heads, 0, this.share]);
    const output = await this.session.run({
      input_ids: this.pieces(prompt, 1),
      encoder_hidden_states: floats(heard.data, heard.dims),
      ...Object.fromEntries([...this.ownNames, ...this.soundNames].map((name) => [name, none])),
      use_cache_branch: new Tensor('bool', [false], [1]),
    }, {
      logits: null,
      ...this.tensors(this.own, this.ownNames, 1, this.length, written),
      ...this.tensors(this.sound, this.soundNames, 1, this.positions, written),
    });
    return output['logits']!.data as Float32Array;
  }

  /**
   * One piece more for each reading: `pieces[i]` is said after all that row `from[i]` of the last answer said. The log-odds of the next piece, one
   * row a reading; they stand until the next call.
   */
  async step(pieces: number[], from: number[]): Promise<Float32Array> {
    this.follow(from);
    const rows = pieces.length;
    const logits = this.answer.numbers('logits', rows * this.shape.vocabulary);
    const sound = this.tensors(this.sound, this.soundNames, 1, this.positions);
    await this.session.run({
      input_ids: this.pieces(pieces, rows),
      // What was heard is in the room for it; the decoder still asks for something of the right width.
      encoder_hidden_states: floats(new Float32Array(rows * this.shape.width), [rows, 1, this.shape.width]),
      ...this.tensors(this.own, this.ownNames, rows, this.length),
      ...(this.sharesSound || rows === 1 ? sound : this.repeatedSound(rows)),
      use_cache_branch: new Tensor('bool', [true], [1]),
    }, {
      logits: floats(logits, [rows, 1, this.shape.vocabulary]),
      ...this.tensors(this.spare, this.ownNames, rows, this.length + 1, written),
    });
    [this.own, this.spare] = [this.spare, this.own];
    this.length++;
    return logits;
  }

  /**
   * Some exports fold the number of readings into the shape of the sound's row and would look at the wrong sound without a word, so sharing it, which spares
   * 18 MB of copy a reading, is tried once, on a sound of two positions.
   */
  async tryShared(piece: number): Promise<void> {
    const heard = { data: Float32Array.from({ length: 2 * this.shape.width }, (_, i) => Math.sin(i)), dims: [1, 2, this.shape.width] };
    const answer = async (shared: boolean) => {
      this.sharesSound = shared;
      await this.begin(heard, [piece]);
      return (await this.step([piece, piece], [0, 0])).slice();
    };
    const apart = await answer(false);
    try {
      const together = await answer(true);
      this.sharesSound = together.every((x, i) => Math.abs(x - apart[i]!) < 0.01);
    } catch {
      this.sharesSound = false;
    }
  }

  /** Makes the rows of what was said follow the readings that live on. */
  private follow(from: number[]): void {
    const same = from.length === this.rows && from.every((row, i) => row === i);
    const rows = this.rows;
    this.rows = from.length;
    if (same) return;
    const size = this.shape.width * this.length;
    for (const name of this.ownNames) {
      const [was, to] = [this.own.numbers(name, size * rows), this.spare.numbers(name, size * from.length)];
      from.forEach((row, i) => to.set(was.subarray(row * size, (row + 1) * size), i * size));
    }
    [this.own, this.spare] = [this.spare, this.own];
  }

  /** Tensors over the room for so many rows and positions, by the names that the model has for them. */
  private tensors(room: Room, names: string[], rows: number, positions: number, called = (name: string) => name): Record<string, Tensor> {
    const size = rows * this.shape.width * positions;
    return Object.fromEntries(names.map((name) => [called(name), floats(room.numbers(name, size), [rows, this.shape.heads, positions, this.share])]));
  }

  /** The same sound for each of several readings. */
  private repeatedSound(rows: number): Record<string, Tensor> {
    const size = this.shape.width * this.positions;
    return Object.fromEntries(this.soundNames.map((name) => {
      const all = new Float32Array(size * rows);
      for (let row = 0; row < rows; row++) all.set(this.sound.numbers(name, size), row * size);
      return [name, floats(all, [rows, this.shape.heads, this.positions, this.share])];
    }));
  }

  private pieces(pieces: number[], rows: number): Tensor {
    return new Tensor('int64', BigInt64Array.from(pieces, BigInt), [rows, pieces.length / rows]);
  }
}
