import { mediaByHash, mediaPath } from '../domain/store/media.ts';
import type { Store } from '../domain/store/open.ts';
import { readChat } from '../domain/store/chats.ts';
import { nowIn } from './clock.ts';
import type { Config } from './config.ts';
import { openPage } from './doors/page/server.ts';
import { telegramLine } from './doors/telegram/line.ts';
import { openTelegram } from './doors/telegram/open.ts';
import { pairingLine } from './doors/telegram/pairing.ts';
import { showProgress } from './doors/telegram/progress.ts';
import { sendTelegram } from './doors/telegram/send.ts';
import { unpackTelegram } from './doors/telegram/unpack.ts';
import { openTerminal, type TerminalOptions } from './doors/terminal.ts';
import { canHear, hearKept, hearWith, whenHearing } from './ears.ts';
import { createHearer } from '../nlp/hear/hear.ts';
import { BENCH } from './incoming.ts';
import { modelShelf } from './model-shelf.ts';
import { openOutbox } from './outbox.ts';
import { withPairing } from './pairing-console.ts';
import { receiver } from './receive.ts';
import { openSimulator } from './planning/simulator.ts';
import { workOut } from './planning/work-out.ts';
import { openReminders } from './reminders/reminders.ts';
import { createService, type Words } from './serve.ts';
import { openShop } from './shop.ts';
import type { Deps } from './turn/deps.ts';
import { intake } from '../domain/store/intake.ts';
import { keepFresh } from './weather/shop-weather.ts';

/** The running program: where its page is, what to print at the start, and how to stop it in order. */
interface Running { pageUrl: string; pairing?: string; store: Store; ended: Promise<void>; stop(): Promise<void> }

type Streams = Pick<TerminalOptions, 'input' | 'output'>;

/** Puts doors, ear and log together. `terminal`: the streams of the terminal door, when there is one. Throws StoreError, or when the page's port is taken. */
export async function run(config: Config, terminal: Streams | undefined, log: (line: string) => void): Promise<Running> {
  const shop = openShop(config.dataDir, config.zone, config.weather);
  const { store } = shop.log;
  intake.release(store);
  const shelf = modelShelf(store, config.dataDir, config.hearing);
  const ear = createHearer(shelf.options());
  const line = config.telegram && telegramLine({ ...config.telegram, zone: config.zone });
  const media = (hash: string) => { const m = mediaByHash(store, hash); return m && mediaPath(store, m); };
  const outbox = line && openOutbox(store, 'telegram', sendTelegram({ store, line, media }));
  const onOut = () => outbox?.wake();
  const receiving = receiver({
    store, hear: hearWith(ear, shop.log, () => readChat(store, BENCH).machine), unpack: line ? { telegram: unpackTelegram({ store, line, onOut }) } : {},
  });
  const simulator = openSimulator();
  const deps: Deps = { ...shop.deps, handsOut: ask => ask.kind === 'finish', models: shelf.models };
  const service = createService({
    deps, receiving, outboxDoors: line ? ['telegram'] : [], onOut, workOut: (task, at, tell) => (task.kind === 'model' ? shelf.change(ear, task.model, tell).then(wordsAlone) : workOut(deps, task, at, simulator.simulate)),
  });
  service.resume();
  const page = await openPage({ service, port: config.port, dataDir: config.dataDir, zone: config.zone });
  const chat = line && openTelegram({ store, line, intake: service.intake, onOut, log });
  const stopShowing = line && showProgress({ store, line }, service);
  const forecasts = keepFresh(shop.deps.weather, log);
  const bench = terminal && openTerminal({ service: line ? withPairing(service, store) : service, ...terminal, now: () => nowIn(config.zone) });
  // After the doors, for what fell due meanwhile is said at once.
  const reminders = openReminders({ deps, service, callBy: line ? 'telegram' : undefined, onOut });

  const able = () => canHear(shelf.options());
  const stopWaiting = whenHearing(able, () => void hearKept(service, store, able, onOut).catch(error => log((error as Error).message)));

  const stop = once(async () => {
    bench?.close();
    stopWaiting();
    shelf.stop();
    await forecasts.close();
    await reminders.close();
    stopShowing?.();
    await chat?.close();
    await page.close();
    await service.close();
    await simulator.close();
    await outbox?.close();
    await ear.close();
    store.close();
  });
  return { pageUrl: page.url, pairing: line && pairingLine(store, Date.now()), store, ended: bench?.done ?? new Promise(() => {}), stop };
}

const wordsAlone = (say: string): Words => ({ say, buttons: [], files: [] });

/** The stop of a program may be asked for twice (a signal, and the end of the terminal); it is done once. */
function once(act: () => Promise<void>): () => Promise<void> {
  let done: Promise<void> | undefined;
  return () => (done ??= act());
}
