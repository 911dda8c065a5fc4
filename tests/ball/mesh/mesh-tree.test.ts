import { describe, expect, test } from 'vitest';
import { type Mesh, vertexAt } from '../../../src/ball/mesh/mesh.js';
import { meshTree } from '../../../src/ball/mesh/mesh-tree.js';
import { box, lathe, sphere } from './make-stl.js';
import { meshOf } from './meshes.js';

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
  });

  test('has every triangle below a node inside the node’s box', () => {
    for (let node = 0; node < nodes; node++) {
      const end = tree.start[tree.skip[node]] ?? tree.triangles.length / 3;
      const box = tree.boxes.subarray(6 * node, 6 * node + 6);
      expect(isInside(tree, 3 * tree.start[node], 3 * end, box)).toBe(true);
    }
  });

  test('skips to where a walk into the node’s children ends', () => {
    const endOf = (node: number): number => {
      if (tree.leafSize[node] > 0) return node + 1;
      return endOf(endOf(node + 1));
    };
    for (let node = 0; node < nodes; node++) expect(tree.skip[node]).toBe(endOf(node));
  });

  test('survives a structured clone', () => expect(structuredClone(tree)).toEqual(tree));
});

test('meshTree: a mesh of no triangles has no nodes', () => expect(meshTree(meshOf([])).skip.length).toBe(0));

function isInside(mesh: Mesh, from: number, to: number, box: Float64Array): boolean {
  for (let i = from; i < to; i++)
    if (!vertexAt(mesh, mesh.triangles[i]).every((x, k) => x >= box[k] && x <= box[k + 3])) return false;
  return true;
}
