import { CM, INCH, MM } from '../../../base/units.js';
import { given, UNITS, type Units, withUnit } from '../../text/display-units.js';

/** Inches per unit of a core file. */
const INCHES = { in: 1, mm: MM / INCH, cm: CM / INCH } as const;

/** A length of a core file as the file has it, but inches in millimetres where a person reads these. */
export const lengthInFile = (length: number, unit: keyof typeof INCHES, units: Units): string =>
  units === UNITS.trade || unit !== 'in'
    ? `${given(length, { per: 1 })} ${unit}`
    : withUnit(length * INCHES[unit], units.bore);
