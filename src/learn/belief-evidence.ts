import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { BOARD } from '../base/constants.js';
import { FOOT, INCH, to } from '../base/units.js';
import { exp } from '../math/exp.js';
import { ln } from '../math/ln.js';
import { MIDDLE_LAYOUT } from '../prepare/middle-layout.js';
import { USUAL_GRIT } from '../records/schemas/ball.js';
import { BELIEFS, type Belief } from '../records/shared/beliefs.js';
import {
  type BeliefEffects,
  beliefEffects,
  type MovedNumber,
  movedBy,
} from '../search/voices/belief-effects.js';
import { layoutQuantities } from '../search/voices/layout-quantities.js';
import type { FittedLog } from './fit-log.js';
import type { LoggedBall } from './logged.js';
import { READ, type ReadId } from './readings.js';

/** What a log says of a belief of practice. */
export interface BeliefEvidence {
  readonly id: string;
  /** How much likelier the log is if the belief holds than if it does not (Bayes factor). */
  readonly factor: number;
  /** Why nothing can be said: no reading moves with it, or the drilled balls logged hardly differ in what it starts from. */
  readonly silent: 'not-read' | 'balls-alike' | null;
  /** Nights like these, as many times over, after which the log would decide if the belief holds; null where it never would. */
  readonly timesMore: number | null;
}

/** The reading that each reaction number moves, and its unit. What moves none cannot be learned. */
const SHOWS: Partial<Record<MovedNumber, readonly [ReadId, number]>> = {
  totalHook: ['pinsBoard', BOARD], // from the same aim the ball comes in by as many boards more
  hookStart: ['breakpointFt', FOOT],
  flare: ['flareIn', INCH],
};

/**
 * By how much one drilled ball's readings may lie off for reasons of its own, one standard deviation: else any ball that is a little otherwise
 * would decide about a belief. Assumed, no source.
 */
const BALL_OFF: Partial<Record<ReadId, number>> = { pinsBoard: 0.3, breakpointFt: 0.75, flareIn: 0.2 };

/** Ten times likelier is strong evidence (Kass & Raftery, J. Am. Statist. Assoc. 90, 773, 1995). */
const DECIDES = 10;

/** Shifts of readings so small beside their errors say nothing. */
const LEAST_INFORMATION = 0.02;

const TIMES = [1, 2, 3, 5, 10, 20];

/**
 * What logs of two drilled balls or more say of each belief of practice, one at a time: in the fit near its mean, which is linear and
 * normal, a belief of some size moves the means of nights in one direction, and the likelihood ratio follows from where they
 * lie. Its size is anything in its range.
 */
export function beliefEvidence(log: FittedLog, balls: readonly LoggedBall[]): readonly BeliefEvidence[] {
  const { rows, nights, fit } = log;
  const effects = effectsOf(log, balls);
  const own = ballOff(log);
  const inverse = new CholeskyDecomposition(ofLog(log).add(own));
  return BELIEFS.map((belief, b): BeliefEvidence => {
    const { id } = belief;
    const shows = SHOWS[movedBy(belief)];
    const isRead = shows && rows.some(({ at }) => READ[at] === shows[0]);
    if (!isRead) return { id, factor: 1, silent: 'not-read', timesMore: null };
    const moves = Matrix.columnVector(
      rows.map(({ night, at }) => (READ[at] === shows[0] ? to(effects[nights[night].ball][b], shows[1]) : 0)),
    );
    const weighed = inverse.solve(moves);
    const information = moves.transpose().mmul(weighed).get(0, 0);
    const differ = new Set(nights.map(({ ball }) => effects[ball][b])).size > 1;
    if (!differ || information < LEAST_INFORMATION)
      return { id, factor: 1, silent: 'balls-alike', timesMore: null };
    const gain = weighed.transpose().mmul(fit.surprise).get(0, 0);
    const size = middleSize(belief);
    const wouldDecide = (times: number): boolean =>
      (size ** 2 / 2) * informationOf(log, moves, own, times) >= ln(DECIDES);
    return {
      id,
      factor: bayesFactor(belief, gain, information),
      silent: null,
      timesMore: TIMES.find(wouldDecide) ?? null,
    };
  });
}

/** Covariance of surprises, without what balls have of their own. */
const ofLog = ({ fit: { jacobian, observed } }: Pick<FittedLog, 'fit'>): Matrix => {
  const total = jacobian.mmul(jacobian.transpose()).add(observed.noise);
  return total.add(total.transpose()).mul(0.5);
};

/** What one ball has of its own in a reading, all its nights have. */
function ballOff({ rows, nights }: FittedLog): Matrix {
  const own = Matrix.zeros(rows.length, rows.length);
  for (const [i, a] of rows.entries())
    for (const [j, b] of rows.entries())
      if (a.at === b.at && nights[a.night].ball === nights[b.night].ball)
        own.set(i, j, (BALL_OFF[READ[a.at]] ?? 0) ** 2);
  return own;
}

const SIZES = 64;

/** The mean likelihood ratio over a belief's sizes, as shares of its most: exp(t g − t² i / 2). */
export function bayesFactor(
  { least, most }: Pick<Belief, 'least' | 'most'>,
  gain: number,
  information: number,
): number {
  const ratios = Array.from({ length: SIZES }, (_, k) => {
    const share = (least + ((most - least) * (k + 0.5)) / SIZES) / most;
    return exp(share * gain - (share ** 2 * information) / 2);
  });
  return ratios.reduce((sum, each) => sum + each, 0) / SIZES;
}

const middleSize = ({ least, most }: Belief): number => (least + most) / 2 / most;

/**
 * Information about a belief if each night had been so many: what differs from night to night averages out, what lasts and what a ball has
 * of its own does not.
 */
function informationOf({ unknowns, fit }: FittedLog, moves: Matrix, own: Matrix, times: number): number {
  const { jacobian, observed } = fit;
  const ofNights = unknowns.flatMap((unknown, j) => ('night' in unknown ? [j] : []));
  const lasting = unknowns.flatMap((unknown, j) => ('night' in unknown ? [] : [j]));
  const places = observed.values.length;
  const all = Array.from({ length: places }, (_, i) => i);
  const [lasts, night] = [jacobian.selection(all, lasting), jacobian.selection(all, ofNights)];
  const perNight = night.mmul(night.transpose()).add(observed.noise).div(times);
  const total = lasts.mmul(lasts.transpose()).add(perNight).add(own);
  return moves
    .transpose()
    .mmul(new CholeskyDecomposition(total.add(total.transpose()).mul(0.5)).solve(moves))
    .get(0, 0);
}

/** What each belief in full size adds on each drilled ball, beside the usual middle layout on the first. */
function effectsOf({ ready }: FittedLog, balls: readonly LoggedBall[]): readonly BeliefEffects[] {
  const quantities = balls.map(({ ball, layout }, i) => {
    const grit = ball.surfaceGrit ?? USUAL_GRIT;
    return layoutQuantities({ ball: ready[i], grit }, [layout]);
  });
  const reference = quantities[0](MIDDLE_LAYOUT);
  return balls.map(({ layout }, i) => beliefEffects(quantities[i](layout), reference));
}
