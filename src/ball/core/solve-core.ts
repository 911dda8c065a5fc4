import { bisectBoundary } from '../../math/bisect-boundary.js';
import { turnAboutY } from '../../math/mat3.js';
import type { BallBody } from '../drill/ball-body.js';
import { fitsInside } from '../solid/fits-inside.js';
import { type Part, stretchPart, turnPart } from '../solid/part.js';
import type { Build } from './build.js';
import { GREATEST_DENSITY, HEAVIEST_FILLER } from './build.js';
import { coreShape, LEAST_PEAK_DENSITY_FACTOR, scalingTo } from './core-shape.js';
import { coreLean, type PublishedNumbers } from './published.js';
import { type WantedCore, wantedCore } from './wanted-core.js';

/**
 * A core shape to start from, with the build it sits in. Its size, its proportions along the axes and its density do not matter, since
 * all three are scaled; its own principal axes must be x, y and z.
 */
export interface StartingCore extends Build {
  readonly core: readonly Part[];
}

/** Why a starting shape led to no core. */
export const MISFITS = ['filler-too-light', 'core-too-big', 'core-too-dense', 'low-axis-off-pin'] as const;
export type Misfit = (typeof MISFITS)[number];

export type SolvedCore =
  | { readonly kind: 'fits'; readonly body: BallBody }
  | { readonly kind: 'misfit'; readonly why: Misfit };

/** Least gap between core and cover, m (no source). */
const LEAST_GAP_TO_COVER = 0.0005;

/**
 * Shapes a core so that the ball has its published numbers.
 *
 * Once a filler is chosen, the core's mass, centre and second moments are known (`wantedCore`); three stretches,
 * a density and a shift give them to any shape. Only the filler is left open: the lighter it is, the larger
 * and the less dense the core. The fillers that work with a shape therefore form an interval, from the one with which the
 * core would touch the cover to the one with which it would be too dense; `fillerShare` picks from it.
 *
 * @param fillerShare  0 the lightest filler that works, 1 the heaviest
 * @returns the fitted ball (moments met to rounding), or why no filler works with this shape
 */
export function solveCore(published: PublishedNumbers, start: StartingCore, fillerShare: number): SolvedCore {
  const wanted = wantedCore(published, start);
  const shape = coreShape(start.core);
  const least = start.lightestFiller;
  const why = misfitAt(least, wanted, shape.peakDensityFactor);
  if (why) return { kind: 'misfit', why };

  const room = published.radius - start.coverThickness - LEAST_GAP_TO_COVER;
  const isInside = (filler: number): boolean => {
    const { stretch, shift } = scalingTo(shape, wanted(filler));
    return start.core.every((part) => fitsInside(part, stretch, shift, room));
  };
  const isPossible = (filler: number): boolean => misfitAt(filler, wanted, shape.peakDensityFactor) === null;
  const heaviest = bisectBoundary(isPossible, least, HEAVIEST_FILLER, DENSITY_HALVINGS);
  if (!isInside(heaviest)) return { kind: 'misfit', why: 'core-too-big' };
  const lightest = bisectBoundary(isInside, heaviest, least, SIZE_HALVINGS);
  const fillerDensity = lightest + fillerShare * (heaviest - lightest);
  // the shift grows as the core shrinks: a core close to the cover may fit at both ends of the interval and not between
  if (!isInside(fillerDensity)) return { kind: 'misfit', why: 'core-too-big' };

  const { stretch, shift, densityScale } = scalingTo(shape, wanted(fillerDensity));
  const leaning = turnAboutY(coreLean(published)); // from the pin's axis toward the marker
  const core = start.core.map((part) => ({
    ...turnPart(stretchPart(part, stretch, shift), leaning),
    excess: part.excess * densityScale,
  }));
  const { coverThickness, coverDensity } = start;
  return {
    kind: 'fits',
    body: { radius: published.radius, coverThickness, coverDensity, fillerDensity, core },
  };
}

/** Halvings of the range of fillers: they find the heaviest to 0.001 kg/m³, and the lightest, on which no rule depends, to 1. */
const DENSITY_HALVINGS = 20;
const SIZE_HALVINGS = 10;

/**
 * Why no core of any shape works with a build; null when one may. What rules out a build also rules out any build with a thicker or
 * denser cover or a heavier filler: always where the differential is 0.01 in or more, nearly always below that with much top weight.
 */
export const misfitOfBuild = (published: PublishedNumbers, build: Build): Misfit | null =>
  misfitAt(build.lightestFiller, wantedCore(published, build), LEAST_PEAK_DENSITY_FACTOR);

/**
 * Why no core of a shape works with a filler, whatever its size; null when one may. A heavier filler only makes it worse, except for
 * cores that are too large for the ball anyway.
 */
function misfitAt(
  filler: number,
  wanted: (fillerDensity: number) => WantedCore,
  peakDensityFactor: number,
): Misfit | null {
  const { mass, second, isAligned } = wanted(filler);
  const [x, y, z] = second;
  if (mass <= 0 || x <= 0 || y <= 0 || z <= 0) return 'filler-too-light';
  if (!isAligned) return 'low-axis-off-pin'; // also where the moments are NaN (no real x and z)
  const excess = (peakDensityFactor * mass * mass * Math.sqrt(mass)) / Math.sqrt(x * y * z);
  return filler + excess <= GREATEST_DENSITY ? null : 'core-too-dense';
}
