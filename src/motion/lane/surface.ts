import { exp } from '../../math/exp.js';
import { filmEnd } from './film-grid.js';

/** A lane as the ball rolls on it, as plain data. Positions in m (W), film in units of oil. */
export interface Surface {
  /** Averages of the film around the nodes of a grid (`film-grid.ts`); null where there is no oil. */
  readonly film: Float64Array | null;
  /** Where the oil ends: from this distance on there is none, m. */
  readonly filmEnd: number;
  /** Stretches of lane of one friction law each, in order; the first begins before the foul line. */
  readonly stretches: readonly FrictionStretch[];
}

/** A stretch of lane that begins at a distance (m), and its friction law. A step of the integrator ends where the next stretch begins. */
interface FrictionStretch extends FrictionLaw {
  readonly fromY: number;
}

/**
 * Kinetic friction under the lane's film plus the film that the ball carries: μ = oiled + (dry − oiled) exp(−film/scale).
 *
 * The form is an assumption of flarewise: no measured law was found.
 */
interface FrictionLaw {
  readonly oiled: number;
  readonly dry: number;
  /** Film over which friction falls by a factor e, units of oil. */
  readonly filmScale: number;
}

/** Friction under a film, units of oil. */
export const frictionUnder = ({ oiled, dry, filmScale }: FrictionLaw, film: number): number =>
  oiled + (dry - oiled) * exp(-film / filmScale);

/** The stretch at a distance down the lane, m. */
export const stretchAt = ({ stretches }: Surface, y: number): FrictionStretch =>
  stretches[
    Math.max(
      0,
      stretches.findLastIndex(({ fromY }) => fromY <= y),
    )
  ];

/** A film, or none, under one friction law. */
export const surfaceOf = (film: Float64Array | null, law: FrictionLaw): Surface => ({
  film,
  filmEnd: film ? filmEnd(film) : Number.NEGATIVE_INFINITY,
  stretches: [{ ...law, fromY: Number.NEGATIVE_INFINITY }],
});
