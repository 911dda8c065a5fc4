import type { MassProperties } from '../../ball/mass/mass-properties.js';

/** What motion needs to know of a ball: mass properties in B and its radius, m. */
export interface RollingBody extends MassProperties {
  readonly radius: number;
}
