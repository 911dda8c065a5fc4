import { createHash } from 'node:crypto';
import { closeSync, existsSync, openSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as sleep } from 'node:timers/promises';
import { inject } from 'vitest';
import { type Ended, runCli } from './run-cli.js';

/**
 * How the built program ends with these arguments, worked out once in a run of the tests for all that ask: by the first of
 * them, while the others wait.
 */
async function sharedAnswer(args: readonly string[]): Promise<Ended> {
  const key = createHash('sha256').update(JSON.stringify(args)).digest('hex').slice(0, 16);
  const file = join(inject('runFolder'), `answer-${key}.json`);
  if (isFirst(`${file}.begun`)) {
    writeFileSync(`${file}.part`, JSON.stringify(await runCli(args)));
    renameSync(`${file}.part`, file);
  }
  while (!existsSync(file)) await sleep(50);
  return JSON.parse(readFileSync(file, 'utf8'));
}

/** The demo's whole answer with the usual budget, by two threads. */
export const demoAnswer = (): Promise<Ended> => sharedAnswer(['--json', '--workers', '2']);

/** Whether a file could be made that was not there. */
function isFirst(path: string): boolean {
  try {
    closeSync(openSync(path, 'wx'));
    return true;
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw error;
  }
}
