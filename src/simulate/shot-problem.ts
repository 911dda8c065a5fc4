import { BOARD, BOARD_COUNT, LANE_LENGTH, LANE_WIDTH } from '../base/constants.js';
import { oncePer } from '../base/once-per.js';
import { DEGREE, FOOT, from, MPH, RPM } from '../base/units.js';
import { boardToX } from '../motion/lane/boards.js';
import type { OilPattern } from '../motion/lane/oil.js';
import {
  CARRY_LENGTH,
  EDGE_LENGTH,
  EDGE_WIDTH,
  TRACK_HALF_WIDTH,
  TRACK_PINS_BOARD,
} from '../motion/lane/usual-oil.js';
import type { Traffic } from '../motion/lane/wear.js';
import type { Launch, Release } from '../motion/shot/release.js';
import type { BallProblem } from '../prepare/ball-problem.js';
import type { Ball } from '../records/schemas/ball.js';
import { USUAL_GRIT } from '../records/schemas/ball.js';
import type { Bowler } from '../records/schemas/bowler.js';
import type { Lane } from '../records/schemas/lane.js';
import { type LinePractice, loadPractice } from '../records/shared/shared-data.js';
import { usualBreakpoint } from './usual-breakpoint.js';
import { NOMINAL_SURFACE, USUAL_FRICTION } from './worlds/assumed-surface.js';
import { type Deviations, middleWorld, NO_DEVIATIONS } from './worlds/deviations.js';
import type { Learned } from './worlds/learned.js';
import { shotScatterOf } from './worlds/release-scatter.js';

/** Everything a shot needs, as plain data in SI, so that it can be passed to a worker. */
export interface ShotProblem {
  readonly ball: BallProblem;
  readonly release: Release;
  /** With the lane's friction for the reference finish. */
  readonly pattern: OilPattern;
  /** Finish of the cover. */
  readonly grit: number;
  readonly play: Play;
  /** The line of the usual middle layout, from which each layout finds its own. */
  readonly launch: Launch;
  /** The nominal world first. */
  readonly worlds: readonly Deviations[];
  /** All worlds but the nominal one, with the layout marked exactly and the most typical core. */
  readonly luck: readonly Deviations[];
}

/** The lines that a bowler can and would play on this lane, in boards from the bowler's own side. */
export interface Play {
  /** Where the ball may be laid down; a single board if the bowler names one. */
  readonly laydownBoard: { readonly least: number; readonly most: number };
  /** Steepest direction in which a ball is sent, to either side, rad. */
  readonly steepest: number;
  /** Where the path is meant to be widest (common practice, no source). */
  readonly breakpointBoard: number;
  /** Standard deviation of the bowler's direction from shot to shot, rad. */
  readonly aimScatter: number;
  /** What bowlers play. */
  readonly usual: LinePractice;
}

/** Outermost board on which a ball is laid down when the bowler names none. */
const LEAST_LAYDOWN = 8;

const playOf = (lane: Lane, bowler: Bowler): Play => {
  const { laydownBoard } = bowler;
  const usual = loadPractice().line;
  const { farthest } = usual.laydownBoard;
  return {
    laydownBoard:
      laydownBoard === undefined
        ? { least: LEAST_LAYDOWN, most: farthest }
        : { least: laydownBoard, most: laydownBoard },
    steepest: from(usual.launchDeg.farthest, DEGREE),
    breakpointBoard: usualBreakpoint(lane.patternFt).board,
    aimScatter: shotScatterOf(bowler).launchAngle,
    usual,
  };
};

/** A bowler's release. Every quantity is measured from the bowler's own side, so a left-hander's is mirrored. */
const releaseOf = (bowler: Bowler, ball: BallProblem): Release => ({
  speed: from(bowler.speedMph, MPH),
  spin: from(bowler.revRateRpm, RPM),
  axisTilt: from(bowler.axisTiltDeg, DEGREE),
  axisRotation: from(bowler.axisRotationDeg, DEGREE),
  pap_B: ball.pap_B,
});

/**
 * The oil as this bowler's ball meets it: a left-hander's lane is mirrored, so that the ball always
 * belongs to a right-hander. Friction is that of a cover with the reference finish. One lane is one pattern, whose oil is laid once.
 */
export const patternOf = (lane: Lane, hand: Bowler['hand']): OilPattern => PATTERNS[hand](lane);

const PATTERNS = {
  right: oncePer((lane: Lane) => newPattern(lane, 'right')),
  left: oncePer((lane: Lane) => newPattern(lane, 'left')),
};

function newPattern(lane: Lane, hand: Bowler['hand']): OilPattern {
  const x = (boardEdge: number): number =>
    LANE_WIDTH / 2 - BOARD * (hand === 'right' ? boardEdge : BOARD_COUNT - boardEdge);
  return {
    zones: lane.zones.map((zone) => ({
      fromY: from(zone.fromFt, FOOT),
      toY: from(zone.toFt, FOOT),
      fromX: Math.min(x(zone.fromBoard), x(zone.toBoard)),
      toX: Math.max(x(zone.fromBoard), x(zone.toBoard)),
      film: zone.units,
      filmEnd: zone.unitsAtEnd ?? zone.units,
    })),
    frictionOiled: lane.frictionOiled ?? USUAL_FRICTION.oiled,
    frictionDry: lane.frictionDry ?? USUAL_FRICTION.dry,
    filmScale: NOMINAL_SURFACE.filmScale,
    edgeLength: EDGE_LENGTH,
    edgeWidth: EDGE_WIDTH,
    ...(lane.games ? { traffic: trafficOf(lane, lane.games, hand) } : {}),
  };
}

/** Where most balls are laid down, board from the worn side. Assumed, no source. */
const TRACK_LAYDOWN_BOARD = 20;

/**
 * The games on a lane: a track from the laydown out to the pattern's usual breakpoint and back to the pocket, on this hand's side or
 * the other.
 */
function trafficOf(lane: Lane, games: number, hand: Bowler['hand']): Traffic {
  const endY = from(lane.patternFt, FOOT);
  const isOwnSide = (lane.wornSide ?? 'right') === hand;
  const at = (board: number): number => boardToX(isOwnSide ? board : BOARD_COUNT + 1 - board);
  return {
    games,
    track: [
      { y: 0, x: at(TRACK_LAYDOWN_BOARD) },
      { y: endY, x: at(usualBreakpoint(lane.patternFt).board) },
      { y: LANE_LENGTH, x: at(TRACK_PINS_BOARD) },
    ],
    halfWidth: TRACK_HALF_WIDTH,
    endY,
    carryLength: CARRY_LENGTH,
  };
}

/** The problem before a line is found: its only world is the nominal one, the middle of what is known, and its launch is a placeholder. */
export const unaimedProblem = (
  lane: Lane,
  bowler: Bowler,
  ballRecord: Ball,
  ball: BallProblem,
  learned?: Learned,
): ShotProblem => ({
  ball,
  release: releaseOf(bowler, ball),
  pattern: patternOf(lane, bowler.hand),
  grit: ballRecord.surfaceGrit ?? USUAL_GRIT,
  play: playOf(lane, bowler),
  launch: { x: 0, angle: 0 },
  worlds: [learned ? middleWorld(learned, learned, ball.published.radius) : NO_DEVIATIONS],
  luck: [],
});
