import { inverse, type Mat3, mulMat, mulVec, transpose } from '../mat3.js';
import { scale, type Vec3 } from '../vec3.js';
import { type BallBody, coreMoments, shellMoments } from './ball-body.js';
import type { Excavation, Stretch } from './excavation.js';
import { addMoments, fromMoments, type MassProperties, type Moments } from './mass-properties.js';
import { MomentSum } from './moment-sum.js';
import type { UnitShape } from './part.js';
import { crossShape, type Interval } from './ray-interval.js';
import { rotateMoments } from './rotate-moments.js';

/** Mass properties of one ball with one grip drilled, for any turn of its core. */
export type Driller = (R_BC: Mat3) => MassProperties;

/**
 * Prepares the drilling of a ball: what the holes take from cover and filler does not depend on how the
 * core is turned, so it is added up once; a layout then costs only the rays through the core.
 *
 * Along a ray density is piecewise constant and the ball's surfaces are cut exactly, so moments along it
 * are closed form; only the sum over rays is a quadrature (see `RayRule` for its error).
 *
 * @param body        undrilled, in C
 * @param excavation  the grip's rays, for a ball of this radius
 * @returns R_BC ↦ mass properties about the drilled ball's centre of mass, in B
 */
export function driller(body: BallBody, excavation: Excavation): Driller {
  const stretches = excavation.stretches;
  const kept = addMoments(shellMoments(body), excavation.putBack);
  const unturned = addMoments(kept, shellRemoved(body, stretches), -1);
  const core = coreMoments(body.core);
  const regions = body.core.map((part): Region => {
    const invA = inverse(part.A);
    return { shape: part.shape, invA, offset: scale(-1, mulVec(invA, part.c)), density: part.excess };
  });
  return (R_BC) => {
    const R_CB = transpose(R_BC);
    const maps = regions.map(({ invA }) => mulMat(invA, R_CB));
    const removed = coreRemoved(regions, maps, stretches);
    return fromMoments(addMoments(addMoments(unturned, rotateMoments(R_BC, core)), removed, -1));
  };
}

/** What the stretches hold of cover and filler, had there been no core. */
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

/** A part of the core, seen from its shape's unit frame: q = invA p_C + offset. */
interface Region {
  readonly shape: UnitShape;
  readonly invA: Mat3;
  readonly offset: Vec3;
  readonly density: number; // kg/m³ above the filler
}

/**
 * What the stretches hold of the core's excess over the filler.
 *
 * @param maps  from B to each region's unit frame, but for its offset
 */
function coreRemoved(
  regions: readonly Region[],
  maps: readonly Mat3[],
  stretches: readonly Stretch[],
): Moments {
  const sum = new MomentSum();
  const hit: Interval = { enter: 0, leave: 0 };
  for (const { a, d, area, s, e } of stretches) {
    let m0 = 0;
    let m1 = 0;
    let m2 = 0;
    for (let i = 0; i < regions.length; i++) {
      const { shape, offset, density } = regions[i];
      const [x, y, z] = maps[i];
      crossShape(
        hit,
        shape,
        x[0] * a[0] + x[1] * a[1] + x[2] * a[2] + offset[0],
        y[0] * a[0] + y[1] * a[1] + y[2] * a[2] + offset[1],
        z[0] * a[0] + z[1] * a[1] + z[2] * a[2] + offset[2],
        x[0] * d[0] + x[1] * d[1] + x[2] * d[2],
        y[0] * d[0] + y[1] * d[1] + y[2] * d[2],
        z[0] * d[0] + z[1] * d[1] + z[2] * d[2],
      );
      const enter = Math.max(s, hit.enter);
      const leave = Math.min(e, hit.leave);
      if (leave <= enter) continue;
      const line = area * density;
      m0 += line * (leave - enter);
      m1 += (line * (leave * leave - enter * enter)) / 2;
      m2 += (line * (leave * leave * leave - enter * enter * enter)) / 3;
    }
    if (m0 !== 0) sum.addAlong(a, d, m0, m1, m2);
  }
  return sum.moments();
}
