import type { Linear } from './fit-with-prior.js';
import type { Scattered } from './scattered.js';

/** The log near a point, night by night also for readings that were not taken. */
export interface LinearLog extends Linear {
  readonly everyNight: readonly LinearNight[];
}

export interface LinearNight {
  /** Means of all readings, in the order of `READ`. */
  readonly means: Float64Array;
  /** How all readings move with each unknown; null where an unknown does not act. */
  readonly slopes: readonly (Float64Array | null)[];
  /** How shots lie about their mean. */
  readonly scattered: Scattered;
}
