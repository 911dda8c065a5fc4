import { readThree, type ThreeNumbers } from './read-three.js';

/** A layout in the angles notation, as people write it. */
export interface LayoutNumbers {
  readonly drillingAngleDeg: number;
  readonly pinToPapIn: number;
  readonly valAngleDeg: number;
}

const ANGLES: ThreeNumbers<keyof LayoutNumbers> = {
  limits: {
    drillingAngleDeg: [0, 180, 'drilling angle', 'degrees'],
    pinToPapIn: [0, 6.75, 'pin-to-PAP', 'in'],
    valAngleDeg: [0, 180, 'VAL angle', 'degrees'],
  },
  form: 'Write it like "70 x 4 1/2 x 30".',
  order: 'The order is drilling angle x pin-to-PAP x VAL angle, like "70 x 4 1/2 x 30".',
};

/** Inches to the nearest sixteenth, as on a tape: `4 1/2`, `3 3/8`, `0`. */
export const formatSixteenths = (inches: number): string => formatFraction(inches, 16);

/** Inches to the nearest of this many parts (a power of two), as a fraction in its lowest terms: `31/32`. */
export function formatFraction(inches: number, parts: number): string {
  const count = Math.round(Math.abs(inches) * parts);
  const sign = inches < 0 && count > 0 ? '-' : '';
  const whole = Math.floor(count / parts);
  let top = count % parts;
  if (top === 0) return `${sign}${whole}`;
  let bottom = parts;
  while (top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  return `${sign}${whole > 0 ? `${whole} ` : ''}${top}/${bottom}`;
}

/** A layout as people write it: `70 x 4 1/2 x 30`. */
export const formatLayout = (layout: LayoutNumbers): string =>
  `${Math.round(layout.drillingAngleDeg)} x ${formatSixteenths(layout.pinToPapIn)} x ${Math.round(layout.valAngleDeg)}`;

/** A layout without a drilling angle: `pin 4 1/2 x VAL 30`. */
export const formatPinPlace = ({
  pinToPapIn,
  valAngleDeg,
}: Omit<LayoutNumbers, 'drillingAngleDeg'>): string =>
  `pin ${formatSixteenths(pinToPapIn)} x VAL ${Math.round(valAngleDeg)}`;

/**
 * Reads drilling angle (degrees) x pin-to-PAP (in) x VAL angle (degrees), fractions allowed.
 *
 * @throws {InputError} `layout-text` when it cannot be read or a number is out of range
 */
export const parseLayout = (text: string): LayoutNumbers => readThree(text, 'layout', ANGLES);
