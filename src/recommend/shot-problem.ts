import { BOARD, BOARD_COUNT, LANE_LENGTH, LANE_WIDTH } from '../constants.js';
import type { OilPattern } from '../motion/oil.js';
import type { Launch, Release } from '../motion/release.js';
import type { Traffic } from '../motion/wear.js';
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
  readonly play: Play;
  /** On the line of the usual middle layout; from it each layout finds its own. */
  readonly launch: Launch;
  /** The nominal world first. */
  readonly worlds: readonly World[];
  /** The same worlds but the nominal, marked exactly and with the most typical core. */
  readonly luck: readonly World[];
}

/** What a bowler would play on this lane, in boards from the own side. */
export interface Play {
  /** Where the ball may be laid down: one board when the bowler names it. */
  readonly laydownBoards: readonly number[];
  /** Where the path is meant to be widest: the pattern's length in feet less 31 (common practice, no source). */
  readonly breakpointBoard: number;
}

/** Boards tried for the laydown when the bowler names none. */
const LAYDOWN_BOARDS = Array.from({ length: 16 }, (_, i) => 8 + 2 * i);

/** Outermost board a line is planned over. */
const LEAST_BREAKPOINT = 3;

const playOf = (lane: Lane, { laydownBoard }: Bowler): Play => ({
  laydownBoards: laydownBoard === undefined ? LAYDOWN_BOARDS : [laydownBoard],
  breakpointBoard: breakpointBoardOf(lane),
});

const breakpointBoardOf = ({ patternFt }: Lane): number => Math.max(LEAST_BREAKPOINT, patternFt - 31);

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
export function patternOf(lane: Lane, hand: Bowler['hand'], grit = USUAL_GRIT): OilPattern {
  const x = (boardEdge: number): number => {
    const fromRight = LANE_WIDTH / 2 - boardEdge * BOARD;
    return hand === 'right' ? fromRight : -fromRight;
  };
  const dry = (lane.frictionDry ?? USUAL_FRICTION_DRY) * gritFactor(grit);
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
    ...(lane.games ? { traffic: trafficOf(lane, lane.games, x) } : {}),
  };
}

/** Where most balls run, boards from the worn side: laid down, at the pattern's end, in the pocket. Assumed. */
const TRACK_BOARDS = { laydown: 20, pocket: 17.5 };

/** From the track's middle to where no ball runs, and how far past the pattern's end oil is carried. Assumed. */
const TRACK_HALF_WIDTH_BOARDS = 6;
const CARRY_LENGTH_FT = 8;

/**
 * The games on a lane: a track from the laydown out to the pattern's usual breakpoint and back to the pocket.
 *
 * @param x  lateral position, m in W, of an edge counted in boards from the lane's right edge
 */
function trafficOf(lane: Lane, games: number, x: (boardEdge: number) => number): Traffic {
  const endY = from(lane.patternFt, FOOT);
  const at = (board: number): number =>
    x(lane.wornSide === 'left' ? BOARD_COUNT - (board - 0.5) : board - 0.5);
  return {
    games,
    track: [
      { y: 0, x: at(TRACK_BOARDS.laydown) },
      { y: endY, x: at(breakpointBoardOf(lane)) },
      { y: LANE_LENGTH, x: at(TRACK_BOARDS.pocket) },
    ],
    halfWidth: TRACK_HALF_WIDTH_BOARDS * BOARD,
    endY,
    carryLength: from(CARRY_LENGTH_FT, FOOT),
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
  pattern: patternOf(lane, bowler.hand, ballRecord.surfaceGrit),
  play: playOf(lane, bowler),
  launch: { x: 0, angle: 0 },
  worlds: [NOMINAL_WORLD],
  luck: [],
});
