import { BOARD } from '../../src/base/constants.js';
import { DEGREE, FOOT, from, INCH } from '../../src/base/units.js';
import { boardToX } from '../../src/motion/lane/boards.js';
import type { LayoutNumbers } from '../../src/records/text/layout-text.js';
import { scoresAtPins } from '../../src/search/scoring/world-statistics.js';
import type { LayoutOutcomes } from '../../src/search/simulate-layouts.js';
import type { Outcome } from '../../src/simulate/simulator.js';

/* Outcomes made up for tests of what is made of them: no engine is behind them. */

/** The numbers of a made-up shot, in the units of answers. */
export interface MadeUp {
  readonly hookStartFt?: number;
  readonly sharpnessDegPerFt?: number;
  readonly totalHookBoards?: number;
  readonly rollStartFt?: number;
  readonly flareIn?: number;
  readonly entryAngleDeg?: number;
  readonly breakpointBoard?: number;
  readonly shot?: Outcome['shot'];
}

/** How far a made-up bowler's shots vary, in the units of answers. */
export const SCATTER = {
  hookStartFt: 1,
  sharpnessDegPerFt: 0.02,
  totalHookBoards: 2,
  entryAngleDeg: 0.2,
  flareIn: 0.2,
};

export const outcomeOf = ({
  hookStartFt = 38,
  sharpnessDegPerFt = 0.4,
  totalHookBoards = 12,
  rollStartFt = 50,
  flareIn = 4,
  entryAngleDeg = 5,
  breakpointBoard = 8,
  shot = 'pins',
}: MadeUp = {}): Outcome =>
  ({
    launch: { x: 0, angle: 0.02 },
    shot,
    ringClearance: from(0.5, INCH),
    reachesPocket: shot === 'pins',
    reaction: {
      hookStart: from(hookStartFt, FOOT),
      rollStart: from(rollStartFt, FOOT),
      sharpness: from(sharpnessDegPerFt, DEGREE / FOOT),
      totalHook: from(totalHookBoards, BOARD),
      entryAngle: from(entryAngleDeg, DEGREE),
      breakpointX: boardToX(breakpointBoard),
      flare: from(flareIn, INCH),
    },
  }) as Outcome;

export const layoutAt = (drillingAngleDeg: number, pinToPapIn = 4.5, valAngleDeg = 35): LayoutNumbers => ({
  drillingAngleDeg,
  pinToPapIn,
  valAngleDeg,
});

/** A layout with its scores world by world; null where it does not reach the pins. */
export function rowOf(
  layout: LayoutNumbers,
  scores: readonly (number | null)[],
  madeUp: MadeUp = {},
): LayoutOutcomes {
  const outcomes = scores.map((score) => outcomeOf({ ...madeUp, shot: score === null ? 'gutter' : 'pins' }));
  const reached = scoresAtPins({ scores });
  return {
    layout,
    nominal: outcomeOf(madeUp),
    worlds: {
      outcomes,
      scores,
      meanScore: reached.reduce((sum, score) => sum + score, 0) / reached.length,
      arrives: scores.filter((score) => score !== null).length / scores.length,
    },
  };
}
