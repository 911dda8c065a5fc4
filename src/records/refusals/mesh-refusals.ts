import type { Vec3 } from '../../math/vec3.js';
import type { LengthUnit } from '../schemas/core.js';

/** A mesh, by the path of its part, and a place of it: as its file has it, in the file's unit. */
interface MeshPlace {
  readonly part: string;
  readonly unit: LengthUnit;
  readonly at: Vec3;
}

/** The same with a number of edges; `at` is the first. */
interface MeshEdges extends MeshPlace {
  readonly edges: number;
}

/** What keeps a mesh from being the surface of a solid inside the ball. */
export interface MeshRefusals {
  'mesh-open': MeshEdges;
  'mesh-crowded': MeshEdges;
  'mesh-mixed-sides': MeshEdges;
  'mesh-cuts-itself': MeshPlace;
  'mesh-counted-twice': MeshPlace;
  'mesh-mixed-parts': MeshPlace;
  'mesh-no-volume': MeshPlace;
  'mesh-sticks-out': MeshPlace & { readonly reach: number; readonly room: number };
}
