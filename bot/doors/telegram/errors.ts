import { GrammyError, HttpError } from 'grammy';

/** Takes a secret out of words: the whole token, its secret half alone, and both as they stand in an address. */
export function redactor(token: string): (words: string) => string {
  const secret = token.slice(token.indexOf(':') + 1);
  const forms = [...new Set([token, encodeURIComponent(token), secret, encodeURIComponent(secret)])].filter(f => f.length > 0);
  return words => forms.reduce((w, form) => w.replaceAll(form, '<token>'), words);
}

/**
 * An error of the chat library in a few words. Never the error object itself: an inspected one shows the address with the token in it,
 * and the words of the note that it was about.
 */
export function inWords(error: unknown): string {
  if (error instanceof GrammyError) return `${error.method}: ${error.error_code} ${error.description}`;
  if (error instanceof HttpError) return `${error.message.replace(/!$/, '')}: ${codeOf(error.error)}`;
  return error instanceof Error ? error.message : String(error);
}

/** ECONNREFUSED and the like; else the first line of what went wrong. */
function codeOf(error: unknown): string {
  const { code, message } = (error ?? {}) as { code?: unknown; message?: unknown };
  return typeof code === 'string' ? code : String(message ?? error).split('\n')[0]!;
}

/** The same kind of error without the token anywhere in it, for programs that print what they catch. */
export function cleaned(error: unknown, redact: (words: string) => string): unknown {
  if (error instanceof GrammyError) return error;
  const inner = error instanceof HttpError ? error.error : error;
  const clean = Object.assign(new Error(redact(inner instanceof Error ? inner.message : String(inner))), { code: (inner as { code?: unknown } | null)?.code });
  delete clean.stack;
  return error instanceof HttpError ? new HttpError(redact(error.message), clean) : clean;
}

/** Why polling ended, in a sentence, and whether to try again. */
interface Trouble { sentence: string; final: boolean }

export function troubleOf(error: unknown): Trouble {
  const code = error instanceof GrammyError ? error.error_code : undefined;
  if (code === 401) return { final: true, sentence: 'Telegram refuses the bot token: it is wrong or was revoked. The Telegram door stays shut; set PAWL_TELEGRAM_TOKEN to a good one and start again.' };
  if (code === 404) return { final: true, sentence: 'Telegram does not know this bot token; its form is wrong. The Telegram door stays shut; set PAWL_TELEGRAM_TOKEN to a good one and start again.' };
  if (code === 409) return { final: false, sentence: 'Another program is taking this bot\'s messages with the same token. Stop it, or make a new token; the Telegram door tries again.' };
  return { final: false, sentence: `The Telegram door could not go on (${inWords(error)}); nothing is lost, it tries again.` };
}

/** For what is only a convenience: it may fail, and then only a line in the log says so. */
export async function harmless(what: () => Promise<unknown>, log: (line: string) => void): Promise<void> {
  try { await what(); } catch (error) { log(inWords(error)); }
}
