import type { Reporter, TestModule } from 'vitest/node';

/** Ends the run with one plain line, "N passed, N failed", counted from the runner's own results, for programs that read it. */
export default class ClosingLine implements Reporter {
  onTestRunEnd(modules: readonly TestModule[], unhandled: readonly unknown[]): void {
    const count = { passed: 0, failed: 0, skipped: 0 };
    for (const module of modules) {
      if (module.state() === 'failed' && ![...module.children.allTests()].some(t => t.result().state === 'failed')) count.failed++;
      for (const test of module.children.allTests()) {
        const { state } = test.result();
        if (state !== 'pending') count[state]++;
      }
    }
    const skipped = count.skipped ? `, ${count.skipped} skipped` : '';
    // At exit, so that it stands after the summaries of the other reporters.
    process.once('exit', () => process.stdout.write(`${count.passed} passed, ${count.failed + unhandled.length} failed${skipped}\n`));
  }
}
