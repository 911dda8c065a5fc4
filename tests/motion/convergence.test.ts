import { expect, test } from 'vitest';
import { rollShot, type Shot } from '../../src/motion/shot/shot.js';
import type { ShotSettings } from '../../src/motion/shot/shot-settings.js';
import { drilledBall, last, openLane, rollingFromTheStart, usualRelease } from '../support/bodies.js';
import { uniformLane } from '../support/dry-lanes.js';

/** What is compared: place, velocity, axis and contact point of the last sample. */
const endOf = (shot: Shot): number[] => [
  ...[last(shot.x), last(shot.y), last(shot.vx), last(shot.vy)],
  ...shot.endAxis_W,
  ...shot.contact_B.slice(-3),
];

const distance = (a: number[], b: number[]): number => Math.hypot(...a.map((v, i) => v - b[i]));

/** Orders of convergence measured from successive halvings: log₂ of the ratio of successive differences. */
function measuredOrders(end: (step: number) => number[], steps: readonly number[]): number[] {
  const ends = steps.map(end);
  const changes = ends.slice(1).map((e, i) => distance(e, ends[i]));
  return changes.slice(1).map((c, i) => Math.log2(changes[i] / c));
}

const slide = (settings: ShotSettings): number[] => {
  const shot = rollShot(drilledBall, usualRelease, { x: 0, angle: 0.02 }, uniformLane(0.1), settings);
  expect(shot.rollStart).toBe(-1);
  return endOf(shot);
};

test('sliding converges with the fourth power of the step (order of the classical Runge–Kutta method)', () => {
  const orders = measuredOrders((step) => slide(openLane(0.8, step)), [0.008, 0.004, 0.002, 0.001]);
  for (const order of orders) expect(Math.abs(order - 4), `measured ${orders}`).toBeLessThan(0.2);
});

test('rolling converges with the fourth power of the step', () => {
  const release = {
    ...usualRelease,
    axisRotation: 0,
    axisTilt: 0,
  };
  const orders = measuredOrders(
    (step) => {
      const { rolls, launch } = rollingFromTheStart(drilledBall, release);
      const shot = rollShot(drilledBall, rolls, launch, uniformLane(0.5), openLane(0.8, step));
      expect(shot.rollStart).toBe(0);
      return endOf(shot);
    },
    [0.008, 0.004, 0.002, 0.001],
  );
  for (const order of orders) expect(Math.abs(order - 4), `measured ${orders}`).toBeLessThan(0.2);
});
