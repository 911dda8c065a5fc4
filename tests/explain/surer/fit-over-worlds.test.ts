import { Matrix, solve } from 'ml-matrix';
import { expect, test } from 'vitest';
import { fitOverWorlds } from '../../../src/explain/surer/fit-over-worlds.js';
import { smoothColumns } from '../../../src/explain/surer/smooth-columns.js';
import { normalNumbers } from '../../support/normal-numbers.js';

const COUNT = 24;

test('fitOverWorlds: worlds left out are predicted as by least squares without them (ml-matrix)', () => {
  const draw = normalNumbers(5);
  const x = draw(COUNT);
  const noise = draw(COUNT);
  const y = x.map((each, i) => 2 - each + 0.4 * each ** 2 + noise[i]);
  const { leftOut } = fitOverWorlds(smoothColumns([{ values: x, knownShare: 1 }]), y);

  const design = x.map((each) => [1, each, each ** 2]);
  let together = 0;
  let alone = 0;
  for (let i = 0; i < COUNT; i++) {
    const others = y.filter((_, k) => k !== i);
    const meanOfOthers = others.reduce((sum, each) => sum + each, 0) / others.length;
    const weights = solve(
      new Matrix(design.filter((_, k) => k !== i)),
      Matrix.columnVector(others),
    ).to1DArray();
    const predicted = weights.reduce((sum, weight, k) => sum + weight * design[i][k], 0) - meanOfOthers;
    together += predicted * (y[i] - meanOfOthers);
    alone += predicted ** 2;
  }
  const mean = y.reduce((sum, each) => sum + each, 0) / COUNT;
  const squares = y.reduce((sum, each) => sum + (each - mean) ** 2, 0);
  expect(leftOut.together).toBeCloseTo(together / squares, 9);
  expect(leftOut.alone).toBeCloseTo(alone / squares, 9);
});

test('fitOverWorlds: a number that follows from what is known is known, one that does not differ is its mean', () => {
  const x = normalNumbers(6)(COUNT);
  const columns = smoothColumns([{ values: x, knownShare: 1 }]);
  const square = x.map((each) => 3 * each ** 2);
  const { mean, known } = fitOverWorlds(columns, square);
  for (const [i, each] of square.entries()) expect(mean + known[i]).toBeCloseTo(each, 9);
  const constant = fitOverWorlds(columns, Array<number>(COUNT).fill(7));
  expect(constant.mean).toBe(7);
  for (const each of constant.known) expect(each).toBeCloseTo(0, 12);
});
