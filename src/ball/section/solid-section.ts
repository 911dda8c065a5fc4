import type { Loop } from '../../math/polygon.js';
import type { Solid } from '../solid/layered-core.js';
import { convexSection } from './convex-section.js';
import { meshSection } from './mesh-section.js';
import type { SectionPlane } from './section-plane.js';

/** The loops in which a plane cuts a solid of a core, m; none where it passes by. */
export function solidSection(solid: Solid, plane: SectionPlane): readonly Loop[] {
  if ('mesh' in solid) return meshSection(solid.mesh, plane);
  const outline = convexSection(solid, plane);
  return outline ? [outline] : [];
}
