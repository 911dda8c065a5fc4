import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { PartialStrykerOptions } from '@stryker-mutator/api/core';

/** Where results of runs are kept, and copies of the project in which mutants live. */
export const KEPT = join(tmpdir(), 'flarewise-mutants');

const keptOf = (folder: string, share: number): string =>
  join(KEPT, `${folder.replaceAll('/', '-')}${share < 1 ? `-${share}` : ''}`);

/** How Stryker mutates some files of a folder of `src`: one mutant at a time, asking only the tests that reach it. */
export function strykerOptions(
  folder: string,
  share: number,
  files: readonly string[],
): PartialStrykerOptions & { readonly incrementalFile: string } {
  const kept = keptOf(folder, share);
  return {
    mutate: files.map((name) => `src/${folder}/${name}`),
    testRunner: 'vitest',
    vitest: { configFile: 'tests/vitest.mutants.config.ts', related: false },
    plugins: ['@stryker-mutator/vitest-runner', fileURLToPath(new URL('sample.mjs', import.meta.url))],
    checkers: ['sample'],
    coverageAnalysis: 'perTest',
    concurrency: 1,
    timeoutMS: 60_000, // a busy machine must not pass for a mutant that never ends; those are found by how often their code is run
    dryRunTimeoutMinutes: 30,
    incremental: true,
    incrementalFile: join(kept, 'incremental.json'),
    reporters: ['clear-text', 'json'],
    clearTextReporter: { allowColor: false, allowEmojis: false, logTests: false, reportTests: false },
    jsonReporter: { fileName: join(kept, 'report.json') },
    tempDirName: join(kept, 'copy'),
    ignorePatterns: ['dist', 'tests/report', 'tests/cli', 'tests/end-to-end'],
  };
}
