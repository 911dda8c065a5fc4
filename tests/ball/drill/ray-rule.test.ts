import { expect, test } from 'vitest';
import { diskRule, gaussLegendre, REPORT_RAYS } from '../../../src/ball/drill/ray-rule.js';
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

test('diskRule: angles in equal steps, those of every other radius half a step on', () => {
  const nodes = diskRule({ radii: 3, angles: 8 });
  const turns = nodes.map(({ x, y }) => (8 * Math.atan2(y, x)) / (2 * Math.PI));
  for (const [i, turn] of turns.entries()) {
    const wanted = (i % 8) + (Math.floor(i / 8) === 1 ? 0.5 : 0);
    expectNear((turn - wanted + 16.5) % 8, 0.5, 1e-12);
  }
});

test('diskRule: all rays are inside the bore and all shares positive', () => {
  for (const { x, y, weight } of diskRule(REPORT_RAYS)) {
    expect(Math.hypot(x, y)).toBeLessThan(1);
    expect(weight).toBeGreaterThan(0);
  }
});
