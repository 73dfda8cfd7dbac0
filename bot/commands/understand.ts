import { createInterface } from 'node:readline';
import { z } from 'zod';
import { readNote } from '../../nlp/read.ts';

/**
 * JSON lines in, JSON lines out, in order: how notes are understood, without a shop. A line that cannot be read is answered by a line with
 * empty lists and an "error" in it, so that the answers stay in step with the questions.
 */
const Line = z.object({
  id: z.unknown().optional(),
  at: z.string().refine(s => !Number.isNaN(Date.parse(s)), 'not a date and time'),
  text: z.string(),
  known: z.object({ machines: z.array(z.string()).optional(), parts: z.array(z.string()).optional() }).optional(),
  prior: z.array(z.string()).optional(),
});

function answer(line: string): object {
  let raw: unknown;
  try { raw = JSON.parse(line); } catch { return { entries: [], asks: [], unread: [], error: 'the line is not JSON' }; }
  const id = typeof raw === 'object' && raw !== null && 'id' in raw ? { id: raw.id } : {};
  const parsed = Line.safeParse(raw);
  if (!parsed.success) {
    const first = parsed.error.issues[0];
    return { ...id, entries: [], asks: [], unread: [], error: `${first?.path.join('.') || 'line'}: ${first?.message ?? 'not understood'}` };
  }
  const { at, text, known, prior } = parsed.data;
  const { trace: _, ...reading } = readNote(text, { at, machines: known?.machines, parts: known?.parts, prior });
  return { ...id, ...reading };
}

for await (const line of createInterface({ input: process.stdin, crlfDelay: Infinity })) {
  if (line.trim()) process.stdout.write(`${JSON.stringify(answer(line))}\n`);
}
