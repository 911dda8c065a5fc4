import fc from 'fast-check';
import { expect, test } from 'vitest';
import { overlapPlace, type Triangle } from '../../../src/ball/mesh/triangle-overlap.js';
import { determinant, mulVec } from '../../../src/math/mat3.js';
import { cross, sub, unit, type Vec3 } from '../../../src/math/vec3.js';
import { pointWithin, rotation, within } from '../../support/arbitraries.js';
import { expectNear } from '../../support/expect-near.js';

type Corners = Triangle['corners'];

const triangleOf = (corners: Corners): Triangle => ({
  corners,
  normal: unit(cross(sub(corners[1], corners[0]), sub(corners[2], corners[0]))),
});

/** Six times the volume that four points span, positive when d lies above the triangle a b c. */
const volume = (a: Vec3, b: Vec3, c: Vec3, d: Vec3): number => determinant([sub(b, a), sub(c, a), sub(d, a)]);

const sidesOf = ([p, q, r]: Corners): [Vec3, Vec3][] => [
  [p, q],
  [q, r],
  [r, p],
];

/** Whether a line from p to q goes through a triangle: seen from p, q lies within its three sides. Null when it nearly does not. */
function pierces([p, q]: [Vec3, Vec3], corners: Corners): boolean | null {
  const [a, b, c] = corners;
  const ends = [volume(a, b, c, p), volume(a, b, c, q)];
  const around = sidesOf(corners).map(([x, y]) => volume(p, q, x, y));
  if ([...ends, ...around].some((v) => Math.abs(v) < 1e-6)) return null;
  return ends[0] * ends[1] < 0 && new Set(around.map(Math.sign)).size === 1;
}

const coordinate = within(-1, 1);
const corner = pointWithin(1);
const corners = fc.tuple(corner, corner, corner);
const GRAIN = 1e-9;

// what two triangles share begins and ends where a side of one goes through the other
test('overlapPlace: two triangles cut one another when a side of one goes through the other, and only then', () => {
  let cuts = 0;
  fc.assert(
    fc.property(corners, corners, (a, b) => {
      const all = [
        ...sidesOf(a).map((side) => pierces(side, b)),
        ...sidesOf(b).map((side) => pierces(side, a)),
      ];
      fc.pre(!all.includes(null));
      const place = overlapPlace(triangleOf(a), triangleOf(b), GRAIN);
      expect(place !== null).toBe(all.includes(true));
      if (place) cuts += 1;
    }),
    { numRuns: 3000 },
  );
  expect(cuts).toBeGreaterThan(100);
});

const turnOf = ([a, b, c]: Corners): number => cross(sub(b, a), sub(c, a))[2];

/** The same in the plane z = 0: sides that cross, or a corner of one inside the other. Null when nearly so. */
function flatOverlap(a: Corners, b: Corners): boolean | null {
  const turns = (p: Vec3, q: Vec3, r: Vec3): number => turnOf([p, q, r]);
  const crossings = sidesOf(a).flatMap(([p, q]) =>
    sidesOf(b).map(([r, s]) => [turns(p, q, r), turns(p, q, s), turns(r, s, p), turns(r, s, q)]),
  );
  const inside = [
    ...a.map((p) => sidesOf(b).map(([r, s]) => turns(r, s, p))),
    ...b.map((p) => sidesOf(a).map(([r, s]) => turns(r, s, p))),
  ];
  if ([...crossings, ...inside].flat().some((x) => Math.abs(x) < 1e-6)) return null;
  return (
    crossings.some(([x, y, z, w]) => x * y < 0 && z * w < 0) || inside.some((all) => all.every((x) => x > 0))
  );
}

test('overlapPlace: triangles in one plane overlap when their sides cross or one holds the other, in any plane', () => {
  const flat = fc
    .tuple(coordinate, coordinate, coordinate, coordinate, coordinate, coordinate)
    .map(
      ([a, b, c, d, e, f]): Corners => [
        [a, b, 0],
        [c, d, 0],
        [e, f, 0],
      ],
    )
    .map((t): Corners => (turnOf(t) > 0 ? t : [t[0], t[2], t[1]]));
  const seen = [0, 0];
  fc.assert(
    fc.property(flat, flat, rotation, (a, b, R) => {
      const want = flatOverlap(a, b);
      fc.pre(want !== null);
      seen[want ? 1 : 0] += 1;
      const turned = (t: Corners): Triangle => triangleOf(t.map((p) => mulVec(R, p)) as unknown as Corners);
      const back = ([p, q, r]: Corners): Corners => [p, r, q];
      expect(overlapPlace(turned(a), turned(b), GRAIN) !== null).toBe(want);
      expect(overlapPlace(turned(a), turned(back(b)), GRAIN)).toBeNull(); // back to back
    }),
    { numRuns: 3000 },
  );
  expect(Math.min(...seen)).toBeGreaterThan(300);
});

test('overlapPlace: where two triangles lie flat on one another, between their middles', () => {
  const at = (x: number): Triangle =>
    triangleOf([
      [x, 0, 5],
      [x + 3, 0, 5],
      [x, 3, 5],
    ]);
  const [x, y, z] = overlapPlace(at(0), at(0.5), GRAIN)!;
  expectNear([x, y, z], [1.25, 1, 5], 1e-15); // the means of their corners are (1, 1, 5) and (1.5, 1, 5)
});

test('overlapPlace: a cut less deep than the grain is touching', () => {
  const floor = triangleOf([
    [-1, -1, 0],
    [1, -1, 0],
    [0, 1, 0],
  ]);
  const wall = (depth: number): Triangle =>
    triangleOf([
      [-0.1, 0, 1],
      [0.1, 0, 1],
      [0, 0, -depth],
    ]);
  expect(overlapPlace(floor, wall(0.0009), 0.001)).toBeNull();
  expect(overlapPlace(floor, wall(0.02), 0.001)).not.toBeNull();
});
