import { parseArgs, type ParseArgsConfig } from 'node:util';
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
