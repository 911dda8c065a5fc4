import type { LogRemark, Oddity } from '../answers/statements/log-remarks.js';
import { nearestWord } from '../text/nearest-word.js';
import type { NightHead } from './add-shot.js';

/** A lane that may be meant: its id, and where its oil ends by its record, ft. */
export interface KnownLane {
  readonly id: string;
  readonly patternFt: number;
}

/** A pattern that differs by more from the lane's record is another one, ft (a choice of this project). */
const SAME_PATTERN_FT = 2;

/** What looks odd about what was typed of a night. */
export function oddHead(
  given: Partial<NightHead>,
  head: Partial<NightHead>,
  lanes: readonly KnownLane[],
): readonly Oddity[] {
  const { lane, patternFt } = given;
  const found: Oddity[] = [];
  const known = lanes.find(({ id }) => id === head.lane);
  if (lane !== undefined && !known) {
    const ids = lanes.map(({ id }) => id);
    const near = nearestWord(lane, ids);
    if (near !== null) found.push({ code: 'lane-misspelt', params: { lane, near } });
  }
  if (patternFt !== undefined && known && Math.abs(patternFt - known.patternFt) > SAME_PATTERN_FT)
    found.push({ code: 'pattern-not-of-lane', params: { patternFt, lanePatternFt: known.patternFt } });
  return found;
}

/** What is worth saying of a lane where shots begin: that there is no record of it. */
export const unkeptLane = (lane: string, lanes: readonly KnownLane[]): readonly LogRemark[] =>
  lanes.some(({ id }) => id === lane) ? [] : [{ code: 'lane-not-kept', params: { lane } }];
