import { describe, expect, test } from 'vitest';
import { pivotLever, rimSpeed, slipShare } from '../../src/motion/contact-patch.js';
import { rollShot } from '../../src/motion/shot.js';
import { uniformLane } from '../../src/motion/surface.js';
import {
  angularVelocity_B,
  drilledBall,
  expectWithin,
  isotropicBall,
  last,
  openLane,
  spinning,
  usualRelease,
} from './bodies.js';

const GRAVITY = 9.80665;
const PATCH = 0.004; // m: three times what a ball has, so that its effect stands out

/** Force and moment of Coulomb friction on an evenly pressed disc that slips and pivots, summed over rings and angles. */
function overDisc(slip: number, w: number, radius: number): { force: number; moment: number } {
  const RINGS = 400;
  const ANGLES = 400;
  let force = 0;
  let moment = 0;
  for (let i = 0; i < RINGS; i++) {
    const r = (radius * (i + 0.5)) / RINGS;
    for (let j = 0; j < ANGLES; j++) {
      const angle = (2 * Math.PI * (j + 0.5)) / ANGLES;
      const vx = slip - w * r * Math.sin(angle);
      const vy = w * r * Math.cos(angle);
      const weight = (2 * r) / radius / RINGS / ANGLES / Math.hypot(vx, vy);
      force += weight * vx;
      moment += weight * r * (Math.cos(angle) * vy - Math.sin(angle) * vx);
    }
  }
  return { force, moment };
}

describe('friction of a disc that slips and pivots', () => {
  const radius = 0.01;
  const w = 20;
  const rim = rimSpeed(radius, w);

  test.each([0.001, 0.05, 0.2, 0.4, 0.6, 0.8, 1, 1.25, 1.5, 2, 3, 10])(
    'is near the integral over the disc when it slips at %s times the rim’s speed',
    (share) => {
      const { force, moment } = overDisc(share * rim, w, radius);
      expectWithin(slipShare(share * rim, rim), force, 0.02);
      expectWithin(-pivotLever(share * rim, rim, radius, w) / radius, moment / radius, 0.1);
    },
  );

  test('is (2/3) a against pivoting alone, and ω a²/(4 s) in fast slip (integrals over an even disc, exact)', () => {
    expectWithin(pivotLever(0, rim, radius, w), (-2 / 3) * radius, 2e-5 * radius);
    expectWithin(pivotLever(1e6, rim, radius, w), (-w * radius ** 2) / 4e6, (1e-6 * (w * radius ** 2)) / 4e6);
  });
});

describe('a ball on a contact patch', () => {
  const ball = isotropicBall(0.064);
  const onSpot = { ...spinning([0, 0, 30]), speed: 0, axisTilt: Math.PI / 2 };

  test('spins down on the spot by (2/3) μ g a/k² a second (exact)', () => {
    const settings = { ...openLane(2, 0.008), contactPatch: { radius: PATCH } };
    const shot = rollShot(ball, onSpot, { x: 0, angle: 0 }, uniformLane(0.2), settings);
    const rate = ((2 / 3) * 0.2 * GRAVITY * PATCH) / 0.064 ** 2;
    expectWithin(last(shot.spin), 30 - 2 * rate, 1e-4); // the law is softened below 0.1 rad/s: (0.1/30)²/2 of the rate
    expectWithin(last(shot.y), 0, 1e-12);
  });

  test('comes to rest when the spin is used up, and stays so', () => {
    const settings = { ...openLane(12, 0.008), contactPatch: { radius: 0.02 } };
    const rate = ((2 / 3) * 0.2 * GRAVITY * 0.02) / 0.064 ** 2;
    expect(30 / rate).toBeLessThan(6);
    const shot = rollShot(ball, onSpot, { x: 0, angle: 0 }, uniformLane(0.2), settings);
    expect(last(shot.spin)).toBeLessThan(1e-6);
  });

  test('rolls on against a lever b with the deceleration g b R/(R² + k²) (exact)', () => {
    const lever = 0.0005;
    const release = { ...spinning([-8 / ball.radius, 0, 0]), speed: 8 };
    const settings = { ...openLane(1, 0.008), contactPatch: { radius: 0, rollingLever: lever } };
    const shot = rollShot(ball, release, { x: 0, angle: 0 }, uniformLane(0.3), settings);
    const slowing = (GRAVITY * lever * ball.radius) / (ball.radius ** 2 + 0.064 ** 2);
    expectWithin(last(shot.vy), 8 - slowing, 1e-9);
    expectWithin(last(shot.slip), 0, 1e-9);
  });

  test('rolling and pivoting, loses its spin about the vertical at the same rate as on the spot', () => {
    const release = {
      ...spinning([-8 / ball.radius, 0, 0]),
      speed: 8,
      axisTilt: 0.3,
      spin: 8 / ball.radius / Math.cos(0.3),
    };
    const settings = { ...openLane(1, 0.004), contactPatch: { radius: PATCH } };
    const shot = rollShot(ball, release, { x: 0, angle: 0 }, uniformLane(0.2), settings);
    const vertical = (i: number): number => {
      const w = angularVelocity_B(shot, i);
      return -w.reduce((sum, c, k) => sum + c * shot.contact_B[3 * i + k], 0);
    };
    const rate = ((2 / 3) * 0.2 * GRAVITY * PATCH) / 0.064 ** 2;
    const end = shot.time.length - 1;
    expectWithin(vertical(end), vertical(0) - rate, 1e-3);
  });

  test('of no size is a point, and one of 1.4 mm is felt little: under half a board', () => {
    const settings = { step: 0.008, freshSurface: null };
    const roll = (radius: number | null) =>
      rollShot(drilledBall, { ...usualRelease, axisTilt: 0.4 }, { x: 0.2, angle: 0.03 }, uniformLane(0.1), {
        ...settings,
        halfWidth: Number.POSITIVE_INFINITY,
        contactPatch: radius === null ? null : { radius },
      });
    const point = last(roll(null).x);
    expectWithin(last(roll(0).x), point, 1e-9);
    const felt = Math.abs(last(roll(0.0014).x) - point);
    expect(felt).toBeGreaterThan(1e-5);
    expect(felt).toBeLessThan(0.0135);
  });
});
