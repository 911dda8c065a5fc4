import { addMat, IDENTITY, type Mat3, outer, scaleMat, subMat, trace, ZERO_MAT } from '../../math/mat3.js';
import { addScaled, dot, scale, type Vec3, ZERO } from '../../math/vec3.js';

/** Mass (kg), centre of mass from the ball's geometric centre Bo (m) and inertia about it (kg·m²), in B. */
export interface MassProperties {
  readonly mass: number;
  readonly p_BoBcm_B: Vec3;
  readonly I_Bcm_B: Mat3;
}

/**
 * Raw moments of a mass distribution about Bo: ∫dm (kg), ∫p dm (kg·m), ∫p pᵀ dm (kg·m²).
 *
 * Kept instead of inertia while material is added and taken away, because moments simply add, and an
 * affine map of the material maps them in closed form.
 */
export interface Moments {
  readonly mass: number;
  readonly first: Vec3;
  readonly second: Mat3;
}

export const NO_MOMENTS: Moments = { mass: 0, first: ZERO, second: ZERO_MAT };

/** Moments a + s b; `s = -1` takes `b` away. */
export const addMoments = (a: Moments, b: Moments, s = 1): Moments => ({
  mass: a.mass + s * b.mass,
  first: addScaled(a.first, s, b.first),
  second: addMat(a.second, scaleMat(s, b.second)),
});

/** Point-mass inertia m(p·p E − p pᵀ), kg·m². */
export const pointMassInertia = (mass: number, p: Vec3): Mat3 =>
  scaleMat(mass, subMat(scaleMat(dot(p, p), IDENTITY), outer(p, p)));

/** Inertia tensor tr(S) E − S of second moments S about the same point. */
export const inertiaOfSecond = (second: Mat3): Mat3 => subMat(scaleMat(trace(second), IDENTITY), second);

/**
 * Mass properties about the centre of mass from raw moments about Bo.
 *
 * Radii of gyration in flarewise are about the centre of mass, not about the geometric centre: after
 * drilling the two differ by up to 5e-4 in.
 */
export function fromMoments(moments: Moments): MassProperties {
  const p_BoBcm_B = scale(1 / moments.mass, moments.first);
  const I_Bo_B = inertiaOfSecond(moments.second);
  return {
    mass: moments.mass,
    p_BoBcm_B,
    I_Bcm_B: subMat(I_Bo_B, pointMassInertia(moments.mass, p_BoBcm_B)),
  };
}
