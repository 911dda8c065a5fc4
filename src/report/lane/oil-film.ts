import type { Lane } from '../../records/schemas/lane.js';

/**
 * Oil film at a point of the lane, in the lane record's units; for shading a drawing only.
 *
 * @param ft         from the foul line
 * @param edgeBoard  boards from the lane's right edge, 0 to 39
 */
export function filmAt(lane: Lane, ft: number, edgeBoard: number): number {
  let thickest = 0;
  for (const zone of lane.zones) {
    if (ft < zone.fromFt || ft > zone.toFt || edgeBoard < zone.fromBoard || edgeBoard > zone.toBoard)
      continue;
    const share = (ft - zone.fromFt) / (zone.toFt - zone.fromFt);
    thickest = Math.max(thickest, zone.units + share * ((zone.unitsAtEnd ?? zone.units) - zone.units));
  }
  return thickest;
}
