import { IDENTITY, scaleMat } from '../../math/mat3.js';
import { cube, fifth } from '../../math/power.js';
import { ZERO } from '../../math/vec3.js';
import { addMoments, type Moments, NO_MOMENTS } from '../mass/mass-properties.js';
import type { LayeredCore } from '../solid/layered-core.js';
import { type Part, partMoments } from '../solid/part.js';
import type { Plug } from './plug.js';

/** A ball before its grip is drilled, in the frame C of its core: z through the pin, x toward the marker. SI. */
export interface BallBody {
  readonly radius: number;
  readonly coverThickness: number;
  readonly coverDensity: number;
  readonly fillerDensity: number;
  /** Parts of the core that keep clear of one another and of the layers. */
  readonly core: readonly Part[];
  /** Solids and meshes of a core that may overlap; absent in a core fitted to published numbers. */
  readonly layers?: LayeredCore;
  /** What fills the holes of earlier drillings, made by `fillHoles`; absent in a new ball. */
  readonly fillings?: Fillings;
}

/** Plugs, which take the place of whatever else would be there. */
interface Fillings {
  readonly plugs: readonly Plug[];
  /** Moments of core and plugs in excess of cover and filler, each point once, about Bo, in C. */
  readonly withCore: Moments;
}

/** Moments about the centre of a uniform sphere (kg, kg·m, kg·m²): second moment 4πρR⁵/15 along each axis. */
export const sphereMoments = (radius: number, density: number): Moments => ({
  mass: (4 / 3) * Math.PI * cube(radius) * density,
  first: ZERO,
  second: scaleMat((4 / 15) * Math.PI * fifth(radius) * density, IDENTITY),
});

/** Moments of the cover's shell and of the sphere of filler inside it, as if there were no core. */
export const shellMoments = (body: Omit<BallBody, 'core' | 'layers' | 'fillings'>): Moments => {
  const inner = body.radius - body.coverThickness;
  return addMoments(
    sphereMoments(body.radius, body.coverDensity),
    sphereMoments(inner, body.fillerDensity - body.coverDensity),
  );
};

/** Moments of what a core has in excess of the filler, about Bo (kg, kg·m, kg·m²), in C. */
export const coreMoments = (core: readonly Part[]): Moments =>
  core.reduce((sum, part) => addMoments(sum, partMoments(part)), NO_MOMENTS);

/** Moments of the whole ball as made, without plugs, about Bo, in C. */
export const bodyMoments = (body: BallBody): Moments =>
  addMoments(addMoments(shellMoments(body), coreMoments(body.core)), body.layers?.moments ?? NO_MOMENTS);
