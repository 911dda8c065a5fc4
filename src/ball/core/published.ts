import { cos, sin } from '../../math/sin-cos.js';
import type { Vec3 } from '../../math/vec3.js';
import { type CoreFamily, hasMassBias } from '../../records/schemas/core-families.js';

/** How the noses of a lobed core stand. */
export interface Lobes {
  readonly count: number; // 3 or more, or the core would not be symmetric
  /** At the pin, from the marker to a nose, clockwise as seen from outside, rad. */
  readonly fromMarker: number;
}

/** What a maker publishes of an undrilled ball, in SI. */
export interface PublishedNumbers {
  readonly mass: number; // kg
  readonly radius: number; // m
  readonly lowRg: number; // m, about the pin's axis
  readonly differential: number; // m, high RG less low RG
  readonly intermediateDifferential: number; // m, high RG less middle RG
  readonly pinToCg: number; // rad, from the pin toward the marker
  /** Mass times offset of the centre of mass, kg·m: what the top weight amounts to. */
  readonly topMoment: number;
  readonly family: CoreFamily;
  /** Noses of a lobed core; left out, `USUAL_LOBES` of them, one toward the marker. */
  readonly lobes?: Lobes;
}

/** Wanted principal moments about the centre of mass (low, middle, high), kg·m². */
export const wantedMoments = (p: PublishedNumbers): Vec3 => {
  const high = p.lowRg + p.differential;
  const middle = high - p.intermediateDifferential;
  return [p.mass * p.lowRg ** 2, p.mass * middle ** 2, p.mass * high ** 2];
};

/** Wanted first moment about Bo, kg·m, in C: toward the CG mark. */
export const wantedFirstMoment = (p: PublishedNumbers): Vec3 => [
  p.topMoment * sin(p.pinToCg),
  0,
  p.topMoment * cos(p.pinToCg),
];

/** Up to this differential, m, the axes of a symmetric ball mean little, since top weight alone turns them off the pin. */
const LITTLE_DIFFERENTIAL = 0.0001271; // 0.005 in and rounding

/** Whether a ball's core stands under the CG mark instead of the pin. */
export const standsUnderCg = ({ family, differential }: PublishedNumbers): boolean =>
  !hasMassBias(family) && differential <= LITTLE_DIFFERENTIAL;

/** Angle from the pin's axis to the core's own, rad, toward the marker. */
export const coreLean = (p: PublishedNumbers): number => (standsUnderCg(p) ? p.pinToCg : 0);
