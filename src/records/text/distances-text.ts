import { type Fault, InputError, quotedTyped } from '../../base/errors.js';
import { numberHint } from './number-hint.js';
import { parseFraction } from './parse-fraction.js';
import { splitLayout } from './split-layout.js';

/** A layout in the distances notation, as people write it; all three are arcs on the ball. */
export interface DistanceNumbers {
  readonly pinToPapIn: number;
  readonly markerToPapIn: number;
  readonly pinBufferIn: number;
}

const ORDER = 'The order is pin-to-PAP x marker-to-PAP x pin buffer, in inches, like "4 1/2 x 3 3/8 x 2".';

const LIMITS = {
  pinToPapIn: [0, 6.75, 'pin-to-PAP'],
  markerToPapIn: [0, 13.5, 'marker-to-PAP'],
  pinBufferIn: [0, 6.75, 'pin buffer'],
} as const;

/**
 * Reads pin-to-PAP x marker-to-PAP x pin buffer, all in inches, fractions allowed.
 *
 * @param field  what a fault calls it
 * @throws {InputError} `layout-text` when it cannot be read or a number is out of range
 */
export function parseDistances(text: string, field = 'layoutDistances'): DistanceNumbers {
  const written = splitLayout(text);
  if (written.length !== 3)
    throw new InputError('layout-text', {
      field,
      rule: 'must be pin-to-PAP x marker-to-PAP x pin buffer',
      got: quotedTyped(text),
      hint: ORDER,
    });
  const parts = written.map((part) => part.replace(/ ?(in|inch|inches|")$/i, ''));
  const [pinToPapIn, markerToPapIn, pinBufferIn] = parts.map(parseFraction) as [number, number, number];
  const numbers: DistanceNumbers = { pinToPapIn, markerToPapIn, pinBufferIn };
  const faults = (['pinToPapIn', 'markerToPapIn', 'pinBufferIn'] as const).flatMap((key, i): Fault[] => {
    const [low, high, name] = LIMITS[key];
    return numbers[key] >= low && numbers[key] <= high
      ? []
      : [
          {
            field: `${field}: ${name}`,
            rule: `must be ${low} to ${high} in`,
            got: quotedTyped(parts[i]),
            hint: numberHint(parts[i], 'in') ?? ORDER,
          },
        ];
  });
  if (faults.length > 0) throw new InputError('layout-text', faults);
  return numbers;
}
