import { describe, expect, test } from 'vitest';
import { krige } from '../../../src/search/scoring/krige.js';

const at = (drillingAngleDeg: number) => ({ drillingAngleDeg, pinToPapIn: 4, valAngleDeg: 40 });

describe('krige', () => {
  test('one value is told everywhere', () => {
    const smooth = krige([{ layout: at(50), value: 7, variance: 3 }]);
    expect(smooth(at(50))).toBe(7);
    expect(smooth(at(90))).toBe(7);
  });

  test('two values with luck in them: the closed form', () => {
    // about the mean 10: spread s = 4, covariance c = s exp(-d²/2) at d = 1 (25°), noise v + 2 % of s on the diagonal;
    // ±2 is an eigenvector of the 2 × 2 matrix, eigenvalue s + v + 0.02 s - c
    const [s, v] = [4, 1.5];
    const c = s * Math.exp(-0.5);
    const smooth = krige([
      { layout: at(40), value: 12, variance: v },
      { layout: at(65), value: 8, variance: v },
    ]);
    const weight = 2 / (1.02 * s + v - c);
    expect(smooth(at(40))).toBeCloseTo(10 + weight * (s - c), 12);
    expect(smooth(at(52.5))).toBeCloseTo(10, 12); // half way
    const [near, far] = [s * Math.exp(-((40 - 30) ** 2) / 1250), s * Math.exp(-((65 - 30) ** 2) / 1250)];
    expect(smooth(at(30))).toBeCloseTo(10 + weight * (near - far), 12);
  });

  test('far from all it is their mean; known well, it is hardly moved; known badly, it leans on its neighbours', () => {
    const rows = (variance: number) =>
      [10, 20, 30, 40, 50, 60, 70, 80].map((angle) => ({
        layout: at(angle),
        value: angle === 40 ? 9 : 3 + angle / 40,
        variance: angle === 40 ? variance : 1e-6,
      }));
    expect(krige(rows(1e-6))(at(1000))).toBeCloseTo(4.75, 12); // (9 + Σ (3 + a/40) over the others)/8
    const beside = 4;
    expect(krige(rows(1e4))(at(40))).toBeCloseTo(beside, 1);
    expect(krige(rows(1e-6))(at(40))).toBeGreaterThan(beside + 1);
  });
});
