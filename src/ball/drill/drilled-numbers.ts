import { symmetricEigen } from '../../math/eigen3.js';
import type { Vec3 } from '../../math/vec3.js';
import type { MassProperties } from '../mass/mass-properties.js';

/** Radii of gyration of a ball about its centre of mass (m) and the axes they belong to. */
export interface InertiaNumbers {
  readonly mass: number;
  readonly lowRg: number;
  readonly differential: number; // high − low
  readonly intermediateDifferential: number; // high − middle
  /** Unit axes in B; their sign is arbitrary. */
  readonly lowAxis_B: Vec3;
  readonly middleAxis_B: Vec3;
  readonly highAxis_B: Vec3;
}

/**
 * RG, differential and intermediate differential of a ball, drilled or not.
 *
 * Axes are labelled by eigenvalue: after drilling the low-RG axis lies up to an inch from the pin, and the
 * high-RG axis of a symmetric ball is wherever the holes put it.
 */
export function inertiaNumbers(ball: MassProperties): InertiaNumbers {
  const { values, axes } = symmetricEigen(ball.I_Bcm_B);
  const [low, middle, high] = values.map((v) => Math.sqrt(v / ball.mass));
  return {
    mass: ball.mass,
    lowRg: low,
    differential: high - low,
    intermediateDifferential: high - middle,
    lowAxis_B: axes[0],
    middleAxis_B: axes[1],
    highAxis_B: axes[2],
  };
}
