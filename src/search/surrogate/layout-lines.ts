import type { Layout } from '../../layout/layout.js';
import { clamp } from '../../math/clamp.js';
import type { Vec3 } from '../../math/vec3.js';
import { fittedNumber, type LayoutFit, layoutBasis, layoutFit } from '../../simulate/layout-basis.js';
import type { Outcome } from '../../simulate/simulator.js';

/** Layouts that are asked about, and the launch angle (rad) of each one's own line. */
export interface LayoutLines {
  readonly basis: Float64Array;
  readonly angles: Float64Array;
  /** Layouts to drill into each core, spread over all that are asked about, and the fit over them. */
  readonly sample: readonly Layout[];
  readonly fit: LayoutFit;
}

/**
 * The own lines of many layouts, fitted to those that physics found for some. Where physics may have found none, among layouts that end
 * in the gutter, the fit is kept within the angles found: it means little there, and must not run away.
 *
 * @param nominal  layouts with their own lines, spread over those that may be drilled
 * @param layouts  all that will be asked about
 * @param sampled  how many of the first the fit goes through
 */
export function layoutLines(
  nominal: readonly { readonly layout: Layout; readonly outcome: Outcome }[],
  layouts: readonly Layout[],
  sampled: number,
  pap_B: Vec3,
): LayoutLines {
  const known = spread(nominal, sampled);
  const angles = known.map(({ outcome }) => outcome.launch.angle);
  const [least, most] = [Math.min(...angles), Math.max(...angles)];
  const sample = known.map(({ layout }) => layout);
  const fit = layoutFit(layoutBasis(sample, pap_B));
  const basis = layoutBasis(layouts, pap_B);
  const angleOf = fittedNumber(angles, fit);
  return { basis, angles: angleOf(basis).map((angle) => clamp(angle, least, most)), sample, fit };
}

/** At most `most` of a list, evenly over it. */
function spread<T>(list: readonly T[], most: number): T[] {
  const count = Math.min(most, list.length);
  return Array.from({ length: count }, (_, i) => list[Math.floor((i * list.length) / count)]);
}
