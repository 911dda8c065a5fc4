import { DEGREE, from, INCH } from '../base/units.js';
import type { Layout } from '../layout/layout.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';

/** Written numbers of a layout in radians, on a ball of this radius (m). */
export const toLayout = (numbers: LayoutNumbers, radius: number): Layout => ({
  drillingAngle: from(numbers.drillingAngleDeg, DEGREE),
  pinToPap: from(numbers.pinToPapIn, INCH) / radius,
  valAngle: from(numbers.valAngleDeg, DEGREE),
});
