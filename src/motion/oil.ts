import { LANE_LENGTH, LANE_WIDTH } from '../constants.js';
import { smoothField } from './smooth-field.js';
import type { Surface } from './surface.js';

/** A rectangle of oil on the lane, m in W; its film goes linearly from `film` at its near end to `filmEnd`. */
export interface OilZone {
  readonly fromY: number;
  readonly toY: number;
  readonly fromX: number;
  readonly toX: number;
  readonly film: number;
  readonly filmEnd: number;
}

/** Oil on a lane and the friction it leaves. */
export interface OilPattern {
  readonly zones: readonly OilZone[];
  /** Kinetic friction on heavy oil, and on dry boards. */
  readonly frictionOiled: number;
  readonly frictionDry: number;
  /** Film over which friction falls from dry toward oiled by a factor e, units of oil. */
  readonly filmScale: number;
  /** How far a zone's edge is smeared along and across the lane, m. */
  readonly edgeLength: number;
  readonly edgeWidth: number;
}

/**
 * A lane under an oil pattern.
 *
 * Where zones overlap the greatest film counts (oil strokes do not simply add, and a zone drawn over another
 * is meant to be the thicker). Edges are smeared by averaging over edgeWidth × edgeLength, half to each side,
 * which leaves no seam between zones that abut.
 */
export function oiledLane(pattern: OilPattern): Surface {
  const { zones, edgeWidth, edgeLength } = pattern;
  const filmAt = smoothField((x, y) => greatestFilm(zones, x, y), {
    fromX: -LANE_WIDTH / 2,
    toX: LANE_WIDTH / 2,
    fromY: 0,
    toY: LANE_LENGTH,
    smearX: edgeWidth,
    smearY: edgeLength,
  });
  const bare: Surface = { filmAt, frictionUnder: () => pattern.frictionDry, breaks: [] };
  return withFriction(bare, pattern.frictionOiled, pattern.frictionDry, pattern.filmScale);
}

/**
 * The same film under another friction law: μ = oiled + (dry − oiled) exp(−film/scale).
 *
 * Falls steadily from dry to oiled. Its form is an assumption of flarewise: no measured law is at hand.
 */
export function withFriction(surface: Surface, oiled: number, dry: number, filmScale: number): Surface {
  const perScale = -1 / filmScale;
  const drop = dry - oiled;
  return { ...surface, frictionUnder: (film) => oiled + drop * Math.exp(film * perScale) };
}

/** Film of the thickest zone that covers a point; 0 where none does. */
function greatestFilm(zones: readonly OilZone[], x: number, y: number): number {
  let greatest = 0;
  for (const { fromX, toX, fromY, toY, film, filmEnd } of zones) {
    if (x < fromX || x > toX || y < fromY || y > toY) continue;
    greatest = Math.max(greatest, film + ((filmEnd - film) * (y - fromY)) / (toY - fromY));
  }
  return greatest;
}
