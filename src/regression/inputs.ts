import type { RollingBody } from '../motion/body.js';
import type { FreshSurface } from '../motion/fresh-surface.js';
import type { Launch, Release } from '../motion/release.js';
import type { Surface } from '../motion/surface.js';

/** All that a shot depends on, in SI, as the physics engine takes it. */
export interface ShotInputs {
  readonly body: RollingBody;
  readonly release: Release;
  readonly launch: Launch;
  readonly surface: Surface;
  readonly freshSurface: FreshSurface;
}
