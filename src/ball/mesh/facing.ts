import { add, addScaled, cross, norm, scale, sub, unit, type Vec3 } from '../../math/vec3.js';
import { crossMesh } from './cross-mesh.js';
import { disjointSets, joinSets, setOf } from './disjoint-sets.js';
import { type Mesh, vertexAt } from './mesh.js';
import type { MeshFault } from './mesh-fault.js';
import type { MeshTree } from './mesh-tree.js';

/**
 * Which way the triangles face in a closed mesh that does not cut itself, or why the mesh encloses no clear solid.
 *
 * A line through a solid enters and leaves it in turn, so along the line one is inside 0 or 1 times. Twice
 * inside means a part within a part, both facing outward; less than 0 means facing inward. A hollow, a part within a
 * part that faces the other way, is allowed. The lines are perpendicular to the largest triangle of every part,
 * and to others spread over the mesh: as long as nothing is cut, one place of a part stands for all of it.
 */
export function facing(tree: MeshTree): 'outward' | 'inward' | MeshFault {
  let [mostIn, leastIn]: [Depth, Depth] = [OUTSIDE, OUTSIDE];
  const out: number[] = [];
  const turns: number[] = [];
  for (const face of facesToTry(tree)) {
    const [p, q, r] = corners(tree, face);
    const a = scale(1 / 3, add(p, add(q, r)));
    const d = unit(cross(sub(q, p), sub(r, p)));
    const count = crossMesh(out, tree, a, d, turns);
    for (const { times, t } of depths(out, turns, count, tree.grain)) {
      const depth = { times, at: addScaled(a, t, d) };
      if (times > mostIn.times) mostIn = depth;
      if (times < leastIn.times) leastIn = depth;
    }
  }
  if (mostIn.times > 0 && leastIn.times < 0) return { kind: 'mixed-parts', at: leastIn.at };
  if (mostIn.times > 1) return { kind: 'counted-twice', at: mostIn.at };
  if (leastIn.times < -1) return { kind: 'counted-twice', at: leastIn.at };
  return leastIn.times < 0 ? 'inward' : 'outward';
}

/** How many times inside the surface a place is. */
interface Depth {
  readonly times: number;
  readonly at: Vec3;
}

const OUTSIDE: Depth = { times: 0, at: [0, 0, 0] };

/** How many times inside a line is after each of its crossings; crossings closer than the grain are one, where parts touch. */
function* depths(ts: number[], turns: number[], count: number, grain: number) {
  let times = 0;
  for (let i = 0; i < count; i++) {
    times += turns[i];
    if (i + 1 === count || ts[i + 1] - ts[i] > grain) yield { times, t: ts[i] };
  }
}

/** How many triangles are tried in addition to the largest one of each part. */
const SPREAD = 100;

/** The largest triangle of every connected part, and others spread over the mesh. */
function facesToTry(mesh: Mesh): Set<number> {
  const { positions, triangles } = mesh;
  const parts = disjointSets(positions.length / 3);
  for (let i = 0; i < triangles.length; i += 3) {
    joinSets(parts, triangles[i], triangles[i + 1]);
    joinSets(parts, triangles[i], triangles[i + 2]);
  }
  const largest = new Map<number, { face: number; area: number }>();
  const faces = triangles.length / 3;
  for (let face = 0; face < faces; face++) {
    const part = setOf(parts, triangles[3 * face]);
    const area = twiceArea(mesh, face);
    if (area > (largest.get(part)?.area ?? 0)) largest.set(part, { face, area });
  }
  const tried = new Set([...largest.values()].map(({ face }) => face));
  const step = Math.max(1, Math.floor(faces / SPREAD));
  for (let face = 0; face < faces; face += step) if (twiceArea(mesh, face) > 0) tried.add(face);
  return tried;
}

function twiceArea(mesh: Mesh, face: number): number {
  const [p, q, r] = corners(mesh, face);
  return norm(cross(sub(q, p), sub(r, p)));
}

const corners = (mesh: Mesh, face: number): [Vec3, Vec3, Vec3] => [
  vertexAt(mesh, mesh.triangles[3 * face]),
  vertexAt(mesh, mesh.triangles[3 * face + 1]),
  vertexAt(mesh, mesh.triangles[3 * face + 2]),
];
