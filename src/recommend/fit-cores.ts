import type { BallBody } from '../ball/ball-body.js';
import { type Ensemble, fitEnsemble } from '../ball/ensemble.js';
import type { PublishedNumbers } from '../ball/published.js';
import type { Ball } from '../records/ball.js';
import { impossibleCore } from './impossible-core.js';
import { familiesOf } from './published-numbers.js';

/**
 * Cores that all have a ball's published numbers, equally many of each family it may be of.
 *
 * @throws {InputError} `no-such-core` when no family has any, with the nearest RG that works
 */
export function fitCores(ball: Ball, published: PublishedNumbers, count: number): readonly BallBody[] {
  const families = familiesOf(ball);
  const ensembles = families.map(
    (family): Ensemble => fitEnsemble({ ...published, family }, Math.ceil(count / families.length)),
  );
  const bodies = ensembles.flatMap((ensemble) => ensemble.bodies);
  if (bodies.length === 0) throw impossibleCore(published, ensembles[0].misfits);
  return bodies;
}
