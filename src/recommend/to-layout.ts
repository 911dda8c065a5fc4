import type { Layout } from '../layout/layout.js';
import type { LayoutNumbers } from '../records/layout-text.js';
import { DEGREE, from, INCH } from '../units.js';

/** Written numbers of a layout in radians, on a ball of this radius (m). */
export const toLayout = (numbers: LayoutNumbers, radius: number): Layout => ({
  drillingAngle: from(numbers.drillingAngleDeg, DEGREE),
  pinToPap: from(numbers.pinToPapIn, INCH) / radius,
  valAngle: from(numbers.valAngleDeg, DEGREE),
});
