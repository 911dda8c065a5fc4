import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { boreSolid, depthAt } from '../../../src/ball/drill/bore-solid.js';
import { boreStretches } from '../../../src/ball/drill/bore-stretches.js';
import { uniformMoments } from '../../../src/ball/solid/stretch.js';
import type { HoleTip } from '../../../src/layout/hole.js';
import { scale, type Vec3 } from '../../../src/math/vec3.js';
import { direction, within } from '../../support/arbitraries.js';
import { expectNear } from '../../support/expect-near.js';

const R = 0.108;
const FINE = { radii: 24, angles: 24 };

const straight = (mouth_B: Vec3, radius: number, depth: number, tip: HoleTip = 'flat') =>
  boreSolid({ mouth_B, axis_B: scale(-1, mouth_B), tip }, { radius, depth }, R);

const volumeOf = (stretches: ReturnType<typeof boreStretches>): number => uniformMoments(stretches, 1).mass;

/** A cylinder from a plane at R − depth up to the sphere: a wall below the plane of its rim, and a cap above. */
function closedForm(radius: number, depth: number): number {
  const rim = Math.sqrt(R * R - radius * radius);
  const h = R - rim;
  return Math.PI * radius ** 2 * (rim - (R - depth)) + Math.PI * h ** 2 * (R - h / 3);
}

/** What a tip adds below the wall: a cone of 118° or half a ball. */
const TIPS: Readonly<Record<HoleTip, (radius: number) => number>> = {
  flat: () => 0,
  cone: (radius) => (Math.PI * radius ** 3) / Math.tan((59 * Math.PI) / 180) / 3,
  round: (radius) => (2 / 3) * Math.PI * radius ** 3,
};

describe('boreStretches', () => {
  test.each(['flat', 'cone', 'round'] as const)(
    'a bore with a %s end takes its own volume (closed form)',
    (tip) => {
      fc.assert(
        fc.property(direction, within(0.003, 0.02), within(0.03, 0.07), (mouth, radius, depth) => {
          const bore = straight(mouth, radius, depth, tip);
          const wanted = closedForm(radius, depth) + TIPS[tip](radius);
          // Gauss in r²: a tip that is linear in r costs a little
          expectNear(volumeOf(boreStretches(bore, R, [], FINE)) / wanted, 1, 1e-5);
        }),
        { numRuns: 30 },
      );
    },
  );

  test('all rays run down the bore, within its wall, from the sphere to its bottom; their areas make its section', () => {
    const bore = straight([0.6, 0, 0.8], 0.015, 0.05, 'cone');
    const stretches = boreStretches(bore, R, [], { radii: 5, angles: 12 });
    expect(stretches).toHaveLength(60);
    expectNear(
      stretches.reduce((sum, { area }) => sum + area, 0),
      Math.PI * 0.015 ** 2,
      1e-17,
    );
    for (const { a, d, s, e } of stretches) {
      expect(d).toEqual(bore.d);
      expectNear(Math.hypot(a[0] + s * d[0], a[1] + s * d[1], a[2] + s * d[2]), R, 1e-15);
      const aside = Math.hypot(a[0] - bore.mouth[0], a[1] - bore.mouth[1], a[2] - bore.mouth[2]);
      expect(aside).toBeLessThan(0.015);
      expectNear(e, depthAt(bore, aside), 1e-15);
    }
  });

  test('a bore at a slant: rays that miss the ball take nothing, and none begins outside it', () => {
    const bore = boreSolid(
      { mouth_B: [0, 0, 1], axis_B: [Math.sin(1.4), 0, -Math.cos(1.4)], tip: 'flat' },
      { radius: 0.03, depth: 0.06 },
      R,
    );
    const stretches = boreStretches(bore, R, [], { radii: 6, angles: 12 });
    expect(stretches.length).toBeGreaterThan(10);
    expect(stretches.length).toBeLessThan(72);
    for (const { a, d, s, e } of stretches) {
      expect(e).toBeGreaterThan(s);
      for (const t of [s, e])
        expect(Math.hypot(a[0] + t * d[0], a[1] + t * d[1], a[2] + t * d[2])).toBeLessThan(R + 1e-12);
    }
  });

  test('what other bores hold is left out: all of it of one in the same place, half of a bore that is half as deep', () => {
    const bore = straight([0, 0, 1], 0.01, 0.06);
    expect(boreStretches(bore, R, [bore], FINE)).toEqual([]);
    const shallow = straight([0, 0, 1], 0.01, 0.03);
    const left = volumeOf(boreStretches(bore, R, [shallow], FINE));
    expectNear(left / (Math.PI * 0.01 ** 2 * 0.03), 1, 1e-12);
    const elsewhere = straight([1, 0, 0], 0.01, 0.03);
    expect(boreStretches(bore, R, [elsewhere], FINE)).toEqual(boreStretches(bore, R, [], FINE));
  });
});
