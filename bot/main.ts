import { StoreError } from '../domain/store/errors.ts';
import { noteCount } from '../domain/store/notes.ts';
import { ConfigError, readConfig } from './config.ts';
import { run } from './run.ts';

/** Starts the program and says in three lines where to go. */
async function start(): Promise<void> {
  const config = readConfig();
  const terminal = process.stdin.isTTY ? { input: process.stdin, output: process.stdout } : undefined;
  const running = await run(config, terminal, line => console.log(line));
  console.log(`The shop is kept in ${config.dataDir}`);
  console.log(`Bench page: ${running.pageUrl}`);
  console.log(noteCount(running.store) ? 'Say a note here or there; "help" shows what can be said.' : 'The shop is empty: say a note, or "load the sample shop" to look around with Heron.');
  if (running.pairing) console.log(running.pairing);
  process.once('SIGINT', () => void running.stop());
  process.once('SIGTERM', () => void running.stop());
  void running.ended.then(running.stop);
}

/** What a person can mend is one sentence; a fault of ours is shown whole. */
function complain(error: unknown): number {
  const taken = (error as NodeJS.ErrnoException).code === 'EADDRINUSE';
  if (taken) console.error('The port of the bench page is taken, perhaps by another Pawl. Set PAWL_PORT to another one, or to 0 for any free one.');
  else if (error instanceof ConfigError || error instanceof StoreError) console.error(error.message);
  else { console.error(error); return 1; }
  return 2;
}

await start().catch(error => process.exit(complain(error)));
