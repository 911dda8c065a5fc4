/**
 * A rectangle of oil on the lane. Its film runs linearly from `film` at the near end to `filmEnd` at the far end, in units of oil.
 * Lengths are in m in W, or in any other unit that is also used for the points asked about.
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
