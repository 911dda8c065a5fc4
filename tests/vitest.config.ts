import { defineConfig } from 'vitest/config';
import { whyNoBrowser } from './browser/chromium.js';

export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/**/*.slow.test.ts', ...(whyNoBrowser() === null ? [] : ['tests/browser/**'])],
    // files share a process, which loads and compiles what they test once
    isolate: false,
    // commands in processes of their own leave cores idle
    maxWorkers: 2,
    // only what hangs should fail by it, not what a busy machine makes slow
    testTimeout: 1_800_000,
    hookTimeout: 1_800_000,
    // all files of a run share a folder: see what is in it there
    globalSetup: ['tests/support/run-folder.ts'],
    // a screen that is missing fails; `npm run screens` writes it
    update: 'none',
    reporters: ['default', './tests/support/closing-line.ts'],
  },
});
