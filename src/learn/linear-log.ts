import type { Linear } from './fit-with-prior.js';
import type { Scattered } from './scattered.js';

/** The log linearised near a point; for each night also the readings that were not taken. */
export interface LinearLog extends Linear {
  readonly everyNight: readonly LinearNight[];
}

export interface LinearNight {
  /** Means of all readings, in the order of `READ`. */
  readonly means: Float64Array;
  /** Derivatives of all readings with respect to each unknown; null where an unknown does not act. */
  readonly slopes: readonly (Float64Array | null)[];
  /** Shift and covariance of the shots about the mean shot. */
  readonly scattered: Scattered;
}
