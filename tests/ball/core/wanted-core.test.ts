import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  coreLean,
  type PublishedNumbers,
  standsUnderCg,
  wantedFirstMoment,
  wantedMoments,
} from '../../../src/ball/core/published.js';
import { wantedCore } from '../../../src/ball/core/wanted-core.js';
import { shellMoments } from '../../../src/ball/drill/ball-body.js';
import { inertiaNumbers } from '../../../src/ball/drill/drilled-numbers.js';
import { addMoments, fromMoments, type Moments } from '../../../src/ball/mass/mass-properties.js';
import type { Vec3 } from '../../../src/math/vec3.js';
import { within } from '../../support/arbitraries.js';
import { arc, publishedBall, RADIUS } from '../../support/balls.js';
import { expectNear } from '../../support/expect-near.js';

const OUNCE_INCH = 0.028349523125 * RADIUS; // an ounce of top weight, as a first moment

const published = fc
  .record({
    family: fc.constantFrom('plain' as const, 'asymmetric' as const),
    lb: within(12, 16),
    rg: within(2.5, 2.62),
    differential: within(0.02, 0.055),
    share: within(0.1, 0.5),
    pinToCg: within(0, 4),
    topOz: within(0, 4),
  })
  .map(
    ({ family, lb, rg, differential, share, pinToCg, topOz }): PublishedNumbers => ({
      ...publishedBall(family, lb, rg, differential, family === 'asymmetric' ? share * differential : 0),
      pinToCg: arc(pinToCg),
      topMoment: topOz * OUNCE_INCH,
    }),
  );

/** The ball with nothing of its core but what is wanted of it. */
function ballWith(numbers: PublishedNumbers, cover: typeof COVER, fillerDensity: number) {
  const { mass, centre, second, isAligned } = wantedCore(numbers, cover)(fillerDensity);
  const about = (i: 0 | 1 | 2): Vec3 => {
    const row: [number, number, number] = [
      mass * centre[i] * centre[0],
      mass * centre[i] * centre[1],
      mass * centre[i] * centre[2],
    ];
    row[i] += second[i];
    return row;
  };
  const core: Moments = {
    mass,
    first: [mass * centre[0], mass * centre[1], mass * centre[2]],
    second: [about(0), about(1), about(2)],
  };
  const moments = addMoments(shellMoments({ radius: RADIUS, fillerDensity, ...cover }), core);
  return { moments, numbers: inertiaNumbers(fromMoments(moments)), isAligned, second };
}
const COVER = { coverThickness: 0.02, coverDensity: 1180 };

describe('wantedCore', () => {
  test('with what it says the ball weighs, turns and leans as published (eigenvalues of the assembled tensor)', () => {
    fc.assert(
      fc.property(
        published,
        within(0.0155, 0.025),
        within(1100, 1400),
        within(500, 900),
        (wanted, coverThickness, coverDensity, filler) => {
          const { moments, numbers, isAligned, second } = ballWith(
            wanted,
            { coverThickness, coverDensity },
            filler,
          );
          expectNear(numbers.mass, wanted.mass, 1e-12);
          expectNear(moments.first, wantedFirstMoment(wanted), 1e-15);
          if (!isAligned || second.some((x) => !(x > 0))) return; // which axis is which is open, or no core is wanted
          expectNear(numbers.lowRg, wanted.lowRg, 1e-12);
          expectNear(numbers.differential, wanted.differential, 1e-12);
          if (wanted.family === 'asymmetric')
            expectNear(numbers.intermediateDifferential, wanted.intermediateDifferential, 1e-12);
          else expect(numbers.intermediateDifferential).toBeLessThan(1e-4);
        },
      ),
      { numRuns: 300 },
    );
  });

  test('a symmetric core is as wide one way as the other', () =>
    fc.assert(
      fc.property(published, within(500, 900), (wanted, filler) => {
        const { second } = ballWith(wanted, COVER, filler);
        if (wanted.family === 'plain') expectNear(second[0] - second[1], 0, 1e-15);
      }),
    ));

  test('it is aligned where the axis of low RG stays within 8° of the pin, and where there is no top weight', () => {
    let off = 0;
    fc.assert(
      fc.property(
        published,
        within(0.003, 0.02),
        within(0, 30),
        within(500, 900),
        (some, differential, topOz, filler) => {
          const wanted = {
            ...publishedBall(
              some.family,
              15,
              2.54,
              differential,
              some.family === 'asymmetric' ? differential / 3 : 0,
            ),
            topMoment: topOz * OUNCE_INCH,
            pinToCg: some.pinToCg,
          };
          if (standsUnderCg(wanted)) return;
          const { numbers, isAligned, second } = ballWith(wanted, COVER, filler);
          if (second.some((x) => !(x > 0))) return;
          const lean = Math.acos(Math.min(1, Math.abs(numbers.lowAxis_B[2])));
          if (Math.abs(lean - (8 * Math.PI) / 180) < 1e-6) return;
          off += lean > (8 * Math.PI) / 180 ? 1 : 0;
          expect(isAligned).toBe(lean < (8 * Math.PI) / 180);
        },
      ),
      { numRuns: 400 },
    );
    expect(off).toBeGreaterThan(10);
    expect(
      wantedCore({ ...publishedBall('plain', 15, 2.54, 0.045), topMoment: 0 }, COVER)(600).isAligned,
    ).toBe(true);
  });
});

describe('published numbers', () => {
  test('moments: mass times the square of low, middle and high RG', () => {
    const ball = {
      ...publishedBall('asymmetric', 15, 2.5, 0.05, 0.02),
      mass: 2,
      lowRg: 3,
      differential: 2,
      intermediateDifferential: 1,
    };
    expect(wantedMoments(ball)).toEqual([18, 32, 50]);
  });

  test('the first moment leads to the CG mark, from the pin toward the marker', () => {
    const ball = { ...publishedBall('plain', 15, 2.5, 0.05), topMoment: 2, pinToCg: Math.PI / 6 };
    expectNear(wantedFirstMoment(ball), [1, 0, Math.sqrt(3)], 1e-14);
  });

  test.each([
    ['plain', 0.005, true],
    ['lobed', 0.002, true],
    ['plain', 0.0051, false],
    ['lobed', 0.045, false],
    ['asymmetric', 0.004, false],
  ] as const)(
    'a %s core with a differential of %s in stands under the CG: %s',
    (family, differential, isUnder) => {
      const ball = publishedBall(family, 15, 2.6, differential);
      expect(standsUnderCg(ball)).toBe(isUnder);
      expect(coreLean(ball)).toBe(isUnder ? ball.pinToCg : 0);
    },
  );

  test('a core under the CG mark leans with its top weight: no product of axes is left', () => {
    const ball = publishedBall('plain', 15, 2.6, 0.004);
    const { centre, isAligned, mass } = wantedCore(ball, COVER)(600);
    expect(isAligned).toBe(true);
    expectNear(centre, [0, 0, ball.topMoment / mass], 1e-15);
  });
});
