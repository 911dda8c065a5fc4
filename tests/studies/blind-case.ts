import { FOOT, to } from '../../src/base/units.js';
import { fitLog } from '../../src/learn/fit-log.js';
import { type Foretold, predictNight } from '../../src/learn/predict-night.js';
import type { WorldAim } from '../../src/learn/read-aim.js';
import { uncertaintyOf } from '../../src/learn/unknowns.js';
import { xToBoard } from '../../src/motion/lane/boards.js';
import type { CoreFitter } from '../../src/prepare/fit-cores.js';
import { toLayout } from '../../src/prepare/to-layout.js';
import { demoShelf } from '../../src/records/read/shelf.js';
import type { Bowler } from '../../src/records/schemas/bowler.js';
import type { Lane } from '../../src/records/schemas/lane.js';
import { unaimedProblem } from '../../src/simulate/shot-problem.js';
import type { KnownScores } from '../../src/simulate/worlds/draws.js';
import {
  type HiddenBall,
  hide,
  hideBall,
  readNight,
  type TrueNight,
  type Twist,
  trueNights,
} from './blind-logs.js';
import { proofCases } from './proof-cases.js';
import { type Random, random } from './random.js';

/* A bowler, a lane and balls that are otherwise than their records say, and what is foretold beside what physics does. */

/** What is foretold, and in this order. */
export const ASKED = ['pinsBoard', 'breakpointBoard', 'hookStartFt'] as const;

/** A prediction beside the truth. */
export interface Compared {
  readonly foretold: Foretold;
  readonly truth: number;
}

/** The layout that is logged, and that of another ball. */
export const LAYOUTS = {
  logged: { drillingAngleDeg: 50, pinToPapIn: 4.5, valAngleDeg: 35 },
  other: { drillingAngleDeg: 70, pinToPapIn: 3.5, valAngleDeg: 50 },
} as const;

/** The cases are the same for any twist. */
export const SEED = 23;

/** A bowler with hidden release, lane and balls, and the nights to come that are asked about. */
export function blindCase(place: number, twist: Twist, fitter: CoreFitter | undefined) {
  const { bowler, lane, ball } = proofCases(place + 1, SEED)[place].inputs;
  const of = random(1000 * SEED + place);
  const hidden = hide(of);
  const { balls } = demoShelf();
  const second = balls[Math.floor(of.uniform(0, balls.length))].record;
  const [logged, other] = [
    hideBall(of, ball, bowler, LAYOUTS.logged, fitter),
    hideBall(of, second, bowler, LAYOUTS.other, fitter),
  ];
  const nightsOf = (drilled: HiddenBall) => trueNights(hidden, drilled, bowler, lane, twist);
  const loggedNights = nightsOf(logged);
  const [here, there] = [loggedNights(of), nightsOf(other)(of)];
  const [truth, truthThere] = [meanOfShots(of, here), meanOfShots(of, there)];
  /** A log of nights of so many shots, fitted. */
  const fitted = (counts: readonly number[]) => {
    const nights = counts.map((count) => ({ night: readNight(of, loggedNights(of), count, twist), lane }));
    const readyBall = () => logged.problem;
    return fitLog(bowler, [{ ball, layout: logged.layout, nights }], { readyBall });
  };
  return { bowler, lane, hidden, logged, other, here, there, truth, truthThere, fitted };
}

/** Shots that the mean of a night is taken over, and worlds that it is foretold in. */
const SHOTS = 100;
const WORLDS = 32;

/** The mean of what is really done on a night; null where more than one in ten falls into the gutter. */
export function meanOfShots(of: Random, { roll, read }: TrueNight): readonly number[] | null {
  const reached = Array.from({ length: SHOTS }, () => read(roll(of))).filter(({ shot }) => shot === 'pins');
  if (reached.length < 0.9 * SHOTS) return null;
  const sums = [0, 0, 0];
  for (const { reaction } of reached) {
    sums[0] += xToBoard(reaction.pinsX);
    sums[1] += xToBoard(reaction.breakpointX);
    sums[2] += to(reaction.hookStart, FOOT);
  }
  return sums.map((sum) => sum / reached.length);
}

/** What is foretold of a ball on a night beside the truth; null where it cannot be. */
export function compared(
  bowler: Bowler,
  lane: Lane,
  known: KnownScores,
  { record, layout, problem: ball }: HiddenBall,
  aim: WorldAim,
  truths: readonly number[],
): readonly Compared[] | null {
  const uncertainty = uncertaintyOf(bowler);
  const problem = unaimedProblem(lane, bowler, record, ball, { ...known, uncertainty, beliefFactors: {} });
  const marked = toLayout(layout, ball.published.radius);
  const whose = { bowler: { ...bowler, uncertainty }, ball: record };
  const foretold = predictNight(problem, marked, known, whose, aim, SEED, WORLDS);
  return foretold && ASKED.map((id, i) => ({ foretold: foretold[id], truth: truths[i] }));
}
