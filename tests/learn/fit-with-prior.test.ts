import { inverse, Matrix } from 'ml-matrix';
import { describe, expect, test } from 'vitest';
import { fitWithPrior, type Linear } from '../../src/learn/fit-with-prior.js';
import { shareBelow } from '../../src/math/normal.js';
import { evenness } from '../studies/learning-page.js';
import { random } from '../studies/random.js';

/** A model that is linear: what is predicted is a matrix times the unknowns. */
const linearModel = (rows: readonly (readonly number[])[], values: readonly number[], noise: Matrix) => {
  const jacobian = rows.map((row) => Float64Array.from(row));
  const predicted = (u: Float64Array) =>
    Float64Array.from(rows, (row) => row.reduce((sum, each, j) => sum + each * u[j], 0));
  return {
    unknowns: rows[0].length,
    linearise: (u: Float64Array): Linear => ({ predicted: predicted(u), jacobian }),
    predict: predicted,
    observed: () => ({ values: Float64Array.from(values), noise }),
  };
};

describe('fitWithPrior', () => {
  test('a linear model: mean and covariance of the information form, (JᵀR⁻¹J + 1)⁻¹ (Tarantola 2005, §3.2)', () => {
    const of = random(7);
    const rows = Array.from({ length: 6 }, () => Array.from({ length: 4 }, () => of.normal()));
    const values = rows.map(() => of.normal());
    const root = new Matrix(rows.map(() => rows.map(() => of.normal())));
    const noise = root.mmul(root.transpose()).add(Matrix.eye(6));
    const { mean, covariance, isSettled } = fitWithPrior(linearModel(rows, values, noise));

    const J = new Matrix(rows);
    const weighed = J.transpose().mmul(inverse(noise));
    const wantedCovariance = inverse(weighed.mmul(J).add(Matrix.eye(4)));
    const wantedMean = wantedCovariance.mmul(weighed).mmul(Matrix.columnVector(values));
    expect(isSettled).toBe(true);
    for (let i = 0; i < 4; i++) {
      expect(mean[i]).toBeCloseTo(wantedMean.get(i, 0), 9);
      for (let j = 0; j < 4; j++) expect(covariance.get(i, j)).toBeCloseTo(wantedCovariance.get(i, j), 9);
    }
  });

  test('a linear model: truths drawn as they are taken to be lie evenly in what is found (simulation-based calibration: Talts et al. 2018)', () => {
    const of = random(11);
    const ranks = Array.from({ length: 300 }, () => {
      const truth = Array.from({ length: 3 }, () => of.normal());
      const rows = Array.from({ length: 4 }, () => truth.map(() => of.normal()));
      const values = rows.map((row) => row.reduce((sum, each, j) => sum + each * truth[j], of.normal() / 2));
      const { mean, covariance } = fitWithPrior(linearModel(rows, values, Matrix.eye(4).mul(1 / 4)));
      return truth.map((each, j) => shareBelow((each - mean[j]) / Math.sqrt(covariance.get(j, j))));
    });
    for (const j of [0, 1, 2]) {
      const { chance, covered } = evenness(ranks.map((each) => each[j]));
      expect(chance).toBeGreaterThan(0.01);
      expect(Math.abs(covered[2] - 0.9)).toBeLessThan(0.05); // three standard errors of a share of 300
    }
  });

  test('a linear model: chi-square of surprises is that of residuals and prior at the mean', () => {
    const rows = [
      [1, 2],
      [0.5, -1],
      [3, 0.2],
    ];
    const values = [1.4, -2, 0.7];
    const noise = Matrix.diag([0.5, 0.2, 0.9]);
    const { mean, surprise, precision } = fitWithPrior(linearModel(rows, values, noise));
    const bySurprise = surprise.transpose().mmul(precision).mmul(surprise).get(0, 0);
    const residuals = rows.map((row, i) => values[i] - row[0] * mean[0] - row[1] * mean[1]);
    const atMean =
      residuals.reduce((sum, each, i) => sum + each ** 2 / noise.get(i, i), 0) + mean[0] ** 2 + mean[1] ** 2;
    expect(bySurprise).toBeCloseTo(atMean, 9);
  });

  test('a model that bends comes to rest where residual and prior are least, found by trying all', () => {
    const model = {
      unknowns: 1,
      linearise: ([u]: Float64Array): Linear => ({
        predicted: Float64Array.of(Math.exp(u)),
        jacobian: [Float64Array.of(Math.exp(u))],
      }),
      predict: ([u]: Float64Array) => Float64Array.of(Math.exp(u)),
      observed: () => ({ values: Float64Array.of(4), noise: Matrix.diag([0.25]) }),
    };
    const { mean } = fitWithPrior(model);
    const cost = (u: number): number => (4 - Math.exp(u)) ** 2 / 0.25 + u ** 2;
    const tried = Array.from({ length: 40001 }, (_, i) => -2 + i * 1e-4);
    const best = tried.reduce((a, b) => (cost(b) < cost(a) ? b : a));
    expect(cost(mean[0]) - cost(best)).toBeLessThan(0.05); // the least gain that counts as one
    expect(Math.abs(mean[0] - best)).toBeLessThan(0.02);
  });
});
