import type { MassProperties } from '../../ball/mass/mass-properties.js';

/** A ball as motion needs it: mass properties in B, and radius, m. */
export interface RollingBody extends MassProperties {
  readonly radius: number;
}
