import type { ReadContext, Reading } from '../../domain/model/reading.ts';
import type { Deps } from './deps.ts';

/** What is read of one note; what lies beyond is kept, and said to be unread. */
const MOST_READ = 20_000;

/** Bytes taken for text: many controls or replacement signs are no words. */
const isBinary = (text: string): boolean => {
  const odd = text.match(/[\u0000-\u0008\u000e-\u001f\ufffd]/g)?.length ?? 0;
  return odd > 3 && odd > text.length / 20;
};

/** Marks that are no words: controls, marks of direction, halves of surrogate pairs. Each becomes a space, so that places in the text still hold. */
const MARKS = /[\u0000-\u0008\u000b-\u001f\u200e\u200f\u202a-\u202e\u2066-\u2069]|[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;

const nothing = (unread: string[]): Reading => ({ entries: [], asks: [], unread, questions: [], trace: [] });

/** Reads a note; whatever goes wrong in the reading, the words stay kept and are said to be unread. */
export function readSafely(text: string, ctx: ReadContext, deps: Deps): Reading {
  if (!text.trim()) return nothing([]);
  if (isBinary(text)) return nothing([text]);
  try {
    const end = text.length > MOST_READ ? text.lastIndexOf(' ', MOST_READ) + 1 || MOST_READ : text.length;
    const reading = deps.read(text.slice(0, end).replace(MARKS, ' '), ctx);
    return end < text.length ? { ...reading, unread: [...reading.unread, text.slice(end)] } : reading;
  } catch (error) {
    deps.onFault?.(error);
    return nothing([text]);
  }
}
