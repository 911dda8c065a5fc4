import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { sweep } from '../../files/leftovers.js';
import { tryLock, underLock } from '../../files/lock.js';
import { machineFault, type Place } from '../../files/machine-fault.js';
import { finishMoves, hasPendingMoves } from './pending-moves.js';

/* The folder of kept records: made for its owner alone, changed by one program at a time. */

const PATIENCE = 10_000; // ms; a change takes some hundredths of a second

/**
 * Makes a change under the lock, in a folder that is there, with nothing left half done by programs that were killed.
 *
 * @param folders  below it, in which the change writes files
 * @throws {InputError} `no-access` when the folder cannot be written to, `locked` when another program does not let go
 */
export async function inHome<T>(home: string, folders: readonly string[], change: () => T): Promise<T> {
  try {
    ownFolder(home);
    return await underLock(join(home, LOCK), HOME_IN_WORDS, PATIENCE, () => {
      finishMoves(home);
      for (const folder of ['.', ...folders]) sweep(join(home, folder));
      return change();
    });
  } catch (error) {
    throw machineFault(error, homePlace(home));
  }
}

/** Makes a folder that only its owner can look into. */
export const ownFolder = (path: string): string | undefined =>
  mkdirSync(path, { recursive: true, mode: 0o700 });

/** Rights of a file that only its owner can read. */
export const OWN_FILE = 0o600;

/** Finishes, before records are read, what a program that was killed had begun; one that still runs does so itself. */
export function settle(home: string): void {
  if (!hasPendingMoves(home)) return;
  try {
    const got = tryLock(join(home, LOCK));
    if (!('release' in got)) return;
    try {
      finishMoves(home);
    } finally {
      got.release();
    }
  } catch {
    // a folder that can only be read is read as it is
  }
}

/** The folder as a place to write. */
const homePlace = (home: string): Place => ({
  path: home,
  field: HOME_IN_WORDS,
  rule: 'must be one that can be written to',
  hint: 'Make room or change its rights, or set FLAREWISE_HOME to another folder.',
});

const HOME_IN_WORDS = 'the folder of kept records';
const LOCK = 'lock';
