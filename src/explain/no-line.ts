import { DEGREE, to } from '../base/units.js';
import type { Layout } from '../layout/layout.js';
import { xToBoard } from '../motion/lane/boards.js';
import type { Launch } from '../motion/shot/release.js';
import type { LeanShot } from '../motion/shot/shot.js';
import type { BallProblem } from '../prepare/ball-problem.js';
import type { NoLineAnswer } from '../records/answers/answer.js';
import type { NoLineReason, Remedy } from '../records/answers/statements/no-line.js';
import { type Ball, USUAL_GRIT } from '../records/schemas/ball.js';
import type { Bowler } from '../records/schemas/bowler.js';
import type { Lane } from '../records/schemas/lane.js';
import { findLine, type Line } from '../simulate/line.js';
import { POCKET_BOARD } from '../simulate/pocket.js';
import { unaimedProblem } from '../simulate/shot-problem.js';
import { simulator } from '../simulate/simulator.js';
import type { Learned } from '../simulate/worlds/learned.js';

/** Finer and coarser finishes that a shop can give a cover, grit. */
const GRITS = [500, 1000, 2000, 3000, 4000, 5000];

/** Changes of ball speed a bowler could learn, mph. */
const SPEEDS_MPH = [1, 2, 3];

interface Inputs {
  readonly bowler: Bowler;
  readonly ball: Ball;
  readonly lane: Lane;
  readonly learned?: Learned | undefined;
}

/**
 * Why no line brings a layout to the pocket, which line comes nearest, and which changes would help, tried one at a time.
 *
 * Slow: one or two hundred shots for each change tried.
 */
export function noLine(inputs: Inputs, ball: BallProblem, layout: Layout): NoLineAnswer {
  const problem = unaimedProblem(inputs.lane, inputs.bowler, inputs.ball, ball, inputs.learned);
  const nearest = findLine(problem, layout);
  const engine = simulator(problem);
  const [nominal] = problem.worlds;
  const { steepest } = problem.play;
  const { shot } = engine.shot(layout, nominal, nearest.launch);
  const pinsBoard = shot.outcome === 'pins' ? xToBoard(shot.x[shot.x.length - 1]) : null;
  const why = pinsBoard === null ? 'never-arrives' : pinsBoard > POCKET_BOARD ? 'hooks-past' : 'falls-short';
  return {
    why,
    nearest: {
      laydownBoard: nearest.laydownBoard,
      launchAngleDeg: to(nearest.launch.angle, DEGREE),
      pinsBoard,
    },
    says: reasonFor(why, nearest, pinsBoard, (launch) => engine.shot(layout, nominal, launch).shot, steepest),
    remedies: remediesFor(why, inputs, ball, layout),
  };
}

/** Angle by which a launch is turned farther, to see what prevents a better line, rad. */
const BIT = 0.005;

function reasonFor(
  why: NoLineAnswer['why'],
  { launch, laydownBoard }: Line,
  pinsBoard: number | null,
  roll: (launch: Launch) => LeanShot,
  steepest: number,
): NoLineReason {
  if (pinsBoard === null) return { code: 'never-at-pins', params: {} };
  const outward = why === 'hooks-past' ? 1 : -1;
  const beyond = roll({ ...launch, angle: launch.angle + outward * BIT });
  return {
    code: why === 'hooks-past' ? 'hooks-past-pocket' : 'falls-short-of-pocket',
    params: {
      laydownBoard,
      launchAngleDeg: to(launch.angle, DEGREE),
      pinsBoard,
      stop:
        beyond.outcome === 'gutter'
          ? 'gutter'
          : Math.abs(launch.angle) > steepest - BIT
            ? 'steepest'
            : 'no-nearer',
      steepestDeg: to(steepest, DEGREE),
    },
  };
}

function remediesFor(
  why: NoLineAnswer['why'],
  { bowler, ball, lane, learned }: Inputs,
  drillable: BallProblem,
  layout: Layout,
): Remedy[] {
  /** The first of some changes that brings the ball to the pocket, as a remedy. */
  const firstOf = <T>(
    list: readonly T[],
    change: (each: T) => Partial<Inputs>,
    remedy: (each: T, line: RemedyLine) => Remedy,
  ): Remedy[] => {
    for (const each of list) {
      const { bowler: who, ball: what } = { bowler, ball, ...change(each) };
      const { reachesPocket, laydownBoard, launch } = findLine(
        unaimedProblem(lane, who, what, drillable, learned),
        layout,
      );
      if (reachesPocket) return [remedy(each, { laydownBoard, launchAngleDeg: to(launch.angle, DEGREE) })];
    }
    return [];
  };

  const { laydownBoard: own, ...anywhere } = bowler;
  const grit = ball.surfaceGrit ?? USUAL_GRIT;
  const finishes =
    why === 'hooks-past'
      ? GRITS.filter((each) => each > grit)
      : GRITS.filter((each) => each < grit).reverse();
  const sign = why === 'hooks-past' ? 1 : -1;
  return [
    ...firstOf(
      own === undefined ? [] : [anywhere],
      (who) => ({ bowler: who }),
      (_, line) => ({ code: 'another-laydown-board', params: line }),
    ),
    ...firstOf(
      finishes,
      (surfaceGrit) => ({ ball: { ...ball, surfaceGrit } }),
      (each, line) => ({ code: 'another-finish', params: { grit: each, insteadOf: grit, ...line } }),
    ),
    ...firstOf(
      SPEEDS_MPH.map((mph) => sign * mph),
      (byMph) => ({ bowler: { ...bowler, speedMph: bowler.speedMph + byMph } }),
      (byMph, line) => ({ code: 'another-speed', params: { byMph, ...line } }),
    ),
  ];
}

type RemedyLine = Extract<Remedy, { code: 'another-laydown-board' }>['params'];
