import { parentPort, workerData } from 'node:worker_threads';
import { fetchModel } from './fetch-model.ts';
import { Listener } from './listen.ts';
import type { ModelChoice } from './model-files.ts';
import type { FromWorker, ToWorker } from './messages.ts';

/** The thread that hears: loads the model at the first recording and keeps it. Work comes one message at a time, in order. */
const port = parentPort!;
const send = (message: FromWorker) => port.postMessage(message);

interface Loaded {
  listener: Listener;
  choice: ModelChoice;
}

let choices = workerData as ModelChoice[];
let loaded: Loaded | undefined;
let fetching = 0;
let last: Promise<void> = Promise.resolve();

/** The first model that can be loaded; a damaged one is passed over. Undefined when there is none. */
async function load(): Promise<Loaded | undefined> {
  for (const choice of choices) {
    if (loaded) break;
    try {
      loaded = { listener: await Listener.load(choice), choice };
    } catch { /* the next one, then */ }
  }
  return loaded;
}

async function hear({ id, bytes, names }: Extract<ToWorker, { kind: 'hear' }>): Promise<void> {
  const ready = await load();
  if (!ready) return send({ kind: 'deaf', id });
  try {
    const hearing = await ready.listener.listen(bytes, names, (share, of) => send({ kind: 'progress', id, share, of }));
    send({ kind: 'heard', id, hearing });
  } catch (error) {
    loaded = undefined;
    send({ kind: 'failed', id, message: error instanceof Error ? error.message : String(error) });
  }
}

async function use(message: Extract<ToWorker, { kind: 'use' }>): Promise<void> {
  choices = message.choices;
  // Two at once would take the memory of both.
  await loaded?.listener.close();
  loaded = undefined;
  send({ kind: 'using', id: message.id, model: (await load())?.choice.model });
}

/** Beside the queue: fetching takes minutes, and what is said meanwhile is heard. */
async function fetchIt({ id, choice }: Extract<ToWorker, { kind: 'fetch' }>): Promise<void> {
  fetching++;
  const fetched = await fetchModel(choice, (got, of) => send({ kind: 'progress', id, share: of ? got / of : 0, of: of ?? 0 }));
  fetching--;
  send({ kind: 'fetched', id, fetched });
}

async function close(): Promise<void> {
  await last;
  await loaded?.listener.close();
  port.close();
  // What is being fetched would keep the thread alive for minutes.
  if (fetching > 0) process.exit();
}

port.on('message', (message: ToWorker) => {
  switch (message.kind) {
    case 'hear': last = last.then(() => hear(message)); break;
    case 'use': last = last.then(() => use(message)); break;
    case 'fetch': void fetchIt(message); break;
    case 'close': void close();
  }
});
