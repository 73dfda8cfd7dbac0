import { Worker } from 'node:worker_threads';
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
   * machines, parts and places, most recent first. `onProgress` tells the share that is done, for long audio.
   * Gives a sentence in `why` when nothing could be heard; never rejects.
   */
  hear(bytes: Uint8Array, names: string[], onProgress?: Progress): Promise<Hearing>;
  close(): Promise<void>;
}

/** Two lines: what happened, what to do. The recording is kept by whoever called. */
const noModel = (choice: ModelChoice) =>
  `I can't hear yet: the speech model ${choice.model} is missing or damaged, and your recording is kept.\n` +
  'Put its files back (they come with the program), or set PAWL_MODELS and PAWL_MODEL to another, and restart: I then hear what was kept.';

const nothing = (why: string): Hearing => ({ text: '', raw: '', seconds: 0, tookMs: 0, speech: false, doubtful: false, unsure: [], why });

/** The model that will be used: the person's choice when its files are all there, else the one that comes along. */
export function chooseModel({ modelsDir, model }: HearerOptions): ModelChoice {
  const wanted = { modelsDir: modelsDir ?? BUILT_IN.modelsDir, model: model ?? BUILT_IN.model };
  return missingFiles(wanted).length === 0 ? wanted : missingFiles(BUILT_IN).length === 0 ? BUILT_IN : wanted;
}

interface Waiting {
  settle: (hearing: Hearing) => void;
  onProgress: Progress | undefined;
}

/**
 * The program's ear: one thread, one model, one queue. The thread is started at the first recording; what it does never
 * holds up the rest of the program.
 */
export function createHearer(options: HearerOptions = {}): Hearer {
  const choice = chooseModel(options);
  const waiting = new Map<number, Waiting>();
  let worker: Worker | undefined;
  let count = 0;

  const settle = (id: number, hearing: Hearing) => {
    waiting.get(id)?.settle(hearing);
    waiting.delete(id);
    if (waiting.size === 0) worker?.unref();
  };
  const failAll = (why: string) => {
    worker = undefined;
    for (const id of [...waiting.keys()]) settle(id, nothing(why));
  };
  const start = (): Worker => {
    const thread = startWorker(choice);
    thread.on('message', (message: FromWorker) => {
      if (message.kind === 'progress') waiting.get(message.id)?.onProgress?.(message.share);
      else settle(message.id, message.kind === 'heard' ? message.hearing : nothing(noModel(choice)));
    });
    thread.on('error', () => failAll('Hearing stopped on this recording; it is kept.'));
    thread.on('exit', () => { if (worker === thread) failAll('Hearing was stopped; the recording is kept.'); });
    return thread;
  };

  return {
    hear(bytes, names, onProgress) {
      if (missingFiles(choice).length > 0) return Promise.resolve(nothing(noModel(choice)));
      worker ??= start();
      worker.ref();
      const id = count++;
      return new Promise((resolve) => {
        waiting.set(id, { settle: resolve, onProgress });
        worker!.postMessage({ kind: 'hear', id, bytes, names } satisfies ToWorker);
      });
    },
    async close() {
      const thread = worker;
      if (!thread) return;
      const ended = new Promise((resolve) => thread.once('exit', resolve));
      thread.ref();
      thread.postMessage({ kind: 'close' } satisfies ToWorker);
      await ended;
      worker = undefined;
    },
  };
}

/**
 * Starts the thread on TypeScript source. tsx hooks only the thread it was started in, so the new one begins with a few words of
 * plain JavaScript: they load the speech library first, because tsx would read the whole of it for lines to change and keep
 * 160 MB for that (measured), then put tsx's loader in place, then import the worker.
 */
function startWorker(choice: ModelChoice): Worker {
  const [library, tsx] = ['@xenova/transformers', 'tsx/esm/api'].map((name) => JSON.stringify(import.meta.resolve(name)));
  const source = JSON.stringify(new URL('./worker.ts', import.meta.url).href);
  const begin = `await import(${library}); const { register } = await import(${tsx}); register(); await import(${source});`;
  return new Worker(new URL(`data:text/javascript,${encodeURIComponent(begin)}`), {
    workerData: choice,
    execArgv: [],
    // A small nursery is swept often, and with it go the megabytes of numbers that hang on dead tensors.
    resourceLimits: { maxYoungGenerationSizeMb: 8 },
  });
}
