import { describe, expect, test } from 'vitest';
import { DEGREE, from, INCH } from '../../src/base/units.js';
import type { Vec3 } from '../../src/math/vec3.js';
import { rollShot } from '../../src/motion/shot/shot.js';
import { expectWithin, isotropicBall, last, openLane, seeded, uniformGyration } from '../support/bodies.js';
import { twoZoneLane, uniformLane } from '../support/dry-lanes.js';

/** A release with any velocity-independent angular velocity ω (W); the ball's own orientation is of no matter. */
const withSpin = (speed: number, [wx, wy, wz]: Vec3) => {
  const spin = Math.hypot(wx, wy, wz);
  return {
    speed,
    spin,
    axisTilt: spin > 0 ? Math.asin(wz / spin) : 0,
    axisRotation: Math.atan2(-wy, -wx),
    pap_B: [1, 0, 0] as const,
  };
};

const SOURCE = 'any mechanics textbook; cf. Hopkins & Patterson, Am. J. Phys. 45, 1977';
const R = 0.1085;
const ROUNDING = 2e-9; // the table's last digit, and RK4's error on the turning ball

describe(`slip to roll of a ball with equal moments (${SOURCE})`, () => {
  test.each([
    {
      name: 'textbook numbers',
      k: Math.sqrt(0.4),
      radius: 1,
      mu: 0.1,
      g: 10,
      v: 7,
      w: [0, 0, 0],
      want: { v: 5, t: 2, y: 12 },
    },
    {
      name: 'a uniform ball without spin',
      ...{ k: uniformGyration(R), radius: R, mu: 0.1, g: 9.81, v: 8, w: [0, 0, 0] },
      want: { v: 5.714285714, t: 2.329983981, y: 15.977033015 },
    },
    {
      name: 'a ball of RG 2.50 in without spin',
      ...{ k: from(2.5, INCH), radius: R, mu: 0.1, g: 9.81, v: 8, w: [0, 0, 0] },
      want: { v: 5.958935746, t: 2.08059557, y: 14.521449935 },
    },
    {
      // the table's x is down the lane and its y to the left: its ω = (−20, 20, any) is (−20, −20, any) here
      name: 'a uniform ball with side spin',
      ...{ k: uniformGyration(R), radius: R, mu: 0.1, g: 9.81, v: 8, w: [-20, -20, 7] },
      want: { v: 6.334285714, left: 0.62, y: 12.98530477, x: -0.561652608 },
    },
  ])('$name', ({ k, radius, mu, g, v, w, want }) => {
    const settings = { ...openLane(4, 0.002), gravity: g };
    const shot = rollShot(
      isotropicBall(k, radius),
      withSpin(v, w as never),
      { x: 0, angle: 0 },
      uniformLane(mu),
      settings,
    );
    const i = shot.rollStart;
    expectWithin(shot.vy[i], want.v, ROUNDING);
    expectWithin(shot.y[i], want.y, 1e-8);
    if ('t' in want) expectWithin(shot.time[i], want.t, ROUNDING);
    if ('left' in want) expectWithin(-shot.vx[i], want.left, ROUNDING);
    if ('x' in want) expectWithin(shot.x[i], want.x, 1e-8);
    expectWithin(last(shot.vy), want.v, ROUNDING); // and it rolls on with that velocity
    expect(last(shot.slip)).toBe(0);
  });

  test('random balls and releases: t = κ|s₀|/(μg), v = v₀ − κ s₀, on a parabola', () => {
    const random = seeded(11);
    for (let n = 0; n < 30; n++) {
      const k = R * (0.5 + 0.3 * random());
      const mu = 0.05 + 0.25 * random();
      const g = 9.80665;
      const v = 5 + 5 * random();
      const [wx, wy] = [-60 * random(), 60 * (random() - 0.5)];
      const shot = rollShot(
        isotropicBall(k, R),
        withSpin(v, [wx, wy, 40 * (random() - 0.5)]),
        { x: 0, angle: 0 },
        uniformLane(mu),
        openLane(9, 0.001),
      );
      const kappa = (k * k) / (k * k + R * R);
      const [sx, sy] = [-R * wy, v + R * wx];
      const t = (kappa * Math.hypot(sx, sy)) / (mu * g);
      const i = shot.rollStart;
      expectWithin(shot.time[i], t, 1e-9 * (1 + t));
      expectWithin(shot.vx[i], -kappa * sx, 1e-9);
      expectWithin(shot.vy[i], v - kappa * sy, 1e-9);
      expectWithin(shot.x[i], (-kappa * sx * t) / 2, 1e-8);
      expectWithin(shot.y[i], (v - (kappa * sy) / 2) * t, 1e-8);
      for (const j of [10, i >> 1]) {
        const at = shot.time[j];
        expectWithin(shot.x[j], (((-mu * g * sx) / Math.hypot(sx, sy)) * (at * at)) / 2, 1e-8);
      }
    }
  });
});

describe(`two friction zones, 0.04 then 0.20 from 12 m on (${SOURCE})`, () => {
  test.each([
    { name: 'uniform', k: uniformGyration(R), left: 0.669000439, entryDeg: 5.892330823 },
    { name: 'RG 2.50 in', k: from(2.5, INCH), left: 0.634470079, entryDeg: 5.125992209 },
  ])('$name ball', ({ k, left, entryDeg }) => {
    const release = { speed: 8, spin: 30, axisTilt: 0, axisRotation: 45 * DEGREE, pap_B: [1, 0, 0] as const };
    const settings = { ...openLane(12, 0.002), gravity: 9.8, length: 18.29 };
    const shot = rollShot(
      isotropicBall(k, R),
      release,
      { x: 0, angle: 0 },
      twoZoneLane(0.04, 0.2, 12),
      settings,
    );
    const at = shot.y.indexOf(12); // a step ends exactly on the line
    expect(shot.outcome).toBe('pins');
    expectWithin(-shot.x[at], 0.177477634, ROUNDING);
    expectWithin(Math.atan2(-shot.vx[at], shot.vy[at]) / DEGREE, 1.758649892, ROUNDING);
    expect(last(shot.y)).toBe(18.29);
    expectWithin(-last(shot.x), left, ROUNDING);
    expectWithin(Math.atan2(-last(shot.vx), last(shot.vy)) / DEGREE, entryDeg, 3e-9);
  });
});
