import { createHash, type Hash } from 'node:crypto';
import { createWriteStream, existsSync } from 'node:fs';
import { mkdir, rename, rm, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { Readable, Transform } from 'node:stream';
import { pipeline } from 'node:stream/promises';
import { env } from '@xenova/transformers';
import { MODEL_FILES, type ModelChoice } from './model-files.ts';

/** Bytes that are there of all bytes; `of` is unknown when the hub does not tell the sizes. */
type FetchProgress = (got: number, of: number | undefined) => void;

/** A model that is there now, and what its files were checked by; or a sentence why not. */
export type Fetched = { ok: true; checked: 'size and hash' | 'size' } | { ok: false; why: string };

/** What the hub says a file must be. Large files are named by the SHA-256 of what is in them, small ones by their git blob's SHA-1. */
interface Announced {
  path: string;
  from: URL;
  size?: number;
  sha256?: string;
  blob?: string;
}

/** What a person is told; anything else that goes wrong is the line there. */
class Refused extends Error {}

/** A hub sends on from one address to another; more turns than this are a circle. */
const MOST_TURNS = 5;

const addressOf = (model: string, path: string) =>
  new URL(env.remotePathTemplate.replaceAll('{model}', model).replaceAll('{revision}', 'main') + path, env.remoteHost);

/**
 * Fetches a model's files from the hub that the speech library names in its own settings. Call it only at the person's
 * yes: it is the one place where hearing reaches out. A file counts when it has the size and the hash that the hub tells of
 * it; until then it lies beside under another name, so a broken download never looks like a model. What is there already is kept.
 */
export async function fetchModel(choice: ModelChoice, onProgress: FetchProgress = () => {}, files: readonly string[] = MODEL_FILES): Promise<Fetched> {
  try {
    const wanted: Announced[] = [];
    for (const path of files) wanted.push(await announced(choice.model, path));
    const of = wanted.every(({ size }) => size !== undefined) ? wanted.reduce((sum, { size }) => sum + size!, 0) : undefined;
    let before = 0;
    for (const file of wanted) {
      const to = join(choice.modelsDir, choice.model, file.path);
      before += await isThere(to, file) ? file.size! : await fetchFile(file, to, (got) => onProgress(before + got, of));
      onProgress(before, of);
    }
    return { ok: true, checked: wanted.every(({ sha256, blob }) => sha256 ?? blob) ? 'size and hash' : 'size' };
  } catch (error) {
    return { ok: false, why: `I could not get ${choice.model}: ${sentence(error)} I go on with the model I have.` };
  }
}

function sentence(error: unknown): string {
  if (error instanceof Refused) return error.message;
  const { code } = error as NodeJS.ErrnoException;
  if (code === 'ENOSPC') return 'the disk is full.';
  return code === 'EACCES' || code === 'EROFS' || code === 'ENOTDIR' ? 'I can\'t write to the folder of models.' : 'there is no connection, or it broke off.';
}

const isThere = async (to: string, { size }: Announced): Promise<boolean> => size !== undefined && existsSync(to) && (await stat(to)).size === size;

/** Asks for a file's head. The hub tells size and hash where it sends on to the place of the bytes, which itself says neither. */
async function announced(model: string, path: string): Promise<Announced> {
  const from = addressOf(model, path);
  for (let turn = 0, at = from; turn < MOST_TURNS; turn++) {
    const { status, headers } = await fetch(at, { method: 'HEAD', redirect: 'manual', headers: { 'accept-encoding': 'identity' } });
    const linked = headers.get('x-linked-etag');
    const onward = headers.get('location');
    if (status >= 400) throw new Refused(status === 401 || status === 403 || status === 404 ? `the hub does not give out ${path} (${status}).` : `the hub is in trouble (${status}).`);
    if (linked === null && status >= 300 && onward) { at = new URL(onward, at); continue; }
    const mark = (linked ?? headers.get('etag') ?? '').replace(/^W\/|"/g, '');
    const size = Number(headers.get('x-linked-size') ?? (status < 300 ? headers.get('content-length') : undefined)) || undefined;
    return { path, from, size, sha256: /^[0-9a-f]{64}$/.test(mark) ? mark : undefined, blob: /^[0-9a-f]{40}$/.test(mark) ? mark : undefined };
  }
  throw new Refused(`the hub sends me in a circle for ${path}.`);
}

/** Gives the number of bytes. Throws Refused for a file that is not what it should be. */
async function fetchFile(file: Announced, to: string, onBytes: (got: number) => void): Promise<number> {
  const { path, from, size, sha256 } = file;
  const part = `${to}.part`;
  try {
    const answer = await fetch(from);
    if (!answer.ok || !answer.body) throw new Refused(`${path} was refused (${answer.status}).`);
    await mkdir(dirname(to), { recursive: true });
    // A git blob's hash goes over its length too, so without the length there is nothing to compare.
    const blob = size === undefined ? undefined : file.blob;
    const hash = sha256 ? createHash('sha256') : blob ? createHash('sha1').update(`blob ${size}\0`) : undefined;
    const got = await keep(Readable.fromWeb(answer.body as Parameters<typeof Readable.fromWeb>[0]), part, hash, onBytes);
    if (size !== undefined && got !== size) throw new Refused(`${path} came with ${got} of ${size} bytes.`);
    if (hash && hash.digest('hex') !== (sha256 ?? blob)) throw new Refused(`${path} is not what it should be (its hash is different).`);
    await rename(part, to);
    return got;
  } finally {
    await rm(part, { force: true });
  }
}

/** Writes a stream to a file, counting and hashing it on the way. */
async function keep(stream: Readable, to: string, hash: Hash | undefined, onBytes: (got: number) => void): Promise<number> {
  let got = 0;
  const count = new Transform({
    transform(chunk: Buffer, _, done) {
      got += chunk.length;
      hash?.update(chunk);
      onBytes(got);
      done(null, chunk);
    },
  });
  await pipeline(stream, count, createWriteStream(to));
  return got;
}
