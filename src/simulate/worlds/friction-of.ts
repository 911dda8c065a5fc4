import { power } from '../../math/power.js';
import type { AssumedSurface } from './assumed-surface.js';

/** Finish at which a cover has the friction stated for the lane, grit. */
export const REFERENCE_GRIT = 2000;

/** Greatest friction of a legal ball on a dry lane (secondary, USBC), and the least that the sport's materials allow (no source). */
const GREATEST_FRICTION = 0.32;
const LEAST_FRICTION = 0.005;

/**
 * Friction of a cover on a lane: on heavy oil and on dry boards, and the film scale between them.
 *
 * A coarser finish raises both by the same factor. **An assumption of flarewise: no measured law was found.**
 *
 * @param lane  at the reference finish
 * @param grit  the cover's finish
 */
export function frictionOf(
  lane: { readonly frictionOiled: number; readonly frictionDry: number },
  grit: number,
  { frictionOiledFactor, frictionDryFactor, filmScale, finishExponent }: AssumedSurface,
): { readonly oiled: number; readonly dry: number; readonly filmScale: number } {
  const finish = power(REFERENCE_GRIT / grit, finishExponent);
  const dry = Math.min(GREATEST_FRICTION, lane.frictionDry * frictionDryFactor * finish);
  const oiled = Math.min(dry, Math.max(LEAST_FRICTION, lane.frictionOiled * frictionOiledFactor * finish));
  return { oiled, dry, filmScale };
}
