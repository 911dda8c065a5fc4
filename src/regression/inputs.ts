import type { FreshSurface } from '../motion/lane/fresh-surface.js';
import type { Surface } from '../motion/lane/surface.js';
import type { RollingBody } from '../motion/shot/body.js';
import type { Launch, Release } from '../motion/shot/release.js';

/** Everything that a shot depends on, in SI, as the physics engine takes it. */
export interface ShotInputs {
  readonly body: RollingBody;
  readonly release: Release;
  readonly launch: Launch;
  readonly surface: Surface;
  readonly freshSurface: FreshSurface;
}
