/** A loop that works while there is work, sleeps till the next is due, and wakes when told. */
export interface Loop {
  /** There may be new work. */
  wake(): void;
  /** Resolves when a whole pass found nothing that is due now. */
  idle(): Promise<void>;
  /** Lets the step in hand end, then stops. */
  close(): Promise<void>;
}

/**
 * `step` does one piece of work and says in how many ms to look again: 0 at once, undefined only when woken (or at the slow look).
 * Other processes may add work to the same database, so a sleeping loop also looks on its own every `slowMs`.
 */
export function startLoop(step: () => Promise<number | undefined>, slowMs = 2_000): Loop {
  let closed = false;
  let nudged = false;
  let wakeUp: () => void = () => {};
  let waiters: (() => void)[] = [];
  const sleep = (ms: number) => new Promise<void>(done => {
    const timer = setTimeout(done, ms);
    timer.unref();
    wakeUp = () => { clearTimeout(timer); done(); };
  });
  const run = async () => {
    while (!closed) {
      nudged = false;
      let wait: number | undefined;
      // A step throws only when the machinery itself is broken (disk, database): nothing is lost, so look again later.
      try { wait = await step(); } catch (error) { console.error(error instanceof Error ? error.message : error); wait = slowMs; }
      if (closed || wait === 0 || nudged) continue;
      waiters.forEach(w => w());
      waiters = [];
      await sleep(Math.min(wait ?? slowMs, slowMs));
    }
    waiters.forEach(w => w());
  };
  const running = run();
  const wake = () => { nudged = true; wakeUp(); };
  return {
    wake,
    idle: () => (closed ? Promise.resolve() : new Promise(done => { waiters.push(done); wake(); })),
    close: () => { closed = true; wakeUp(); return running; },
  };
}
