import { readdirSync, readFileSync } from 'node:fs';

/** A day at the bench: what was said when, and what Pawl answers, word for word. */
interface Exchange { at: string; you: string; bot: string[] }
interface Day { name: string; about: string; exchanges: Exchange[] }

const folder = new URL('../../fixtures/days/', import.meta.url);

/** Reads `at>`, `you>` and `bot>` lines; a line of a kind not known stops the test, for it would silently be no check. */
function readDay(file: string): Day {
  const day: Day = { name: file.replace(/\.day$/, ''), about: '', exchanges: [] };
  let at = '';
  for (const line of readFileSync(new URL(file, folder), 'utf8').split('\n')) {
    const [, mark, text] = /^(#|at>|you>|bot>) ?(.*)$/.exec(line) ?? [];
    if (mark === '#') day.about += `${text} `;
    else if (mark === 'at>') at = text!;
    else if (mark === 'you>') day.exchanges.push({ at, you: text!, bot: [] });
    else if (mark === 'bot>') day.exchanges.at(-1)!.bot.push(text!);
    else if (line.trim()) throw new Error(`${file}: what is "${line}"?`);
  }
  return day;
}

export const days = (): Day[] => readdirSync(folder).filter(f => f.endsWith('.day')).sort().map(readDay);
