import { expect, test } from 'vitest';
import { fromMoments, type Moments } from '../../../src/ball/mass/mass-properties.js';
import { meanBall } from '../../../src/ball/mass/mean-ball.js';
import { diagonal } from '../../../src/math/mat3.js';
import { expectWithin } from '../../support/bodies.js';

test('the mean of balls is the ball of their mean moments about Bo, which add (closed form)', () => {
  const moments = (mass: number, x: number, z: number, second: number): Moments => ({
    mass,
    first: [mass * x, 0, mass * z],
    second: diagonal([second, 1.1 * second, 0.9 * second]),
  });
  const [a, b, c] = [
    moments(6.7, 0.001, -0.002, 0.014),
    moments(6.8, 0, 0.003, 0.015),
    moments(6.6, -0.002, 0, 0.013),
  ] as const;
  const mean = meanBall([a, b, c].map(fromMoments));
  const want = fromMoments({
    mass: 6.7,
    first: [(0.0067 - 0.0132) / 3, 0, (-0.0134 + 0.0204) / 3],
    second: diagonal([0.014, 0.0154, 0.0126]),
  });
  expectWithin(mean.mass, want.mass, 1e-14);
  for (const i of [0, 1, 2] as const) {
    expectWithin(mean.p_BoBcm_B[i], want.p_BoBcm_B[i], 1e-17);
    for (const j of [0, 1, 2] as const) expectWithin(mean.I_Bcm_B[i][j], want.I_Bcm_B[i][j], 1e-16);
  }
});

test('that of one ball is the ball itself', () => {
  const ball = fromMoments({
    mass: 6.7,
    first: [0.01, 0.02, -0.01],
    second: diagonal([0.014, 0.015, 0.013]),
  });
  const mean = meanBall([ball]);
  expect(mean.mass).toBe(ball.mass);
  for (const i of [0, 1, 2] as const)
    for (const j of [0, 1, 2] as const) expectWithin(mean.I_Bcm_B[i][j], ball.I_Bcm_B[i][j], 1e-17);
});
