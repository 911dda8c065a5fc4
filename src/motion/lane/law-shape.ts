import { ln } from '../../math/ln.js';
import { power } from '../../math/power.js';

/** No film grips less than this share of the way from oiled to dry: a law that falls to nothing ends here. */
const LEAST_SHARE = 1e-9;

/**
 * A film that grips under the exponential law as this one grips under a law of another shape, units of oil:
 * μ = oiled + (dry − oiled) (1 + q film/scale)^(−1/q), the q-exponential (Tsallis, J. Stat. Phys. 52, 479, 1988; from memory).
 *
 * All shapes fall alike in thin oil. A shape of 0 is the exponential, 1 a hyperbola, whose thick oil still grips, and −1 a straight line,
 * which ends at one scale. No law of a bowling lane is measured.
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
