import { AutoProcessor, AutoTokenizer, env, LogLevel, WhisperForConditionalGeneration } from '@xenova/transformers';
import { Tensor } from 'onnxruntime-node';
import { exactSums } from '../runtime/exact-sums.ts';
import { Decoder, type Heard, type Session } from './decoder.ts';
import { asFeatures, LogMel, type Powers } from './features.ts';
import type { ModelChoice } from './model-files.ts';

/** The special pieces of this model's vocabulary. */
interface SpecialIds {
  before: number;
  start: number;
  end: number;
  noSpeech: number;
  /** What stands between start and transcript: language and task where the model knows several, and "no timestamps". */
  after: number[];
}

interface LibraryModel {
  sessions: Record<string, Session>;
  generation_config: { suppress_tokens?: number[]; begin_suppress_tokens?: number[]; is_multilingual?: boolean };
  config: { d_model: number; vocab_size: number; decoder_attention_heads: number };
  dispose(): Promise<unknown>;
}

interface LibraryTokenizer {
  encode(text: string, options: { add_special_tokens: boolean }): number[];
  decode(ids: number[], options?: object): string;
}

/** A loaded Whisper of any size, as the search needs it: features, encoder, decoder, vocabulary. */
export class Whisper {
  readonly ids: SpecialIds;
  readonly banned: Uint8Array;
  readonly bannedFirst: Uint8Array;
  readonly decoder: Decoder;

  private constructor(
    private readonly library: LibraryModel,
    private readonly tokenizer: LibraryTokenizer,
    readonly features: LogMel,
  ) {
    this.ids = this.specialIds();
    const { vocab_size: size, d_model: width, decoder_attention_heads: heads } = library.config;
    this.decoder = new Decoder(library.sessions['decoder_model_merged']!, { heads, width, vocabulary: size });
    const { suppress_tokens: never = [], begin_suppress_tokens: notFirst = [] } = library.generation_config;
    this.banned = new Uint8Array(size).fill(1, this.ids.end + 1);
    for (const piece of never) this.banned[piece] = 1;
    this.bannedFirst = this.banned.slice();
    for (const piece of notFirst) this.bannedFirst[piece] = 1;
  }

  /** Loads from the folder alone: nothing is ever fetched here. Throws when files are missing or damaged. */
  static async load(choice: ModelChoice): Promise<Whisper> {
    env.allowRemoteModels = false;
    env.localModelPath = choice.modelsDir;
    env.logLevel = LogLevel.ERROR;
    const processor = await AutoProcessor.from_pretrained(choice.model);
    const tokenizer = await AutoTokenizer.from_pretrained(choice.model);
    const library = await WhisperForConditionalGeneration.from_pretrained(choice.model, {
      dtype: 'q8',
      // The arena keeps the largest room ever needed; without it the peak is 65 MB lower and the time the same (measured).
      // Where a processor lets sums of 8-bit products run over, exact ones are asked for (measured there without: 21 of 101 words of people wrong, with: 8).
      session_options: { enableCpuMemArena: false, ...exactSums() },
    });
    const extractor = processor.feature_extractor as unknown as { window: Float64Array; config: { mel_filters: number[][]; hop_length: number; nb_max_frames: number } };
    const features = new LogMel({
      window: extractor.window, filters: extractor.config.mel_filters, hop: extractor.config.hop_length, frames: extractor.config.nb_max_frames,
    });
    const whisper = new Whisper(library as unknown as LibraryModel, tokenizer as unknown as LibraryTokenizer, features);
    await whisper.decoder.tryShared(whisper.ids.start);
    return whisper;
  }

  encode = (text: string): number[] => this.tokenizer.encode(text, { add_special_tokens: false });

  /** Whether a word is so common that the vocabulary has one piece for it. */
  isCommon = (word: string): boolean => this.encode(` ${word.toLowerCase()}`).length === 1;

  /** Text of ordinary pieces; the end mark is left off. */
  text = (pieces: number[]): string => this.tokenizer.decode(pieces.filter((piece) => piece < this.ids.end));

  /** What is said in the sound, as the decoder wants it. */
  async hearSound(powers: Powers): Promise<Heard> {
    const input = new Tensor('float32', asFeatures(powers), [1, powers.logs.length / powers.frames, powers.frames]);
    return (await this.library.sessions['model']!.run({ input_features: input }, { last_hidden_state: null }))['last_hidden_state']! as Heard;
  }

  async close(): Promise<void> {
    await this.library.dispose();
  }

  private specialIds(): SpecialIds {
    const id = (name: string) => this.encode(`<|${name}|>`)[0]!;
    const many = this.library.generation_config.is_multilingual ?? false;
    const noSpeech = this.encode('<|nospeech|>').length === 1 ? id('nospeech') : id('nocaptions');
    return {
      before: id('startofprev'), start: id('startoftranscript'), end: id('endoftext'), noSpeech,
      after: [...(many ? [id('en'), id('transcribe')] : []), id('notimestamps')],
    };
  }
}
