import type { Vec3 } from '../../math/vec3.js';
import type { Moments } from '../mass/mass-properties.js';
import { MomentSum } from '../mass/moment-sum.js';

/** A stretch s ≤ t ≤ e of a ray a + t d (m, |d| = 1) that represents a cross-section of `area` (m²) of what a drill removes. */
export interface Stretch {
  readonly a: Vec3;
  readonly d: Vec3;
  readonly area: number;
  readonly s: number;
  readonly e: number;
}

/** Moments of matter of one density (kg/m³) along stretches, about Bo, in their frame. */
export function uniformMoments(stretches: readonly Stretch[], density: number): Moments {
  const sum = new MomentSum();
  for (const { a, d, area, s, e } of stretches) if (e > s) sum.addStretch(a, d, s, e, density * area);
  return sum.moments();
}
