import { inverse, mulVec } from '../../math/mat3.js';
import { scale, type Vec3 } from '../../math/vec3.js';
import type { Moments } from '../mass/mass-properties.js';
import { crossMesh } from '../mesh/cross-mesh.js';
import { meshMoments } from '../mesh/mesh-moments.js';
import type { MeshTree } from '../mesh/mesh-tree.js';
import { type Part, partMoments } from './part.js';
import { crossMapped, type Interval, unitRay } from './ray-interval.js';

/** A solid of a core in its place, of any density: a unit shape under an affine map, or a closed mesh; in C. */
export type Solid = Pick<Part, 'shape' | 'A' | 'c'> | { readonly mesh: MeshTree };

/** One solid of a core that others may overlap, with its density above the filler, kg/m³. */
export type Layer = Solid & { readonly excess: number };

/** Solids in order, in C: where they share space, the later one counts. Plain data. */
export interface LayeredCore {
  readonly layers: readonly Layer[];
  /** Moments of their excess over the filler, each point once, about Bo (kg, kg·m, kg·m²). */
  readonly moments: Moments;
}

/** Moments about Bo of everything inside a solid, as if it were alone and of density one. */
export const solidMoments = (solid: Solid): Moments =>
  'mesh' in solid ? meshMoments(solid.mesh, 1) : partMoments({ ...solid, excess: 1 });

/** Writes the values of t at which the line a + t d in C enters and leaves a solid, ascending; returns how many there are. */
type Crosser = (out: number[], a: Vec3, d: Vec3) => number;

/** Prepares a solid to be crossed by lines, which then allocates nothing. */
export function crosser(solid: Solid): Crosser {
  if ('mesh' in solid) return (out, a, d) => crossMesh(out, solid.mesh, a, d);
  const { shape, A, c } = solid;
  const map = inverse(A);
  const offset = scale(-1, mulVec(map, c));
  const hit: Interval = { enter: 0, leave: 0 };
  const lent = unitRay();
  return (out, a, d) => {
    crossMapped(hit, lent, shape, map, offset, a, d);
    if (!(hit.leave > hit.enter)) return 0;
    out[0] = hit.enter;
    out[1] = hit.leave;
    return 2;
  };
}
