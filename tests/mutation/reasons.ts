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
    ),
  },
  {
    why: 'Said for the compiler, or for a case that its callers never make.',
    holds: any(
      of('search/scoring/control-variates.ts', 'control && leaderControl', 'leaderControl'),
      of(
        'layout/hole-marks.ts',
        '!thumb || thumbAlong === undefined',
        'thumbAlong === undefined',
        'along - thumbAlong',
      ),
    ),
  },
];
