import { describe, expect, test } from 'vitest';
import { from, RPM } from '../../src/base/units.js';
import { mulVec, transpose } from '../../src/math/mat3.js';
import { addScaled, cross, dot, norm, scale, type Vec3 } from '../../src/math/vec3.js';
import { memory } from '../../src/motion/kernel/memory.js';
import { slidingRates } from '../../src/motion/kernel/sliding.js';
import { FLAG, STATE, STEP } from '../../src/motion/kernel/slots.js';
import { writeBall } from '../../src/motion/shot/begin-shot.js';
import type { RollingBody } from '../../src/motion/shot/body.js';
import { launchState } from '../../src/motion/shot/launch-state.js';
import { principalBody } from '../../src/motion/shot/principal-body.js';
import { type Release, releaseOrientation } from '../../src/motion/shot/release.js';
import { rollShot } from '../../src/motion/shot/shot.js';
import {
  angularVelocity_B,
  expectWithin,
  isotropicBall,
  last,
  openLane,
  rollingFromTheStart,
  SKEW,
  unevenBall,
  uniformGyration,
} from '../support/bodies.js';
import { uniformLane } from '../support/dry-lanes.js';

const R = 0.1085;
const MASS = 7;
const GRAVITY = 9.8;
const OFFSET = 0.001;
const uniform = isotropicBall(uniformGyration(R), R, MASS);

/** Normal force without friction at release, N. */
const normalForce = (body: RollingBody, release: Release): number => {
  const ball = principalBody(body);
  writeBall(ball, GRAVITY);
  memory.flags[FLAG.IS_GIVEN] = 0;
  memory.step[STEP.FRICTION] = 0;
  memory.trial.set(launchState(ball, release, { x: 0, angle: 0 }));
  slidingRates();
  return memory.rates[STATE.NORMAL];
};

describe('a frictionless ball whose centre of mass lies off its centre (exact)', () => {
  // Along a level spin axis: gravity's moment m g d turns the angular momentum I ω about the vertical. For the
  // turning to be steady from the start, the ball must have it already: ω = −ω₀ x − Ω z with d along x.
  const spin = 30;
  const Omega = (MASS * GRAVITY * OFFSET) / (0.4 * MASS * R * R * spin);
  const release: Release = {
    speed: 8,
    spin: Math.hypot(spin, Omega),
    axisTilt: -Math.atan2(Omega, spin),
    axisRotation: 0,
    pap_B: [1, 0, 0],
    spinPhase: 0.7,
  };
  const along_B = mulVec(transpose(releaseOrientation(release)), [1, 0, 0]);
  const body = { ...uniform, p_BoBcm_B: scale(OFFSET, along_B) };

  test('precesses about the vertical at m g d/(I ω)', () => {
    expectWithin(Omega, 0.06937218, 5e-9);
    const t = 2;
    const shot = rollShot(body, release, { x: 0, angle: 0 }, uniformLane(0), {
      ...openLane(t, 0.001),
      gravity: GRAVITY,
    });
    const [px, py, pz] = scale(-1, shot.endAxis_W);
    expectWithin(Math.atan2(py, px), -Omega * t, 1e-8);
    expectWithin(Math.asin(pz), -release.axisTilt, 1e-9);
    // Nothing pushes sideways, so the centre of mass goes straight where it was sent; Bo circles round it.
    expectWithin(last(shot.x), -OFFSET * Math.cos(Omega * t), 1e-10);
    expectWithin(last(shot.y), 8 * t + OFFSET * Math.sin(Omega * t), 1e-10);
  });

  test('weighs m g all along, for its centre of mass stays level', () => {
    for (const spinPhase of [0, 1, 2, 3, 4, 5]) {
      const turned = { ...release, spinPhase };
      const d_B = mulVec(transpose(releaseOrientation(turned)), [OFFSET, 0, 0]);
      expectWithin(normalForce({ ...uniform, p_BoBcm_B: d_B }, turned), MASS * GRAVITY, 1e-10);
    }
  });

  test.each([
    { name: '30 rad/s', spin: 30, ripple: 0.092 },
    { name: '400 rpm', spin: from(400, RPM), ripple: 0.179 },
  ])('across the spin axis, the normal force ripples by d ω²/g at $name', ({ spin, ripple }) => {
    const swung = { ...uniform, p_BoBcm_B: [0, OFFSET, 0] as Vec3 };
    const forces = Array.from({ length: 360 }, (_, i) =>
      normalForce(swung, { ...release, spin, axisTilt: 0, spinPhase: (i * Math.PI) / 180 }),
    );
    const size = (Math.max(...forces) - Math.min(...forces)) / (2 * MASS * GRAVITY);
    expectWithin(size, (OFFSET * spin * spin) / GRAVITY, 2e-5); // the ball's own heave, some m d²/I of it
    expectWithin(size, ripple, 5e-4);
  });
});

test('rolling, a triaxial ball off its centre keeps its energy ½ m v² + ½ ω·Jω + m g d_z (exact)', () => {
  const body = unevenBall([2.5, 2.54, 2.57], [0.0006, -0.0004, 0.0007], SKEW);
  const release: Release = {
    speed: 30 * body.radius,
    spin: 30,
    axisTilt: 0.2,
    axisRotation: 0,
    pap_B: [0.6, 0, 0.8],
  };
  const { rolls, launch } = rollingFromTheStart(body, { ...release, spin: 30 / Math.cos(release.axisTilt) });
  const shot = rollShot(body, rolls, launch, uniformLane(0.5), openLane(2, 0.001));
  expect(shot.rollStart).toBe(0);
  expect(Math.max(...shot.slip)).toBeLessThan(1e-14); // rounding of the speed it was given
  const energy = (i: number): number => {
    const w = angularVelocity_B(shot, i);
    const up = scale(-1, [shot.contact_B[3 * i], shot.contact_B[3 * i + 1], shot.contact_B[3 * i + 2]]);
    const d = body.p_BoBcm_B;
    const v = cross(w, addScaled(d, body.radius, up));
    const turning = dot(w, mulVec(body.I_Bcm_B, w));
    return (body.mass * norm(v) ** 2 + turning) / 2 + body.mass * 9.80665 * dot(d, up);
  };
  const start = energy(0);
  for (let i = 0; i < shot.time.length; i += 97) expectWithin(energy(i) / start, 1, 1e-9);
  // It does sway: the check would be empty for a ball that rolls evenly.
  expect(Math.max(...shot.spin) - Math.min(...shot.spin)).toBeGreaterThan(0.1);
});
