import type { Vec3 } from '../../math/vec3.js';
import { faceNormals } from './face-normals.js';
import { type Mesh, vertexAt } from './mesh.js';
import type { MeshTree } from './mesh-tree.js';
import { overlapPlace, type Triangle } from './triangle-overlap.js';

/**
 * A place where a mesh cuts through itself, m; null when it does not.
 *
 * Every two triangles whose boxes meet are tried, except neighbours along an edge. Parts that only touch,
 * to within the grain, do not cut: they share no matter.
 */
export function selfCut(tree: MeshTree): Vec3 | null {
  const normals = faceNormals(tree);
  const { boxes, skip, start, leafSize } = tree;
  const box = new Float64Array(6);
  for (let leaf = 0; leaf < skip.length; leaf++) {
    for (let first = start[leaf]; first < start[leaf] + leafSize[leaf]; first++) {
      boxOf(box, tree, first);
      // behind a leaf in the list stand all later triangles
      for (let node = leaf; node < skip.length; ) {
        if (!boxesMeet(box, boxes, 6 * node)) {
          node = skip[node];
          continue;
        }
        for (let second = start[node]; second < start[node] + leafSize[node]; second++) {
          if (second <= first || !mayOverlap(tree, normals, first, second)) continue;
          const place = overlapPlace(
            triangleAt(tree, normals, first),
            triangleAt(tree, normals, second),
            tree.grain,
          );
          if (place) return place;
        }
        node++;
      }
    }
  }
  return null;
}

function boxOf(box: Float64Array, { positions, triangles }: Mesh, face: number): void {
  for (let k = 0; k < 3; k++) {
    const p = positions[3 * triangles[3 * face] + k];
    const q = positions[3 * triangles[3 * face + 1] + k];
    const r = positions[3 * triangles[3 * face + 2] + k];
    box[k] = Math.min(p, q, r);
    box[k + 3] = Math.max(p, q, r);
  }
}

const boxesMeet = (a: Float64Array, others: Float64Array, b: number): boolean =>
  a[0] <= others[b + 3] &&
  a[3] >= others[b] &&
  a[1] <= others[b + 4] &&
  a[4] >= others[b + 1] &&
  a[2] <= others[b + 5] &&
  a[5] >= others[b + 2];

/**
 * False for neighbours along an edge, and where one triangle lies all on one side of the other's plane. Flat
 * on one another they may overlap; not so around a common vertex, where triangles that face the same way
 * lie side by side.
 */
function mayOverlap(mesh: Mesh, normals: Float64Array, i: number, j: number): boolean {
  const common = commonVertices(mesh, i, j);
  if (common > 1) return false;
  const there = sides(mesh, normals, i, j);
  if (there !== FLAT) return there === BOTH && sides(mesh, normals, j, i) === BOTH;
  return common === 0;
}

function commonVertices({ triangles: t }: Mesh, i: number, j: number): number {
  let common = 0;
  for (let k = 3 * i; k < 3 * i + 3; k++)
    if (t[k] === t[3 * j] || t[k] === t[3 * j + 1] || t[k] === t[3 * j + 2]) common++;
  return common;
}

const FLAT = 0;
const BOTH = 3;

/** On which sides of the plane of triangle i triangle j lies: 1 above, 2 below, or their sum; nearer than the grain is neither. */
function sides(
  { positions: p, triangles: t, grain }: Mesh,
  normals: Float64Array,
  i: number,
  j: number,
): number {
  const [nx, ny, nz] = [normals[3 * i], normals[3 * i + 1], normals[3 * i + 2]];
  const o = 3 * t[3 * i];
  let found = FLAT;
  for (let k = 3 * j; k < 3 * j + 3; k++) {
    const v = 3 * t[k];
    const height = nx * (p[v] - p[o]) + ny * (p[v + 1] - p[o + 1]) + nz * (p[v + 2] - p[o + 2]);
    if (height > grain) found |= 1;
    else if (height < -grain) found |= 2;
  }
  return found;
}

const triangleAt = (mesh: Mesh, normals: Float64Array, face: number): Triangle => ({
  corners: [
    vertexAt(mesh, mesh.triangles[3 * face]),
    vertexAt(mesh, mesh.triangles[3 * face + 1]),
    vertexAt(mesh, mesh.triangles[3 * face + 2]),
  ],
  normal: [normals[3 * face], normals[3 * face + 1], normals[3 * face + 2]],
});
