import { addScaled, scale, type Vec3 } from '../../math/vec3.js';
import { type Mesh, vertexAt } from './mesh.js';
import type { MeshFault } from './mesh-fault.js';

/**
 * Edges that keep a mesh from being closed and one-sided: on each there must be two triangles, and they must
 * run along it in opposite senses.
 *
 * Each side of a triangle becomes one number; sorted, those of one edge stand together. Exact up to 60
 * million vertices, where the numbers reach 2⁵³.
 */
export function edgeFaults(mesh: Mesh): MeshFault[] {
  const tally = { open: new EdgeTally(), crowded: new EdgeTally(), 'mixed-sides': new EdgeTally() };
  const sides = sortedSides(mesh);
  for (let from = 0, to = 0; from < sides.length; from = to) {
    const edge = edgeOf(sides[from]);
    let upward = 0;
    for (; to < sides.length && edgeOf(sides[to]) === edge; to++) upward += sides[to] % 2;
    const triangles = to - from;
    if (triangles > 2) tally.crowded.add(edge);
    else if (triangles === 1) tally.open.add(edge);
    else if (upward !== 1) tally['mixed-sides'].add(edge);
  }
  return (['open', 'crowded', 'mixed-sides'] as const).flatMap((kind) => {
    const { edges, first } = tally[kind];
    return edges === 0 ? [] : [{ kind, edges, at: middleOf(mesh, first) }];
  });
}

/** Counts edges of one fault and keeps the first. */
class EdgeTally {
  edges = 0;
  first = 0;

  add(edge: number): void {
    if (this.edges++ === 0) this.first = edge;
  }
}

/** Twice the edge's number, plus one for a side that runs from its lower to its higher vertex. */
function sortedSides({ positions, triangles }: Mesh): Float64Array {
  const vertices = positions.length / 3;
  const sides = new Float64Array(triangles.length);
  for (let i = 0; i < triangles.length; i++) {
    const a = triangles[i];
    const b = triangles[i % 3 === 2 ? i - 2 : i + 1];
    sides[i] = a < b ? 2 * (a * vertices + b) + 1 : 2 * (b * vertices + a);
  }
  return sides.sort();
}

const edgeOf = (side: number): number => Math.floor(side / 2);

function middleOf(mesh: Mesh, edge: number): Vec3 {
  const vertices = mesh.positions.length / 3;
  const a = vertexAt(mesh, Math.floor(edge / vertices));
  return addScaled(scale(0.5, a), 0.5, vertexAt(mesh, edge % vertices));
}
