import type { FreshSurface } from '../lane/fresh-surface.js';

/** Time after which a ball that has not arrived is given up, s: one that rolls at 5 mph all the way needs 8. */
export const LONGEST_SHOT = 12;

/** How a shot is computed. Settings left out are those of the sport: its gravity, its lane. */
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
  /** A ball that has not arrived after this time is given up, s; see `LONGEST_SHOT`. */
  readonly longest?: number;
}

/** Places of an oil ring that are remembered a turn. A ring crossed at a wide angle is worn over hardly more than the gap between two. */
export const RING_PLACES = 96;
