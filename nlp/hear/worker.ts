import { parentPort, workerData } from 'node:worker_threads';
import { Listener } from './listen.ts';
import type { ModelChoice } from './model-files.ts';
import type { FromWorker, ToWorker } from './messages.ts';

/** The thread that hears: loads the model at the first recording and keeps it. Work comes one message at a time, in order. */
const choice = workerData as ModelChoice;
const port = parentPort!;
const send = (message: FromWorker) => port.postMessage(message);

let listener: Promise<Listener> | undefined;
let last: Promise<void> = Promise.resolve();

async function work({ id, bytes, names }: Extract<ToWorker, { kind: 'hear' }>): Promise<void> {
  try {
    listener ??= Listener.load(choice);
    const ready = await listener;
    const hearing = await ready.listen(bytes, names, (share) => send({ kind: 'progress', id, share }));
    send({ kind: 'heard', id, hearing });
  } catch (error) {
    listener = undefined;
    send({ kind: 'failed', id, message: error instanceof Error ? error.message : String(error) });
  }
}

async function close(): Promise<void> {
  await last;
  await (await listener?.catch(() => undefined))?.close();
  port.close();
}

port.on('message', (message: ToWorker) => {
  if (message.kind === 'close') void close();
  else last = last.then(() => work(message));
});
