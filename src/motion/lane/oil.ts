import { oncePer } from '../../base/once-per.js';
import { greatestFilm, type OilZone } from '../../math/oil-zones.js';
import { type FilmJumps, smeared } from './film-grid.js';
import { type Surface, surfaceOf } from './surface.js';
import { burnt, type Traffic, type WearRates, wearOf } from './wear.js';

/** Oil on a lane and the friction it leaves. */
export interface OilPattern {
  readonly zones: readonly OilZone[];
  /** Kinetic friction on heavy oil, and on dry boards. */
  readonly frictionOiled: number;
  readonly frictionDry: number;
  /** Film over which friction falls from dry toward oiled by a factor e, units of oil. */
  readonly filmScale: number;
  /** Width over which a zone's edges are smeared, along and across the lane, m. */
  readonly edgeLength: number;
  readonly edgeWidth: number;
  /** The games bowled on it; fresh oil when left out. */
  readonly traffic?: Traffic;
}

/**
 * Lays down the oil of a pattern. The result gives, for any rates of wear, the film around the nodes of the lane's grid, units of oil.
 * Laying takes as long as a hundred shots, so it is done once for each pattern.
 *
 * Where zones overlap, the greatest film counts (oil strokes do not simply add, and a zone drawn over another
 * is meant to be thicker). Edges are smeared by averaging over edgeWidth × edgeLength, half to each side,
 * which leaves no seam between adjacent zones. Without rates, or without traffic, the film is the fresh one.
 */
export const layOil = oncePer(
  ({ zones, edgeWidth, edgeLength, traffic }: OilPattern): ((rates?: WearRates) => Float64Array) => {
    const film = (x: number, y: number): number => greatestFilm(zones, x, y);
    const jumps: FilmJumps = {
      x: zones.flatMap(({ fromX, toX }) => [fromX, toX]),
      y: [...zones.flatMap(({ fromY, toY }) => [fromY, toY]), ...(traffic ? [traffic.endY] : [])],
    };
    const smear = (field: typeof film): Float64Array => smeared(field, edgeWidth, edgeLength, jumps);
    const fresh = smear(film);
    if (!traffic || traffic.games === 0) return () => fresh;
    const wear = wearOf(film, traffic);
    const takenNodes = smear(wear.taken);
    const laidNodes = smear(wear.laid);
    return (rates) => {
      if (!rates) return fresh;
      const share = burnt(traffic, rates);
      const carried = share * rates.carriedDown;
      const worn = new Float64Array(fresh.length);
      for (let i = 0; i < worn.length; i++)
        worn[i] = fresh[i] - share * takenNodes[i] + carried * laidNodes[i];
      return worn;
    };
  },
);

/** A lane under an oil pattern, as games at these rates have left it; fresh without rates. */
export function oiledLane(pattern: OilPattern, rates?: WearRates): Surface {
  const { frictionOiled: oiled, frictionDry: dry, filmScale } = pattern;
  return surfaceOf(layOil(pattern)(rates), { oiled, dry, filmScale });
}
