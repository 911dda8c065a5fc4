import { symmetricEigen } from '../eigen3.js';
import { inverse, type Mat3, mulVec, transpose } from '../mat3.js';
import { scale, sub, type Vec3 } from '../vec3.js';
import {
  type BallBody,
  coreMoments,
  shellMoments,
  shiftMoments,
  sphereMoments,
  stretchMoments,
} from './ball-body.js';
import { addMoments, fromMoments, type Moments, NO_MOMENTS } from './mass-properties.js';
import { type Part, partReach, stretchPart } from './part.js';
import { type PublishedNumbers, wantedFirstMoment, wantedMoments } from './published.js';

/** A core shape to start from, with the cover it sits in. */
export interface StartingShape {
  readonly core: readonly Part[];
  readonly coverThickness: number;
  readonly coverDensity: number;
}

/** Why a starting shape led to no core. */
export type Misfit =
  | 'filler-too-light'
  | 'filler-too-heavy'
  | 'core-too-big'
  | 'core-too-dense'
  | 'low-axis-off-pin'
  | 'high-axis-off-marker'
  | 'no-solution';

export type SolvedCore =
  | { readonly kind: 'fits'; readonly body: BallBody; readonly steps: number }
  | { readonly kind: 'misfit'; readonly why: Misfit };

/** Bounds of what is built, kg/m³ and m (filler 0.6–1.4 g/cc: common practice; 3.80 g/cc: component rule, from memory). */
const HEAVIEST_FILLER = 1400;
const LIGHTEST_FILLER = 600;
const GREATEST_DENSITY = 3800;
const LEAST_GAP_TO_COVER = 0.0005;
/**
 * Least cosine between an axis and its mark: 8°, 0.6 in on the surface. The sport allows 1 in to the pin and
 * 1.5 in to the mass-bias mark (USBC equipment news, in force 31 Jan 2012).
 */
const ALIGNED = Math.cos((8 * Math.PI) / 180);

/**
 * Shapes a core until the ball has its published numbers.
 *
 * The core's moments are taken once; stretching by axes, scaling its density, shifting and the filler's
 * density then act in closed form, so each Newton step costs a few 3×3 products. The unknowns are the
 * logarithms of the density scale and of the stretches at constant volume (one for a symmetric ball, whose
 * lateral stretches are tied, else two). The equations are the principal moments about the centre of mass:
 * eigenvalues, since the shift tilts the axes a little. A symmetric ball meets RG and differential; the
 * shift off the pin leaves it a little intermediate differential (up to 0.001 in at 3 oz and 3 in).
 *
 * @returns the fitted ball (moments met to 1e-10 of their size), or why this shape cannot have them
 */
export function solveCore(published: PublishedNumbers, start: StartingShape): SolvedCore {
  const raw = coreMoments(start.core);
  const tied = published.intermediateDifferential < TIED_BELOW;
  const target = wantedMoments(published);
  const residual = (x: readonly number[]): number[] => {
    const { moments } = assemble(published, start, raw, shapingOf(x));
    const [low, middle, high] = symmetricEigen(fromMoments(moments).I_Bcm_B).values;
    return tied
      ? [low / target[0] - 1, high / target[2] - 1]
      : [low / target[0] - 1, middle / target[1] - 1, high / target[2] - 1];
  };

  let x: number[] = tied ? [0, 0] : [0, ASYMMETRIC_START, 0];
  let r = residual(x);
  let steps = 0;
  for (; steps < MOST_STEPS && Math.max(...r.map(Math.abs)) > RESIDUAL; steps++) {
    const step = newtonStep(residual, x, r);
    const longest = Math.max(...step.map(Math.abs));
    if (!Number.isFinite(longest)) return { kind: 'misfit', why: 'no-solution' };
    const damp = Math.min(1, LONGEST_STEP / longest);
    x = x.map((v, i) => v + damp * step[i]);
    r = residual(x);
  }
  if (!(Math.max(...r.map(Math.abs)) <= RESIDUAL)) return { kind: 'misfit', why: 'no-solution' };
  return finish(published, start, raw, shapingOf(x), steps);
}

const TIED_BELOW = 2.5e-6; // m (1e-4 in): below, the two lateral moments are one number
const ASYMMETRIC_START = 0.05; // off the degenerate point where two moments are equal
const MOST_STEPS = 20;
const LONGEST_STEP = 0.4;
const RESIDUAL = 1e-10;
const DIFFERENCE = 1e-6;

/** What is done to a starting core: stretches along its axes, and a factor on its density. */
interface Shaping {
  readonly stretch: Vec3;
  readonly density: number;
}

const shapingOf = (x: readonly number[]): Shaping => {
  const density = Math.exp(x[x.length - 1]);
  const axial = x[0];
  const lateral = x.length === 3 ? x[1] : 0;
  return {
    stretch: [Math.exp(-axial / 2 - lateral), Math.exp(-axial / 2 + lateral), Math.exp(axial)],
    density,
  };
};

function newtonStep(
  f: (x: readonly number[]) => number[],
  x: readonly number[],
  r: readonly number[],
): number[] {
  const columns = x.map((_, j) =>
    f(x.map((v, i) => v + (i === j ? DIFFERENCE : 0))).map((v, i) => (v - r[i]) / DIFFERENCE),
  );
  if (x.length === 2) {
    const [[a, c], [b, d]] = columns as [[number, number], [number, number]];
    const k = -1 / (a * d - b * c);
    return [k * (d * r[0] - b * r[1]), k * (a * r[1] - c * r[0])];
  }
  const J = transpose(columns as unknown as Mat3);
  return [...scale(-1, mulVec(inverse(J), r as unknown as Vec3))];
}

/** The ball with its core shaped: the shift meets the first moment, the filler meets the mass. */
function assemble(
  published: PublishedNumbers,
  start: StartingShape,
  raw: Moments,
  { stretch, density }: Shaping,
): { moments: Moments; shift: Vec3; fillerDensity: number } {
  const core = addMoments(NO_MOMENTS, stretchMoments(raw, stretch), density);
  const shift = scale(1 / core.mass, sub(wantedFirstMoment(published), core.first));
  const inner = published.radius - start.coverThickness;
  const cover = shellMoments({ ...start, radius: published.radius, fillerDensity: 0 }).mass;
  const fillerDensity = (published.mass - cover - core.mass) / sphereMoments(inner, 1).mass;
  const shell = shellMoments({ ...start, radius: published.radius, fillerDensity });
  return { moments: addMoments(shell, shiftMoments(core, shift)), shift, fillerDensity };
}

function finish(
  published: PublishedNumbers,
  start: StartingShape,
  raw: Moments,
  shaping: Shaping,
  steps: number,
): SolvedCore {
  const { moments, shift, fillerDensity } = assemble(published, start, raw, shaping);
  const misfit = (why: Misfit): SolvedCore => ({ kind: 'misfit', why });
  if (!(fillerDensity >= lightestFiller(published.mass))) return misfit('filler-too-light');
  if (!(fillerDensity <= HEAVIEST_FILLER)) return misfit('filler-too-heavy');
  const core = start.core.map((part) => ({
    ...stretchPart(part, shaping.stretch, shift),
    excess: part.excess * shaping.density,
  }));
  const room = published.radius - start.coverThickness - LEAST_GAP_TO_COVER;
  if (core.some((part) => partReach(part) > room)) return misfit('core-too-big');
  if (fillerDensity + Math.max(...core.map(({ excess }) => excess)) > GREATEST_DENSITY)
    return misfit('core-too-dense');
  const [lowAxis, , highAxis] = symmetricEigen(fromMoments(moments).I_Bcm_B).axes;
  if (!(Math.abs(lowAxis[2]) >= ALIGNED)) return misfit('low-axis-off-pin');
  if (published.family === 'asymmetric' && !(Math.abs(highAxis[0]) >= ALIGNED))
    return misfit('high-axis-off-marker');
  const { coverThickness, coverDensity } = start;
  return {
    kind: 'fits',
    body: { radius: published.radius, coverThickness, coverDensity, fillerDensity, core },
    steps,
  };
}

/**
 * Least density of filler, kg/m³. A light ball is made light by its filler, since cover and core are not:
 * 14 lb and up use the usual bound, each kilogram less lowers it by as much as the inside then lacks.
 */
const lightestFiller = (mass: number): number =>
  Math.max(350, LIGHTEST_FILLER - 170 * Math.max(0, 6.35 - mass));
