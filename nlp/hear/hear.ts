import { Worker } from 'node:worker_threads';
import type { Fetched } from './fetch-model.ts';
import type { Hearing, Progress } from './listen.ts';
import type { FromWorker, ToWorker } from './messages.ts';
// Only files here: the speech library itself is loaded in the thread, and 160 MB once is enough.
import { BUILT_IN, missingFiles, type ModelChoice } from './model-files.ts';

export type { Hearing, Progress } from './listen.ts';

export interface HearerOptions {
  /** Folder of models; with `model` it says which to use. Left out, or not whole: the one that comes along. */
  modelsDir?: string;
  /** Name under the folder, as "openai/whisper-base". */
  model?: string;
}

export interface Hearer {
  /**
   * Hears one recording of any kind that is known. Recordings wait their turn in the order they came. `names`: the shop's
   * machines, parts and places, most recent first. `onProgress` tells how far it is, for long audio.
   * Gives a sentence in `why` when nothing could be heard; never rejects.
   */
  hear(bytes: Uint8Array, names: string[], onProgress?: Progress): Promise<Hearing>;
  /** Hears with another model from the next recording on. Gives the one that is loaded now, which is the one that comes along when the other is damaged; undefined when there is none. */
  use(options: HearerOptions): Promise<string | undefined>;
  /** Fetches a model into its folder: reaches out, so only at the person's yes. `onProgress`: share, and bytes in all. */
  fetch(choice: ModelChoice, onProgress?: Progress): Promise<Fetched>;
  close(): Promise<void>;
}

/** Two lines: what happened, what to do. The recording is kept by whoever called. */
const NO_MODEL = 'I can\'t hear yet: there is no speech model, or it is damaged, and your recording is kept.\n'
  + 'Put the files of nlp/hear/model back (they come with the program), or set PAWL_MODELS and PAWL_MODEL to another: then I hear what was kept.';

const STOPPED = 'Hearing stopped on this recording; it is kept.';

const nothing = (why: string): Hearing => ({ text: '', raw: '', seconds: 0, tookMs: 0, speech: false, doubtful: false, unsure: [], overNoise: [], why });
const deaf: Hearing = { ...nothing(NO_MODEL), unheard: true };

/**
 * The models to hear with, the first that can be loaded: the person's choice, then those that come along (a test has none). Only whole ones.
 */
export function modelsFor({ modelsDir, model }: HearerOptions, comeAlong: readonly ModelChoice[] = [BUILT_IN]): ModelChoice[] {
  const wanted = { modelsDir: modelsDir ?? BUILT_IN.modelsDir, model: model ?? BUILT_IN.model };
  const others = comeAlong.filter((choice) => choice.modelsDir !== wanted.modelsDir || choice.model !== wanted.model);
  return [wanted, ...others].filter((choice) => missingFiles(choice).length === 0);
}

interface Waiting {
  thread: Worker;
  settle: (answer: FromWorker) => void;
  onProgress: Progress | undefined;
}

/** A message without its number. */
type Asked = ToWorker extends infer M ? (M extends { id: number } ? Omit<M, 'id'> : never) : never;

/**
 * The program's ear: one thread, one model, one queue. The thread is started at the first recording; what it does never
 * holds up the rest of the program.
 */
export function createHearer(options: HearerOptions = {}, comeAlong?: readonly ModelChoice[]): Hearer {
  let chosen = options;
  const waiting = new Map<number, Waiting>();
  let worker: Worker | undefined;
  let count = 0;

  const settle = (id: number, answer: FromWorker) => {
    waiting.get(id)?.settle(answer);
    waiting.delete(id);
    if (waiting.size === 0) worker?.unref();
  };
  const failAll = (thread: Worker, message: string) => {
    if (worker === thread) worker = undefined;
    for (const [id, asked] of waiting) if (asked.thread === thread) settle(id, { kind: 'failed', id, message });
  };
  const start = (): Worker => {
    const thread = startWorker(modelsFor(chosen, comeAlong));
    thread.on('message', (message: FromWorker) => {
      if (message.kind === 'progress') waiting.get(message.id)?.onProgress?.(message.share, message.of);
      else settle(message.id, message);
    });
    thread.on('error', () => failAll(thread, STOPPED));
    thread.on('exit', () => failAll(thread, 'Hearing was stopped; the recording is kept.'));
    return thread;
  };
  const ask = (asked: Asked, onProgress?: Progress): Promise<FromWorker> => {
    const thread = (worker ??= start());
    thread.ref();
    const id = count++;
    return new Promise((resolve) => {
      waiting.set(id, { thread, settle: resolve, onProgress });
      thread.postMessage({ ...asked, id } as ToWorker);
    });
  };

  return {
    async hear(bytes, names, onProgress) {
      if (modelsFor(chosen, comeAlong).length === 0) return deaf;
      const answer = await ask({ kind: 'hear', bytes, names }, onProgress);
      if (answer.kind === 'heard') return answer.hearing;
      // The thread tried what was there when it began; files that were put right meanwhile are tried at the next recording.
      if (answer.kind === 'deaf') void this.close();
      return answer.kind === 'deaf' ? deaf : nothing(answer.kind === 'failed' ? answer.message : STOPPED);
    },
    async use(other) {
      chosen = other;
      const answer = await ask({ kind: 'use', choices: modelsFor(other, comeAlong) });
      return answer.kind === 'using' ? answer.model : undefined;
    },
    async fetch(choice, onProgress) {
      const answer = await ask({ kind: 'fetch', choice }, onProgress);
      return answer.kind === 'fetched' ? answer.fetched : { ok: false, why: `I stopped before ${choice.model} was there.` };
    },
    async close() {
      const thread = worker;
      if (!thread) return;
      worker = undefined;
      const ended = new Promise((resolve) => thread.once('exit', resolve));
      thread.ref();
      thread.postMessage({ kind: 'close' } satisfies ToWorker);
      await ended;
    },
  };
}

/**
 * Starts the thread on TypeScript source. tsx hooks only the thread it was started in, so the new one begins with a few words of
 * plain JavaScript: they load the speech library first, because tsx would read the whole of it for lines to change and keep
 * 160 MB for that (measured), then put tsx's loader in place, then import the worker.
 */
function startWorker(choices: ModelChoice[]): Worker {
  const [library, tsx] = ['@xenova/transformers', 'tsx/esm/api'].map((name) => JSON.stringify(import.meta.resolve(name)));
  const source = JSON.stringify(new URL('./worker.ts', import.meta.url).href);
  const begin = `await import(${library}); const { register } = await import(${tsx}); register(); await import(${source});`;
  return new Worker(new URL(`data:text/javascript,${encodeURIComponent(begin)}`), {
    workerData: choices,
    execArgv: [],
    // A small nursery is swept often, and with it go the megabytes of numbers that hang on dead tensors.
    resourceLimits: { maxYoungGenerationSizeMb: 8 },
  });
}
