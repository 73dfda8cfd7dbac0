import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { z } from 'zod';
import { openLog } from '../../domain/log/keeper.ts';
import { machineNames, partNames, placeNames } from '../../domain/log/shop.ts';
import { openStore } from '../../domain/store/open.ts';
import { createHearer, type Hearer } from '../../nlp/hear/hear.ts';
import { readConfig } from '../config.ts';
import { argumentsOf, command, UsageError } from './arguments.ts';

const USAGE = 'Use: npm run -s hear -- [--data DIR] FILE…, or --jsonl with {"file", "at", "known": {"machines", "parts"}} a line on standard input.';

const names = z.array(z.string()).default([]);
const Line = z.object({ file: z.string(), at: z.string().optional(), known: z.object({ machines: names, parts: names }).partial().optional() });

/** Recordings in, one JSON line each out, in order; a file that can't be heard has an `error` sentence and stops nobody. */
await command(async () => {
  const { values, positionals } = argumentsOf({ data: { type: 'string' }, jsonl: { type: 'boolean' } }, USAGE);
  if (Boolean(values.jsonl) === positionals.length > 0) throw new UsageError(USAGE);
  const { hearing } = readConfig();
  const known = values.data === undefined ? [] : namesFromShop(values.data);
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
function namesFromShop(dir: string): string[] {
  if (!existsSync(join(dir, 'pawl.db'))) return [];
  const log = openLog(openStore(dir));
  try {
    return [...machineNames(log.shop), ...partNames(log.shop).reverse(), ...placeNames(log.shop).reverse()];
  } finally {
    log.store.close();
  }
}

async function hearFile(hearer: Hearer, file: string, known: string[]): Promise<object> {
  let bytes: Uint8Array;
  try {
    bytes = readFileSync(file);
  } catch {
    return { file, error: `I can't open ${file}.` };
  }
  const { seconds, tookMs, speech, raw, text, doubtful, unsure, why } = await hearer.hear(bytes, known);
  // Without a length there was no sound to hear: that is the file's fault, silence is not.
  const said = why === undefined ? {} : seconds === 0 ? { error: why } : { why };
  return { file, seconds, tookMs, speech, raw, text, doubtful, unsure, ...said };
}

async function hearLine(hearer: Hearer, line: string, known: string[]): Promise<object | undefined> {
  if (line.trim() === '') return undefined;
  let asked: z.infer<typeof Line>;
  try {
    asked = Line.parse(JSON.parse(line));
  } catch {
    return { error: 'This line is not {"file", "at", "known"} in JSON.' };
  }
  return hearFile(hearer, asked.file, [...(asked.known?.machines ?? []), ...(asked.known?.parts ?? []), ...known]);
}
