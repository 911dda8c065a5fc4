import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/**/*.slow.test.ts'],
    // commands in processes of their own leave cores idle
    maxWorkers: 2,
    testTimeout: 180_000,
    hookTimeout: 300_000,
    reporters: ['default', './tests/closing-line.ts'],
  },
});
