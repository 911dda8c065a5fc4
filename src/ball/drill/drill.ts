import { oncePer } from '../../base/once-per.js';
import type { Mat3 } from '../../math/mat3.js';
import { addMoments, fromMoments, type MassProperties } from '../mass/mass-properties.js';
import { rotateMoments } from '../mass/rotate-moments.js';
import { type BallBody, shellMoments } from './ball-body.js';
import { coreMatter } from './core-matter.js';
import type { Excavation } from './excavation.js';
import { plugGain } from './fill-holes.js';
import { type Plug, type PluggedStretches, pluggedStretches } from './plug.js';
import { shellAlong } from './shell-along.js';

/** Mass properties of one ball with one grip drilled, for any turn of its core. */
export type Driller = (R_BC: Mat3) => MassProperties;

/**
 * Prepares the drilling of a ball. What the holes take from cover and filler does not depend on how the
 * core is turned, so it is added up once; a layout then costs only the rays through the core.
 *
 * Along a ray, density is piecewise constant and the ball's surfaces are cut exactly, so moments along it
 * have closed forms; only the sum over rays is a quadrature (see `RayRule` for its error).
 *
 * Plugs of an earlier drilling turn with the core. How they changed the ball is added to the core once;
 * where the new holes run through plugs, they remove filling and not what was there before.
 *
 * The result is kept for as long as the excavation, since simulating shots and explaining them drill the same balls. The possible cores
 * of one ball have the same plugs, so they share where the new holes run through these.
 *
 * @param body        before this grip, in C
 * @param excavation  the grip's rays, for a ball of this radius
 * @returns R_BC ↦ mass properties about the drilled ball's centre of mass, in B
 */
export const driller = (body: BallBody, excavation: Excavation): Driller => prepared(excavation)(body);

const prepared = oncePer((excavation: Excavation) => {
  const pluggedBy = oncePer((plugs: readonly Plug[]) => pluggedStretches(plugs, excavation.stretches));
  return oncePer((body: BallBody) => newDriller(body, excavation, pluggedBy));
});

const NO_PLUGS: readonly Plug[] = [];

function newDriller(
  body: BallBody,
  { stretches, putBack }: Excavation,
  pluggedBy: (plugs: readonly Plug[]) => PluggedStretches,
): Driller {
  const kept = addMoments(shellMoments(body), putBack);
  const unturned = addMoments(kept, shellAlong(body, stretches), -1);
  const core = coreMatter(body);
  const { plugs, withCore } = body.fillings ?? { plugs: NO_PLUGS, withCore: core.moments };
  const plugged = pluggedBy(plugs);
  return (R_BC) => {
    const filled = plugged(R_BC);
    const removed = plugs.reduce(
      (sum, { density }, i) => addMoments(sum, plugGain(body, core, R_BC, filled[i], density)),
      core.along(R_BC, stretches),
    );
    return fromMoments(addMoments(addMoments(unturned, rotateMoments(R_BC, withCore)), removed, -1));
  };
}
