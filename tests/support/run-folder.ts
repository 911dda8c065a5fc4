import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  interface ProvidedContext {
    /** A folder of this one run of the tests, empty at its start and gone after it. */
    runFolder: string;
  }
}

const folder = mkdtempSync(join(tmpdir(), 'flarewise-run-'));

/** Gives all test files of a run one folder, for what they share: fitted cores, whole answers. */
export function setup({ provide }: TestProject): void {
  provide('runFolder', folder);
}

export function teardown(): void {
  rmSync(folder, { recursive: true, force: true });
}
