import type { ReadContext, Reading } from '../../domain/model/reading.ts';
import type { Deps } from './deps.ts';

/** What is read of one note; what lies beyond is kept, and said to be unread. */
const MOST_READ = 20_000;

/** Bytes taken for text: many controls or replacement signs are no words. */
const isBinary = (text: string): boolean => {
  // eslint-disable-next-line no-control-regex
  const odd = text.match(/[\u0000-\u0008\u000e-\u001f\ufffd]/g)?.length ?? 0;
  return odd > 3 && odd > text.length / 20;
};

const nothing = (unread: string[]): Reading => ({ entries: [], asks: [], unread, questions: [], trace: [] });

/** Reads a note; whatever goes wrong in the reading, the words stay kept and are said to be unread. */
export function readSafely(text: string, ctx: ReadContext, deps: Deps): Reading {
  if (!text.trim()) return nothing([]);
  if (isBinary(text)) return nothing([text]);
  try {
    const reading = deps.read(text.slice(0, MOST_READ), ctx);
    return text.length > MOST_READ ? { ...reading, unread: [...reading.unread, text.slice(MOST_READ)] } : reading;
  } catch (error) {
    deps.onFault?.(error);
    return nothing([text]);
  }
}
