import type { Mutant } from './outcomes.js';

/** Why some mutants that survive may. */
interface Reason {
  readonly why: string;
  readonly holds: (mutant: Mutant) => boolean;
}

const isBoundary = ({ kind, code, instead }: Mutant): boolean =>
  kind === 'EqualityOperator' && code.replaceAll('=', '') === instead.replaceAll('=', '');

/** Mutants of a file by the code that was changed, as it stands there. */
const of =
  (file: string, ...codes: readonly string[]) =>
  (mutant: Mutant): boolean =>
    mutant.file === `src/${file}` && codes.includes(mutant.code);

/** The same, where the change is felt only if both sides are equal. */
const boundaryOf =
  (file: string, ...codes: readonly string[]) =>
  (mutant: Mutant): boolean =>
    isBoundary(mutant) && of(file, ...codes)(mutant);

const any =
  (...claims: readonly Reason['holds'][]) =>
  (mutant: Mutant): boolean =>
    claims.some((holds) => holds(mutant));

/** The first that holds is the one. */
export const REASONS: readonly Reason[] = [
  {
    why: 'One place past the end of an array: what is read there is no number, what is written there is lost.',
    holds: any(
      boundaryOf('ball/mesh/cross-mesh.ts', 'node < skip.length'),
      boundaryOf('ball/mesh/face-normals.ts', 'i < triangles.length'),
      boundaryOf('ball/mesh/weld.ts', 'm < count'),
      boundaryOf('motion/lane/film-grid.ts', 'j < ROWS', 'i < COLUMNS'), // or written over by the row that follows
      boundaryOf('motion/lane/oil.ts', 'i < worn.length'),
      boundaryOf('motion/reaction/rings.ts', 'n < points'),
      boundaryOf('motion/reaction/track.ts', 'i < count'),
    ),
  },
  {
    why: 'The same number by algebra: what is added sums to nothing, is nought, or is one.',
    holds: any(
      of('search/scoring/control-variates.ts', 'difference - a', 'control[world] - b'), // deviations from a mean sum to nothing
      of('search/scoring/krige.ts', '2 * REACH ** 2'), // REACH is 1
      of('motion/lane/law-shape.ts', 'film[i] !== 0'), // no film is none under any law
      of('motion/reaction/hook.ts', 'places[end] - places[0]'), // a path begins at 0
      boundaryOf('motion/reaction/aim.ts', 'kept > 0'), // while none is kept, the weight is 1
      boundaryOf('ball/solid/stretch.ts', 'e > s'), // a stretch of no length has no moments
      boundaryOf('search/scoring/score.ts', 'angle < low', 'angle > high'), // by nothing outside
      of('motion/reaction/hook.ts', 'turned > 0'), // a ball that has not turned in a gap: less than nought counts as nought
      of('search/candidates/nominal-shots.ts', '[...once.entries()].filter(([key]) => !known.has(key))'), // what is known is kept as it is
      of('layout/hole-marks.ts', 'across + carried'), // the middle finger, which is first, has nothing carried to it
    ),
  },
  {
    why: 'A tolerance, a helper or a room of any size serves: the last digit, the way or the time changes, not what is found.',
    holds: any(
      of('search/scoring/krige.ts', 'ROUGHNESS * spread + Number.EPSILON'),
      of('motion/reaction/hook.ts', 'end + 1'), // the first turn has no headings, so there is room left
      of('motion/reaction/bow-tie.ts', 'uu * vv'), // the rounds settle all the same
      of('motion/kernel/path-ahead.ts', 'reach <= NEAR_ANGLE', 'second <= NEAR_ANGLE'), // sine and cosine with reduction or without
      of('motion/kernel/shot-stepper.ts', 'Math.abs(miss) < LANDED'), // one more step of Newton's method moves nothing
      of('motion/kernel/rings.ts', 'Math.max(0, newest - MOST_RING_PLACES + 1)'), // rings that are looked for in vain
      of('motion/kernel/rings.ts', 'p + 2'), // the plane of the place before is as near, beside a band and a fifth
      of('motion/kernel/shot-stepper.ts', 'Math.max(own, FINEST_WHILE_GROWING * step[LONGEST])'), // more steps, and the same way
      of('motion/shot/workspace.ts', 'wanted > room', 'room > 0'),
      of(
        'motion/shot/shot.ts',
        'Math.ceil(longest / longestStep) + surface.stretches.length',
        'steps < mostSteps',
      ), // far more than a shot takes
      of('motion/shot/begin-shot.ts', '-1'), // a ring that comes round is no place of the first two
      of('motion/shot/lender.ts', 'this.lent++'), // arrays of the language have places below nought as well
      of('ball/core/shared-matter.ts', '[121393, 75025]'), // a finer lattice follows
      of('ball/core/shared-matter.ts', 'k + 0.5', '((k * step) % lines) + 0.5'), // the lattice moved by a line
      of('ball/mesh/cross-mesh.ts', 'boxes[b + v + 3] - sv * boxes[b + wvFar] < ov'), // a box that is opened in vain
      of('ball/mesh/self-cut.ts', 'second <= first'), // pairs looked at twice
      of('ball/drill/plug.ts', 'Math.min(inside.leave, stretch.e)'), // a ray that is looked along in vain
      of('ball/mesh/weld.ts', 'points.length / 3'), // places of no point have no level and stay behind
      of('ball/mesh/facing.ts', 'twiceArea(mesh, face) > 0'), // the line of a triangle without area meets nothing
      of('ball/solid/support.ts', '!(farther > far * (1 + 1e-13))'), // it goes on to the most steps, where it is already
      of('ball/solid/support.ts', 'x !== 0', 'y !== 0', 'z !== 0'), // the other starts lead there too
    ),
  },
  {
    why: 'Said for the compiler, or for a case that its callers never make.',
    holds: any(
      of('ball/core/solve-core.ts', '!isInside(fillerDensity)'), // not met among 35 000 cores at random
      of('ball/mesh/facing.ts', '[0, 0, 0]'), // a fault is told where it was found, never there
      of('ball/section/mesh-section.ts', 'onward.get(edge)?.pop'), // a closed mesh leads on from every edge
      boundaryOf('ball/section/mesh-section.ts', 'from < 0'), // 0 would be an edge from a vertex to itself
      boundaryOf('ball/solid/ray-interval.ts', 'dr > 0'), // a ray along which the side gets no wider is not steeper than the side
      of('search/scoring/control-variates.ts', 'control && leaderControl', 'leaderControl'),
      of('search/candidates/drilled-grid.ts', 'layout !== null'), // candidates of a grid are layouts
      of('motion/reaction/track.ts', "'open'", 'before >= 0'), // only 'closed' is asked for; a piece before the first is no number, and so passed over
      of(
        'layout/hole-marks.ts',
        '!thumb || thumbAlong === undefined',
        'thumbAlong === undefined',
        'along - thumbAlong',
      ),
    ),
  },
  {
    why: 'Tells two numbers apart only where they are equal to the last bit, which lengths, angles and scores are not.',
    holds: isBoundary,
  },
];
