import { describe, expect, test } from 'vitest';
import { meshSection } from '../../../src/ball/section/mesh-section.js';
import { solidSection } from '../../../src/ball/section/solid-section.js';
import { solidMoments } from '../../../src/ball/solid/layered-core.js';
import { type Vec3, ZERO } from '../../../src/math/vec3.js';
import { areaOf } from '../../oracles/loop-moments.js';
import { box, insideOut, lathe, moved, sphere } from '../../support/meshes/make-stl.js';
import { meshOf, treeOf } from '../../support/meshes/meshes.js';
import { planeAcross } from '../../support/plane-across.js';

describe('meshSection', () => {
  test('a cube of edge 2 cut across its corner is the hexagon of side √2 (closed form)', () => {
    const loops = meshSection(meshOf(box([1, 1, 1])), planeAcross([1, 1, 1], 0));
    expect(loops).toHaveLength(1);
    expect(areaOf(loops)).toBeCloseTo(3 * Math.sqrt(3), 12);
  });

  test('a plane along a face, or through vertices, still gives closed loops', () => {
    expect(areaOf(meshSection(meshOf(box([1, 1, 1])), planeAcross([0, 0, 1], 1)))).toBeCloseTo(4, 12);
    expect(areaOf(meshSection(meshOf(box([1, 1, 1])), planeAcross([1, 1, 0], 0)))).toBeCloseTo(
      4 * Math.sqrt(2),
      12,
    );
    expect(meshSection(meshOf(box([1, 1, 1])), planeAcross([0, 0, 1], -1.001))).toEqual([]);
  });

  test('a hollow is a loop of its own, taken off', () => {
    const hollow = [...box([1, 1, 1]), ...insideOut(box([0.5, 0.5, 0.5]))];
    const loops = meshSection(meshOf(hollow), planeAcross([0, 0, 1], 0.1));
    expect(loops).toHaveLength(2);
    expect(areaOf(loops)).toBeCloseTo(3, 12);
  });

  test('two bodies of one file are two loops', () => {
    const two = [...moved(box([1, 1, 1]), [2, 0, 0]), ...moved(box([1, 1, 1]), [-2, 0, 0])];
    expect(meshSection(meshOf(two), planeAcross([0, 0, 1], 0)).map((loop) => areaOf([loop]))).toEqual([
      expect.closeTo(4, 12),
      expect.closeTo(4, 12),
    ]);
  });

  test('the same areas as the solid that the mesh was made of, within its facets (a lathe of 256 sides)', () => {
    const profile = [
      [0.6, -1],
      [1, 1],
    ] as const;
    const turned = { mesh: treeOf(lathe([[0, -1], ...profile, [0, 1]], 256)) };
    const cone = {
      shape: { kind: 'cone', top: 1 / 0.6 },
      A: [
        [0.6, 0, 0],
        [0, 0.6, 0],
        [0, 0, 1],
      ],
      c: ZERO,
    } as const;
    for (const [normal, at] of [
      [[0, 0, 1], 0.3],
      [[1, 0, 0], 0.2],
      [[1, 2, 1], 0.1],
    ] as const) {
      const plane = planeAcross(normal as unknown as Vec3, at);
      const [a, b] = [areaOf(solidSection(turned, plane)), areaOf(solidSection(cone, plane))];
      expect(Math.abs(a - b) / b).toBeLessThan(6e-4);
    }
  });

  test('areas of even steps add up to the volume of its tetrahedra (Cavalieri, midpoint rule)', () => {
    const mesh = treeOf(sphere(1, 24));
    const volume = solidMoments({ mesh }).mass;
    const steps = 400;
    let sum = 0;
    for (let i = 0; i < steps; i += 1)
      sum += (2 / steps) * areaOf(meshSection(mesh, planeAcross([1, 2, -1], -1 + (2 * (i + 0.5)) / steps)));
    expect(Math.abs(sum - volume) / volume).toBeLessThan(2e-5);
  });
});
