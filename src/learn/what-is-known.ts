import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import type { KnownScores } from '../simulate/worlds/draws.js';
import type { LastingCoordinate } from '../simulate/worlds/lasting.js';
import type { FittedLog } from './fit-log.js';
import { lastingShare, nightShare } from './unknowns.js';

/**
 * What a log says of the scores of what lasts, with what any night has of its own: of a night that is still to come. Without a log that
 * is a standard normal number each, so worlds with a log and without are drawn alike.
 *
 * @param of  what lasts alone, without what a night adds
 */
export function whatIsKnown(
  { unknowns, fit }: Pick<FittedLog, 'unknowns' | 'fit'>,
  of: 'a-night' | 'lasts' = 'a-night',
): KnownScores {
  const lasting = lastingOf(unknowns);
  const covariance = Matrix.zeros(lasting.length, lasting.length);
  for (const [i, a] of lasting.entries())
    for (const [j, b] of lasting.entries()) {
      const lasts = lastingShare(a.what) * lastingShare(b.what) * fit.covariance.get(a.j, b.j);
      const ofNight = i === j && of === 'a-night' ? nightShare(a.what) ** 2 : 0;
      covariance.set(i, j, lasts + ofNight);
    }
  return {
    coordinates: lasting.map(({ what }) => what),
    mean: lasting.map(({ what, j }) => lastingShare(what) * fit.mean[j]),
    lower: new CholeskyDecomposition(covariance).lowerTriangularMatrix.to2DArray(),
  };
}

/** What was known of what lasts before. */
export function whatWasKnown({ unknowns }: Pick<FittedLog, 'unknowns'>): KnownScores {
  const coordinates = lastingOf(unknowns).map(({ what }) => what);
  return {
    coordinates,
    mean: coordinates.map(() => 0),
    lower: coordinates.map((what, i) => coordinates.map((_, j) => (i === j ? lastingShare(what) : 0))),
  };
}

/** What lasts, and its place among the unknowns. */
export const lastingOf = (
  unknowns: FittedLog['unknowns'],
): readonly { readonly what: LastingCoordinate; readonly j: number }[] =>
  unknowns.flatMap((unknown, j) => (unknown.of === 'lasting' ? [{ what: unknown.what, j }] : []));
