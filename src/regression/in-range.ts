import type { ModelCard } from './card.js';
import type { Tensor } from './tensor.js';

/** How far outside the fitted range a feature may lie, as a share of the range. */
const MARGIN = 0.02;

/** Least share of a problem's own shots that must lie within the range of the fit. */
const ENOUGH = 0.9;

/** Whether the regression may be asked about shots, from their features, row by row: enough of them are like those that it was fitted on. */
export const isInRange = (features: Tensor, card: ModelCard): boolean =>
  shareInRange(features, card) >= ENOUGH;

function shareInRange({ dims: [count, width], values }: Tensor, { inputs }: ModelCard): number {
  let inside = 0;
  for (let row = 0; row < count; row++)
    if (
      inputs.every(({ least, most }, j) => {
        const room = MARGIN * (most - least);
        const value = values[width * row + j];
        return value >= least - room && value <= most + room;
      })
    )
      inside += 1;
  return inside / count;
}
