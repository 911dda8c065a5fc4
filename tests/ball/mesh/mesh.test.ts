import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { edgeFaults } from '../../../src/ball/mesh/edge-faults.js';
import { coreToFile, type MeshPose, placeMesh, vertexAt } from '../../../src/ball/mesh/mesh.js';
import { mulVec } from '../../../src/math/mat3.js';
import { add, scale, type Vec3 } from '../../../src/math/vec3.js';
import { pointWithin, rotation, within } from '../../support/arbitraries.js';
import { expectNear } from '../../support/expect-near.js';
import { box, type Facet, lathe, mapped, sphere } from '../../support/meshes/make-stl.js';
import { meshOf } from '../../support/meshes/meshes.js';

const cornersOf = (facets: readonly Facet[]): Float32Array => Float32Array.from(facets.flat(2));
const usedVertices = (triangles: Uint32Array): number => new Set(triangles).size;
const IN_MM: MeshPose = {
  unit: 0.001,
  R_CF: [
    [0, -1, 0],
    [1, 0, 0],
    [0, 0, 1],
  ],
  p_BoFo_C: [0.01, 0.02, 0.03],
};

test('placeMesh: a box of 36 corners has 8 vertices', () => {
  const { positions, triangles } = meshOf(box([1, 2, 3]));
  expect(positions.length / 3).toBe(8);
  expect(triangles.length / 3).toBe(12);
});

test('placeMesh: a ball’s vertices are as many as Euler’s formula says, V − E + F = 2 with E = 3F/2', () => {
  const { positions, triangles } = meshOf(sphere(45, 20));
  expect(positions.length / 3).toBe(2 + triangles.length / 6);
});

test('placeMesh: zero and minus zero are one place', () => {
  const flipped = box([1, 1, 1]).map(
    (facet, i) => mapped([facet], ([x, y, z]) => [x - 1 || (i % 2 ? 0 : -0), y, z])[0],
  );
  expect(usedVertices(meshOf(flipped).triangles)).toBe(8);
});

describe('placeMesh: corners that programs rounded apart', () => {
  const jittered = (steps: number): Facet[] => {
    // up to `steps` of the largest coordinate's float32 steps, another for each triangle
    let n = 0;
    const step = 64 * 2 ** -23;
    return mapped(sphere(100, 12), (p) => {
      n += 1;
      return add(p, scale(step * steps, [Math.sin(n), Math.sin(7 * n), Math.cos(5 * n)]));
    });
  };

  test('by a step or two are welded: the ball stays closed', () => {
    const mesh = meshOf(jittered(1.5));
    expect(edgeFaults(mesh)).toEqual([]);
    expect(usedVertices(mesh.triangles)).toBe(2 + mesh.triangles.length / 6);
  });

  test('by a thousand steps are not: each edge is open', () =>
    expect(edgeFaults(meshOf(jittered(1000)))).toMatchObject([{ kind: 'open' }]));
});

test('placeMesh: triangles whose corners meet are dropped and counted, and what is left is still closed', () => {
  // a ball made in the careless way, with two triangles to a side at the poles too
  const careless = lathe(
    Array.from({ length: 9 }, (_, i): [number, number] => [
      Math.max(1e-9, Math.sin((Math.PI * i) / 8)),
      -Math.cos((Math.PI * i) / 8),
    ]),
    16,
  );
  const pose: MeshPose = { ...IN_MM, p_BoFo_C: [0, 0, 0] };
  const { mesh, dropped } = placeMesh(cornersOf(careless), pose);
  expect(careless.length).toBe(2 * 8 * 16);
  expect(dropped).toBe(2 * 16);
  expect(edgeFaults(mesh)).toEqual([]);
});

test('placeMesh: a flat triangle whose corners are apart stays, since its neighbours need it', () => {
  // the top of a box with one more vertex on an edge, reached by a triangle without area
  const [a, b, c, d]: Vec3[] = [
    [0, 0, 0],
    [2, 0, 0],
    [0, 2, 0],
    [1, 0, 0],
  ];
  const apex: Vec3 = [0, 0, 2];
  const mesh = meshOf([
    [a, c, b],
    [a, b, d], // flat
    [a, d, apex],
    [d, b, apex],
    [b, c, apex],
    [c, a, apex],
  ]);
  expect(mesh.triangles.length / 3).toBe(6);
  expect(edgeFaults(mesh)).toEqual([]);
});

test('placeMesh: the pose scales first, then turns, then moves', () => {
  const { mesh } = placeMesh(
    cornersOf([
      [
        [10, 0, 0],
        [0, 20, 0],
        [0, 0, 30],
      ],
    ]),
    IN_MM,
  );
  // (10, 0, 0) mm turned a quarter about z is (0, 10, 0) mm
  expectNear(vertexAt(mesh, 0), [0.01, 0.03, 0.03], 1e-15);
  expectNear(vertexAt(mesh, 1), [-0.01, 0.02, 0.03], 1e-15);
  expectNear(vertexAt(mesh, 2), [0.01, 0.02, 0.06], 1e-15);
});

test('coreToFile: undoes the pose', () =>
  fc.assert(
    fc.property(
      rotation,
      pointWithin(0.1),
      pointWithin(100),
      within(0.001, 0.03),
      (R_CF, p_BoFo_C, p_F, unit) => {
        const p_C = add(p_BoFo_C, mulVec(R_CF, scale(unit, p_F)));
        expectNear(coreToFile({ unit, R_CF, p_BoFo_C }, p_C), p_F, 1e-12);
      },
    ),
  ));
