import { describe, expect, test } from 'vitest';
import { symmetricEigen } from '../../../src/math/eigen3.js';
import type { RollingBody } from '../../../src/motion/shot/body.js';
import { withInertiaNumber } from '../../../src/simulate/unreal/altered-ball.js';

const MASS = 6.8; // kg
const INCH = 0.0254; // m, exact

/** A ball whose axes of inertia are those of B, with these radii of gyration, in. */
const ball = (low: number, middle: number, high: number): RollingBody => {
  const moment = (rg: number): number => MASS * (rg * INCH) ** 2;
  return {
    mass: MASS,
    radius: 4.295 * INCH,
    p_BoBcm_B: [0, 0, 0],
    I_Bcm_B: [
      [moment(middle), 0, 0],
      [0, moment(low), 0],
      [0, 0, moment(high)],
    ],
  };
};

const radiiIn = ({ mass, I_Bcm_B }: RollingBody): readonly number[] =>
  symmetricEigen(I_Bcm_B).values.map((moment) => Math.sqrt(moment / mass) / INCH);

// what each number means is how the trade defines it: low RG, high RG less low RG, high RG less middle RG
describe('withInertiaNumber: one number becomes another, the other two and the axes stay', () => {
  test.each([
    { number: 'rg', valueIn: 2.6, want: [2.6, 2.63, 2.65] },
    { number: 'differential', valueIn: 0.06, want: [2.5, 2.54, 2.56] },
    { number: 'intermediateDifferential', valueIn: 0.01, want: [2.5, 2.54, 2.55] },
  ] as const)('$number', ({ number, valueIn, want }) => {
    const made = withInertiaNumber(ball(2.5, 2.53, 2.55), number, valueIn * INCH);
    for (const [i, radius] of radiiIn(made).entries()) expect(radius).toBeCloseTo(want[i], 12);
    for (const [i, row] of made.I_Bcm_B.entries())
      for (const [j, entry] of row.entries()) if (i !== j) expect(entry).toBeCloseTo(0, 12);
  });
});
