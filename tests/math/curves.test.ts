import { describe, expect, test } from 'vitest';
import { arcBetween, someTangent } from '../../src/math/curves.js';
import { arcAngle, tangentToward } from '../../src/math/sphere.js';
import { dot, norm, unit, type Vec3 } from '../../src/math/vec3.js';

const u = unit([0.3, -0.2, 0.9]);

describe('someTangent', () => {
  test('is the tangent toward the other point', () => {
    const v = unit([0.1, 0.7, 0.4]);
    expect(someTangent(u, v)).toEqual(tangentToward(u, v));
  });

  test.each<{ name: string; v: Vec3 }>([
    { name: 'the same point', v: u },
    { name: 'the opposite one', v: [-u[0], -u[1], -u[2]] },
  ])('is some unit tangent where there is no telling which: $name', ({ v }) => {
    const along = someTangent(u, v);
    expect(norm(along)).toBeCloseTo(1, 14);
    expect(dot(along, u)).toBeCloseTo(0, 14);
  });
});

test('arcBetween: goes from one point to the other in even steps that add up to their angle', () => {
  const v = unit([-0.8, 0.1, 0.3]);
  const points = arcBetween(u, v);
  expect(arcAngle(points[0]!, u)).toBeLessThan(1e-14);
  expect(arcAngle(points.at(-1)!, v)).toBeLessThan(1e-14);
  const sum = points.slice(1).reduce((total, point, i) => total + arcAngle(points[i]!, point), 0);
  expect(sum).toBeCloseTo(arcAngle(u, v), 12);
});
