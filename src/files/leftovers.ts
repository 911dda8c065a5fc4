import { readdirSync, rmSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { isGone, isOwner, newOwner } from './owner.js';

/* Files that a program which was killed left half written. Only names made here are ever taken for such. */

const NAME = /^\.flarewise-(.*)\.tmp$/;
const A_DAY = 24 * 60 * 60 * 1000; // ms; no file takes that long to write

/** A name for a file that is being written; short, so that it fits wherever the file's own name does. */
export const newLeftover = (): string => `.flarewise-${newOwner()}.tmp`;

/** Removes from a folder the half-written files of processes that have ended. */
export function sweep(folder: string): void {
  for (const name of namesIn(folder)) {
    const owner = NAME.exec(name)?.[1];
    if (owner === undefined || !isOwner(owner)) continue;
    const path = join(folder, name);
    try {
      // for a process on another machine only the age shows it
      if (isGone(owner) || statSync(path).mtimeMs < Date.now() - A_DAY) rmSync(path, { force: true });
    } catch {
      // another program swept it first, or it may not be removed: it harms nothing
    }
  }
}

function namesIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder);
  } catch {
    return []; // not there yet
  }
}
