import { type Fault, InputError, quotedTyped } from '../../base/errors.js';
import { numberHint } from './number-hint.js';
import { parseFraction } from './parse-fraction.js';
import { splitLayout } from './split-layout.js';

/** A layout in the angles notation, as people write it. */
export interface LayoutNumbers {
  readonly drillingAngleDeg: number;
  readonly pinToPapIn: number;
  readonly valAngleDeg: number;
}

const ORDER = 'The order is drilling angle x pin-to-PAP x VAL angle, like "70 x 4 1/2 x 30".';

const LIMITS = {
  drillingAngleDeg: [0, 180, 'drilling angle', 'degrees'],
  pinToPapIn: [0, 6.75, 'pin-to-PAP', 'in'],
  valAngleDeg: [0, 180, 'VAL angle', 'degrees'],
} as const;

const DEGREES = / ?(°|deg|degrees?)$/i;
const INCHES = / ?(in|inch|inches|")$/i;

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
export function parseLayout(text: string): LayoutNumbers {
  const written = splitLayout(text);
  if (written.length !== 3)
    throw new InputError('layout-text', {
      field: 'layout',
      rule: 'must be drilling angle x pin-to-PAP x VAL angle',
      got: quotedTyped(text),
      hint: 'Write it like "70 x 4 1/2 x 30".',
    });
  const parts = written.map((part, i) => part.replace(i === 1 ? INCHES : DEGREES, ''));
  const keys = ['drillingAngleDeg', 'pinToPapIn', 'valAngleDeg'] as const;
  const values = parts.map(parseFraction);
  const faults: Fault[] = [];
  keys.forEach((key, i) => {
    const [low, high, name, unit] = LIMITS[key];
    const value = values[i];
    if (!(value >= low && value <= high))
      faults.push({
        field: `layout: ${name}`,
        rule: `must be ${low} to ${high} ${unit}`,
        got: quotedTyped(parts[i]),
        hint: numberHint(parts[i], unit) ?? ORDER,
      });
  });
  if (faults.length > 0) throw new InputError('layout-text', faults);
  return {
    drillingAngleDeg: values[0],
    pinToPapIn: values[1],
    valAngleDeg: values[2],
  };
}
