import { DateTime } from 'luxon';
import { readNote } from '../../nlp/read.ts';
import { traceText } from '../../nlp/trace.ts';

/**
 * How a note is read, step by step: `npm run -s say -- "words" [--at ISO] [--parts a,b] [--machines a,b] [--prior "words"]`.
 */
const args = process.argv.slice(2);
const option = (name: string): string | undefined => { const k = args.indexOf(`--${name}`); return k < 0 ? undefined : args.splice(k, 2)[1]; };
const list = (s: string | undefined): string[] | undefined => s?.split(',').map(x => x.trim()).filter(Boolean);
const at = option('at') ?? DateTime.now().toISO();
const ctx = { at, parts: list(option('parts')), machines: list(option('machines')), prior: list(option('prior')) };
const text = args.join(' ');
if (!text.trim()) {
  console.error('Say what to read: npm run -s say -- "carb\'s off, two jets missing"');
  process.exit(2);
}
const reading = readNote(text, ctx);
console.log(traceText(reading.trace));
for (const e of [...reading.entries, ...reading.asks]) console.log(`= ${JSON.stringify(e)}`);
for (const q of reading.questions) console.log(`? ${q.text} (${q.choices.join(' / ')})`);
if (reading.unread.length) console.log(`unread: ${reading.unread.join(' | ')}`);
