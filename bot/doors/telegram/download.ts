import { setTimeout as after } from 'node:timers/promises';
import { GrammyError } from 'grammy';
import { MEDIA_LIMIT } from '../../../domain/store/media.ts';
import { cleaned, inWords } from './errors.ts';
import type { FileThere } from './files.ts';
import type { Line } from './line.ts';

/** 'too big': over 20 MB, more than the platform hands to a bot or the log takes. 'gone': the platform no longer has it. */
type Fetched = { bytes: Uint8Array } | { not: 'too big' | 'gone' };

const TRIES = 3;
const PAUSE_MS = 400;
/** One download may take so long, in ms. */
const DOWNLOAD_MS = 120_000;

/**
 * Fetches a file at once, as its link lives an hour only. What arrives short is fetched again and never handed on.
 * @throws Error (without the token) when the platform can't be reached or breaks off again and again.
 */
export async function fetchFile(line: Line, file: FileThere): Promise<Fetched> {
  if ((file.bytes ?? 0) > MEDIA_LIMIT) return { not: 'too big' };
  for (let tried = 1; ; tried++) {
    try { return await once(line, file); } catch (error) {
      const known = refusal(error);
      if (known) return known;
      if (tried >= TRIES) throw new Error(line.redact(inWords(cleaned(error, line.redact))));
      await after(PAUSE_MS * tried);
    }
  }
}

/** The platform's own no, which trying again does not change. */
function refusal(error: unknown): Fetched | undefined {
  if (!(error instanceof GrammyError) || error.error_code !== 400) return undefined;
  return { not: /file is too big/i.test(error.description) ? 'too big' : 'gone' };
}

async function once(line: Line, file: FileThere): Promise<Fetched> {
  const { file_path, file_size } = await line.api.getFile(file.id);
  if ((file_size ?? 0) > MEDIA_LIMIT) return { not: 'too big' };
  if (file_path === undefined) return { not: 'gone' };
  // A redirect would carry the address with the token in it to who knows where.
  const answer = await fetch(line.fileUrl(file_path), { redirect: 'error', signal: AbortSignal.timeout(DOWNLOAD_MS) });
  if (answer.status === 404 || !answer.body) return { not: 'gone' };
  if (!answer.ok) throw new Error(`the file server answered ${answer.status}`);
  const bytes = await limited(answer.body);
  if (!bytes) return { not: 'too big' };
  if (file_size !== undefined && bytes.length !== file_size) throw new Error(`the file came short: ${bytes.length} of ${file_size} bytes`);
  return { bytes };
}

/** Reads no further than the limit, whatever length was named. */
async function limited(body: ReadableStream<Uint8Array>): Promise<Uint8Array | undefined> {
  const parts: Uint8Array[] = [];
  let length = 0;
  for await (const part of body) {
    length += part.length;
    if (length > MEDIA_LIMIT) return undefined;
    parts.push(part);
  }
  return Buffer.concat(parts);
}
