import { nowIn } from './clock.ts';
import { ConfigError, readConfig } from './config.ts';
import { openPage } from './doors/page/server.ts';
import { openTerminal } from './doors/terminal.ts';
import { receiver } from './receive.ts';
import { createService } from './serve.ts';
import { openShop } from './shop.ts';
import { StoreError } from '../domain/store/errors.ts';
import { noteCount } from '../domain/store/notes.ts';

/** Starts the program: the log, the page on this computer, the terminal when there is one, the chat when it has a token. */
async function start(): Promise<void> {
  const config = readConfig();
  const { log, deps } = openShop(config.dataDir, config.zone);
  const receiving = receiver({ store: log.store });
  const service = createService({ deps, receiving });
  const page = await openPage({ service, port: config.port, dataDir: config.dataDir, zone: config.zone });

  console.log(`Pawl keeps the shop in ${config.dataDir}`);
  console.log(`Bench page: ${page.url}`);
  console.log(noteCount(log.store) ? 'Say a note here or there; "help" shows what can be said.' : 'The shop is empty: say a note, or "load the sample shop" to look around with Heron.');

  const terminal = process.stdin.isTTY ? openTerminal({ service, input: process.stdin, output: process.stdout, now: () => nowIn(config.zone) }) : undefined;
  let stopping = false;
  const stop = async (): Promise<void> => {
    if (stopping) return;
    stopping = true;
    terminal?.close();
    await page.close();
    await service.close();
    log.store.close();
  };
  process.once('SIGINT', () => void stop());
  process.once('SIGTERM', () => void stop());
  void terminal?.done.then(stop);
}

await start().catch(error => {
  const mendable = error instanceof ConfigError || error instanceof StoreError || (error as NodeJS.ErrnoException).code === 'EADDRINUSE';
  console.error(mendable ? sentence(error as Error) : error);
  process.exit(mendable ? 2 : 1);
});

const sentence = (error: Error): string =>
  (error as NodeJS.ErrnoException).code === 'EADDRINUSE' ? 'The port of the bench page is taken, perhaps by another Pawl. Set PAWL_PORT to another one, or to 0 for any free one.' : error.message;
