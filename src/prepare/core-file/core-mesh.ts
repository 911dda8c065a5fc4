import type { DenseSolid } from '../../ball/core/own-body.js';
import { checkMesh } from '../../ball/mesh/check-mesh.js';
import { type MeshPose, placeMesh } from '../../ball/mesh/mesh.js';
import { meshTree } from '../../ball/mesh/mesh-tree.js';
import { readStl } from '../../ball/mesh/read-stl.js';
import { from, GRAM_PER_CC } from '../../base/units.js';
import { type Mat3, mulMat, mulVec } from '../../math/mat3.js';
import { scale, ZERO } from '../../math/vec3.js';
import type { RefusalStatement } from '../../records/refusals/refusal.js';
import type { CoreFile, CorePart } from '../../records/schemas/core.js';
import { LENGTH, poseOf } from './core-pose.js';
import { meshRefusal } from './mesh-refusal.js';
import { partName } from './part-name.js';

type MeshFilePart = Extract<CorePart, { shape: 'mesh' }>;

/** A mesh of a core file in C, with its density and all its faults. */
interface PlacedMeshPart {
  readonly solid: DenseSolid & Extract<DenseSolid, { mesh: unknown }>;
  readonly faults: readonly RefusalStatement[];
  /** Whether all its triangles faced inward in its file. */
  readonly turnedOver: boolean;
}

/**
 * Reads, places and checks a mesh.
 *
 * Whether it lies inside the cover is checked together with the solids.
 *
 * @param index     of the part, for its faults
 * @param mirrored  whether R_CF is a reflection
 * @throws {Refusal} as `readStl` does
 */
export function placeMeshPart(
  part: MeshFilePart,
  index: number,
  { core, meshes }: CoreFile,
  R_CF: Mat3,
  mirrored: boolean,
): PlacedMeshPart {
  const { path, bytes } = meshes.get(part.file)!;
  const pose: MeshPose = {
    unit: LENGTH[part.unit],
    R_CF: mulMat(R_CF, poseOf(part)),
    p_BoFo_C: mulVec(R_CF, scale(LENGTH[core.unit], part.shift ?? ZERO)),
  };
  const { mesh } = placeMesh(readStl(bytes, path), pose);
  const { solid, turnedOver, faults } = checkMesh(meshTree(mesh), Number.POSITIVE_INFINITY);
  const view = { part: partName(part, index), pose, unit: part.unit };
  return {
    solid: { mesh: solid, density: from(part.densityGcc, GRAM_PER_CC) },
    faults: faults.map((fault) => meshRefusal(fault, view)),
    turnedOver: turnedOver !== mirrored,
  };
}
