import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  add,
  addScaled,
  cross,
  dot,
  norm,
  rotateAbout,
  scale,
  sub,
  unit,
  type Vec3,
} from '../../src/math/vec3.js';
import { direction, point, turn, within } from '../support/arbitraries.js';
import { expectNear } from '../support/expect-near.js';

test('cross: x × y = z, and the product is square to both', () => {
  expect(cross([1, 0, 0], [0, 1, 0])).toEqual([0, 0, 1]);
  fc.assert(
    fc.property(point, point, (a, b) => {
      expectNear([dot(cross(a, b), a), dot(cross(a, b), b)], [0, 0], 1e-14);
      // Lagrange's identity
      expectNear(dot(cross(a, b), cross(a, b)), dot(a, a) * dot(b, b) - dot(a, b) ** 2, 1e-13);
    }),
  );
});

test('add, sub, scale and addScaled agree with one another', () =>
  fc.assert(
    fc.property(point, point, within(-9, 9), (a, b, s) => {
      expectNear(addScaled(a, s, b), add(a, scale(s, b)), 1e-14);
      expectNear(sub(add(a, b), b), a, 1e-14);
    }),
  ));

test('unit: length one; the zero vector has no direction', () => {
  expectNear(norm(unit([3, -4, 12])), 1, 1e-15);
  expect(unit([0, 0, 0])).toEqual([Number.NaN, Number.NaN, Number.NaN]);
});

test('rotateAbout: right-handed: a quarter turn about z takes x to y', () =>
  expectNear(rotateAbout([1, 0, 0], [0, 0, 1], Math.PI / 2), [0, 1, 0], 1e-16));

test('rotateAbout: keeps lengths and the part along the axis, and turns add up', () =>
  fc.assert(
    fc.property(point, direction, turn, turn, (u: Vec3, axis, a, b) => {
      const turned = rotateAbout(u, axis, a);
      expectNear([norm(turned), dot(turned, axis)], [norm(u), dot(u, axis)], 1e-14);
      expectNear(rotateAbout(turned, axis, b), rotateAbout(u, axis, a + b), 1e-14);
    }),
  ));
