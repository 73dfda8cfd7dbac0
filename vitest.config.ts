import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/bench/**'],
    testTimeout: 60_000,
    hookTimeout: 60_000,
    // Two cores is what a small machine has; more workers only fight over them.
    maxWorkers: 2,
    reporters: ['default', './tests/closing-line.ts'],
  },
});
