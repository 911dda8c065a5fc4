import { compiled, ndtr } from 'cephes';
import { mean, sampleCovariance } from 'simple-statistics';
import { beforeAll, describe, expect, test } from 'vitest';
import { shareBelow } from '../../src/math/normal.js';
import { drawsAt, drawsOf, type KnownScores } from '../../src/simulate/worlds/draws.js';

beforeAll(() => compiled);

describe('shareBelow', () => {
  test.each([-4, -2.5, -1, -0.1, 0, 0.3, 1.7, 3.2])('of %d as cephes has it', (score) => {
    expect(Math.abs(shareBelow(score) - ndtr(score))).toBeLessThan(2e-7); // as the library states
  });
});

describe('drawsOf', () => {
  const coordinates = ['frictionOiled', 'bandWidth', 'speedMean'] as const;
  const unit: KnownScores = {
    coordinates,
    mean: [0, 0, 0],
    lower: [
      [1, 0, 0],
      [0, 1, 0],
      [0, 0, 1],
    ],
  };

  test('what was known beforehand, said as known, changes nothing: normal scores and back', () => {
    for (let n = 0; n < 64; n++) {
      const [plain, known] = [drawsOf(3, n), drawsOf(3, n, unit)];
      expect(known.normal('frictionOiled')).toBe(plain.normal('frictionOiled'));
      expect(known.normal('launchAngle')).toBe(plain.normal('launchAngle'));
      expect(known.within('carriedShare', 0, 1)).toBe(plain.within('carriedShare', 0, 1));
      // the library's probit errs by up to 0.002 (Winitzki's formula), and beyond one in a thousand scores are cut off
      expect(Math.abs(known.within('bandWidth', 0, 1) - plain.within('bandWidth', 0, 1))).toBeLessThan(3e-3);
    }
  });

  test('draws have the mean and the covariance that are known', () => {
    const known: KnownScores = {
      coordinates,
      mean: [0.5, -0.4, 0.2],
      lower: [
        [0.6, 0, 0],
        [0.3, 0.5, 0],
        [-0.2, 0.1, 0.4],
      ],
    };
    const worlds = Array.from({ length: 4096 }, (_, n) => drawsOf(1, n, known));
    const scores = (['frictionOiled', 'speedMean'] as const).map((what) =>
      worlds.map((draw) => draw.normal(what)),
    );
    expect(mean(scores[0])).toBeCloseTo(0.5, 2);
    expect(mean(scores[1])).toBeCloseTo(0.2, 2);
    // tails cut at 0.1 % each side lower the variance by some 2 %
    expect(sampleCovariance(scores[0], scores[0]) / 0.36).toBeCloseTo(0.98, 1);
    expect(sampleCovariance(scores[1], scores[1]) / (0.04 + 0.01 + 0.16)).toBeCloseTo(0.98, 1);
    expect(sampleCovariance(scores[0], scores[1])).toBeCloseTo(-0.12, 1);
  });
});

test('drawsAt: the middle of everything at 0, and the share below a score within any range', () => {
  const middle = drawsAt(() => 0);
  expect(middle.normal('speed')).toBe(0);
  expect(middle.within('bandWidth', 2, 6)).toBeCloseTo(4, 6);
  const high = drawsAt(() => 1.2816);
  expect(high.within('bandWidth', 0, 10)).toBeCloseTo(9, 3); // nine in ten lie below 1.2816 deviations
});

test('the shape of the friction law stays in its middle until a log says what is known of it', () => {
  const known: KnownScores = { coordinates: ['lawShape'], mean: [0], lower: [[1]] };
  const drawn = (of?: KnownScores) =>
    Array.from({ length: 64 }, (_, n) => drawsOf(1, n, of).normal('lawShape'));
  expect(new Set(drawn())).toEqual(new Set([0]));
  expect(sampleCovariance(drawn(known), drawn(known))).toBeCloseTo(1, 0);
});
