import type { Layout } from '../../layout/layout.js';
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
 * The own lines of many layouts, fitted to those that physics found for some.
 *
 * @param nominal  layouts with their own lines, spread over all
 * @param layouts  all that will be asked about
 * @param sampled  how many of the first the fit goes through
 */
export function layoutLines(
  nominal: readonly { readonly layout: Layout; readonly outcome: Outcome }[],
  layouts: readonly Layout[],
  sampled: number,
  pap_B: Vec3,
): LayoutLines {
  const known = Array.from(
    { length: Math.min(sampled, nominal.length) },
    (_, i) => nominal[Math.floor((i * nominal.length) / sampled)],
  );
  const sample = known.map(({ layout }) => layout);
  const fit = layoutFit(layoutBasis(sample, pap_B));
  const basis = layoutBasis(layouts, pap_B);
  const angleOf = fittedNumber(
    known.map(({ outcome }) => outcome.launch.angle),
    fit,
  );
  return { basis, angles: angleOf(basis), sample, fit };
}
