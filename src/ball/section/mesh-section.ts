import type { Loop, PlanePoint } from '../../math/polygon.js';
import { addScaled, dot, sub } from '../../math/vec3.js';
import { type Mesh, vertexAt } from '../mesh/mesh.js';
import { normalOf, type SectionPlane, seenOn } from './section-plane.js';

/**
 * The loops in which a plane cuts a closed mesh, m: exact, a corner for each edge that it crosses.
 *
 * A vertex in the plane counts as above it, so every triangle is crossed through two edges or not at all; the loops close wherever
 * the mesh does. Seen from the side to which the plane's normal points, they run counterclockwise around matter.
 */
export function meshSection(mesh: Mesh, plane: SectionPlane): readonly Loop[] {
  const normal = normalOf(plane);
  const height = (vertex: number): number => dot(normal, sub(vertexAt(mesh, vertex), plane.origin_C));
  const count = mesh.positions.length / 3;
  const heights = Float64Array.from({ length: count }, (_, vertex) => height(vertex));
  const onward = piecesFrom(mesh.triangles, heights, count);

  const placeOf = (edge: number): PlanePoint => {
    const [below, above] = [Math.floor(edge / count), edge % count];
    const a = vertexAt(mesh, below);
    const share = heights[below] / (heights[below] - heights[above]);
    return seenOn(plane, addScaled(a, share, sub(vertexAt(mesh, above), a)));
  };
  const loops: Loop[] = [];
  for (const start of onward.keys()) {
    const loop: PlanePoint[] = [];
    for (let edge = start; ; ) {
      const next = onward.get(edge)?.pop();
      if (next === undefined) break;
      loop.push(placeOf(edge));
      edge = next;
    }
    if (loop.length > 2) loops.push(loop);
  }
  return loops;
}

/** For each edge (its vertex below the plane times `count`, plus the one above) the edges to which the section leads on through a triangle. */
function piecesFrom(triangles: Uint32Array, heights: Float64Array, count: number): Map<number, number[]> {
  const pieces = new Map<number, number[]>();
  for (let i = 0; i < triangles.length; i += 3) {
    let [from, to] = [-1, -1];
    for (let side = 0; side < 3; side += 1) {
      const [a, b] = [triangles[i + side], triangles[i + ((side + 1) % 3)]];
      const [isAbove, isNextAbove] = [heights[a] >= 0, heights[b] >= 0];
      // sides run counterclockwise seen from outside: in through one that goes down, out through one that goes up, matter is on the left
      if (isAbove && !isNextAbove) from = b * count + a;
      if (!isAbove && isNextAbove) to = a * count + b;
    }
    if (from < 0) continue;
    const known = pieces.get(from);
    if (known) known.push(to);
    else pieces.set(from, [to]);
  }
  return pieces;
}
