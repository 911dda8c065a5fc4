import { IDENTITY, type Mat3 } from '../../math/mat3.js';
import { addMoments, type Moments } from '../mass/mass-properties.js';
import { type Stretch, uniformMoments } from '../solid/stretch.js';
import type { BallBody } from './ball-body.js';
import { type CoreMatter, coreMatter } from './core-matter.js';
import type { Plug } from './plug.js';
import { shellAlong } from './shell-along.js';

/** The ball with the holes of its earlier drillings filled. That changes it in the same way for any new grip, so it is added up once. */
export function fillHoles(body: BallBody, plugs: readonly Plug[]): BallBody {
  if (plugs.length === 0) return body;
  const core = coreMatter(body);
  const withCore = plugs.reduce(
    (sum, { stretches, density }) => addMoments(sum, plugGain(body, core, IDENTITY, stretches, density)),
    core.moments,
  );
  return { ...body, fillings: { plugs, withCore } };
}

/**
 * Moments of a filling less those of the ball's own matter in its place, about Bo, in B.
 *
 * @param body     the ball as made
 * @param core     of that ball
 * @param filled   stretches through the filling, in B
 * @param density  of the filling, kg/m³
 */
export function plugGain(
  body: BallBody,
  core: CoreMatter,
  R_BC: Mat3,
  filled: readonly Stretch[],
  density: number,
): Moments {
  const own = addMoments(shellAlong(body, filled), core.along(R_BC, filled));
  return addMoments(uniformMoments(filled, density), own, -1);
}
