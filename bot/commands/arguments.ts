import { parseArgs, type ParseArgsConfig } from 'node:util';
import { momentIn, nowIn } from '../clock.ts';
import { ConfigError } from '../config.ts';
import { StoreError } from '../../domain/store/errors.ts';

/** Wrong words on the command line: the sentence says what the command takes. */
export class UsageError extends Error {}

/** Node's own reading of arguments, with our sentence when they are off. */
export function argumentsOf<T extends NonNullable<ParseArgsConfig['options']>>(options: T, usage: string) {
  try {
    return parseArgs({ args: process.argv.slice(2), options, allowPositionals: true });
  } catch (error) {
    throw new UsageError(`${(error as Error).message}. ${usage}`);
  }
}

/** The moment that `--at` gives, ISO with the offset of the place; now where it isn't given. */
export function momentSaid(said: string | undefined, zone: string, usage: string): string {
  const at = said === undefined ? nowIn(zone) : momentIn(zone, said);
  if (at === undefined) throw new UsageError(`--at must be a moment such as 2026-03-04T15:20:00-05:00. ${usage}`);
  return at;
}

/** Runs a command; what a person can mend is one sentence on standard error and exit code 2, a fault of ours is shown whole. */
export async function command(run: () => Promise<void> | void): Promise<void> {
  try {
    await run();
  } catch (error) {
    const mendable = error instanceof UsageError || error instanceof ConfigError || error instanceof StoreError;
    console.error(mendable ? (error as Error).message : error);
    process.exitCode = mendable ? 2 : 1;
  }
}
