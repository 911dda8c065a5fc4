import { readThree, type ThreeNumbers } from './read-three.js';

/** A layout in the distances notation, as people write it; all three are arcs on the ball. */
export interface DistanceNumbers {
  readonly pinToPapIn: number;
  readonly markerToPapIn: number;
  readonly pinBufferIn: number;
}

const ORDER = 'The order is pin-to-PAP x marker-to-PAP x pin buffer, in inches, like "4 1/2 x 3 3/8 x 2".';

const DISTANCES: ThreeNumbers<keyof DistanceNumbers> = {
  limits: {
    pinToPapIn: [0, 6.75, 'pin-to-PAP', 'in'],
    markerToPapIn: [0, 13.5, 'marker-to-PAP', 'in'],
    pinBufferIn: [0, 6.75, 'pin buffer', 'in'],
  },
  form: ORDER,
  order: ORDER,
};

/**
 * Reads pin-to-PAP x marker-to-PAP x pin buffer, all in inches, fractions allowed.
 *
 * @param field  what a fault calls it
 * @throws {InputError} `layout-text` when it cannot be read or a number is out of range
 */
export const parseDistances = (text: string, field = 'layoutDistances'): DistanceNumbers =>
  readThree(text, field, DISTANCES);
