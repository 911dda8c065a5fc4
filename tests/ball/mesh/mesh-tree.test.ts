import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { crossMesh } from '../../../src/ball/mesh/cross-mesh.js';
import { type Mesh, vertexAt } from '../../../src/ball/mesh/mesh.js';
import { type MeshTree, meshTree } from '../../../src/ball/mesh/mesh-tree.js';
import type { Vec3 } from '../../../src/math/vec3.js';
import { direction, pointWithin } from '../../support/arbitraries.js';
import { box, type Facet, lathe, sphere } from '../../support/meshes/make-stl.js';
import { meshOf } from '../../support/meshes/meshes.js';

const cylinder = lathe(
  [
    [0, -1],
    [1, -1],
    [1, 1],
    [0, 1],
  ],
  300,
);
const meshes = [
  { name: 'one triangle', mesh: meshOf(box([1, 1, 1]).slice(0, 1)) },
  { name: 'a box', mesh: meshOf(box([1, 2, 3])) },
  { name: 'a ball', mesh: meshOf(sphere(1, 40)) },
  { name: 'a ball whose triangles stand in no order', mesh: meshOf(strewn(sphere(1, 12))) },
  { name: 'a cylinder, whose caps’ triangles all meet in one vertex', mesh: meshOf(cylinder) },
  // their centres coincide: nothing to cut between
  { name: 'one triangle many times', mesh: meshOf(Array.from({ length: 50 }, () => box([1, 1, 1])[0])) },
];

describe.each(meshes)('meshTree: $name', ({ mesh }) => {
  const tree = meshTree(mesh);
  const nodes = tree.skip.length;

  test('keeps every triangle once, with its corners in order', () => {
    const sorted = (triangles: Uint32Array) =>
      Array.from({ length: triangles.length / 3 }, (_, i) =>
        triangles.subarray(3 * i, 3 * i + 3).join(),
      ).sort();
    expect(sorted(tree.triangles)).toEqual(sorted(mesh.triangles));
  });

  test('has each triangle in one leaf, leaves in order, none of more than four', () => {
    let next = 0;
    for (let node = 0; node < nodes; node++) {
      expect(tree.start[node]).toBe(next); // also of an inner node: the triangles to come
      next += tree.leafSize[node];
      expect(tree.leafSize[node]).toBeLessThanOrEqual(4);
    }
    expect(next).toBe(mesh.triangles.length / 3);
    expect([tree.boxes.length / 6, tree.start.length, tree.leafSize.length]).toEqual([nodes, nodes, nodes]);
  });

  test('has every triangle below a node inside the node’s box, which is no larger than that needs', () => {
    for (let node = 0; node < nodes; node++) {
      const end = tree.start[tree.skip[node]] ?? tree.triangles.length / 3;
      const box = tree.boxes.subarray(6 * node, 6 * node + 6);
      expect(isInside(tree, 3 * tree.start[node], 3 * end, box)).toBe(true);
      const below = Array.from(tree.triangles.subarray(3 * tree.start[node], 3 * end), (i) =>
        vertexAt(tree, i),
      );
      for (const k of [0, 1, 2]) {
        const along = below.map((corner) => corner[k]);
        expect([box[k], box[k + 3]]).toEqual([Math.min(...along), Math.max(...along)]);
      }
    }
  });

  test('cuts every node so that the centres below its children lie apart along an axis', () => {
    const centres = (node: number): Vec3[] => {
      const end = tree.start[tree.skip[node]] ?? tree.triangles.length / 3;
      return Array.from({ length: end - tree.start[node] }, (_, i) =>
        twiceCentreOf(tree, tree.start[node] + i),
      );
    };
    for (let node = 0; node < nodes; node++) {
      if (tree.leafSize[node] > 0) continue;
      const [first, second] = [centres(node + 1), centres(tree.skip[node + 1])];
      const isCut = ([0, 1, 2] as const).some(
        (k) => Math.max(...first.map((c) => c[k])) <= Math.min(...second.map((c) => c[k])),
      );
      expect(isCut).toBe(true);
    }
  });

  test('skips to where a walk into the node’s children ends', () => {
    const endOf = (node: number): number => {
      if (tree.leafSize[node] > 0) return node + 1;
      return endOf(endOf(node + 1));
    };
    for (let node = 0; node < nodes; node++) expect(tree.skip[node]).toBe(endOf(node));
  });

  test('keeps every triangle from no line that meets it: crossings are those of trying each triangle', () => {
    let met = 0;
    fc.assert(
      fc.property(pointWithin(2), direction, (a, d) => {
        const [byTree, byTrying]: [number[], number[]] = [[], []];
        const count = crossMesh(byTree, tree, a, d);
        expect(crossMesh(byTrying, inOneLeaf(mesh), a, d)).toBe(count);
        expect(byTree.slice(0, count)).toEqual(byTrying.slice(0, count));
        met += count;
      }),
      { numRuns: 300, seed: 1 },
    );
    expect(met).toBeGreaterThan(0);
  });
});

test('meshTree: a mesh of no triangles has no nodes', () => expect(meshTree(meshOf([])).skip.length).toBe(0));

/** All triangles in one leaf, in a box that no line misses. */
const inOneLeaf = (mesh: Mesh): MeshTree => ({
  ...mesh,
  boxes: Float64Array.of(-10, -10, -10, 10, 10, 10),
  skip: Uint32Array.of(1),
  start: Uint32Array.of(0),
  leafSize: Uint32Array.of(mesh.triangles.length / 3) as never, // a leaf of the tree itself holds four at most
});

/** By a stride that shares no factor with their number. */
function strewn(facets: readonly Facet[]): readonly Facet[] {
  return facets.map((_, i) => facets[(7919 * i) % facets.length]);
}

/** Twice the middle of the box around a triangle. */
function twiceCentreOf(mesh: Mesh, triangle: number): Vec3 {
  const corners = [0, 1, 2].map((i) => vertexAt(mesh, mesh.triangles[3 * triangle + i]));
  const along = (k: 0 | 1 | 2): number[] => corners.map((corner) => corner[k]);
  const middle = (k: 0 | 1 | 2): number => Math.min(...along(k)) + Math.max(...along(k));
  return [middle(0), middle(1), middle(2)];
}

function isInside(mesh: Mesh, from: number, to: number, box: Float64Array): boolean {
  for (let i = from; i < to; i++)
    if (!vertexAt(mesh, mesh.triangles[i]).every((x, k) => x >= box[k] && x <= box[k + 3])) return false;
  return true;
}
