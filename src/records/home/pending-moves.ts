import { existsSync, readFileSync, renameSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { putFile, syncFolder } from '../../files/put-file.js';

/*
 * Several renames that count as one change. They are listed in a file first: from the moment it stands there the change
 * is made, and a program that is killed in between leaves the rest to the next one.
 */

/** A rename; both paths are seen from the folder of kept records. */
export interface Move {
  readonly from: string;
  readonly to: string;
}

/** Makes all moves, or none of them. Only under the lock. */
export function moveAll(home: string, moves: readonly Move[]): void {
  if (moves.length > 1) putFile(listIn(home), JSON.stringify(moves), { mode: 0o600 });
  carryOut(home, moves);
}

export const hasPendingMoves = (home: string): boolean => existsSync(listIn(home));

/** Makes the moves that a program which was killed has left. Only under the lock. */
export const finishMoves = (home: string): void => carryOut(home, pendingMoves(home));

const listIn = (home: string): string => join(home, 'pending-moves.json');

function pendingMoves(home: string): readonly Move[] {
  try {
    return JSON.parse(readFileSync(listIn(home), 'utf8')) as Move[];
  } catch {
    return []; // none: the list is put in place whole
  }
}

function carryOut(home: string, moves: readonly Move[]): void {
  for (const { from, to } of moves)
    if (existsSync(join(home, from))) renameSync(join(home, from), join(home, to));
  for (const folder of new Set(moves.flatMap(({ from, to }) => [dirname(from), dirname(to)])))
    syncFolder(join(home, folder));
  rmSync(listIn(home), { force: true });
}
