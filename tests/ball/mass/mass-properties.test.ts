import fc from 'fast-check';
import { expect, test } from 'vitest';
import { bodyMoments } from '../../../src/ball/drill/ball-body.js';
import { inertiaNumbers } from '../../../src/ball/drill/drilled-numbers.js';
import { staticWeights } from '../../../src/ball/drill/static-weights.js';
import {
  addMoments,
  fromMoments,
  inertiaOfSecond,
  type Moments,
  NO_MOMENTS,
  pointMassInertia,
} from '../../../src/ball/mass/mass-properties.js';
import { MomentSum } from '../../../src/ball/mass/moment-sum.js';
import { rotateMoments } from '../../../src/ball/mass/rotate-moments.js';
import { from, INCH, OUNCE, POUND, to } from '../../../src/base/units.js';
import { addMat, diagonal, IDENTITY, type Mat3, mulVec } from '../../../src/math/mat3.js';
import { dot, type Vec3 } from '../../../src/math/vec3.js';
import { direction, point, rotation } from '../../support/arbitraries.js';
import { arc, fittedBodies, RADIUS } from '../../support/balls.js';
import { expectNear } from '../../support/expect-near.js';

test.each([
  { inches: 0, want: 2.5 },
  { inches: 3.375, want: 2.525 },
  { inches: 5, want: 2.542 },
  { inches: 6.75, want: 2.55 },
])(
  'a symmetric 2.50/2.55 in ball has RG $want in about an axis $inches in from the pin (k² = k_low² cos² + k_high² sin²)',
  ({ inches, want }) => {
    const I = diagonal([2.55 ** 2, 2.55 ** 2, 2.5 ** 2]);
    const axis: Vec3 = [Math.sin(arc(inches)), 0, Math.cos(arc(inches))];
    expectNear(Math.sqrt(dot(axis, mulVec(I, axis))), want, 5e-4);
  },
);

test('fromMoments: the centre’s inertia and the point mass at it make up the inertia about Bo (parallel axes)', () =>
  fc.assert(
    fc.property(fc.array(point, { minLength: 2, maxLength: 6 }), (points) => {
      const sum = new MomentSum();
      for (const p of points) sum.addAlong(p, [1, 0, 0], 1.5, 0, 0);
      const { mass, p_BoBcm_B, I_Bcm_B } = fromMoments(sum.moments());
      const about0 = points.reduce((I, p) => addMat(I, pointMassInertia(1.5, p)), diagonal([0, 0, 0]));
      expectNear(addMat(I_Bcm_B, pointMassInertia(mass, p_BoBcm_B)), about0, 1e-12);
      expectNear(inertiaOfSecond(sum.moments().second), about0, 1e-12);
    }),
  ));

/** Moments of point masses, added up one by one: the definitions. */
const ofPoints = (points: readonly Vec3[], mass: number): Moments => ({
  mass: points.length * mass,
  first: [0, 1, 2].map((i) => points.reduce((sum, p) => sum + mass * p[i], 0)) as unknown as Vec3,
  second: [0, 1, 2].map((i) =>
    [0, 1, 2].map((j) => points.reduce((sum, p) => sum + mass * p[i] * p[j], 0)),
  ) as unknown as Mat3,
});
const expectMoments = (got: Moments, want: Moments): void =>
  expectNear([got.mass, got.first, got.second], [want.mass, want.first, want.second], 1e-12);
const somePoints = fc.array(point, { minLength: 1, maxLength: 6 });

test('addMoments: moments of two heaps of point masses are those of one heap, taken away they leave the other', () =>
  fc.assert(
    fc.property(somePoints, somePoints, (here, there) => {
      const both = addMoments(ofPoints(here, 1.5), ofPoints(there, 1.5));
      expectMoments(both, ofPoints([...here, ...there], 1.5));
      expectMoments(addMoments(both, ofPoints(there, 1.5), -1), ofPoints(here, 1.5));
      expectMoments(addMoments(NO_MOMENTS, both), both);
    }),
  ));

test('rotateMoments: moments of turned point masses', () =>
  fc.assert(
    fc.property(somePoints, rotation, (points, Q) =>
      expectMoments(
        rotateMoments(Q, ofPoints(points, 1.5)),
        ofPoints(
          points.map((p) => mulVec(Q, p)),
          1.5,
        ),
      ),
    ),
  ));

test('MomentSum: a rod has mass λL, centre at its middle and inertia mL²/12 across (closed form)', () =>
  fc.assert(
    fc.property(direction, point, (d, a) => {
      const sum = new MomentSum();
      sum.addStretch(a, d, 0.25, 2.25, 3);
      const { mass, p_BoBcm_B, I_Bcm_B } = fromMoments(sum.moments());
      expectNear(mass, 6, 1e-15);
      expectNear(p_BoBcm_B, [a[0] + 1.25 * d[0], a[1] + 1.25 * d[1], a[2] + 1.25 * d[2]], 1e-14);
      expectNear(dot(d, mulVec(I_Bcm_B, d)), 0, 1e-12);
      expectNear(I_Bcm_B[0][0] + I_Bcm_B[1][1] + I_Bcm_B[2][2], 2 * ((6 * 4) / 12), 1e-12);
    }),
  ));

test('inertiaNumbers: labels axes by their moments', () => {
  const ball = { mass: 2, p_BoBcm_B: [0, 0, 0] as Vec3, I_Bcm_B: diagonal([2 * 9, 2 * 4, 2 * 6.25]) };
  const numbers = inertiaNumbers(ball);
  expectNear([numbers.lowRg, numbers.differential, numbers.intermediateDifferential], [2, 1, 0.5], 1e-15);
  expect(numbers.lowAxis_B.map(Math.abs)).toEqual([0, 1, 0]);
  expect(numbers.highAxis_B.map(Math.abs)).toEqual([1, 0, 0]);
});

test('staticWeights: 3 oz at 15 lb is 1.36 mm of centre of mass by moment, 0.51 mm by halves', () => {
  const mass = from(15, POUND);
  for (const [convention, offset] of [
    ['moment', 1.36e-3],
    ['halves', 0.51e-3],
  ] as const) {
    const ball = { mass, p_BoBcm_B: [0, 0, offset] as Vec3, I_Bcm_B: IDENTITY };
    const { side, finger, top } = staticWeights(ball, RADIUS, convention);
    expectNear([to(side, OUNCE), to(finger, OUNCE)], [0, 0], 0);
    expectNear(to(top, OUNCE), 3, 0.02); // the offset is given to two digits
  }
});

test('staticWeights: a half ball balances at 3/8 R, which is what halves are weighed against', () => {
  // two uniform half balls m(1 ± ε)/2 put the centre ε·3R/8 up; the halves differ by m ε
  const [mass, epsilon] = [6.8, 0.01];
  const ball = { mass, p_BoBcm_B: [(epsilon * 3 * RADIUS) / 8, 0, 0] as Vec3, I_Bcm_B: IDENTITY };
  expectNear(staticWeights(ball, RADIUS, 'halves').side, mass * epsilon, 1e-16);
});

test('an undrilled ball has its centre of mass where the top weight and pin-to-CG say', () => {
  for (const family of ['plain', 'lobed', 'asymmetric'] as const)
    for (const body of fittedBodies(family, 4)) {
      const { mass, p_BoBcm_B } = fromMoments(bodyMoments(body));
      expectNear(to(mass, POUND), 15, 1e-12);
      const moment = from(3, OUNCE) * RADIUS;
      const want = [moment * Math.sin(arc(3)), 0, moment * Math.cos(arc(3))].map((x) => x / mass);
      expectNear(p_BoBcm_B, want, 1e-15);
      expect(to(RADIUS, INCH)).toBeCloseTo(4.297, 3);
    }
});
