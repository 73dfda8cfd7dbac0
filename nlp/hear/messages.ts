import type { Hearing } from './listen.ts';

/** What is said to the thread that hears. */
export type ToWorker = { kind: 'hear'; id: number; bytes: Uint8Array; names: string[] } | { kind: 'close' };

/** What it says back. `share`: how much of the recording is done, 0…1. */
export type FromWorker =
  | { kind: 'heard'; id: number; hearing: Hearing }
  | { kind: 'progress'; id: number; share: number }
  | { kind: 'failed'; id: number; message: string };
