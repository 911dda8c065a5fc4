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
 * A coarser finish raises friction on oil, since its peaks reach through the film, and less so on dry boards, where the friction of solids
 * hardly depends on how rough they are (Bowden & Tabor, The Friction and Lubrication of Solids, 1950: from memory). **Both powers of
 * the grit are assumptions of flarewise: no measured law was found.**
 *
 * @param lane  at the reference finish
 * @param grit  the cover's finish
 */
export function frictionOf(
  lane: { readonly frictionOiled: number; readonly frictionDry: number },
  grit: number,
  { frictionOiledFactor, frictionDryFactor, filmScale, finishExponent, finishOnDry }: AssumedSurface,
): { readonly oiled: number; readonly dry: number; readonly filmScale: number } {
  const coarser = REFERENCE_GRIT / grit;
  const onOil = lane.frictionOiled * frictionOiledFactor * power(coarser, finishExponent);
  const onDry = lane.frictionDry * frictionDryFactor * power(coarser, finishExponent * finishOnDry);
  const dry = Math.min(GREATEST_FRICTION, onDry);
  const oiled = Math.min(dry, Math.max(LEAST_FRICTION, onOil));
  return { oiled, dry, filmScale };
}
