import { geoInterpolate } from 'd3-geo';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { DEGREE } from '../../src/base/units.js';
import { transpose } from '../../src/math/mat3.js';
import { arcAngle, clockwiseTurn, otherLeg, tangentToward, walk } from '../../src/math/sphere.js';
import { dot, rotateAbout, type Vec3 } from '../../src/math/vec3.js';
import { angleOfArcs, d3Arc, lonLat } from '../oracles/great-circle.js';
import { direction, rotation, within } from '../support/arbitraries.js';
import { expectNear } from '../support/expect-near.js';

const X: Vec3 = [1, 0, 0];
const Y: Vec3 = [0, 1, 0];
const Z: Vec3 = [0, 0, 1];

test('right triangle with legs 30° and 40° (Todhunter, Spherical Trigonometry, art. 62)', () => {
  const a = walk(Z, X, 30 * DEGREE);
  const b = walk(Z, Y, 40 * DEGREE);
  expect(arcAngle(a, b) / DEGREE).toBeCloseTo(48.43923743, 8);
  // each angle faces the leg that ends at the other corner
  expect(Math.abs(clockwiseTurn(b, Z, a)) / DEGREE).toBeCloseTo(41.93010519, 8);
  expect(Math.abs(clockwiseTurn(a, Z, b)) / DEGREE).toBeCloseTo(59.210266971, 8);
  expect((otherLeg(48.43923743 * DEGREE, 30 * DEGREE) as number) / DEGREE).toBeCloseTo(40, 7);
});

test('otherLeg: A = 90°, a = 40°, c = 70° has no solution (cos b = 2.24) and is reported so, never NaN', () => {
  expect(otherLeg(40 * DEGREE, 70 * DEGREE)).toBeNull();
  expect(otherLeg(Number.NaN, 0.1)).toBeNull();
});

test('otherLeg: a leg of no length leaves the hypotenuse; small triangles are flat', () => {
  expectNear(otherLeg(0.7, 0) as number, 0.7, 1e-15);
  // Pythagoras on a plane; the sphere differs by arc⁴, far below the tolerance
  expectNear(otherLeg(5e-6, 3e-6) as number, 4e-6, 1e-15);
});

test('otherLeg: cos h = cos a · cos b, for every pair of legs', () => {
  const leg = within(1e-3, 1.5);
  fc.assert(
    fc.property(leg, leg, (a, b) => {
      const h = Math.atan2(Math.hypot(Math.sin(a), Math.cos(a) * Math.sin(b)), Math.cos(a) * Math.cos(b));
      // dh = cos a sin b / sin h · db: what rounding of h alone does to b
      expectNear(otherLeg(h, a) as number, b, 1e-15 + 4e-16 / (Math.cos(a) * Math.sin(b)));
    }),
  );
});

test('arcAngle: small and nearly opposite arcs keep their digits', () => {
  for (const arc of [1e-12, 1e-9, 1e-4]) {
    expectNear(arcAngle(Z, walk(Z, X, arc)), arc, 1e-16);
    expectNear(arcAngle(Z, walk(Z, X, Math.PI - arc)), Math.PI - arc, 1e-15);
  }
});

test('arcAngle: agrees with another program (d3-geo 3.1.2)', () =>
  fc.assert(
    // d3's haversine loses half its digits near opposite points, hence the loose tolerance
    fc.property(direction, direction, (u, v) => expectNear(arcAngle(u, v), d3Arc(u, v), 3e-8)),
  ));

test('arcAngle: no detour is shorter (triangle inequality)', () =>
  fc.assert(
    fc.property(direction, direction, direction, (u, v, w) => {
      expect(arcAngle(u, w)).toBeLessThanOrEqual(arcAngle(u, v) + arcAngle(v, w) + 1e-15);
    }),
  ));

test('walk: a third of the way lies where another program puts it (d3-geo 3.1.2)', () =>
  fc.assert(
    fc.property(direction, direction, (u, v) => {
      const arc = arcAngle(u, v);
      fc.pre(arc > 0.01 && arc < 3.1);
      const third = walk(u, tangentToward(u, v), arc / 3);
      const [lon, lat] = geoInterpolate(lonLat(u), lonLat(v))(1 / 3);
      const want: Vec3 = [
        Math.cos(lat * DEGREE) * Math.sin(lon * DEGREE),
        Math.sin(lat * DEGREE),
        Math.cos(lat * DEGREE) * Math.cos(lon * DEGREE),
      ];
      expectNear(third, want, 1e-12);
      expectNear(dot(tangentToward(u, v), u), 0, 1e-13);
    }),
  ));

test('clockwiseTurn: seen from outside with up upward, the right hand lies clockwise of up', () => {
  // at the grip centre the bowler looks along −z; x is to the right, y upward
  expectNear(clockwiseTurn(Z, Y, X), Math.PI / 2, 1e-15);
  expectNear(clockwiseTurn(Z, X, Y), -Math.PI / 2, 1e-15);
});

test('clockwiseTurn: is the angle that three arcs measured by another program enclose (d3-geo 3.1.2)', () => {
  const arc = within(0.2, 2);
  fc.assert(
    fc.property(rotation, arc, arc, within(0.2, 2.9), (R, ab, ac, turned) => {
      const [u, toB] = transpose(R);
      const b = walk(u, toB, ab);
      const c = walk(u, rotateAbout(toB, u, -turned), ac);
      expectNear(clockwiseTurn(u, b, c), turned, 1e-13);
      expectNear(clockwiseTurn(u, c, b), -turned, 1e-13);
      expectNear(angleOfArcs(d3Arc(b, c), d3Arc(u, b), d3Arc(u, c)), turned, 1e-12);
    }),
  );
});
