import { BOARD, LANE_LENGTH } from '../../src/base/constants.js';
import { DEGREE, FOOT, from, INCH, MPH, RPM, to } from '../../src/base/units.js';
import { boardToX, xToBoard } from '../../src/motion/lane/boards.js';
import { reactionNumbers } from '../../src/motion/reaction/reaction.js';
import { ANSWER_STEP } from '../../src/motion/shot/answer-step.js';
import { type LeanShot, rollShot } from '../../src/motion/shot/shot.js';
import { ballProblem } from '../../src/prepare/ball-problem.js';
import { MIDDLE_LAYOUT } from '../../src/prepare/middle-layout.js';
import { toLayout } from '../../src/prepare/to-layout.js';
import type { Ball, PublishedBall } from '../../src/records/schemas/ball.js';
import type { Bowler } from '../../src/records/schemas/bowler.js';
import type { Lane } from '../../src/records/schemas/lane.js';
import { findLine } from '../../src/simulate/line.js';
import { type ShotProblem, unaimedProblem } from '../../src/simulate/shot-problem.js';
import { simulator } from '../../src/simulate/simulator.js';
import { arrowsBoard } from '../../src/simulate/usual-line.js';
import { NOMINAL_SURFACE } from '../../src/simulate/worlds/assumed-surface.js';
import { NO_DEVIATIONS } from '../../src/simulate/worlds/deviations.js';
import { frictionOf } from '../../src/simulate/worlds/friction-of.js';
import { isotropicBall } from '../support/bodies.js';
import { twoZoneLane } from '../support/dry-lanes.js';
import { PUBLISHED } from './simulated-optimum.js';

/** One way friction may be: on heavy oil and on dry boards at the reference finish, film scale, finish exponent. */
export interface Setting {
  readonly oiled: number;
  readonly dry: number;
  readonly filmScale: number;
  readonly finishExponent: number;
}

/** What one sees of a shot on its line. */
export interface Figures {
  readonly laydown: number;
  readonly arrows: number;
  readonly launch: number;
  readonly hook: number;
  readonly entry: number;
  readonly lost: number;
  /** Heading turned over the first two thirds of the pattern, degrees. */
  readonly turned: number;
}

/** A range that a figure should lie in, and how far outside still passes. */
interface Expected {
  readonly least: number;
  readonly most: number;
  readonly tolerance: number;
}

/**
 * What is expected of a bowler on a 38 to 42 ft house shot. Lines: common practice, no source. Entry: secondary, USBC pin-carry
 * work. Speed lost: secondary, coaching pages. A path nearly straight for two thirds of the pattern: common practice.
 */
export const EXPECTED: Record<'league' | 'strong', Partial<Record<keyof Figures, Expected>>> = {
  league: {
    laydown: { least: 12, most: 28, tolerance: 3 },
    arrows: { least: 10, most: 16, tolerance: 1.5 },
    launch: { least: 0.5, most: 2.5, tolerance: 0.5 },
    hook: { least: 15, most: 25, tolerance: 3 },
    entry: { least: 3, most: 6, tolerance: 0.5 },
    lost: { least: 2.5, most: 4, tolerance: 0.5 },
    turned: { least: 0, most: 1, tolerance: 0.3 },
  },
  strong: {
    laydown: { least: 12, most: 33, tolerance: 2 },
    launch: { least: 3, most: 5, tolerance: 0.5 },
    lost: { least: 2.5, most: 4, tolerance: 0.5 },
    turned: { least: 0, most: 1.5, tolerance: 0.3 },
  },
};

/** How far a figure lies outside what is expected, in tolerances; 0 inside. */
export const misfit = (value: number, { least, most, tolerance }: Expected): number =>
  Math.max(0, least - value, value - most) / tolerance;

/** What counts for a bowler for whom no line exists, in tolerances. */
export const NO_LINE = 4;

/** A bowler with a ball, made ready to roll on a lane. */
export interface Scene {
  readonly bowler: Bowler;
  readonly lane: Lane;
  readonly problem: ShotProblem;
}

export const sceneOf = (bowler: Bowler, ball: Ball, lane: Lane): Scene => ({
  bowler,
  lane,
  problem: unaimedProblem(lane, bowler, ball, ballProblem(ball, bowler, 'moment')),
});

/** The shot of a bowler's usual line under a setting; null when no line reaches the pocket. */
export function figuresOf({ bowler, lane, problem: usual }: Scene, setting: Setting): Figures | null {
  const problem = withSetting(usual, setting);
  const { radius } = problem.ball.published;
  const layout = toLayout(MIDDLE_LAYOUT, radius);
  const line = findLine(problem, layout);
  if (!line.reachesPocket) return null;
  const { shot } = simulator(problem).shot(layout, NO_DEVIATIONS, line.launch);
  const reaction = reactionNumbers(shot, radius);
  return {
    laydown: line.laydownBoard,
    arrows: arrowsBoard(shot),
    launch: to(line.launch.angle, DEGREE),
    hook: to(reaction.totalHook, BOARD),
    entry: to(reaction.entryAngle, DEGREE),
    lost: bowler.speedMph - to(reaction.speedAtPins, MPH),
    turned: to(line.launch.angle + headingAt(shot, (2 / 3) * lane.patternFt * FOOT), DEGREE),
  };
}

/** The friction of a setting laid into a problem: its lane's, for its cover's own finish. */
function withSetting(problem: ShotProblem, setting: Setting): ShotProblem {
  const { oiled, dry, filmScale, finishExponent } = setting;
  const lane = { frictionOiled: oiled, frictionDry: dry };
  // the simulator looks friction up in the nominal surface; what that makes of the cover's finish is made good here
  const wanted = frictionOf(lane, problem.grit, { ...NOMINAL_SURFACE, finishExponent, filmScale });
  return {
    ...problem,
    grit: 2000,
    pattern: {
      ...problem.pattern,
      // film counts by its ratio to the film scale, so other oil stands for another scale
      zones: problem.pattern.zones.map((zone) => ({
        ...zone,
        film: (zone.film * NOMINAL_SURFACE.filmScale) / filmScale,
        filmEnd: (zone.filmEnd * NOMINAL_SURFACE.filmScale) / filmScale,
      })),
      frictionOiled: wanted.oiled,
      frictionDry: wanted.dry,
    },
  };
}

/** A column of a shot at a distance, between samples. */
function at({ y }: LeanShot, column: Float64Array, distance: number): number {
  const i = Math.max(
    1,
    y.findIndex((each) => each >= distance),
  );
  return column[i - 1] + ((distance - y[i - 1]) / (y[i] - y[i - 1])) * (column[i] - column[i - 1]);
}

const headingAt = (shot: LeanShot, distance: number): number =>
  Math.atan2(-at(shot, shot.vx, distance), at(shot, shot.vy, distance));

/** Lengths of pattern over which the published optimum is looked at, ft: its oil is not in hand. */
const OPTIMUM_PATTERNS_FT = [38, 41, 44];

/** How far the board at the pins may lie from the pocket for want of that oil, boards. */
export const OPTIMUM_TOLERANCE = 6;

/**
 * Board on which the published optimum ends, with board 28 counted from the left: a right-hander's board 12; mean over lengths
 * of an even pattern. Its ball and oil are not in hand: RG 2.55 in, equal moments, no oil on the ball.
 */
export function optimumEndsOn({ oiled, dry }: Setting): number {
  const { speedMph, revRateRpm, axisRotationDeg, angleDeg } = PUBLISHED;
  const ends = OPTIMUM_PATTERNS_FT.map((feet) => {
    const shot = rollShot(
      isotropicBall(from(2.55, INCH)),
      {
        speed: from(speedMph, MPH),
        spin: from(revRateRpm, RPM),
        axisTilt: from(14, DEGREE),
        axisRotation: from(axisRotationDeg, DEGREE),
        pap_B: [1, 0, 0],
      },
      { x: boardToX(OPTIMUM_BOARD), angle: from(angleDeg, DEGREE) },
      twoZoneLane(oiled, dry, feet * FOOT),
      { step: ANSWER_STEP, freshSurface: null, length: LANE_LENGTH, halfWidth: Number.POSITIVE_INFINITY },
    );
    return xToBoard(shot.x[shot.x.length - 1]);
  });
  return ends.reduce((sum, end) => sum + end, 0) / ends.length;
}

const OPTIMUM_BOARD = 12;

/** How much finishing a cover moves the start of the hook, beside half an ounce of top weight: 500 to 4000 grit, and the ounces. */
interface FinishBesideTopWeight {
  readonly finishFt: number;
  readonly topWeightFt: number;
}

/** Prepares to compare the two on one line, found under the usual setting; null when there is none. */
export function finishBesideTopWeight(
  bowler: Bowler,
  ball: PublishedBall,
  lane: Lane,
): ((setting: Setting) => FinishBesideTopWeight) | null {
  const problemWith = (other: Partial<PublishedBall>): ShotProblem =>
    sceneOf(bowler, { ...ball, ...other }, lane).problem;
  const [coarse, fine, light, heavy] = [
    { surfaceGrit: 500 },
    { surfaceGrit: 4000 },
    { topWeightOz: ball.topWeightOz - 0.25 },
    { topWeightOz: ball.topWeightOz + 0.25 },
  ].map(problemWith);
  const line = findLine(problemWith({}), toLayout(MIDDLE_LAYOUT, light.ball.published.radius));
  if (!line.reachesPocket) return null;
  return (setting) => {
    const startFt = (problem: ShotProblem): number => {
      const set = withSetting(problem, setting);
      const { radius } = set.ball.published;
      const engine = simulator(set);
      const inputs = engine.inputs(toLayout(MIDDLE_LAYOUT, radius), NO_DEVIATIONS);
      const starts = [0, Math.PI].map((spinPhase) => {
        const { surface, freshSurface } = inputs;
        const settings = { step: ANSWER_STEP, freshSurface, halfWidth: Number.POSITIVE_INFINITY };
        const shot = rollShot(inputs.body, { ...inputs.release, spinPhase }, line.launch, surface, settings);
        return to(reactionNumbers(shot, radius).hookStart, FOOT);
      });
      return (starts[0] + starts[1]) / 2;
    };
    return { finishFt: startFt(fine) - startFt(coarse), topWeightFt: startFt(heavy) - startFt(light) };
  };
}
