import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { UnitShape } from '../../../src/ball/solid/part.js';
import { crossShape, type Interval } from '../../../src/ball/solid/ray-interval.js';
import { addScaled, type Vec3 } from '../../../src/math/vec3.js';
import { direction, within } from '../../support/arbitraries.js';
import { expectNear } from '../../support/expect-near.js';

/** How far outside a unit shape a point lies, in a measure that is zero on its surface; negative inside. */
function outside(shape: UnitShape, [x, y, z]: Vec3): number {
  switch (shape.kind) {
    case 'ball':
      return Math.hypot(x, y, z) - 1;
    case 'cylinder':
      return Math.max(Math.hypot(x, y) - 1, Math.abs(z) - 1);
    case 'box':
      return Math.max(Math.abs(x), Math.abs(y), Math.abs(z)) - 1;
    case 'cone':
      return Math.max(Math.hypot(x, y) - (1 + ((shape.top - 1) * (1 + z)) / 2), Math.abs(z) - 1);
    case 'capsule':
      return Math.hypot(x, y, Math.max(0, Math.abs(z) - shape.half)) - 1;
  }
}

const cross = (shape: UnitShape, o: Vec3, d: Vec3): Interval => {
  const hit: Interval = { enter: 0, leave: 0 };
  crossShape(hit, shape, ...o, ...d);
  return hit;
};

const shapes = fc.oneof(
  fc.constantFrom<UnitShape>({ kind: 'ball' }, { kind: 'cylinder' }, { kind: 'box' }),
  within(0, 1.5).map((top): UnitShape => ({ kind: 'cone', top })),
  fc.constantFrom<UnitShape>({ kind: 'cone', top: 0 }, { kind: 'cone', top: 1 }),
  fc.constantFrom(0, 0.5, 1, 1.7).map((half): UnitShape => ({ kind: 'capsule', half })),
);
/** Near the shapes, and often exactly on their faces, axes and apexes. */
const coordinate = fc.oneof(within(-2, 2), fc.constantFrom(-1, 0, 0.5, 1));
const start = fc.tuple(coordinate, coordinate, coordinate);
/** Also along the axes, the diagonals and the sides of a cone (slope 2 for an apex). */
const heading = fc.oneof(
  direction,
  fc
    .tuple(fc.constantFrom(-1, 0, 1e-9, 1), fc.constantFrom(-1, 0, 1), fc.constantFrom(-2, -1, 0, 1e-8, 2))
    .filter((d) => Math.hypot(...d) > 0.5)
    .map(([x, y, z]): Vec3 => [x, y, z]),
);
const along = within(-4, 4);

/** Rounding of the roots where a ray grazes a surface is the square root of that of the coordinates. */
const GRAZING = 1e-6;

test('crossShape: points between enter and leave are inside, all others outside', () =>
  fc.assert(
    fc.property(
      shapes,
      start,
      heading,
      fc.array(along, { minLength: 30, maxLength: 30 }),
      (shape, o, d, ts) => {
        const { enter, leave } = cross(shape, o, d);
        for (const t of ts) {
          const off = outside(shape, addScaled(o, t, d));
          const claimed = t >= enter && t <= leave;
          if (claimed) expect(off).toBeLessThan(GRAZING);
          else expect(off).toBeGreaterThan(-GRAZING);
        }
      },
    ),
    { numRuns: 3000 },
  ));

test('crossShape: the ends of the stretch lie on the surface', () =>
  fc.assert(
    fc.property(shapes, start, heading, (shape, o, d) => {
      const { enter, leave } = cross(shape, o, d);
      fc.pre(leave > enter);
      for (const t of [enter, leave]) expectNear(outside(shape, addScaled(o, t, d)), 0, GRAZING);
    }),
    { numRuns: 3000 },
  ));

test.each<{ name: string; shape: UnitShape; o: Vec3; d: Vec3; want: [number, number] }>([
  { name: 'a ball through the middle', shape: { kind: 'ball' }, o: [0, 0, -3], d: [0, 0, 1], want: [2, 4] },
  {
    name: 'a cylinder along its axis',
    shape: { kind: 'cylinder' },
    o: [0.3, 0, 0],
    d: [0, 0, 1],
    want: [-1, 1],
  },
  { name: 'a box across', shape: { kind: 'box' }, o: [0, 0.9, 0.9], d: [2, 0, 0], want: [-0.5, 0.5] },
  // radius (1 − z)/2 at height z: x = 0.5 is met at z = 0
  {
    name: 'a full cone down its axis',
    shape: { kind: 'cone', top: 0 },
    o: [0.5, 0, -1],
    d: [0, 0, 1],
    want: [0, 1],
  },
  {
    name: 'a full cone along its side',
    shape: { kind: 'cone', top: 0 },
    o: [0.75, 0, -1],
    d: [-1, 0, 2],
    want: [0, 0.875],
  },
  {
    name: 'a frustum that widens',
    shape: { kind: 'cone', top: 1.5 },
    o: [1.25, 0, 0],
    d: [0, 0, 1],
    want: [0, 1],
  },
])('crossShape: $name', ({ shape, o, d, want }) => {
  const { enter, leave } = cross(shape, o, d);
  expectNear([enter, leave], want, 1e-15);
});

test.each<{ name: string; shape: UnitShape; o: Vec3; d: Vec3 }>([
  { name: 'a ball that is only touched', shape: { kind: 'ball' }, o: [1, 0, 0], d: [0, 1, 0] },
  { name: 'a cylinder passed alongside', shape: { kind: 'cylinder' }, o: [1.1, 0, 0], d: [0, 0, 1] },
  { name: 'a box passed over', shape: { kind: 'box' }, o: [0, 0, 1.01], d: [1, 1, 0] },
  {
    name: 'the mirror image of a cone beyond its apex',
    shape: { kind: 'cone', top: 0 },
    o: [0.2, 0, 1.5],
    d: [1, 0, 0],
  },
])('crossShape: $name has no stretch', ({ shape, o, d }) => {
  const { enter, leave } = cross(shape, o, d);
  expect(leave).toBeLessThanOrEqual(enter);
});
