import { type BallProblem, ballProblem } from '../prepare/ball-problem.js';
import { type Budget, USUAL_BUDGET } from '../prepare/budget.js';
import type { CoreFitter } from '../prepare/fit-cores.js';
import { movedRefusal } from '../records/refusals/moved-refusal.js';
import type { Bowler } from '../records/schemas/bowler.js';
import type { Lane } from '../records/schemas/lane.js';
import type { Learned } from '../simulate/worlds/learned.js';
import { type Fit, fitWithPrior } from './fit-with-prior.js';
import { latestOf } from './latest-night.js';
import type { LinearLog } from './linear-log.js';
import { type FittedNight, type LoggedRow, loggedRows, logModel } from './log-model.js';
import type { LoggedBall } from './logged.js';
import { nightMeans } from './night-means.js';
import { nightModel } from './night-model.js';
import { CORES_TRIED, type LogUnknown, lastingUnknowns, uncertaintyOf, unknownsOf } from './unknowns.js';

export interface LearnOptions {
  readonly fitter?: CoreFitter | undefined;
  /** Makes balls ready to drill. Whether it remembers them changes no answer. */
  readonly readyBall?: typeof ballProblem | undefined;
  readonly budget?: Budget | undefined;
  /** The lane asked about; that of the latest night when left out. */
  readonly lane?: Lane | undefined;
}

/** A log, fitted. */
export interface FittedLog {
  /** The lane asked about: what lasts is fitted as it is there. */
  readonly lane: Lane;
  readonly uncertainty: Learned['uncertainty'];
  /** The balls, made ready to drill. */
  readonly ready: readonly BallProblem[];
  readonly nights: readonly FittedNight[];
  readonly unknowns: readonly LogUnknown[];
  /** What is observed, in the order of the fit. */
  readonly rows: readonly LoggedRow[];
  readonly fit: Fit<LinearLog>;
}

/**
 * Fits the unknowns to the means of a bowler's nights, by physics. Nights on other lanes count in full for what is the same everywhere,
 * and for oil and boards as far as lanes are alike. A pure function of the log: nothing is remembered.
 *
 * @returns null where there is no night to learn from
 * @throws {Refusal} when a ball's numbers fit no core or the grip cannot be placed
 */
export function fitLog(
  bowler: Bowler,
  balls: readonly LoggedBall[],
  { fitter, readyBall = ballProblem, budget = USUAL_BUDGET, lane: asked }: LearnOptions,
): FittedLog | null {
  const uncertainty = uncertaintyOf(bowler);
  const unsure = { ...bowler, uncertainty };
  const ready = balls.map(({ ball }) => {
    try {
      return readyBall(ball, bowler, 'moment', fitter, budget);
    } catch (error) {
      throw movedRefusal(error, 'ball.', `logged[${JSON.stringify(ball.name)}].`); // none of those that were asked about
    }
  });
  const coresOf = ready.map(({ bodies }) => coresAmong(bodies.length));
  const used = balls.flatMap((logged, ball) =>
    logged.nights.flatMap((night) => {
      const means = nightMeans(night.night);
      if (means.readings.length === 0 || means.gutterShare > MOST_GUTTERS) return [];
      return [{ means, logged, night, ball }];
    }),
  );
  const lane = asked ?? latestOf(used)?.night.lane;
  if (used.length === 0 || lane === undefined) return null;
  const lanes = [...new Set([lane.name, ...used.map(({ night }) => night.lane.name)])];
  const nights = used.map((each): FittedNight => {
    const { logged, night, means, ball } = each;
    const model = nightModel(unsure, logged, night, means, ready[ball]);
    return { ...each, model, lane: lanes.indexOf(night.lane.name), cores: coresOf[ball] };
  });
  const unknowns = unknownsOf(
    lastingUnknowns(uncertainty, balls),
    lanes.length,
    nights.map(({ ball }) => ball),
    coresOf.map(({ length }) => length),
  );
  return {
    lane,
    uncertainty,
    ready,
    nights,
    unknowns,
    rows: loggedRows(nights),
    fit: fitWithPrior(logModel(nights, unknowns)),
  };
}

/** Nights on which more than this share of the shots fell into the gutter are left out. Assumed, no source. */
const MOST_GUTTERS = 1 / 3;

/** Places of some cores, spread over all but the first: cores are in order of how typical they are, the most typical first. */
const coresAmong = (count: number): readonly number[] => {
  const tried = Math.min(CORES_TRIED, count - 1);
  return Array.from({ length: tried }, (_, k) => 1 + Math.floor((k * (count - 1)) / tried));
};
