import fc from 'fast-check';
import { expect, test } from 'vitest';
import { coreMoments, sphereMoments } from '../../../src/ball/drill/ball-body.js';
import { fromMoments, type Moments } from '../../../src/ball/mass/mass-properties.js';
import {
  type Part,
  partMoments,
  stretchPart,
  turnPart,
  type UnitShape,
} from '../../../src/ball/solid/part.js';
import { partReach, supportPoint } from '../../../src/ball/solid/support.js';
import { diagonal, IDENTITY, type Mat3, mulVec } from '../../../src/math/mat3.js';
import { add, dot, type Vec3 } from '../../../src/math/vec3.js';
import { shiftMoments, stretchMoments } from '../../oracles/moved-moments.js';
import { partContains } from '../../oracles/part-contains.js';
import { polyhedronMoments } from '../../oracles/polyhedron.js';
import { point, rotation, unitShape, within } from '../../support/arbitraries.js';
import { expectNear } from '../../support/expect-near.js';

const solid = (shape: UnitShape, A: Mat3 = IDENTITY, c: Vec3 = [0, 0, 0]): Part => ({
  shape,
  A,
  c,
  excess: 1,
});

/** Squared radii of gyration along the axes: k_x² is about the x axis. */
const gyration = (m: Moments): Vec3 => {
  const { mass, I_Bcm_B } = fromMoments(m);
  return [I_Bcm_B[0][0] / mass, I_Bcm_B[1][1] / mass, I_Bcm_B[2][2] / mass];
};

test('a tetrahedron has the volume, centre and inertia worked out by hand: the test’s own meshes are weighed right', () => {
  const corners = [0, 0, 0, 5, 0, 0, 0, 4, 0, 0, 0, 3];
  const faces = [0, 2, 1, 0, 1, 3, 0, 3, 2, 1, 2, 3];
  const { mass, p_BoBcm_B, I_Bcm_B } = fromMoments(polyhedronMoments({ corners, faces }));
  expectNear(mass, 10, 1e-14);
  expectNear(p_BoBcm_B, [1.25, 1, 0.75], 1e-15);
  const want: Mat3 = [
    [9.375, 2.5, 1.875],
    [2.5, 12.75, 1.5],
    [1.875, 1.5, 15.375],
  ];
  expectNear(I_Bcm_B, want, 1e-13);
});

test('a cone frustum with radii 2 → 1 and height 3 (closed form, any mechanics handbook)', () => {
  const frustum = partMoments(solid({ kind: 'cone', top: 0.5 }, diagonal([2, 2, 1.5]), [0, 0, 1.5]));
  expectNear(frustum.mass, 21.9911485751, 1e-10);
  expectNear(frustum.first[2] / frustum.mass, 1.17857142857, 1e-11);
  expectNear(gyration(frustum), [1.33239795918, 1.33239795918, 1.32857142857], 1e-11);
});

test('a uniform ball 8.595 in across has RG 2.718 in, √(2/5) R', () => {
  const k2 = gyration(sphereMoments(8.595 / 2, 1));
  expect(Math.sqrt(k2[0]).toFixed(3)).toBe('2.718');
  expectNear(Math.sqrt(k2[0]), Math.sqrt(0.4) * 4.2975, 1e-15);
  expectNear(k2, gyration(partMoments(solid({ kind: 'ball' }, diagonal([4.2975, 4.2975, 4.2975])))), 1e-14);
});

test.each<{ shape: UnitShape; radius: (z: number) => number }>([
  { shape: { kind: 'ball' }, radius: (z) => Math.sqrt(1 - z * z) },
  { shape: { kind: 'cylinder' }, radius: () => 1 },
  { shape: { kind: 'cone', top: 0 }, radius: (z) => (1 - z) / 2 },
  { shape: { kind: 'cone', top: 0.37 }, radius: (z) => 1 + ((0.37 - 1) * (1 + z)) / 2 },
])('partMoments: $shape.kind equals the sum of its thin disks (Simpson)', ({ shape, radius }) => {
  // volume πr², second moments πr⁴/4 across and πr²z² along of each disk; all quartic at most, so Simpson's
  // error is h⁴ f''''/90 < 1e-9
  const disks = (f: (z: number) => number): number => {
    const n = 400;
    let sum = 0;
    for (let i = 0; i <= n; i++) sum += (i === 0 || i === n ? 1 : i % 2 ? 4 : 2) * f((2 * i) / n - 1);
    return (sum * 2) / n / 3;
  };
  const { mass, first, second } = partMoments(solid(shape));
  const across = disks((z) => (Math.PI * radius(z) ** 4) / 4);
  expectNear(
    mass,
    disks((z) => Math.PI * radius(z) ** 2),
    1e-9,
  );
  expectNear(first, [0, 0, disks((z) => Math.PI * radius(z) ** 2 * z)], 1e-9);
  expectNear(second, diagonal([across, across, disks((z) => Math.PI * radius(z) ** 2 * z * z)]), 1e-9);
});

/** Corners and faces of the box |x|, |y|, |z| ≤ 1 under p = A q + c. */
const boxMesh = (A: Mat3, c: Vec3) => ({
  corners: Array.from(
    { length: 8 },
    (_, i): Vec3 => [i & 1 ? 1 : -1, i & 2 ? 1 : -1, i & 4 ? 1 : -1],
  ).flatMap((q) => [...add(mulVec(A, q), c)]),
  faces: [
    [0, 2, 3, 1],
    [4, 5, 7, 6],
    [0, 1, 5, 4],
    [2, 6, 7, 3],
    [0, 4, 6, 2],
    [1, 3, 7, 5],
  ].flatMap(([a, b, d, e]) => [a, b, d, a, d, e]),
});

test('partMoments: a box under any affine map equals its tetrahedra (Mirtich 1996), mirrored maps too', () =>
  fc.assert(
    fc.property(point, point, point, point, (x, y, z, c) => {
      const A: Mat3 = [x, y, z];
      const mesh = polyhedronMoments(boxMesh(A, c));
      const sign = Math.sign(mesh.mass) || 1; // a mirrored mesh is inside out
      const box = partMoments(solid({ kind: 'box' }, A, c));
      expectNear(
        [box.mass, box.first, box.second],
        [sign * mesh.mass, scaled(sign, mesh.first), mesh.second.map((r) => scaled(sign, r))],
        1e-10,
      );
    }),
  ));

const scaled = (s: number, v: Vec3): Vec3 => [s * v[0], s * v[1], s * v[2]];

const stretch = within(0.3, 3);
const parts = fc.tuple(unitShape, rotation, point).map(([shape, A, c]) => solid(shape, A, c));

test('stretching and shifting a core, and stretching and shifting its moments, come to the same', () =>
  fc.assert(
    fc.property(
      fc.array(parts, { maxLength: 3 }),
      stretch,
      stretch,
      stretch,
      point,
      (core, a, b, c, shift) => {
        const s: Vec3 = [a, b, c];
        const built = coreMoments(core.map((part) => stretchPart(part, s, shift)));
        const mapped = shiftMoments(stretchMoments(coreMoments(core), s), shift);
        const size = 1 + mapped.mass * 100;
        expectNear(
          [built.mass, built.first, built.second],
          [mapped.mass, mapped.first, mapped.second],
          1e-14 * size,
        );
      },
    ),
  ));

test('turnPart: a part turned about the origin of its frame holds the turned points', () =>
  fc.assert(
    fc.property(parts, rotation, point, (part, R, p) => {
      expect(partContains(turnPart(part, R), mulVec(R, p))).toBe(partContains(part, p));
    }),
  ));

test('a capsule is a cylinder with half a ball at either end', () => {
  const half = 1.3;
  const capsule = partMoments(solid({ kind: 'capsule', half }));
  const cylinder = partMoments(solid({ kind: 'cylinder' }, diagonal([1, 1, half])));
  const ball = partMoments(solid({ kind: 'ball' }));
  expectNear(capsule.mass, cylinder.mass + ball.mass, 1e-14);
  expectNear(capsule.second[0][0], cylinder.second[0][0] + ball.second[0][0], 1e-14);
  // a half ball of mass m: centre 3/8 off its face (any mechanics handbook), zz about its face m/5
  const m = ball.mass / 2;
  const along = 2 * (m / 5 + 2 * half * m * (3 / 8) + m * half * half);
  expectNear(capsule.second[2][2], cylinder.second[2][2] + along, 1e-13);
});

test('partContains: holds the centre, and no point beyond partReach or a support point', () =>
  fc.assert(
    fc.property(parts, point, point, (part, p, u) => {
      fc.pre(Math.hypot(...u) > 0.01);
      expect(partContains(part, part.c)).toBe(true);
      if (!partContains(part, p)) return;
      expect(Math.hypot(...p)).toBeLessThanOrEqual(partReach(part) + 1e-12);
      expect(dot(p, u)).toBeLessThanOrEqual(dot(supportPoint(part, u), u) + 1e-12);
    }),
  ));

test('partReach: some point of the part lies that far out', () =>
  fc.assert(
    fc.property(parts, (part) => {
      const toCentre = (p: Vec3): Vec3 => add(scaled(1 - 1e-9, p), scaled(1e-9, part.c));
      const ends = directions.map((u) => supportPoint(part, u));
      const distances = ends.map((p) => Math.hypot(...p));
      const farthest = Math.max(...distances);
      expect(partContains(part, toCentre(ends[distances.indexOf(farthest)]))).toBe(true);
      // the directions lie some 3° apart, so the best of them falls short by 1 − cos 3° of the size at most
      expect(partReach(part)).toBeGreaterThanOrEqual(farthest - 1e-12);
      expect(partReach(part)).toBeLessThan(farthest + 0.02);
    }),
    { numRuns: 30 },
  ));

/** Spread evenly over the sphere along a spiral. */
const directions = Array.from({ length: 4000 }, (_, i): Vec3 => {
  const z = 1 - (2 * (i + 0.5)) / 4000;
  const a = i * Math.PI * (3 - Math.sqrt(5));
  return [Math.sqrt(1 - z * z) * Math.cos(a), Math.sqrt(1 - z * z) * Math.sin(a), z];
});
