import { type PublishedNumbers, wantedFirstMoment, wantedMoments } from '../../src/ball/core/published.js';
import type { StartingCore } from '../../src/ball/core/solve-core.js';
import { type BallBody, coreMoments, shellMoments, sphereMoments } from '../../src/ball/drill/ball-body.js';
import { addMoments, fromMoments, type Moments, NO_MOMENTS } from '../../src/ball/mass/mass-properties.js';
import { stretchPart } from '../../src/ball/solid/part.js';
import { partReach } from '../../src/ball/solid/support.js';
import { symmetricEigen } from '../../src/math/eigen3.js';
import { inverse, type Mat3, mulVec, transpose } from '../../src/math/mat3.js';
import { scale, sub, type Vec3 } from '../../src/math/vec3.js';
import { shiftMoments, stretchMoments } from './moved-moments.js';

/*
 * A core fitted by another method than `solveCore`: its volume is kept, and Newton with difference quotients
 * finds stretches and density that give the principal moments, taken by a numerical eigensolver. The filler
 * follows. Slow, and a misfit is noticed only at the end; it rests on none of `solveCore`'s formulas.
 */

type NewtonCore =
  | { readonly kind: 'fits'; readonly body: BallBody }
  | { readonly kind: 'misfit'; readonly why: string };

/** The bounds of `solveCore`, from the same sources. */
const [HEAVIEST_FILLER, GREATEST_DENSITY, GAP] = [1400, 3800, 0.0005];
const ALIGNED = Math.cos((8 * Math.PI) / 180);

const MOST_STEPS = 20;
const LONGEST_STEP = 0.4;
const RESIDUAL = 1e-10;
const DIFFERENCE = 1e-6;

export function newtonCore(published: PublishedNumbers, start: StartingCore): NewtonCore {
  const raw = coreMoments(start.core);
  const target = wantedMoments(published);
  const tied = published.family !== 'asymmetric';
  const residual = (x: readonly number[]): number[] => {
    const { moments } = assembled(published, start, raw, x);
    const [low, middle, high] = symmetricEigen(fromMoments(moments).I_Bcm_B).values;
    const [l, m, h] = [low / target[0] - 1, middle / target[1] - 1, high / target[2] - 1];
    return tied ? [l, h] : [l, m, h];
  };
  let x: number[] = tied ? [0, 0] : [0, 0.05, 0]; // off the degenerate point where two moments are equal
  let r = residual(x);
  for (let step = 0; step < MOST_STEPS && Math.max(...r.map(Math.abs)) > RESIDUAL; step++) {
    const d = newtonStep(residual, x, r);
    const damp = Math.min(1, LONGEST_STEP / Math.max(...d.map(Math.abs)));
    x = x.map((v, i) => v + damp * d[i]);
    r = residual(x);
  }
  if (!(Math.max(...r.map(Math.abs)) <= RESIDUAL)) return { kind: 'misfit', why: 'no solution' };
  return checked(published, start, assembled(published, start, raw, x));
}

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

/** The ball for the logarithms of an axial stretch, a lateral one (asymmetric only) and a factor on the density. */
function assembled(published: PublishedNumbers, start: StartingCore, raw: Moments, x: readonly number[]) {
  const lateral = x.length === 3 ? x[1] : 0;
  const stretch: Vec3 = [Math.exp(-x[0] / 2 - lateral), Math.exp(-x[0] / 2 + lateral), Math.exp(x[0])];
  const density = Math.exp(x[x.length - 1]);
  const core = addMoments(NO_MOMENTS, stretchMoments(raw, stretch), density);
  const shift = scale(1 / core.mass, sub(wantedFirstMoment(published), core.first));
  const { radius } = published;
  const cover = shellMoments({ ...start, radius, fillerDensity: 0 }).mass;
  const inner = sphereMoments(radius - start.coverThickness, 1).mass;
  const fillerDensity = (published.mass - cover - core.mass) / inner;
  const shell = shellMoments({ ...start, radius, fillerDensity });
  return { moments: addMoments(shell, shiftMoments(core, shift)), stretch, density, shift, fillerDensity };
}

function checked(
  published: PublishedNumbers,
  start: StartingCore,
  { moments, stretch, density, shift, fillerDensity }: ReturnType<typeof assembled>,
): NewtonCore {
  const misfit = (why: string): NewtonCore => ({ kind: 'misfit', why });
  if (!(fillerDensity >= start.lightestFiller && fillerDensity <= HEAVIEST_FILLER)) return misfit('filler');
  const core = start.core.map((part) => ({
    ...stretchPart(part, stretch, shift),
    excess: part.excess * density,
  }));
  if (fillerDensity + Math.max(...core.map(({ excess }) => excess)) > GREATEST_DENSITY)
    return misfit('core too dense');
  const [low, , high] = symmetricEigen(fromMoments(moments).I_Bcm_B).axes;
  if (!(Math.abs(low[2]) >= ALIGNED)) return misfit('low axis off the pin');
  if (published.family === 'asymmetric' && !(Math.abs(high[0]) >= ALIGNED))
    return misfit('high axis off the marker');
  const room = published.radius - start.coverThickness - GAP;
  if (core.some((part) => partReach(part) > room)) return misfit('core too big');
  const { coverThickness, coverDensity } = start;
  return {
    kind: 'fits',
    body: { radius: published.radius, coverThickness, coverDensity, fillerDensity, core },
  };
}
