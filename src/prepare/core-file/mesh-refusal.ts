import { coreToFile, type MeshPose } from '../../ball/mesh/mesh.js';
import type { MeshFault } from '../../ball/mesh/mesh-fault.js';
import { to } from '../../base/units.js';
import type { RefusalStatement } from '../../records/refusals/refusal.js';
import type { LengthUnit } from '../../records/schemas/core.js';

/** Where a mesh lies in its file: what a person needs to find a place of it again. */
interface MeshView {
  /** Path of the part in the core file. */
  readonly part: string;
  readonly pose: MeshPose;
  readonly unit: LengthUnit;
}

/** A fault of a mesh as a refusal, its place and lengths as they are in the file. */
export function meshRefusal(fault: MeshFault, { part, pose, unit }: MeshView): RefusalStatement {
  const place = { part, unit, at: coreToFile(pose, fault.at) };
  switch (fault.kind) {
    case 'open':
    case 'crowded':
    case 'mixed-sides':
      return { code: `mesh-${fault.kind}`, params: { ...place, edges: fault.edges } };
    case 'sticks-out':
      return {
        code: 'mesh-sticks-out',
        params: { ...place, reach: to(fault.reach, pose.unit), room: to(fault.room, pose.unit) },
      };
    default:
      return { code: `mesh-${fault.kind}`, params: place };
  }
}
