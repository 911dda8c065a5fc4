import { type Ensemble, fitEnsemble } from '../ball/core/ensemble.js';
import type { PublishedNumbers } from '../ball/core/published.js';
import type { BallBody } from '../ball/drill/ball-body.js';
import type { OunceConvention } from '../ball/drill/static-weights.js';
import type { PublishedBall } from '../records/schemas/ball.js';
import type { CoreFamily } from '../records/schemas/core-families.js';
import { impossibleCore } from './impossible-core.js';
import { familiesOf, publishedNumbers } from './published-numbers.js';

/** Finds this many cores that give published numbers. Sharing one between balls changes no answer. */
export type CoreFitter = (published: PublishedNumbers, count: number) => Ensemble;

/**
 * Cores that all give a ball's published numbers, the same number from each possible family as far as it has any.
 *
 * @throws {Refusal} `no-such-core` when no family has any, naming the number at fault and what would work
 */
export function fitCores(
  ball: PublishedBall,
  ounce: OunceConvention,
  count: number,
  fitter: CoreFitter = fitEnsemble,
): readonly BallBody[] {
  const published = publishedNumbers(ball, ounce);
  const families = familiesOf(ball);
  const share = Math.ceil(count / families.length);
  const fitFamily = (family: CoreFamily, many: number): Ensemble => fitter({ ...published, family }, many);
  const ensembles = families.map((family) => fitFamily(family, share));
  const found = ensembles.reduce((sum, { bodies }) => sum + bodies.length, 0);
  if (found === 0) throw impossibleCore(ball, ounce, ensembles);
  if (found >= count) return ensembles.flatMap(({ bodies }) => bodies);
  // a family that has enough makes up for one that has not
  return families.flatMap((family, i) =>
    ensembles[i].bodies.length < share
      ? ensembles[i].bodies
      : fitFamily(family, share + count - found).bodies,
  );
}
