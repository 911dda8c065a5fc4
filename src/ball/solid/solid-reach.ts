import { norm } from '../../math/vec3.js';
import { vertexAt } from '../mesh/mesh.js';
import type { Solid } from './layered-core.js';
import { partReach } from './support.js';

/** Greatest distance (m) from the origin to any point of a solid. For a mesh a vertex is farthest, since a ball is convex. */
export function solidReach(solid: Solid): number {
  if (!('mesh' in solid)) return partReach(solid);
  let reach = 0;
  for (let i = 0; i < solid.mesh.positions.length / 3; i++)
    reach = Math.max(reach, norm(vertexAt(solid.mesh, i)));
  return reach;
}
