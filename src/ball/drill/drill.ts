import { IDENTITY, type Mat3 } from '../../math/mat3.js';
import { addMoments, fromMoments, type MassProperties, type Moments } from '../mass/mass-properties.js';
import { MomentSum } from '../mass/moment-sum.js';
import { rotateMoments } from '../mass/rotate-moments.js';
import { crossShape, type Interval } from '../solid/ray-interval.js';
import { type Stretch, uniformMoments } from '../solid/stretch.js';
import { type BallBody, shellMoments } from './ball-body.js';
import { coreMatter } from './core-matter.js';
import type { Excavation } from './excavation.js';
import { pluggedStretches } from './plug.js';

/** Mass properties of one ball with one grip drilled, for any turn of its core. */
export type Driller = (R_BC: Mat3) => MassProperties;

/**
 * Prepares the drilling of a ball: what the holes take from cover and filler does not depend on how the
 * core is turned, so it is added up once; a layout then costs only the rays through the core.
 *
 * Along a ray density is piecewise constant and the ball's surfaces are cut exactly, so moments along it
 * are closed form; only the sum over rays is a quadrature (see `RayRule` for its error).
 *
 * Plugs of an earlier drilling turn with the core. What they changed of the ball is added to the core once;
 * where the new holes run through them, they take filling and not what was there before.
 *
 * @param body        before this grip, in C
 * @param excavation  the grip's rays, for a ball of this radius
 * @param plugged     where these rays run through the ball's plugs; shared by balls that differ in their cores alone
 * @returns R_BC ↦ mass properties about the drilled ball's centre of mass, in B
 */
export function driller(
  body: BallBody,
  { stretches, putBack }: Excavation,
  plugged = pluggedStretches(body.plugs ?? [], stretches),
): Driller {
  const kept = addMoments(shellMoments(body), putBack);
  const unturned = addMoments(kept, shellRemoved(body, stretches), -1);
  const core = coreMatter(body);
  /** What filling of this density weighs along stretches more than the ball's own matter there. */
  const gain = (R_BC: Mat3, filled: readonly Stretch[], density: number): Moments => {
    const own = addMoments(shellRemoved(body, filled), core.along(R_BC, filled));
    return addMoments(uniformMoments(filled, density), own, -1);
  };
  const plugs = body.plugs ?? [];
  const turning = plugs.reduce(
    (sum, plug) => addMoments(sum, gain(IDENTITY, plug.stretches, plug.density)),
    core.moments,
  );
  return (R_BC) => {
    const filled = plugged(R_BC);
    const removed = plugs.reduce(
      (sum, { density }, i) => addMoments(sum, gain(R_BC, filled[i], density)),
      core.along(R_BC, stretches),
    );
    return fromMoments(addMoments(addMoments(unturned, rotateMoments(R_BC, turning)), removed, -1));
  };
}

/** Drillers of cores that may be one ball's: they differ in nothing but the core, so they share where its plugs are drilled. */
export function drillersOf(bodies: readonly BallBody[], excavation: Excavation): readonly Driller[] {
  const plugged = pluggedStretches(bodies[0].plugs ?? [], excavation.stretches);
  return bodies.map((body) => driller(body, excavation, plugged));
}

/** What the stretches hold of cover and filler, as if there were no core. */
function shellRemoved(body: BallBody, stretches: readonly Stretch[]): Moments {
  const sum = new MomentSum();
  const inner: Interval = { enter: 0, leave: 0 };
  const k = 1 / (body.radius - body.coverThickness);
  const step = body.fillerDensity - body.coverDensity;
  for (const { a, d, area, s, e } of stretches) {
    sum.addStretch(a, d, s, e, area * body.coverDensity);
    crossShape(inner, { kind: 'ball' }, k * a[0], k * a[1], k * a[2], k * d[0], k * d[1], k * d[2]);
    const enter = Math.max(s, inner.enter);
    const leave = Math.min(e, inner.leave);
    if (leave > enter) sum.addStretch(a, d, enter, leave, area * step);
  }
  return sum.moments();
}
