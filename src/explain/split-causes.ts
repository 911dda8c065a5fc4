import type { CausesOf } from '../records/answers/answer.js';

/** One value for each of the eight balls between a reference and another: bit 0 the other's centre of mass, bit 1 its inertia, bit 2 no oil. */
type OfMixedBalls = readonly number[];

export const CENTRE = 1;
export const INERTIA = 2;
export const NO_OIL = 4;

/**
 * Splits a value's change from a reference ball to another among three causes, which add up to it.
 *
 * The centre's part is the mean of its effects with either inertia; the rest is the mean of the inertia's effects with either centre
 * (Shapley shares of two). Of that rest, the part that disappears when no oil stays on the balls is due to flare, and what remains is due
 * to the inertia itself.
 *
 * @param values  of the eight balls, indexed by bit mask
 */
export function splitCauses(values: OfMixedBalls): CausesOf {
  const both = CENTRE | INERTIA;
  const byInertia = (oil: number): number =>
    (values[INERTIA | oil] - values[oil] + values[both | oil] - values[CENTRE | oil]) / 2;
  const inertia = byInertia(NO_OIL);
  return {
    total: values[both] - values[0],
    centre: (values[CENTRE] - values[0] + values[both] - values[INERTIA]) / 2,
    flare: byInertia(0) - inertia,
    inertia,
    without: {
      centre: values[INERTIA] - values[0],
      flare: values[both | NO_OIL] - values[NO_OIL],
      inertia: values[CENTRE] - values[0],
    },
  };
}
