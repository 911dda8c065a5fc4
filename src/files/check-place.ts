import { closeSync, fsyncSync, lstatSync, openSync, rmSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { newLeftover, sweep } from './leftovers.js';
import { orSayWhy, type Place } from './machine-fault.js';
import { notAFile, realPlace } from './put-file.js';

/**
 * Makes sure that a file can be written, by making one beside it and removing it, so that a person does not wait for an
 * answer that has no place. Half-written files in that folder whose programs have ended are removed.
 *
 * @throws {InputError} `no-access` when it cannot
 */
export const checkPlace = (place: Place): void =>
  orSayWhy(place, () => {
    const path = realPlace(place.path);
    const found = statSync(path, { throwIfNoEntry: false });
    if (found && !found.isFile()) throw notAFile(found);
    if (!found) lstatSync(path, { throwIfNoEntry: false }); // a name that is too long shows here
    probe(dirname(path));
  });

function probe(folder: string): void {
  sweep(folder);
  const path = join(folder, newLeftover());
  const file = openSync(path, 'wx');
  try {
    writeFileSync(file, new Uint8Array(A_BLOCK));
    fsyncSync(file); // some disks say only now that they are full
  } finally {
    closeSync(file);
    rmSync(path, { force: true });
  }
}

/** Bytes; an empty file finds room on a disk that is full. */
const A_BLOCK = 4096;
