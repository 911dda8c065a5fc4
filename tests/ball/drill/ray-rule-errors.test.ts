import { quantileSorted } from 'simple-statistics';
import { describe, expect, test } from 'vitest';
import { driller } from '../../../src/ball/drill/drill.js';
import { inertiaNumbers } from '../../../src/ball/drill/drilled-numbers.js';
import { excavate } from '../../../src/ball/drill/excavation.js';
import { RANKING_RAYS, type RayRule, REPORT_RAYS } from '../../../src/ball/drill/ray-rule.js';
import { INCH, to } from '../../../src/base/units.js';
import { placeLayout } from '../../../src/layout/placement.js';
import type { CoreFamily } from '../../../src/records/schemas/core-families.js';
import { fittedBodies, layoutOf, PAP_B, RADIUS, usualHoles } from '../../support/balls.js';

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
