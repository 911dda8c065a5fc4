import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type LineMoments, RemainingIntervals } from '../../../src/ball/solid/remaining-intervals.js';
import { uniformMoments } from '../../../src/ball/solid/stretch.js';
import { expectNear } from '../../support/expect-near.js';

/** Claims of whole stretches of a line, each with the density of what claims it: 1, 2, 4 and so on, so that none is taken for another. */
const claims = fc.array(fc.tuple(fc.integer({ min: -12, max: 12 }), fc.integer({ min: -12, max: 12 })), {
  maxLength: 7,
});

/** The same cell by cell: each of length one belongs to the first that claims it. */
function cellByCell(s: number, e: number, all: readonly (readonly [number, number])[]): number[] {
  let [m0, m1, m2] = [0, 0, 0];
  for (let x = s; x < e; x++) {
    const first = all.findIndex(([enter, leave]) => enter <= x && leave >= x + 1);
    if (first < 0) continue;
    const density = 2 ** first;
    m0 += density;
    m1 += (density * (2 * x + 1)) / 2; // ∫ t dt from x to x + 1
    m2 += (density * (3 * x * x + 3 * x + 1)) / 3;
  }
  return [m0, m1, m2];
}

test('claim: each point of a stretch is counted for whoever claims it first, once', () => {
  const left = new RemainingIntervals(); // one for all, as in use
  fc.assert(
    fc.property(
      fc.integer({ min: -10, max: 10 }),
      fc.integer({ min: -2, max: 12 }),
      claims,
      (s, length, all) => {
        const sum: LineMoments = { m0: 0, m1: 0, m2: 0 };
        left.begin(s, s + length);
        for (const [i, [enter, leave]] of all.entries()) left.claim(enter, leave, 2 ** i, sum);
        expectNear([sum.m0, sum.m1, sum.m2], cellByCell(s, s + length, all), 1e-9);
      },
    ),
    { numRuns: 1000 },
  );
});

test('uniformMoments: matter along two stretches, and none along one that is empty or runs backwards (by hand)', () => {
  const stretches = [
    { a: [1, 2, 0], d: [0, 0, 1], area: 0.5, s: 1, e: 3 },
    { a: [0, 0, 0], d: [0, 0, 1], area: 9, s: 2, e: 2 },
    { a: [0, 0, 0], d: [1, 0, 0], area: 0.25, s: -1, e: 1 },
    { a: [5, 5, 5], d: [1, 0, 0], area: 7, s: 3, e: 1 },
  ] as const;
  const { mass, first, second } = uniformMoments(stretches, 10);
  // 5 kg/m over 2 m at x = 1, y = 2 around z = 2, and 2.5 kg/m over 2 m of the x axis
  expectNear(mass, 10 + 5, 1e-14);
  expectNear(first, [10, 20, 20], 1e-14);
  const zz = (5 * (27 - 1)) / 3;
  const xx = (2.5 * 2) / 3;
  expectNear(
    second,
    [
      [10 + xx, 20, 20],
      [20, 40, 40],
      [20, 40, zz],
    ],
    1e-13,
  );
});

test('uniformMoments: nothing weighs nothing', () => expect(uniformMoments([], 10).mass).toBe(0));
