import { ARROWS_FT, BOARD } from '../../src/base/constants.js';
import { FOOT, from, to } from '../../src/base/units.js';
import { fitLog } from '../../src/learn/fit-log.js';
import { type LogMisfit, misfitOf } from '../../src/learn/misfit.js';
import { type Foretold, NOTHING_KNOWN, predictNight } from '../../src/learn/predict-night.js';
import { READING_ERROR } from '../../src/learn/readings.js';
import { uncertaintyOf } from '../../src/learn/unknowns.js';
import { lastingOf, whatIsKnown } from '../../src/learn/what-is-known.js';
import { shareBelow } from '../../src/math/normal.js';
import { xToBoard } from '../../src/motion/lane/boards.js';
import type { Launch } from '../../src/motion/shot/release.js';
import type { CoreFitter } from '../../src/prepare/fit-cores.js';
import { toLayout } from '../../src/prepare/to-layout.js';
import { demoShelf } from '../../src/records/read/shelf.js';
import type { Bowler } from '../../src/records/schemas/bowler.js';
import type { Lane } from '../../src/records/schemas/lane.js';
import { unaimedProblem } from '../../src/simulate/shot-problem.js';
import type { KnownScores } from '../../src/simulate/worlds/draws.js';
import type { LastingCoordinate } from '../../src/simulate/worlds/lasting.js';
import {
  type HiddenBall,
  hide,
  hideAsAssumed,
  hideBall,
  readNight,
  type TrueNight,
  type Twist,
  trueNights,
} from './blind-logs.js';
import { choiceRegrets } from './learned-choices.js';
import { proofCases } from './proof-cases.js';
import { type Random, random } from './random.js';

/** Logs by how many shots their nights hold. */
export const LOGS: readonly (readonly number[])[] = [[], [3], [10], [10, 10, 10]];

export const ASKED = ['pinsBoard', 'breakpointBoard', 'hookStartFt'] as const;

/** A prediction beside the truth. */
export interface Compared {
  readonly foretold: Foretold;
  readonly truth: number;
}

/** What a log foretells of a new night, number by number of `ASKED`: of the logged ball, and of another one. */
export interface AfterLog {
  readonly logged: readonly Compared[];
  readonly other: readonly Compared[];
  /** Of the logged ball, where the aim of the new night is told as this bowler reads it, with the errors of that. */
  readonly asRead: readonly Compared[];
  /** Whether the log is doubted, the surest cause, how many deviations it lies off, and the chance of as great a misfit. */
  readonly doubt: {
    readonly isDoubtful: boolean;
    readonly cause: string;
    readonly deviations: number;
    readonly chance: number;
  } | null;
}

/** The layout that is logged, and that of another ball. */
const LAYOUTS = {
  logged: { drillingAngleDeg: 50, pinToPapIn: 4.5, valAngleDeg: 35 },
  other: { drillingAngleDeg: 70, pinToPapIn: 3.5, valAngleDeg: 50 },
} as const;

/** The cases are the same for any twist. */
const SEED = 23;

/** A bowler with hidden release, lane and balls, and the nights to come that are asked about. */
function blindCase(place: number, twist: Twist, fitter: CoreFitter | undefined) {
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

/** What choices by what is foretold cost one blind bowler, boards, in the order of `CHOICES`: without a log, and after thirty shots. */
export function blindChoices(place: number, fitter?: CoreFitter): readonly (readonly number[])[] | null {
  const { truth, truthThere, fitted, logged, other, ...whose } = blindCase(place, {}, fitter);
  const log = truth && truthThere && fitted([10, 10, 10]);
  return log && choiceRegrets(SEED + place, whose, [logged, other], [NOTHING_KNOWN, whatIsKnown(log)]);
}

/**
 * One blind bowler: logs are read with errors; what they foretell of a new night is set beside what physics does there, on the logged ball
 * and on another with another layout. Null where the bowler would not play the line: more than a tenth of the shots go into the gutter.
 */
export function blindBowler(
  place: number,
  logs = LOGS,
  twist: Twist = {},
  fitter?: CoreFitter,
): readonly AfterLog[] | null {
  const { bowler, lane, logged, other, here, there, truth, truthThere, fitted } = blindCase(
    place,
    twist,
    fitter,
  );
  if (!truth || !truthThere) return null;
  const misread = readAlike(random(3000 * SEED + place), twist);
  const found = logs.map((counts): AfterLog | null => {
    const log = fitted(counts);
    const known = log ? whatIsKnown(log) : NOTHING_KNOWN;
    const misfit = log && misfitOf(log);
    const foretold = compared(bowler, lane, known, logged, here.aim, truth);
    const foretoldThere = compared(bowler, lane, known, other, there.aim, truthThere);
    const asRead = compared(bowler, lane, known, logged, aimAsRead(here.aim, misread), truth);
    if (!foretold || !foretoldThere || !asRead) return null;
    return {
      logged: foretold,
      other: foretoldThere,
      asRead,
      doubt: misfit && doubtOf(misfit),
    };
  });
  return found.every((each) => each !== null) ? found : null;
}

const doubtOf = ({ isDoubtful, chance, causes: [{ code, reading, by, deviation }] }: LogMisfit) => ({
  isDoubtful,
  cause: reading ?? code,
  deviations: by / deviation,
  chance,
});

/** Shots that the mean of a night is taken over, and worlds that it is foretold in. */
const SHOTS = 100;
const WORLDS = 32;

/** The mean of what is really done on a night; null where more than one in ten falls into the gutter. */
function meanOfShots(of: Random, { roll, read }: TrueNight): readonly number[] | null {
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

/** By how much a bowler's mean readings of the aim are too high on a night, boards. */
const readAlike = (of: Random, { bias = {} }: Twist): Aim => {
  const off = (id: keyof Aim): number => READING_ERROR[id].ofNight * of.normal() + (bias[id] ?? 0);
  return { laydownBoard: off('laydownBoard'), arrowsBoard: off('arrowsBoard') };
};

interface Aim {
  readonly laydownBoard: number;
  readonly arrowsBoard: number;
}

/** An aim as somebody tells it who reads the boards at the foul line and at the arrows too high by so much. */
const aimAsRead = ({ x, angle }: Launch, { laydownBoard, arrowsBoard }: Aim): Launch => ({
  x: x - laydownBoard * BOARD,
  angle: angle - ((arrowsBoard - laydownBoard) * BOARD) / from(ARROWS_FT, FOOT),
});

function compared(
  bowler: Bowler,
  lane: Lane,
  known: KnownScores,
  { record, layout, problem: ball }: HiddenBall,
  aim: Launch,
  truths: readonly number[],
): readonly Compared[] | null {
  const uncertainty = uncertaintyOf(bowler);
  const problem = unaimedProblem(lane, bowler, record, ball, { ...known, uncertainty, beliefFactors: {} });
  const marked = toLayout(layout, ball.published.radius);
  const whose = { bowler: { ...bowler, uncertainty }, ball: record };
  const foretold = predictNight(problem, marked, known, whose, aim, SEED, WORLDS);
  return foretold && ASKED.map((id, i) => ({ foretold: foretold[id], truth: truths[i] }));
}

/** Shots of the night that they are learned from. */
const SHOTS_RANKED = 10;

/** Numbers whose ranks are looked at: of the others hardly anything is learned, so they are as they were drawn. */
export const RANKED = [
  'speedMean',
  'spinMean',
  'axisRotationMean',
  'frictionOiled',
  'frictionDry',
  'filmScale',
] as const satisfies readonly LastingCoordinate[];

/**
 * Where the truth lies in what ten shots say of each number, as a share of the distribution below it: even over many bowlers if bands hold
 * what they say (simulation-based calibration: Talts et al., arXiv:1804.06788, 2018). Everything is hidden just as the fit takes it to be.
 */
export function ranks(place: number, fitter?: CoreFitter): readonly number[] | null {
  const { bowler, lane, ball } = proofCases(place + 1, SEED)[place].inputs;
  const of = random(2000 * SEED + place);
  const drilled = hideBall(of, ball, bowler, LAYOUTS.logged, fitter);
  const { hidden, lasting } = hideAsAssumed(of, uncertaintyOf(bowler), drilled.problem.published.radius);
  const night = trueNights(hidden, drilled, bowler, lane, {})(of);
  const read = readNight(of, night, SHOTS_RANKED, {}, true);
  // left out by what is logged alone: left out by the truth, those that stay would not be as the fit takes them to be
  if (read.shots.filter(({ gutter }) => gutter).length > 0.1 * SHOTS_RANKED) return null;
  const nights = [{ night: read, lane }];
  const log = fitLog(bowler, [{ ball, layout: drilled.layout, nights }], {
    readyBall: () => drilled.problem,
  });
  if (!log) return null;
  const { mean, covariance } = log.fit;
  const places = lastingOf(log.unknowns);
  return RANKED.map((what) => {
    const { j } = places.find((each) => each.what === what)!;
    return shareBelow((lasting[what] - mean[j]) / Math.sqrt(covariance.get(j, j)));
  });
}
