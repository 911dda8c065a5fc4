import { greatestFilm } from '../../math/oil-zones.js';
import type { Lane } from '../../records/schemas/lane.js';

/**
 * Prepares the oil film at a point of the lane, in the lane record's units, edges not smeared; for shading a drawing only.
 *
 * @returns distance from the foul line (ft), boards from the lane's right edge (0 to 39) ↦ film
 */
export function drawnFilm({ zones }: Lane): (ft: number, edgeBoard: number) => number {
  const inBoards = zones.map(({ fromFt, toFt, fromBoard, toBoard, units, unitsAtEnd = units }) => ({
    fromX: fromBoard,
    toX: toBoard,
    fromY: fromFt,
    toY: toFt,
    film: units,
    filmEnd: unitsAtEnd,
  }));
  return (ft, edgeBoard) => greatestFilm(inBoards, edgeBoard, ft);
}
