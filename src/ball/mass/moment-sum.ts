import type { Vec3 } from '../../math/vec3.js';
import type { Moments } from './mass-properties.js';

/** Adds up moments about Bo of matter along rays. Adding allocates nothing. */
export class MomentSum {
  private mass = 0;
  private x = 0;
  private y = 0;
  private z = 0;
  private xx = 0;
  private xy = 0;
  private xz = 0;
  private yy = 0;
  private yz = 0;
  private zz = 0;

  /** Matter of `lineDensity` (kg/m) on the stretch s ≤ t ≤ e of the ray a + t d, |d| = 1. */
  addStretch(a: Vec3, d: Vec3, s: number, e: number, lineDensity: number): void {
    this.addAlong(
      a,
      d,
      lineDensity * (e - s),
      (lineDensity * (e * e - s * s)) / 2,
      (lineDensity * (e * e * e - s * s * s)) / 3,
    );
  }

  /** Matter on the ray a + t d with ∫dm, ∫t dm, ∫t² dm. */
  addAlong(a: Vec3, d: Vec3, m0: number, m1: number, m2: number): void {
    this.mass += m0;
    this.x += m0 * a[0] + m1 * d[0];
    this.y += m0 * a[1] + m1 * d[1];
    this.z += m0 * a[2] + m1 * d[2];
    this.xx += m0 * a[0] * a[0] + 2 * m1 * a[0] * d[0] + m2 * d[0] * d[0];
    this.yy += m0 * a[1] * a[1] + 2 * m1 * a[1] * d[1] + m2 * d[1] * d[1];
    this.zz += m0 * a[2] * a[2] + 2 * m1 * a[2] * d[2] + m2 * d[2] * d[2];
    this.xy += m0 * a[0] * a[1] + m1 * (a[0] * d[1] + d[0] * a[1]) + m2 * d[0] * d[1];
    this.xz += m0 * a[0] * a[2] + m1 * (a[0] * d[2] + d[0] * a[2]) + m2 * d[0] * d[2];
    this.yz += m0 * a[1] * a[2] + m1 * (a[1] * d[2] + d[1] * a[2]) + m2 * d[1] * d[2];
  }

  moments(): Moments {
    return {
      mass: this.mass,
      first: [this.x, this.y, this.z],
      second: [
        [this.xx, this.xy, this.xz],
        [this.xy, this.yy, this.yz],
        [this.xz, this.yz, this.zz],
      ],
    };
  }
}
