/**
 * A rectangle of oil on the lane; its film goes linearly from `film` at its near end to `filmEnd`. Lengths are in m in W, or in
 * any unit in which a point is given as well.
 */
export interface OilZone {
  readonly fromY: number;
  readonly toY: number;
  readonly fromX: number;
  readonly toX: number;
  readonly film: number;
  readonly filmEnd: number;
}

/** Film of the thickest zone that covers a point; 0 where none does. */
export function greatestFilm(zones: readonly OilZone[], x: number, y: number): number {
  let greatest = 0;
  for (const { fromX, toX, fromY, toY, film, filmEnd } of zones) {
    if (x < fromX || x > toX || y < fromY || y > toY) continue;
    greatest = Math.max(greatest, film + ((filmEnd - film) * (y - fromY)) / (toY - fromY));
  }
  return greatest;
}
