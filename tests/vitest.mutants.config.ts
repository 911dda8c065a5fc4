import { defineConfig } from 'vitest/config';
import { QuickestFirst } from './mutation/quickest-first.js';
import { SLOW, testsOf } from './mutation/tests-of.js';

/** The quick tests that are run for each mutant of the folder of `src` that `MUTATED_FOLDER` names. */
export default defineConfig({
  test: {
    root: new URL('..', import.meta.url).pathname,
    include: [...testsOf(process.env.MUTATED_FOLDER ?? '')],
    exclude: [...SLOW],
    sequence: { sequencer: QuickestFirst },
    testTimeout: 1_800_000, // what hangs is found out by how often the changed code is run
    globalSetup: ['tests/support/run-folder.ts'],
    update: 'none',
  },
});
