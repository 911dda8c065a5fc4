import type { DenseSolid } from '../../ball/core/own-body.js';
import type { Caution } from '../../records/answers/statements/cautions.js';
import type { RefusalStatement } from '../../records/refusals/refusal.js';
import type { CoreFile } from '../../records/schemas/core.js';
import { placeMeshPart } from './core-mesh.js';
import { coreFrame } from './core-pose.js';
import { placeSolid } from './core-solids.js';
import { partName } from './part-name.js';

/** The parts of a core file in C, in their order, and what its meshes gave rise to. */
interface PlacedParts {
  readonly solids: readonly DenseSolid[];
  readonly faults: readonly RefusalStatement[];
  readonly warnings: readonly Caution[];
}

/**
 * Puts every part of a core file in its place.
 *
 * @param mirrored  in the plane of pin and marker
 * @throws {Refusal} as `readStl` does
 */
export function placeParts(file: CoreFile, mirrored: boolean): PlacedParts {
  const R_CF = coreFrame(file.core, mirrored);
  const solids: DenseSolid[] = [];
  const faults: RefusalStatement[] = [];
  const warnings: Caution[] = [];
  file.core.parts.forEach((part, i) => {
    if (part.shape !== 'mesh') {
      solids.push(placeSolid(part, file.core, R_CF));
      return;
    }
    const placed = placeMeshPart(part, i, file, R_CF, mirrored);
    solids.push(placed.solid);
    faults.push(...placed.faults);
    if (placed.turnedOver) warnings.push({ code: 'part-turned-over', params: { part: partName(part, i) } });
  });
  return { solids, faults, warnings };
}
