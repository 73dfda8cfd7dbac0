import { Worker } from 'node:worker_threads';
import type { SimulationResult } from '../../domain/plan/simulate.ts';
import type { ToSimulate } from './worker.ts';

/** Simulates in a thread of its own, started at the first case. */
interface Simulator {
  simulate(inputs: ToSimulate['inputs']): Promise<SimulationResult[]>;
  close(): Promise<void>;
}

interface Waiting { resolve(results: SimulationResult[]): void; reject(error: Error): void }

export function openSimulator(): Simulator {
  const waiting = new Map<number, Waiting>();
  let worker: Worker | undefined;
  let last = 0;
  const lost = (error: Error): void => {
    worker = undefined;
    for (const { reject } of waiting.values()) reject(error);
    waiting.clear();
  };
  const running = (): Worker => {
    if (worker) return worker;
    const started = startWorker();
    started.on('message', ({ id, results, fault }: { id: number; results?: SimulationResult[]; fault?: string }) => {
      const one = waiting.get(id);
      waiting.delete(id);
      if (!waiting.size) started.unref();
      if (results) one?.resolve(results);
      else one?.reject(new Error(fault));
    });
    started.on('error', lost);
    started.on('exit', () => { if (worker === started) lost(new Error('the simulating thread ended')); });
    return (worker = started);
  };
  return {
    simulate: inputs => new Promise((resolve, reject) => {
      const id = ++last;
      waiting.set(id, { resolve, reject });
      // Held while there is work, so that a program at its end waits for it.
      const thread = running();
      thread.ref();
      thread.postMessage({ id, inputs } satisfies ToSimulate);
    }),
    async close() {
      const thread = worker;
      worker = undefined;
      await thread?.terminate();
      lost(new Error('the program is stopping'));
    },
  };
}

/** tsx hooks only the thread it was started in: the new one begins with a line of plain JavaScript that puts its loader in place. */
function startWorker(): Worker {
  const tsx = import.meta.resolve('tsx/esm/api');
  const source = new URL('./worker.ts', import.meta.url).href;
  const begin = `import { register } from ${JSON.stringify(tsx)}; register(); await import(${JSON.stringify(source)});`;
  return new Worker(new URL(`data:text/javascript,${encodeURIComponent(begin)}`), { execArgv: [] });
}
