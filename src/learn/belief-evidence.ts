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
import { symmetric } from './fit-with-prior.js';
import type { LoggedBall } from './logged.js';
import { READ, type ReadId } from './readings.js';

/** What a log says of a belief of practice. */
export interface BeliefEvidence {
  readonly id: string;
  /** How much likelier the log is if the belief holds than if it does not (Bayes factor). */
  readonly factor: number;
  /** Why the log says nothing: no reading moves with the belief, or the drilled balls hardly differ in its quantity. */
  readonly silent: 'not-read' | 'balls-alike' | null;
  /** How many times as many such nights would decide whether the belief holds; null where 20 times as many would not. */
  readonly timesMore: number | null;
}

/** The reading that each reaction number moves, and its unit. Numbers that move no reading cannot be learned. */
const SHOWS: Partial<Record<MovedNumber, readonly [ReadId, number]>> = {
  totalHook: ['pinsBoard', BOARD], // with the same aim, the ball ends as many boards farther in
  hookStart: ['breakpointFt', FOOT],
  flare: ['flareIn', INCH],
};

/**
 * How far one drilled ball's readings may be off for reasons of its own, one standard deviation. Without it, any slightly unusual ball
 * would decide about a belief. Assumed, no source.
 */
const BALL_OFF: Partial<Record<ReadId, number>> = { pinsBoard: 0.3, breakpointFt: 0.75, flareIn: 0.2 };

/** Ten times likelier is strong evidence (Kass & Raftery, J. Am. Statist. Assoc. 90, 773, 1995). */
const DECIDES = 10;

/** Below this information, readings shift so little beside their errors that the log says nothing. */
const LEAST_INFORMATION = 0.02;

const TIMES = [1, 2, 3, 5, 10, 20];

/**
 * What logs of two or more drilled balls say about each belief of practice, one at a time. Near its mean the fit is linear and
 * normal: a belief of a given size moves the means of nights in one direction, and the likelihood ratio follows from where they
 * lie. It is averaged over the sizes in the belief's range.
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

/** Covariance of the surprises, without the part that belongs to each ball. */
const ofLog = ({ fit: { jacobian, observed } }: Pick<FittedLog, 'fit'>): Matrix =>
  symmetric(jacobian.mmul(jacobian.transpose()).add(observed.noise));

/** Covariance of the part that belongs to each ball: all its nights share it. */
function ballOff({ rows, nights }: FittedLog): Matrix {
  const own = Matrix.zeros(rows.length, rows.length);
  for (const [i, a] of rows.entries())
    for (const [j, b] of rows.entries())
      if (a.at === b.at && nights[a.night].ball === nights[b.night].ball)
        own.set(i, j, (BALL_OFF[READ[a.at]] ?? 0) ** 2);
  return own;
}

const SIZES = 64;

/**
 * Likelihood ratio exp(t g − t² i / 2) averaged over a belief's sizes t, as shares of its greatest.
 *
 * @param gain         g: weighted surprise in the belief's direction
 * @param information  i: Fisher information about its size
 */
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
 * Information about a belief if there had been `times` as many nights of each kind: what differs from night to night averages out, what
 * lasts and what belongs to a ball does not.
 */
function informationOf({ unknowns, fit }: FittedLog, moves: Matrix, own: Matrix, times: number): number {
  const { jacobian, observed } = fit;
  const ofNights = unknowns.flatMap((unknown, j) => ('night' in unknown ? [j] : []));
  const lasting = unknowns.flatMap((unknown, j) => ('night' in unknown ? [] : [j]));
  const places = observed.values.length;
  const all = Array.from({ length: places }, (_, i) => i);
  const [lasts, night] = [jacobian.selection(all, lasting), jacobian.selection(all, ofNights)];
  const perNight = night.mmul(night.transpose()).add(observed.noise).div(times);
  const total = symmetric(lasts.mmul(lasts.transpose()).add(perNight).add(own));
  return moves.transpose().mmul(new CholeskyDecomposition(total).solve(moves)).get(0, 0);
}

/** What each belief, in full size, adds for each drilled ball, relative to the usual middle layout on the first ball. */
function effectsOf({ ready }: FittedLog, balls: readonly LoggedBall[]): readonly BeliefEffects[] {
  const quantities = balls.map(({ ball, layout }, i) => {
    const grit = ball.surfaceGrit ?? USUAL_GRIT;
    return layoutQuantities({ ball: ready[i], grit }, [layout]);
  });
  const reference = quantities[0](MIDDLE_LAYOUT);
  return balls.map(({ layout }, i) => beliefEffects(quantities[i](layout), reference));
}
