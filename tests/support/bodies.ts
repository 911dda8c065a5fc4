import { expect } from 'vitest';
import { DEGREE, from, INCH, MPH, RPM } from '../../src/base/units.js';
import { diagonal, IDENTITY, type Mat3, mulMat, mulVec, scaleMat, transpose } from '../../src/math/mat3.js';
import { cross, norm, scale, unit, type Vec3 } from '../../src/math/vec3.js';
import type { RollingBody } from '../../src/motion/shot/body.js';
import { type Launch, type Release, releaseAxis, releaseOrientation } from '../../src/motion/shot/release.js';
import type { Shot } from '../../src/motion/shot/shot.js';
import type { ShotSettings } from '../../src/motion/shot/shot-settings.js';

/** A ball whose inertia is the same about every axis, with radius of gyration k, m. */
export const isotropicBall = (k: number, radius = 0.1085, mass = 7): RollingBody => ({
  mass,
  radius,
  p_BoBcm_B: [0, 0, 0],
  I_Bcm_B: scaleMat(mass * k * k, IDENTITY),
});

/** The radius of gyration of a uniform ball, √(2/5) R. */
export const uniformGyration = (radius: number): number => Math.sqrt(0.4) * radius;

/** A ball with given radii of gyration (in) about x, y, z of B turned a little, and its centre of mass off (m). */
export function unevenBall(radiiIn: Vec3, p_BoBcm_B: Vec3 = [0, 0, 0], R: Mat3 = IDENTITY): RollingBody {
  const mass = 6.8;
  const moments = radiiIn.map((k) => mass * from(k, INCH) ** 2) as unknown as Vec3;
  return {
    mass,
    radius: from(4.297, INCH),
    p_BoBcm_B,
    I_Bcm_B: mulMat(mulMat(R, diagonal(moments)), transpose(R)),
  };
}

/** A body with any principal moments, kg·m². */
export const bodyOfMoments = (moments: Vec3): RollingBody => ({
  mass: 7,
  radius: 0.1,
  p_BoBcm_B: [0, 0, 0],
  I_Bcm_B: diagonal(moments),
});

/** A rotation by 0.6 rad about (1, 2, 3), to keep test balls off their own axes. */
export const SKEW: Mat3 = (() => {
  const [x, y, z] = unit([1, 2, 3]);
  const c = Math.cos(0.6);
  const s = Math.sin(0.6);
  const v = 1 - c;
  return [
    [c + x * x * v, x * y * v - z * s, x * z * v + y * s],
    [y * x * v + z * s, c + y * y * v, y * z * v - x * s],
    [z * x * v - y * s, z * y * v + x * s, c + z * z * v],
  ];
})();

/** A drilled-looking ball: three different moments, centre of mass half a millimetre off. */
export const drilledBall = unevenBall([2.5, 2.535, 2.55], [0.0003, 0.0002, -0.0004], SKEW);

export const usualRelease: Release = {
  speed: from(18, MPH),
  spin: from(350, RPM),
  axisTilt: 15 * DEGREE,
  axisRotation: 50 * DEGREE,
  pap_B: unit([0.95, 0.1, 0.29]),
};

/** A release that gives the ball the angular velocity ω (expressed in B), its axis level and across the lane. */
export const spinning = (w_WB_B: Vec3): Release => ({
  speed: 8,
  spin: norm(w_WB_B),
  axisTilt: 0,
  axisRotation: 0,
  pap_B: scale(1 / norm(w_WB_B), w_WB_B),
});

/** The release and launch with which a ball rolls without slip at once: its centre Bo moves at R ω×z, down the lane. */
export function rollingFromTheStart(
  body: RollingBody,
  release: Release,
): { readonly rolls: Release; readonly launch: Launch } {
  const w_W = scale(release.spin, releaseAxis(release));
  const swing_W = cross(w_W, mulVec(releaseOrientation(release), body.p_BoBcm_B)); // of the centre of mass about Bo
  const v = [body.radius * w_W[1] + swing_W[0], -body.radius * w_W[0] + swing_W[1]] as const;
  return { rolls: { ...release, speed: Math.hypot(...v) }, launch: { x: 0, angle: Math.atan2(v[0], v[1]) } };
}

/** No lane's end, no gutters: a motion followed for a time, s. */
export const openLane = (seconds: number, step: number): ShotSettings => ({
  step,
  freshSurface: null,
  length: Number.POSITIVE_INFINITY,
  halfWidth: Number.POSITIVE_INFINITY,
  longest: seconds,
});

export const last = (column: Float64Array): number => column[column.length - 1];

/** Angular velocity of a sample, expressed in B, rad/s. */
export const angularVelocity_B = (shot: Shot, i = shot.time.length - 1): Vec3 => [
  shot.spin[i] * shot.axis_B[3 * i],
  shot.spin[i] * shot.axis_B[3 * i + 1],
  shot.spin[i] * shot.axis_B[3 * i + 2],
];

/** |got − want| ≤ tol, and says by how much not. NaN fails. */
export const expectWithin = (got: number, want: number, tol: number): void =>
  expect(Math.abs(got - want), `${got} should be ${want} ± ${tol}`).toBeLessThanOrEqual(tol);

/** Entrywise. */
export const expectVector = (got: Vec3, want: Vec3, tol: number): void =>
  got.forEach((component, i) => {
    expectWithin(component, want[i], tol);
  });

/** The same pseudo-random numbers every time, uniform in [0, 1) (Lehmer's generator, modulus 2³¹ − 1). */
export const seeded = (seed: number): (() => number) => {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
};
