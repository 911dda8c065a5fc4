import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/**/*.slow.test.ts'],
    testTimeout: 60_000,
    hookTimeout: 300_000,
    reporters: ['default', './tests/closing-line.ts'],
  },
});
