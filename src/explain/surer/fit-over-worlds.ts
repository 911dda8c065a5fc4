import { addTo, dotOf, type SmoothColumns } from './smooth-columns.js';

/** A number that differs from world to world, fitted by smooth columns. */
export interface FitOverWorlds {
  readonly mean: number;
  /** World by world, what is expected of the number beyond its mean once what can be known is known. */
  readonly known: Float64Array;
  /**
   * Over worlds, each left out of the fit in turn: Σ predicted × true and Σ predicted², both beyond the mean of the others and over
   * the number's own Σ squares.
   */
  readonly leftOut: { readonly together: number; readonly alone: number };
}

/**
 * Least squares, with the prediction of each world from all others in closed form: the residual over one less the leverage (PRESS; Allen,
 * Technometrics 16, 125, 1974).
 */
export function fitOverWorlds(
  { fitted, known, leverage }: SmoothColumns,
  values: ArrayLike<number>,
): FitOverWorlds {
  const n = values.length;
  let total = 0;
  for (let i = 0; i < n; i++) total += values[i];
  const mean = total / n;
  const fit = new Float64Array(n);
  const expected = new Float64Array(n);
  for (let k = 0; k < fitted.length; k++) {
    const weight = dotOf(fitted[k], values);
    addTo(fit, weight, fitted[k]);
    addTo(expected, weight, known[k]);
  }
  let together = 0;
  let alone = 0;
  let squares = 0;
  for (let i = 0; i < n; i++) {
    const meanOfOthers = (total - values[i]) / (n - 1);
    const predicted = values[i] - (values[i] - mean - fit[i]) / (1 - leverage[i]) - meanOfOthers;
    together += predicted * (values[i] - meanOfOthers);
    alone += predicted ** 2;
    squares += (values[i] - mean) ** 2;
  }
  const scale = squares > 0 ? 1 / squares : 0;
  return { mean, known: expected, leftOut: { together: together * scale, alone: alone * scale } };
}
