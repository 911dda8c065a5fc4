import type { FreshSurface } from '../lane/fresh-surface.js';

/** How a shot is computed. What is left out is the sport's own. */
export interface ShotSettings {
  /** Longest step of the integrator, s; see `ANSWER_STEP`. */
  readonly step: number;
  /** How carried oil comes back to the lane; null leaves friction to the lane alone. */
  readonly freshSurface: FreshSurface | null;
  /** Places of an oil ring that are remembered a turn, at least 8; see `RING_PLACES`. */
  readonly ringPlaces?: number;
  /** m/s² */
  readonly gravity?: number;
  /** Where the shot ends, m from the foul line; the last sample lands there exactly. */
  readonly length?: number;
  /** Beyond this on either side is gutter, m. */
  readonly halfWidth?: number;
  /** A ball that has not arrived after this many seconds is given up. */
  readonly longest?: number;
}

/**
 * Places of an oil ring that are remembered a turn. Where a ring was crossed at a wide angle it has worn off over a dip hardly wider
 * than the gap between two of them.
 */
export const RING_PLACES = 96;
