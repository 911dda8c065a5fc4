import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { hypot } from '../math/hypot.js';
import type { Drawn, KnownScores } from '../simulate/worlds/draws.js';
import type { LastingCoordinate } from '../simulate/worlds/lasting.js';
import type { FittedLog } from './fit-log.js';
import { AIM_READ, type AimErrors } from './read-aim.js';
import { READING_ERROR } from './readings.js';
import { lastingShare, nightShare } from './unknowns.js';

type Fitted = Pick<FittedLog, 'unknowns' | 'fit'>;

/** A drawn number, made up of an unknown of the fit and of the part that belongs to one night. */
interface KnownNumber {
  readonly what: Drawn;
  /** The unknown's place. */
  readonly j: number;
  readonly share: number;
  readonly ofNight: number;
}

/**
 * Posterior of the scores of what lasts, with the part that belongs to one night added: for a night to come, on the lane asked about.
 * Without a log each score is standard normal, so that worlds are drawn in the same way with and without a log.
 *
 * @param of  `lasts` leaves the night's part out
 */
export const whatIsKnown = (log: Fitted, of: 'a-night' | 'lasts' = 'a-night'): KnownScores =>
  scoresOf(lastingNumbers(log, of), log);

/** The same together with the bowler's errors in reading the aim, as `asRead` draws them. */
export function whatIsKnownAsRead(log: Fitted, errors: AimErrors): KnownScores {
  const ofAim = (Object.keys(AIM_READ) as (keyof AimErrors)[]).map((what): KnownNumber => {
    const reading = AIM_READ[what];
    const { always } = READING_ERROR[reading];
    const whole = hypot(always, errors[what]);
    const j = log.unknowns.findIndex((unknown) => unknown.of === 'apart' && unknown.what === reading);
    return { what, j, share: always / whole, ofNight: errors[what] / whole };
  });
  return scoresOf([...lastingNumbers(log, 'a-night'), ...ofAim], log);
}

const lastingNumbers = ({ unknowns }: Fitted, of: 'a-night' | 'lasts'): KnownNumber[] =>
  lastingOf(unknowns).map(({ what, j }) => ({
    what,
    j,
    share: lastingShare(what),
    ofNight: of === 'a-night' ? nightShare(what) : 0,
  }));

function scoresOf(numbers: readonly KnownNumber[], { fit }: Fitted): KnownScores {
  const covariance = Matrix.zeros(numbers.length, numbers.length);
  for (const [i, a] of numbers.entries())
    for (const [j, b] of numbers.entries()) {
      const lasts = a.share * b.share * fit.covariance.get(a.j, b.j);
      covariance.set(i, j, lasts + (i === j ? a.ofNight ** 2 : 0));
    }
  return {
    coordinates: numbers.map(({ what }) => what),
    mean: numbers.map(({ share, j }) => share * fit.mean[j]),
    lower: new CholeskyDecomposition(covariance).lowerTriangularMatrix.to2DArray(),
  };
}

/** Prior of what lasts. */
export function whatWasKnown({ unknowns }: Pick<FittedLog, 'unknowns'>): KnownScores {
  const coordinates = lastingOf(unknowns).map(({ what }) => what);
  return {
    coordinates,
    mean: coordinates.map(() => 0),
    lower: coordinates.map((what, i) => coordinates.map((_, j) => (i === j ? lastingShare(what) : 0))),
  };
}

/** The lasting numbers, each with its place among the unknowns. */
export const lastingOf = (
  unknowns: FittedLog['unknowns'],
): readonly { readonly what: LastingCoordinate; readonly j: number }[] =>
  unknowns.flatMap((unknown, j) => (unknown.of === 'lasting' ? [{ what: unknown.what, j }] : []));
