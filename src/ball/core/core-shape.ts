import type { Vec3 } from '../../math/vec3.js';
import { coreMoments } from '../drill/ball-body.js';
import type { Part } from '../solid/part.js';
import type { WantedCore } from './wanted-core.js';

/** The properties that matter of a core that may still be stretched along its axes, moved and made denser. SI. */
interface CoreShape {
  readonly mass: number;
  readonly centre: Vec3;
  /** Second moments about the centre divided by mass, along x, y and z, m². */
  readonly spread: Vec3;
  /**
   * Greatest density · √(∫x²dm ∫y²dm ∫z²dm) / mass^2.5. Neither a stretch nor a factor on the density changes it, so it gives the
   * greatest density of a core from its moments.
   */
  readonly peakDensityFactor: number;
}

/**
 * `peakDensityFactor` of a uniform ellipsoid, 3/(4π√125); any other shape has more, since among bodies of the same mass and greatest
 * density a uniform ball has the least second moments.
 */
export const LEAST_PEAK_DENSITY_FACTOR = 3 / (4 * Math.PI * Math.sqrt(125));

/** The shape of a core whose own principal axes are x, y and z. */
export function coreShape(core: readonly Part[]): CoreShape {
  const { mass, first, second } = coreMoments(core);
  const centre: Vec3 = [first[0] / mass, first[1] / mass, first[2] / mass];
  const spread: Vec3 = [
    second[0][0] / mass - centre[0] * centre[0],
    second[1][1] / mass - centre[1] * centre[1],
    second[2][2] / mass - centre[2] * centre[2],
  ];
  const densest = core.reduce((most, { excess }) => Math.max(most, excess), 0);
  const peakDensityFactor = (densest * Math.sqrt(spread[0] * spread[1] * spread[2])) / mass;
  return { mass, centre, spread, peakDensityFactor };
}

/** How a shape gets the wanted moments: stretches along its axes, then a shift (m), and a factor on its densities. */
interface Scaling {
  readonly stretch: Vec3;
  readonly shift: Vec3;
  readonly densityScale: number;
}

/** The only scaling that gives a shape the wanted moments: each second moment fixes one stretch, and the mass fixes the density. */
export function scalingTo(shape: CoreShape, { mass, centre, second }: WantedCore): Scaling {
  const x = Math.sqrt(second[0] / (mass * shape.spread[0]));
  const y = Math.sqrt(second[1] / (mass * shape.spread[1]));
  const z = Math.sqrt(second[2] / (mass * shape.spread[2]));
  return {
    stretch: [x, y, z],
    shift: [
      centre[0] - x * shape.centre[0],
      centre[1] - y * shape.centre[1],
      centre[2] - z * shape.centre[2],
    ],
    densityScale: mass / (shape.mass * x * y * z),
  };
}
