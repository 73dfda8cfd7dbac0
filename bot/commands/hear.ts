import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { z } from 'zod';
import { openLog } from '../../domain/log/keeper.ts';
import { machineNames, partNames, placeNames } from '../../domain/log/shop.ts';
import { openStore } from '../../domain/store/open.ts';
import { createHearer, type Hearer } from '../../nlp/hear/hear.ts';
import { leansOn } from '../../nlp/hear/lean.ts';
import { readNote } from '../../nlp/read.ts';
import { readConfig } from '../config.ts';
import { argumentsOf, command, UsageError } from './arguments.ts';

const USAGE = 'Use: npm run -s hear -- [--data DIR] FILE…, or --jsonl with {"file", "at", "known": {"machines", "parts"}} a line on standard input.';

const names = z.array(z.string()).default([]);
const Line = z.object({ file: z.string(), at: z.string().optional(), known: z.object({ machines: names, parts: names }).partial().optional() });

/** The names that a note is heard and read with, the last said first, and its moment. */
interface Known { at: string; machines: string[]; parts: string[]; places: string[] }
const nothingKnown = (): Known => ({ at: new Date().toISOString(), machines: [], parts: [], places: [] });

/** Recordings in, one JSON line each out, in order; a file that can't be heard has an `error` sentence and stops nobody. */
await command(async () => {
  const { values, positionals } = argumentsOf({ data: { type: 'string' }, jsonl: { type: 'boolean' } }, USAGE);
  if (Boolean(values.jsonl) === positionals.length > 0) throw new UsageError(USAGE);
  const { hearing } = readConfig();
  const known = values.data === undefined ? nothingKnown() : namesFromShop(values.data);
  const hearer = createHearer(hearing);
  try {
    if (values.jsonl) for await (const line of createInterface({ input: process.stdin })) print(await hearLine(hearer, line, known));
    else for (const file of positionals) print(await hearFile(hearer, file, known));
  } finally {
    await hearer.close();
  }
});

function print(line: object | undefined): void {
  if (line) process.stdout.write(`${JSON.stringify(line)}\n`);
}

/** The names a shop would have its notes heard with, the last said first; none when there is no log in the folder. */
function namesFromShop(dir: string): Known {
  if (!existsSync(join(dir, 'pawl.db'))) return nothingKnown();
  const log = openLog(openStore(dir));
  try {
    return { ...nothingKnown(), machines: machineNames(log.shop), parts: partNames(log.shop).reverse(), places: placeNames(log.shop).reverse() };
  } finally {
    log.store.close();
  }
}

/** `doubtful` is the word that counts: not to be written down unasked, by its sound or because what it says leans on unsure words. */
async function hearFile(hearer: Hearer, file: string, known: Known): Promise<object> {
  const names = [...known.machines, ...known.parts, ...known.places];
  let bytes: Uint8Array;
  try {
    bytes = readFileSync(file);
  } catch {
    return { file, error: `I can't open ${file}.` };
  }
  const { seconds, tookMs, speech, raw, text, doubtful, unsure, overNoise, why } = await hearer.hear(bytes, names);
  // Without a length there was no sound to hear: that is the file's fault, silence is not.
  const said = why === undefined ? {} : seconds === 0 ? { error: why } : { why };
  const leans = text === '' ? [] : leansOn(text, readNote(text, known), { unsure, overNoise, names });
  return { file, seconds, tookMs, speech, raw, text, doubtful: doubtful || leans.length > 0, unsure: [...new Set([...leans, ...unsure])], ...said };
}

async function hearLine(hearer: Hearer, line: string, known: Known): Promise<object | undefined> {
  if (line.trim() === '') return undefined;
  let asked: z.infer<typeof Line>;
  try {
    asked = Line.parse(JSON.parse(line));
  } catch {
    return { error: 'This line is not {"file", "at", "known"} in JSON.' };
  }
  return hearFile(hearer, asked.file, {
    ...known,
    at: asked.at !== undefined && !Number.isNaN(Date.parse(asked.at)) ? asked.at : known.at,
    machines: [...(asked.known?.machines ?? []), ...known.machines],
    parts: [...(asked.known?.parts ?? []), ...known.parts],
  });
}
