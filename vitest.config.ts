import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/bench/**'],
    // Files share what they import: reading it anew for each took as long as all the tests.
    isolate: false,
    testTimeout: 60_000,
    hookTimeout: 60_000,
    // Two cores is what a small machine has; more workers only fight over them.
    maxWorkers: 2,
    reporters: ['default', './tests/closing-line.ts'],
  },
});
