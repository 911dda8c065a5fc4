import type { ModelCard } from './card.js';
import type { Tensor } from './tensor.js';

/** How far outside the fitted range a feature may lie, as a share of the range. */
const MARGIN = 0.02;

/** Share of the rows of features that lie within the range of the fit. */
export function shareInRange({ dims: [count, width], values }: Tensor, { inputs }: ModelCard): number {
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
