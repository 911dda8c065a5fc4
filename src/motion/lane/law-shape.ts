import { ln } from '../../math/ln.js';
import { power } from '../../math/power.js';

/** Least share of the way from oiled to dry friction: a law that falls to 0 ends here. */
const LEAST_SHARE = 1e-9;

/**
 * The film that has the same friction under the exponential law as the given film has under a law of another shape, units of oil:
 * μ = oiled + (dry − oiled) (1 + q film/scale)^(−1/q), the q-exponential (Tsallis, J. Stat. Phys. 52, 479, 1988; from memory).
 *
 * All shapes fall equally fast in thin oil. Shape q = 0 is the exponential, 1 a hyperbola, whose thick oil still grips, and −1 a straight
 * line, which ends at one film scale. No law has been measured for a bowling lane.
 *
 * @param film       around the nodes of the lane's grid
 * @param filmScale  of the law, units of oil
 */
export function asExponential(film: Float64Array, shape: number, filmScale: number): Float64Array {
  if (shape === 0) return film;
  const least = power(LEAST_SHARE, Math.abs(shape));
  const alike = new Float64Array(film.length);
  for (let i = 0; i < film.length; i++)
    if (film[i] !== 0)
      alike[i] = (filmScale / shape) * ln(Math.max(least, 1 + (shape * film[i]) / filmScale));
  return alike;
}
