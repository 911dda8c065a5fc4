import type { Oddity } from '../answers/statements/log-remarks.js';
import { readingErrorsOf } from '../schemas/reading-errors.js';
import type { LoggedShot } from '../schemas/shot-log.js';
import type { NightHead } from './add-shot.js';
import { oddNumbers, type ReleaseSpeed } from './odd-numbers.js';
import { oddPath } from './odd-path.js';
import { shotFromOtherSide } from './other-side.js';
import { readingError } from './readings.js';

/** Farther from the target than this no shot misses at the arrows, boards: six times the usual scatter (a choice of this project). */
const MOST_OFF_TARGET = 6;

/** What looks odd about a shot. */
interface OddShot {
  readonly oddities: readonly Oddity[];
  /** Whether its path would be sound if its boards were counted from the other side. */
  readonly fitsFromOtherSide: boolean;
}

/**
 * What looks odd about a shot by itself; nothing for a shot that the person has confirmed.
 *
 * @param release  of the bowler, where the record is known
 */
export function oddShot(
  shot: LoggedShot,
  head: Pick<NightHead, 'targetBoard' | 'readingErrors'>,
  release: ReleaseSpeed | null,
): OddShot {
  if (shot.confirmed) return { oddities: [], fitsFromOtherSide: false };
  const errors = readingErrorsOf(head);
  const arrows = readingError('arrowsBoard', shot, head);
  const path = oddPath(shot, errors, arrows);
  return {
    oddities: [...(path.length > 0 ? path : oddAim(shot, head)), ...oddNumbers(shot, release)],
    fitsFromOtherSide: path.length > 0 && oddPath(shotFromOtherSide(shot), errors, arrows).length === 0,
  };
}

/** A shot far from its target: the target may be that of an earlier line. */
function oddAim(
  { arrowsBoard }: LoggedShot,
  { targetBoard }: Pick<NightHead, 'targetBoard'>,
): readonly Oddity[] {
  return arrowsBoard === undefined ||
    targetBoard === undefined ||
    Math.abs(arrowsBoard - targetBoard) <= MOST_OFF_TARGET
    ? []
    : [{ code: 'off-target', params: { arrowsBoard, targetBoard } }];
}
