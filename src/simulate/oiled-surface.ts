import { oncePer } from '../base/once-per.js';
import { asExponential } from '../motion/lane/law-shape.js';
import { layOil, type OilPattern } from '../motion/lane/oil.js';
import { type Surface, surfaceOf } from '../motion/lane/surface.js';
import type { AssumedSurface } from './worlds/assumed-surface.js';
import { frictionOf } from './worlds/friction-of.js';

/** What a cover of some finish, grit, rolls on in a world. The oil laid is the same in all; what games left of it and its friction are not. */
export const oiledSurface = (pattern: OilPattern, grit: number, world: AssumedSurface): Surface =>
  surfaceOf(filmUnder(pattern)(world), frictionOf(pattern, grit, world));

/** Kept for each world: it takes as long to work out as a shot, and shots come back to a world. */
const filmUnder = oncePer((pattern: OilPattern) =>
  oncePer((world: AssumedSurface) => asExponential(layOil(pattern)(world), world.lawShape, world.filmScale)),
);
