import { median } from 'simple-statistics';
import type { LogRemark } from '../answers/statements/log-remarks.js';
import type { Night } from '../schemas/shot-log.js';
import { wildShots } from './wild-shots.js';

/** Fewer distances than this say nothing of a pattern. */
const LEAST_DISTANCES = 3;

/** How far from the end of the oil the breakpoint may lie, ft (a choice of this project; within some 8 ft is common practice). */
const MOST_FROM_END_FT = 12;

/**
 * What is worth saying of a night: shots that lie far from the others, and breakpoints that do not go with the pattern.
 *
 * @param first      number of its first shot
 * @param patternFt  where the oil ends by the lane's record; null where there is none
 */
export const nightRemarks = (night: Night, first: number, patternFt: number | null): readonly LogRemark[] => [
  ...wildShots(night, first),
  ...otherPattern(night, patternFt),
];

function otherPattern({ shots, patternFt }: Night, ofLane: number | null): readonly LogRemark[] {
  const length = patternFt ?? ofLane;
  const distances = shots.flatMap(({ breakpointFt }) => (breakpointFt === undefined ? [] : [breakpointFt]));
  if (length === null || distances.length < LEAST_DISTANCES) return [];
  const breakpointFt = median(distances);
  return Math.abs(breakpointFt - length) > MOST_FROM_END_FT
    ? [
        {
          code: 'breakpoint-not-of-pattern',
          params: { breakpointFt, shots: distances.length, patternFt: length },
        },
      ]
    : [];
}
