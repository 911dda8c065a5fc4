import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fitsInside } from '../../../src/ball/solid/fits-inside.js';
import { type Part, stretchPart, type UnitShape } from '../../../src/ball/solid/part.js';
import { partReach } from '../../../src/ball/solid/support.js';
import { diagonal } from '../../../src/math/mat3.js';
import type { Vec3 } from '../../../src/math/vec3.js';
import { point, rotation, within } from '../../support/arbitraries.js';

const solid = (shape: UnitShape, half: Vec3 = [1, 1, 1], c: Vec3 = [0, 0, 0]): Part => ({
  shape,
  A: diagonal(half),
  c,
  excess: 1,
});

const shapes = fc.constantFrom<UnitShape>(
  { kind: 'ball' },
  { kind: 'cylinder' },
  { kind: 'box' },
  { kind: 'cone', top: 0.4 },
  { kind: 'cone', top: 1.3 },
  { kind: 'capsule', half: 0.7 },
);
const size = within(0.3, 3);

/**
 * Points 15° apart: some point of an outline lies within 7.5° of the farthest one, of a sphere within 7.5° both ways. With p the farthest
 * and A q the nearest point looked at, p·p̂ − A q·p̂ ≤ |Aᵀp̂| (1 − cos δ), no more than this share of the sizes of A.
 */
const BULGE = 1 - Math.cos((7.5 * Math.SQRT2 * Math.PI) / 180);

test('fitsInside: a part fits a room of its reach, and none that is smaller by more than outlines bulge', () => {
  fc.assert(
    fc.property(shapes, rotation, point, fc.tuple(size, size, size), point, (shape, A, c, stretch, shift) => {
      const part: Part = { shape, A, c, excess: 1 };
      const reach = partReach(stretchPart(part, stretch, shift));
      const sizes = Math.hypot(...stretch) * Math.max(1, 'top' in shape ? shape.top : 0);
      expect(fitsInside(part, stretch, shift, reach * (1 + 1e-12))).toBe(true);
      const less = shape.kind === 'box' || shape.kind === 'capsule' ? 1e-9 : BULGE * sizes;
      expect(fitsInside(part, stretch, shift, reach - less - 1e-9)).toBe(false);
    }),
    { numRuns: 300 },
  );
});

test.each<{ name: string; part: Part; shift?: Vec3; reach: number }>([
  { name: 'a box by its corner', part: solid({ kind: 'box' }, [1, 2, 3]), reach: Math.sqrt(14) },
  { name: 'a ball by its pole', part: solid({ kind: 'ball' }, [1, 1, 2]), reach: 2 },
  { name: 'a ball by its lower pole', part: solid({ kind: 'ball' }), shift: [0, 0, -3], reach: 4 },
  { name: 'a ball by its equator', part: solid({ kind: 'ball' }), shift: [3, 0, 0], reach: 4 },
  { name: 'a cylinder by its lower rim', part: solid({ kind: 'cylinder' }), shift: [3, 0, -2], reach: 5 },
  { name: 'a cylinder by its upper rim', part: solid({ kind: 'cylinder' }), shift: [0, 3, 2], reach: 5 },
  { name: 'a cone by its wide rim', part: solid({ kind: 'cone', top: 0.5 }, [4, 4, 3]), reach: 5 },
  { name: 'a cone by its top', part: solid({ kind: 'cone', top: 2 }, [2, 2, 3]), reach: 5 },
])('fitsInside: $name, exactly', ({ part, shift = [0, 0, 0], reach }) => {
  expect(fitsInside(part, [1, 1, 1], shift, reach * (1 + 1e-12))).toBe(true);
  expect(fitsInside(part, [1, 1, 1], shift, reach * (1 - 1e-12))).toBe(false);
});

test('fitsInside: what lies in the middle of the room is held, though the room be far larger', () =>
  expect(fitsInside(solid({ kind: 'box' }), [1, 1, 1], [0, 0, 0], 100)).toBe(true));
