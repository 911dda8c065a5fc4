import { expect, test } from 'vitest';
import { fillGutters } from '../../src/learn/gutter-shots.js';
import { nightMeans } from '../../src/learn/night-means.js';
import { READ } from '../../src/learn/readings.js';
import { random } from '../studies/random.js';

const at = (id: (typeof READ)[number]): number => READ.indexOf(id);

/** Shots whose breakpoint and board at the pins scatter together, as far as they stay on the lane. */
function shots(count: number, middle: number, deviation: number, slope: number) {
  const of = random(11);
  return Array.from({ length: count }, () => {
    const off = deviation * of.normal();
    const breakpointBoard = middle + off;
    return breakpointBoard < 0.5
      ? { gutter: true as const }
      : { breakpointBoard, pinsBoard: 17 + slope * off };
  });
}

const expected = (middle: number) => {
  const means = new Float64Array(READ.length);
  means[at('breakpointBoard')] = middle;
  means[at('pinsBoard')] = 17;
  return means;
};

const covariance = (deviation: number, slope: number) => {
  const all = READ.map(() => new Float64Array(READ.length));
  const [b, p] = [at('breakpointBoard'), at('pinsBoard')];
  all[b][b] = deviation ** 2;
  all[p][p] = (slope * deviation) ** 2;
  all[b][p] = all[p][b] = slope * deviation ** 2;
  return all;
};

test('fillGutters: with those in the gutter filled in, means are those of all shots (censored normal numbers)', () => {
  const [middle, deviation, slope] = [2, 1.5, 1.3];
  const means = nightMeans({ lane: 'x', shots: shots(4000, middle, deviation, slope) });
  expect(means.gutterShare).toBeGreaterThan(0.1);
  const alone = means.readings.map(({ mean }) => mean);
  const filled = fillGutters(means, {
    means: expected(middle),
    scattered: { shift: new Float64Array(READ.length), covariance: covariance(deviation, slope) },
  });
  expect(alone[0] - middle).toBeGreaterThan(0.25); // what leaving them out would make of it
  expect(Math.abs(filled[0] - middle)).toBeLessThan(0.08); // three standard errors of 4,000 shots, 0.07
  expect(Math.abs(filled[1] - 17)).toBeLessThan(0.1);
});

test('fillGutters: a night without any stays as it is', () => {
  const means = nightMeans({ lane: 'x', shots: [{ breakpointBoard: 8, pinsBoard: 17 }] });
  const night = {
    means: expected(8),
    scattered: { shift: new Float64Array(7), covariance: covariance(1, 1) },
  };
  expect(fillGutters(means, night)).toEqual([8, 17]);
});
