import { createHash } from 'node:crypto';
import { createWriteStream, existsSync } from 'node:fs';
import { mkdir, rename, rm, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { Readable, Transform } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { env } from '@xenova/transformers';
import type { ModelChoice } from './model-files.ts';

/** One file of a model as it must be. `sha256` in hex; the hub tells it for large files in an answer's head. */
export interface WantedFile {
  path: string;
  size?: number;
  sha256?: string;
}

export type FetchProgress = (file: string, got: number, of: number | undefined) => void;

/** A model that is there now, or a sentence why not. */
export type Fetched = { ok: true } | { ok: false; why: string };

const addressOf = (model: string, path: string) =>
  new URL(env.remotePathTemplate.replaceAll('{model}', model).replaceAll('{revision}', 'main') + path, env.remoteHost);

/**
 * Fetches a model's files from the hub that the speech library names in its own settings. Call it only at the person's
 * yes: it is the one place where hearing reaches out. A file counts when its size and hash are right; until then it
 * lies beside under another name, so a broken download never looks like a model. Files that are there already are kept.
 */
export async function fetchModel(choice: ModelChoice, files: WantedFile[], onProgress: FetchProgress = () => {}): Promise<Fetched> {
  for (const file of files) {
    const to = join(choice.modelsDir, choice.model, file.path);
    if (existsSync(to) && (file.size === undefined || (await stat(to)).size === file.size)) continue;
    const why = await fetchFile(addressOf(choice.model, file.path), to, file, onProgress);
    if (why) return { ok: false, why: `I could not get ${choice.model}: ${why} I go on with the model I have.` };
  }
  return { ok: true };
}

/** Gives a sentence when the file could not be had. */
async function fetchFile(from: URL, to: string, wanted: WantedFile, onProgress: FetchProgress): Promise<string | undefined> {
  const part = `${to}.part`;
  try {
    const answer = await fetch(from);
    if (!answer.ok || !answer.body) return `${wanted.path} was refused (${answer.status}).`;
    const of = wanted.size ?? (Number(answer.headers.get('content-length')) || undefined);
    const told = answer.headers.get('x-linked-etag')?.replace(/^W\/|"/g, '');
    await mkdir(dirname(to), { recursive: true });
    const { got, hash } = await keep(Readable.fromWeb(answer.body as Parameters<typeof Readable.fromWeb>[0]), part, (bytes) => onProgress(wanted.path, bytes, of));
    const must = wanted.sha256 ?? (told && /^[0-9a-f]{64}$/.test(told) ? told : undefined);
    if (of !== undefined && got !== of) return `${wanted.path} came with ${got} of ${of} bytes.`;
    if (must !== undefined && hash !== must) return `${wanted.path} is not what it should be (its hash is different).`;
    await rename(part, to);
    return undefined;
  } catch {
    return 'there is no connection, or it broke off.';
  } finally {
    await rm(part, { force: true });
  }
}

/** Writes a stream to a file, counting and hashing it on the way. */
async function keep(stream: Readable, to: string, onBytes: (got: number) => void): Promise<{ got: number; hash: string }> {
  const hash = createHash('sha256');
  let got = 0;
  const count = new Transform({
    transform(chunk: Buffer, _, done) {
      got += chunk.length;
      hash.update(chunk);
      onBytes(got);
      done(null, chunk);
    },
  });
  await pipeline(stream, count, createWriteStream(to));
  return { got, hash: hash.digest('hex') };
}
