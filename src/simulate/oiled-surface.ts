import { oncePer } from '../base/once-per.js';
import { asExponential } from '../motion/lane/law-shape.js';
import { layOil, type OilPattern } from '../motion/lane/oil.js';
import { type Surface, surfaceOf } from '../motion/lane/surface.js';
import type { AssumedSurface } from './worlds/assumed-surface.js';
import { frictionOf } from './worlds/friction-of.js';

/** The lane in a world, with the friction of a cover of some finish (grit). All worlds have the same oil laid; wear and friction differ. */
export const oiledSurface = (pattern: OilPattern, grit: number, world: AssumedSurface): Surface =>
  surfaceOf(filmUnder(pattern)(world), frictionOf(pattern, grit, world));

/** Kept for each world: it takes as long to compute as a shot, and many shots share a world. */
const filmUnder = oncePer((pattern: OilPattern) =>
  oncePer((world: AssumedSurface) => asExponential(layOil(pattern)(world), world.lawShape, world.filmScale)),
);
