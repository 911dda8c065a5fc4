import { BOARD, LANE_WIDTH } from '../constants.js';
import type { OilPattern } from '../motion/oil.js';
import type { Launch, Release } from '../motion/release.js';
import type { Ball } from '../records/ball.js';
import { USUAL_GRIT } from '../records/ball.js';
import type { Bowler } from '../records/bowler.js';
import { type Lane, USUAL_FRICTION_DRY, USUAL_FRICTION_OILED } from '../records/lane.js';
import { DEGREE, FOOT, from, MPH, RPM } from '../units.js';
import { GREATEST_FRICTION, gritFactor, NOMINAL_SURFACE } from './assumed-surface.js';
import type { BallProblem } from './ball-problem.js';
import { NOMINAL_WORLD, type World } from './world.js';

/** Everything a shot needs, as plain data in SI, so that a worker can be handed it. */
export interface ShotProblem {
  readonly ball: BallProblem;
  readonly release: Release;
  readonly pattern: OilPattern;
  readonly launch: Launch;
  /** The nominal world first. */
  readonly worlds: readonly World[];
  /** The same worlds but the nominal, marked exactly and with the most typical core. */
  readonly luck: readonly World[];
}

/** How fast the film fades at a zone's edges. Assumed, no source. */
const EDGE_LENGTH_FT = 1.5;
const EDGE_BOARDS = 0.75;

/** A bowler's release, a left-hander's as its mirror image: every quantity is measured from the own side. */
export const releaseOf = (bowler: Bowler, ball: BallProblem): Release => ({
  speed: from(bowler.speedMph, MPH),
  spin: from(bowler.revRateRpm, RPM),
  axisTilt: from(bowler.axisTiltDeg, DEGREE),
  axisRotation: from(bowler.axisRotationDeg, DEGREE),
  pap_B: ball.pap_B,
});

/**
 * The oil as this bowler's ball meets it: a left-hander's lane is mirrored, so that the ball always
 * belongs to a right-hander. The finish of the cover moves the friction on dry boards.
 */
export function patternOf(lane: Lane, bowler: Bowler, ball: Ball): OilPattern {
  const x = (boardEdge: number): number => {
    const fromRight = LANE_WIDTH / 2 - boardEdge * BOARD;
    return bowler.hand === 'right' ? fromRight : -fromRight;
  };
  const dry = (lane.frictionDry ?? USUAL_FRICTION_DRY) * gritFactor(ball.surfaceGrit ?? USUAL_GRIT);
  return {
    zones: lane.zones.map((zone) => ({
      fromY: from(zone.fromFt, FOOT),
      toY: from(zone.toFt, FOOT),
      fromX: Math.min(x(zone.fromBoard), x(zone.toBoard)),
      toX: Math.max(x(zone.fromBoard), x(zone.toBoard)),
      film: zone.units,
      filmEnd: zone.unitsAtEnd ?? zone.units,
    })),
    frictionOiled: lane.frictionOiled ?? USUAL_FRICTION_OILED,
    frictionDry: Math.min(GREATEST_FRICTION, dry),
    filmScale: NOMINAL_SURFACE.filmScale,
    edgeLength: from(EDGE_LENGTH_FT, FOOT),
    edgeWidth: EDGE_BOARDS * BOARD,
  };
}

/** The problem with only its nominal world and a launch down the middle, from which a line is sought. */
export const unaimedProblem = (
  lane: Lane,
  bowler: Bowler,
  ballRecord: Ball,
  ball: BallProblem,
): ShotProblem => ({
  ball,
  release: releaseOf(bowler, ball),
  pattern: patternOf(lane, bowler, ballRecord),
  launch: { x: 0, angle: 0 },
  worlds: [NOMINAL_WORLD],
  luck: [],
});
