import type { Mutant } from './outcomes.js';

/** Why some mutants that survive may. */
export interface Reason {
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

const any =
  (...claims: readonly Reason['holds'][]) =>
  (mutant: Mutant): boolean =>
    claims.some((holds) => holds(mutant));

/** The first that holds is the one. */
export const REASONS: readonly Reason[] = [
  {
    why: 'Tells two numbers apart only where they are equal to the last bit, which lengths, angles and scores are not.',
    holds: isBoundary,
  },
  {
    why: 'The same number by algebra: what is added sums to nothing, is nought, or is one.',
    holds: any(
      of('search/scoring/control-variates.ts', 'difference - a', 'control[world] - b'), // deviations from a mean sum to nothing
      of('search/scoring/krige.ts', '2 * REACH ** 2'), // REACH is 1
      of('motion/reaction/hook.ts', 'places[end] - places[0]'), // a path begins at 0
      of('search/candidates/nominal-shots.ts', '[...once.entries()].filter(([key]) => !known.has(key))'), // what is known is kept as it is
      of('layout/hole-marks.ts', 'across + carried'), // the middle finger, which is first, has nothing carried to it
    ),
  },
  {
    why: 'A tolerance, a helper or a room of any size serves: the last digit, the way or the time changes, not what is found.',
    holds: any(
      of('search/scoring/krige.ts', 'ROUGHNESS * spread + Number.EPSILON'),
      of('motion/lane/film-grid.ts', 'j < ROWS'), // what is written past the end of an array is lost
      of('motion/reaction/hook.ts', 'end + 1'), // the first turn has no headings, so there is room left
      of('motion/reaction/bow-tie.ts', 'Math.abs(p[0]) < 0.5', 'uu * vv'), // any axis across; the rounds settle all the same
      of('motion/kernel/path-ahead.ts', 'reach <= NEAR_ANGLE', 'second <= NEAR_ANGLE'), // sine and cosine with reduction or without
      of('motion/kernel/shot-stepper.ts', 'Math.abs(miss) < LANDED'), // one more step of Newton's method moves nothing
      of('motion/kernel/rings.ts', 'Math.max(0, newest - MOST_RING_PLACES + 1)'), // rings that are looked for in vain
      of('motion/kernel/rings.ts', 'p + 2'), // the plane of the place before is as near, beside a band and a fifth
      of('motion/kernel/shot-stepper.ts', 'Math.max(own, FINEST_WHILE_GROWING * step[LONGEST])'), // more steps, and the same way
      of('motion/shot/workspace.ts', 'wanted > room', 'room > 0'),
      of('motion/shot/shot.ts', 'Math.ceil(longest / longestStep) + surface.stretches.length'), // far more than a shot takes
      of('motion/shot/lender.ts', 'this.lent++'), // arrays of the language have places below nought as well
      of('ball/core/shared-matter.ts', 'k + 0.5', '((k * step) % lines) + 0.5'), // the lattice moved by a line
      of('ball/mesh/facing.ts', 'twiceArea(mesh, face) > 0'), // the line of a triangle without area meets nothing
      of('ball/solid/support.ts', '!(farther > far * (1 + 1e-13))'), // it goes on to the most steps, where it is already
      of('ball/solid/support.ts', 'x !== 0', 'y !== 0', 'z !== 0'), // the other starts lead there too
    ),
  },
  {
    why: 'Said for the compiler, or for a case that its callers never make.',
    holds: any(
      of('ball/section/mesh-section.ts', 'onward.get(edge)?.pop'), // a closed mesh leads on from every edge
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
];
