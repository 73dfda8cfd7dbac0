import type { Fetched } from './fetch-model.ts';
import type { Hearing } from './listen.ts';
import type { ModelChoice } from './model-files.ts';

/** What is said to the thread that hears. */
export type ToWorker =
  | { kind: 'hear'; id: number; bytes: Uint8Array; names: string[] }
  /** Hear with the first of these that can be loaded. */
  | { kind: 'use'; id: number; choices: ModelChoice[] }
  /** Fetch a model from the hub, at the person's yes. */
  | { kind: 'fetch'; id: number; choice: ModelChoice }
  | { kind: 'close' };

/** What it says back. */
export type FromWorker =
  | { kind: 'heard'; id: number; hearing: Hearing }
  /** `share`: how much is done, 0…1; `of`: seconds of talk, or bytes to fetch where they are known. */
  | { kind: 'progress'; id: number; share: number; of: number }
  /** The model that is loaded now; undefined when none could be. */
  | { kind: 'using'; id: number; model: string | undefined }
  | { kind: 'fetched'; id: number; fetched: Fetched }
  /** No model could be loaded. */
  | { kind: 'deaf'; id: number }
  | { kind: 'failed'; id: number; message: string };
