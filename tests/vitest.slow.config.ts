import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/**/*.slow.test.ts'],
    testTimeout: 3_600_000,
    hookTimeout: 3_600_000,
    globalSetup: ['tests/support/run-folder.ts'],
    update: 'none',
    reporters: ['default', './tests/support/closing-line.ts'],
  },
});
