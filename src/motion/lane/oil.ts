import { LANE_LENGTH, LANE_WIDTH } from '../../base/constants.js';
import { greatestFilm, type OilZone } from '../../math/oil-zones.js';
import { type FieldExtent, smeared, splineOver } from './smooth-field.js';
import type { Surface } from './surface.js';
import { burnt, type Traffic, type WearRates, wearOf } from './wear.js';

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
  /** The games bowled on it; fresh oil when left out. */
  readonly traffic?: Traffic;
}

type Film = Surface['filmAt'];

/**
 * Lays the oil of a pattern down, ready to be asked for under any wear.
 *
 * Where zones overlap the greatest film counts (oil strokes do not simply add, and a zone drawn over another
 * is meant to be the thicker). Edges are smeared by averaging over edgeWidth × edgeLength, half to each side,
 * which leaves no seam between zones that abut. Without rates, or without traffic, the film is the fresh one.
 */
export function layOil({ zones, edgeWidth, edgeLength, traffic }: OilPattern): (rates?: WearRates) => Film {
  const extent: FieldExtent = {
    fromX: -LANE_WIDTH / 2,
    toX: LANE_WIDTH / 2,
    fromY: 0,
    toY: LANE_LENGTH,
    smearX: edgeWidth,
    smearY: edgeLength,
  };
  const film: Film = (x, y) => greatestFilm(zones, x, y);
  const freshNodes = smeared(film, extent);
  const fresh = splineOver(freshNodes, extent);
  if (!traffic || traffic.games === 0) return () => fresh;
  const { taken, laid } = wearOf(film, traffic);
  const takenNodes = smeared(taken, extent);
  const laidNodes = smeared(laid, extent);
  return (rates) => {
    if (!rates) return fresh;
    const share = burnt(traffic, rates);
    const carried = share * rates.carriedDown;
    const worn = freshNodes.map((units, i) => units - share * takenNodes[i] + carried * laidNodes[i]);
    return splineOver(worn, extent);
  };
}

/** A lane under an oil pattern, as games at these rates have left it; fresh without rates. */
export function oiledLane(pattern: OilPattern, rates?: WearRates): Surface {
  const { frictionOiled, frictionDry, filmScale } = pattern;
  const frictionUnder = frictionLaw(frictionOiled, frictionDry, filmScale);
  return { filmAt: layOil(pattern)(rates), frictionUnder, breaks: [] };
}

/**
 * Kinetic friction under a film: μ = oiled + (dry − oiled) exp(−film/scale).
 *
 * Falls steadily from dry to oiled. Its form is an assumption of flarewise: no measured law is at hand.
 */
export function frictionLaw(oiled: number, dry: number, filmScale: number): Surface['frictionUnder'] {
  const perScale = -1 / filmScale;
  const drop = dry - oiled;
  return (film) => oiled + drop * Math.exp(film * perScale);
}

/** The same film under another friction law. */
export const withFriction = (surface: Surface, oiled: number, dry: number, filmScale: number): Surface => ({
  ...surface,
  frictionUnder: frictionLaw(oiled, dry, filmScale),
});
