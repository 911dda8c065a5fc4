import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boreLips } from '../../../src/ball/drill/bore-lip.js';
import { mouthEdge } from '../../../src/ball/drill/wall-at-mouth.js';
import { INCH } from '../../../src/base/units.js';
import type { Hole } from '../../../src/layout/hole.js';
import { ballPoint } from '../../../src/math/ball-point.js';
import { addScaled, cross, dot, norm, scale, unit, type Vec3 } from '../../../src/math/vec3.js';
import { direction, within } from '../../support/arbitraries.js';
import { expectNear } from '../../support/expect-near.js';

const R = 4.297 * INCH;

/** A bore from the top of the ball whose axis leans toward +x. */
const leaning = (slant: number, radius: number, depth: number, over = 0): Hole => {
  const mouth_B = ballPoint(over, 0);
  const lean_B: Vec3 = unit([mouth_B[2], 0, -mouth_B[0]]);
  return {
    name: 'vent',
    mouth_B,
    axis_B: addScaled(scale(-Math.cos(slant), mouth_B), Math.sin(slant), lean_B),
    open: { radius, depth },
    sleeve: null,
    tip: 'flat',
  };
};

const lipOf = (holes: readonly Hole[], i = 0, radius = R): number => boreLips(holes, radius)[i]!.least;

describe('mouthEdge', () => {
  test('on a flat surface a slanted bore opens as an ellipse: r / cos σ along its lean, r across', () => {
    const flat = 1e4 * INCH;
    const hole = leaning(Math.PI / 3, 0.125 * INCH, INCH);
    expectNear(flat * mouthEdge(hole, [1, 0, 0], flat), 0.25 * INCH, 1e-5);
    expectNear(flat * mouthEdge(hole, [0, 1, 0], flat), 0.125 * INCH, 1e-5);
  });

  test('of a bore that runs straight in: asin(r / R), whatever the direction', () => {
    const hole = leaning(0, 0.5 * INCH, INCH);
    expectNear(mouthEdge(hole, [0.6, 0.8, 0], R), Math.asin((0.5 * INCH) / R), 1e-6);
    for (let radiusIn = 0.02; radiusIn < 1; radiusIn += 0.01) {
      const straight = leaning(0, radiusIn * INCH, INCH);
      expectNear(mouthEdge(straight, [0, 1, 0], R), Math.asin((radiusIn * INCH) / R), 1e-9);
    }
  });
});

describe('boreLips', () => {
  test('on a flat surface: a quarter of an inch behind the edge it is 1/4 in · tan(90° − slant) thick', () => {
    for (const slant of [0.3, 0.7, Math.PI / 3])
      expectNear(lipOf([leaning(slant, 1e-5, INCH)], 0, 1e5), (0.25 * INCH) / Math.tan(slant), 1e-3);
  });

  test('of a bore that runs straight in, wherever its mouth lies: to a quarter of an inch α behind the edge, or to the bottom’s edge', () => {
    fc.assert(
      fc.property(direction, within(0.05, 0.6), (mouth_B, radiusIn) => {
        const radius = radiusIn * INCH;
        const hole: Hole = { ...leaning(0, radius, 2 * INCH), mouth_B, axis_B: scale(-1, mouth_B) };
        const behind = Math.asin(radius / R) + (0.25 * INCH) / R;
        const inmost = Math.max(radius / Math.sin(behind), Math.hypot(R - 2 * INCH, radius));
        expectNear(lipOf([hole]) / INCH, (R - inmost) / INCH, 1e-9);
      }),
    );
  });

  test('of a hole that ends within a quarter of an inch it is as thick as it is deep there; its widest bore counts', () => {
    const hole = leaning(0, 0.3 * INCH, 0.1 * INCH);
    const rim = Math.hypot(R - 0.1 * INCH, 0.3 * INCH); // from the centre to the bottom's edge
    expectNear(lipOf([hole]) / INCH, (R - rim) / INCH, 1e-12);
    const sleeved: Hole = {
      ...hole,
      open: { radius: 0.2 * INCH, depth: INCH },
      sleeve: { bore: { radius: 0.3 * INCH, depth: 0.1 * INCH }, height: 0.1 * INCH, density: 1 },
    };
    expectNear(lipOf([sleeved]) / INCH, (R - rim) / INCH, 1e-12);
  });

  test('a hole so slanted that its wall keeps outside the ball has none', () =>
    expect(lipOf([leaning(1.5, 0.5 * INCH, INCH)])).toBe(0));

  test('it is the wedge of ball over the wall nearest the surface, as walking along that wall finds it', () => {
    fc.assert(
      fc.property(within(0.02, 1.04), within(0.03, 0.6), within(0.6, 3), (slant, radiusIn, depthIn) => {
        const hole = leaning(slant, radiusIn * INCH, depthIn * INCH);
        const across = unit(cross(cross(hole.axis_B, hole.mouth_B), hole.axis_B));
        const start = addScaled(scale(R, hole.mouth_B), radiusIn * INCH, across);
        let edge: Vec3 | null = null;
        let thickness = 0;
        for (let t = -INCH; t < depthIn * INCH; t += 2e-3 * INCH) {
          const p = addScaled(start, t, hole.axis_B);
          if (norm(p) > R) continue;
          edge ??= p;
          const behind = R * Math.acos(Math.min(1, dot(unit(edge), unit(p))));
          if (behind > 0.25 * INCH) break;
          thickness = R - norm(p);
        }
        expect(Math.abs(lipOf([hole]) - thickness) / INCH).toBeLessThan(0.004);
      }),
      { numRuns: 200 },
    );
  });

  test('over a vent that meets its hole sooner it is as thick as the vent is deep there; at the hole’s edge there is none', () => {
    const hole: Hole = { ...leaning(0, 0.4 * INCH, 2 * INCH, 1 / 4.297), name: 'thumb' };
    const ventFrom = (overIn: number, deepIn: number): Hole => {
      const mouth_B = ballPoint((1 - overIn) / 4.297, 0);
      const end = addScaled(scale(R, hole.mouth_B), deepIn * INCH, hole.axis_B);
      const way = addScaled(end, -R, mouth_B);
      return {
        name: 'vent',
        into: 'thumb',
        mouth_B,
        axis_B: unit(way),
        open: { radius: 0.0625 * INCH, depth: norm(way) },
        sleeve: null,
        tip: 'flat',
      };
    };
    const leastOf = (overIn: number, deepIn: number) => lipOf([hole, ventFrom(overIn, deepIn)], 1) / INCH;
    expect(leastOf(0.7, 0.5)).toBeGreaterThan(0);
    expect(leastOf(0.7, 0.5)).toBeLessThan(leastOf(0.7, 1.5));
    expect(leastOf(0.48, 0.5)).toBeLessThanOrEqual(0);
    // nearly straight in, and a sixteenth of an inch away: the width along the surface is what is left, and the thumb's edge lies
    // R asin(r/R) − r = 0.0006 in farther out than on a plane, and as much again since the vent slants
    expectNear(leastOf(0.4 + 0.0625 + 0.0625, 2), 0.0625, 0.0015);
  });
});
