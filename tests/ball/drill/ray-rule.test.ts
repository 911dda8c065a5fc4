import { quantileSorted } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { driller } from '../../../src/ball/drill/drill.js';
import { inertiaNumbers } from '../../../src/ball/drill/drilled-numbers.js';
import { excavate } from '../../../src/ball/drill/excavation.js';
import {
  diskRule,
  gaussLegendre,
  RANKING_RAYS,
  type RayRule,
  REPORT_RAYS,
} from '../../../src/ball/drill/ray-rule.js';
import { INCH, to } from '../../../src/base/units.js';
import { placeLayout } from '../../../src/layout/placement.js';
import type { CoreFamily } from '../../../src/records/schemas/core-families.js';
import { fittedBodies, layoutOf, PAP_B, RADIUS, usualHoles } from '../../support/balls.js';
import { expectNear } from '../../support/expect-near.js';

test.each([1, 2, 3, 6, 12, 24])(
  'gaussLegendre(%i): exact to degree 2n − 1 (Abramowitz & Stegun 25.4.29)',
  (n) => {
    const rule = gaussLegendre(n);
    for (let degree = 0; degree < 2 * n; degree++) {
      const sum = rule.reduce((total, [x, w]) => total + w * x ** degree, 0);
      expectNear(sum, degree % 2 ? 0 : 2 / (degree + 1), 1e-14);
    }
  },
);

test('gaussLegendre(3): nodes 0, ±√(3/5), weights 8/9, 5/9 (closed form)', () => {
  const sorted = [...gaussLegendre(3)].sort((a, b) => a[0] - b[0]);
  expectNear(
    sorted,
    [
      [-Math.sqrt(0.6), 5 / 9],
      [0, 8 / 9],
      [Math.sqrt(0.6), 5 / 9],
    ],
    1e-14,
  );
});

/** Mean of x^p y^q over the unit disk: 2/(p+q+2) by the radius, (p−1)!!(q−1)!!/(p+q)!! by the angle. */
function diskMean(p: number, q: number): number {
  if (p % 2 || q % 2) return 0;
  const odd = (n: number): number => (n <= 1 ? 1 : n * odd(n - 2)); // n!!
  const angular = (odd(p - 1) * odd(q - 1)) / odd(p + q); // mean of cos^p sin^q
  return (2 / (p + q + 2)) * angular;
}

test.each([
  { radii: 2, angles: 6 },
  { radii: 3, angles: 8 },
  { radii: 6, angles: 12 },
])('diskRule: $radii × $angles is exact to degree 2·radii − 1 in r² and below its angles', (rule) => {
  const nodes = diskRule(rule);
  expect(nodes).toHaveLength(rule.radii * rule.angles);
  const degree = Math.min(rule.angles - 1, 4 * rule.radii - 2);
  for (let p = 0; p <= degree; p++)
    for (let q = 0; p + q <= degree; q++) {
      const sum = nodes.reduce((total, { x, y, weight }) => total + weight * x ** p * y ** q, 0);
      expectNear(sum, diskMean(p, q), 1e-14);
    }
});

test('diskRule: all rays are inside the bore and all shares positive', () => {
  for (const { x, y, weight } of diskRule(REPORT_RAYS)) {
    expect(Math.hypot(x, y)).toBeLessThan(1);
    expect(weight).toBeGreaterThan(0);
  }
});

/**
 * Differences in inches from a rule of 48 × 192 rays a bore, itself within 2e-6 of finer ones, over drilled balls
 * of one family, ascending.
 */
function errors(family: CoreFamily, rule: RayRule): { rg: number[]; differential: number[] } {
  const holes = usualHoles();
  const [few, many] = [rule, { radii: 48, angles: 192 }].map((r) => excavate(holes, RADIUS, r));
  const rows = fittedBodies(family, 8).flatMap((body) =>
    [10, 30, 50, 70, 90].map((drilling, i) => {
      const { R_BC } = placeLayout(layoutOf(drilling, 2 + i, 65 - 11 * i), PAP_B);
      const [a, b] = [few, many].map((rays) => inertiaNumbers(driller(body, rays)(R_BC)));
      const off = [
        a.lowRg - b.lowRg,
        a.differential - b.differential,
        a.intermediateDifferential - b.intermediateDifferential,
      ].map((x) => Math.abs(to(x, INCH)));
      return [off[0], Math.max(off[1], off[2])];
    }),
  );
  const column = (i: number) => rows.map((row) => row[i]).sort((x, y) => x - y);
  return { rg: column(0), differential: column(1) };
}

describe.each<CoreFamily>(['plain', 'lobed', 'asymmetric'])('forty drilled %s balls', (family) => {
  test('ranking rays are 1e-5 in of RG off at the median, nothing ever 1e-4', () => {
    const { rg, differential } = errors(family, RANKING_RAYS);
    expect(quantileSorted(rg, 0.5)).toBeLessThan(1e-5);
    expect(Math.max(...rg, ...differential)).toBeLessThan(1e-4);
  });

  test('report rays are never more than 1e-5 in of RG or differential off', () => {
    const { rg, differential } = errors(family, REPORT_RAYS);
    expect(Math.max(...rg, ...differential)).toBeLessThan(1e-5);
  });
});
