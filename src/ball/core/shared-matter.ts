import {
  IDENTITY,
  type Mat3,
  mulMat,
  mulVec,
  transpose,
  turnAboutX,
  turnAboutY,
  turnAboutZ,
} from '../../math/mat3.js';
import type { Vec3 } from '../../math/vec3.js';
import { type Moments, NO_MOMENTS } from '../mass/mass-properties.js';
import { MomentSum } from '../mass/moment-sum.js';
import { crosser, type Solid } from '../solid/layered-core.js';
import { type LineMoments, RemainingIntervals } from '../solid/remaining-intervals.js';
import { around, type Box, boxOf, meetingOf } from '../solid/solid-box.js';

/** What later solids of a core take from earlier ones. */
interface SharedMatter {
  /** For each solid, the moments about Bo, at density one, of what lies inside a later one. */
  readonly hidden: readonly Moments[];
  /** Greatest change of a second moment in the last refinement, m⁵: about the error of all. */
  readonly unsure: number;
}

/**
 * Space that solids of a core share, measured along lines through the region where they may meet.
 *
 * Each line is cut exactly. The lines form a lattice, refined until the sum over them no longer changes (Fibonacci lattices:
 * Niederreiter, Random Number Generation and Quasi-Monte Carlo Methods, 1992, §5; from memory). They run
 * oblique to all axes that cores are aligned with, so that no flat face is met all at once. Solids that keep
 * clear of one another share exactly nothing.
 *
 * @param solids  in order, in C
 */
export function sharedMatter(solids: readonly Solid[]): SharedMatter {
  const window_Q = meetingWindow(solids);
  if (!window_Q) return { hidden: solids.map(() => NO_MOMENTS), unsure: 0 };
  let hidden = hiddenBy(solids, window_Q, LATTICES[0]);
  let unsure = Number.POSITIVE_INFINITY;
  for (let i = 1; i < LATTICES.length && unsure > QUIET; i++) {
    const finer = hiddenBy(solids, window_Q, LATTICES[i]);
    unsure = farthestApart(finer, hidden);
    hidden = finer;
  }
  return { hidden, unsure };
}

/** Fibonacci numbers, two steps apart: how many lines, and the step of their lattice. */
const LATTICES: readonly (readonly [lines: number, step: number])[] = [
  [6765, 4181],
  [17711, 10946],
  [46368, 28657],
  [121393, 75025],
  [317811, 196418],
  [832040, 514229],
];

/** Refinement ends when second moments change by less than this, m⁵: 7e-7 in of RG for a solid 2.5 g/cc above the filler. */
const QUIET = 6e-12;

/** Frame Q of the lines, which run along its z: turned from C by angles that no core is built with. */
const R_QC: Mat3 = mulMat(turnAboutX(0.63), mulMat(turnAboutY(0.47), turnAboutZ(0.29)));

/** A box in Q around everything that any two solids can share; null when all their boxes keep clear of one another. */
function meetingWindow(solids: readonly Solid[]): Box | null {
  const boxes_C = solids.map((solid) => boxOf(solid, IDENTITY));
  const boxes_Q = solids.map((solid) => boxOf(solid, R_QC));
  let window: Box | null = null;
  for (let i = 0; i < solids.length; i++)
    for (let j = i + 1; j < solids.length; j++) {
      const meeting = meetingOf(boxes_C[i], boxes_C[j]) && meetingOf(boxes_Q[i], boxes_Q[j]);
      if (meeting) window = window ? around(window, meeting) : meeting;
    }
  return window;
}

/** The sum over one lattice of lines. */
function hiddenBy(
  solids: readonly Solid[],
  { low, high }: Box,
  [lines, step]: readonly [number, number],
): Moments[] {
  const R_CQ = transpose(R_QC);
  const d = mulVec(R_CQ, [0, 0, 1]);
  const area = ((high[0] - low[0]) * (high[1] - low[1])) / lines;
  const crossers = solids.map(crosser);
  const sums = solids.map(() => new MomentSum());
  const left = new RemainingIntervals();
  const all = new RemainingIntervals();
  const seen: LineMoments = { m0: 0, m1: 0, m2: 0 };
  const whole: LineMoments = { m0: 0, m1: 0, m2: 0 };
  const ends: number[] = [];
  for (let k = 0; k < lines; k++) {
    const x = low[0] + ((high[0] - low[0]) * (k + 0.5)) / lines;
    const y = low[1] + ((high[1] - low[1]) * (((k * step) % lines) + 0.5)) / lines;
    const a: Vec3 = mulVec(R_CQ, [x, y, 0]);
    left.begin(-BEYOND, BEYOND);
    for (let i = solids.length - 1; i >= 0; i--) {
      const count = crossers[i](ends, a, d);
      if (count === 0) continue;
      seen.m0 = seen.m1 = seen.m2 = whole.m0 = whole.m1 = whole.m2 = 0;
      all.begin(-BEYOND, BEYOND);
      for (let e = 0; e < count; e += 2) {
        left.claim(ends[e], ends[e + 1], area, seen);
        all.claim(ends[e], ends[e + 1], area, whole);
      }
      if (whole.m0 !== seen.m0)
        sums[i].addAlong(a, d, whole.m0 - seen.m0, whole.m1 - seen.m1, whole.m2 - seen.m2);
    }
  }
  return sums.map((sum) => sum.moments());
}

/** Farther from the ball's centre than any core reaches, m. */
const BEYOND = 1;

const farthestApart = (a: readonly Moments[], b: readonly Moments[]): number =>
  Math.max(
    ...a.flatMap(({ second }, i) =>
      second.flatMap((row, j) => row.map((v, k) => Math.abs(v - b[i].second[j][k]))),
    ),
  );
