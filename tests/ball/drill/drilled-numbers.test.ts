import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { inertiaNumbers } from '../../../src/ball/drill/drilled-numbers.js';
import { staticLever, staticWeights } from '../../../src/ball/drill/static-weights.js';
import { diagonal, rotateTensor, transpose } from '../../../src/math/mat3.js';
import { dot } from '../../../src/math/vec3.js';
import { rotation } from '../../support/arbitraries.js';
import { expectNear } from '../../support/expect-near.js';

describe('inertiaNumbers', () => {
  test('of radii of gyration 2, 3 and 5 about any axes: √(I/m), high less low, high less middle, and those axes', () => {
    fc.assert(
      fc.property(rotation, (R) => {
        // I = m k², axes the columns of R
        const I_Bcm_B = rotateTensor(R, diagonal([7 * 9, 7 * 25, 7 * 4]));
        const got = inertiaNumbers({ mass: 7, p_BoBcm_B: [1, 2, 3], I_Bcm_B });
        expectNear(
          [got.mass, got.lowRg, got.differential, got.intermediateDifferential],
          [7, 2, 3, 2],
          1e-12,
        );
        const [x, y, z] = transpose(R);
        for (const [axis, wanted] of [
          [got.lowAxis_B, z],
          [got.middleAxis_B, x],
          [got.highAxis_B, y],
        ] as const)
          expect(Math.abs(dot(axis, wanted))).toBeCloseTo(1, 12);
      }),
    );
  });
});

describe('staticWeights', () => {
  const ball = { mass: 6, p_BoBcm_B: [0.001, -0.002, 0.003], I_Bcm_B: diagonal([1, 1, 1]) } as const;

  test('mass times offset over the radius: side toward the PAP, finger toward the fingers, top toward the grip', () => {
    const { side, finger, top } = staticWeights(ball, 0.1, 'moment');
    expectNear([side, finger, top], [0.06, -0.12, 0.18], 1e-15);
  });

  test('by halves: 8/3 times as much, since a uniform half ball balances at 3/8 of the radius', () => {
    const { side, finger, top } = staticWeights(ball, 0.1, 'halves');
    expectNear([side, finger, top], [0.16, -0.32, 0.48], 1e-15);
    expect([staticLever(0.8, 'moment'), staticLever(0.8, 'halves')]).toEqual([0.8, expect.closeTo(0.3, 15)]);
  });
});
