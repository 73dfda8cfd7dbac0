import { defineConfig } from 'vitest/config';

const SHARED = { testTimeout: 60_000, hookTimeout: 60_000 };

export default defineConfig({
  test: {
    // Two cores is what a small machine has; more workers only fight over them.
    maxWorkers: 2,
    reporters: ['default', './tests/closing-line.ts'],
    projects: [
      // What reads and reckons keeps nothing between calls, so these files share what they import: reading it anew for each took as long as all the tests.
      { test: { ...SHARED, name: 'reading', include: ['tests/nlp/**/*.test.ts', 'tests/domain/**/*.test.ts'], isolate: false } },
      { test: { ...SHARED, name: 'shop', include: ['tests/**/*.test.ts'], exclude: ['tests/nlp/**', 'tests/domain/**', 'tests/bench/**'] } },
    ],
  },
});
