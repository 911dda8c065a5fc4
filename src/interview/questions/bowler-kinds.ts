import { RELEASE_GUESSES, type ReleaseGuess } from '../../records/shared/release-guesses.js';
import type { Answers } from './answers.js';

/** A kind of bowler a person may call themselves. */
interface KindOfBowler {
  /** As it stands among the answers to who bowls; no id of a record has a colon. */
  readonly value: string;
  readonly label: string;
  /** Weight of ball that is usual, lb. */
  readonly weightLb: number;
  readonly usesThumb: boolean;
  readonly guess: ReleaseGuess;
}

/** All kinds, with usual numbers (common practice, no source). */
export const BOWLER_KINDS: readonly [KindOfBowler, ...KindOfBowler[]] = [
  {
    value: 'kind:usual',
    label: 'One-handed, hooks as most do',
    weightLb: 15,
    usesThumb: true,
    guess: RELEASE_GUESSES.usual,
  },
  {
    value: 'kind:straight',
    label: 'One-handed, goes nearly straight',
    weightLb: 15,
    usesThumb: true,
    guess: RELEASE_GUESSES.straight,
  },
  {
    value: 'kind:many-revs',
    label: 'One-handed, many revs, big hook',
    weightLb: 15,
    usesThumb: true,
    guess: RELEASE_GUESSES['many-revs'],
  },
  {
    value: 'kind:two-handed',
    label: 'Two-handed',
    weightLb: 15,
    usesThumb: false,
    guess: RELEASE_GUESSES['two-handed'],
  },
  {
    value: 'kind:young',
    label: 'A child, or an adult with a light ball',
    weightLb: 12,
    usesThumb: true,
    guess: RELEASE_GUESSES.young,
  },
];

/** The kind of bowler a person chose; the first one where the bowler is on the shelf, or not yet chosen. */
export const kindOf = ({ bowler }: Answers): KindOfBowler =>
  BOWLER_KINDS.find(({ value }) => value === bowler) ?? BOWLER_KINDS[0];

/** Whether the bowler is described by answers, and is no record. */
export const isDescribed = ({ bowler }: Answers): boolean =>
  BOWLER_KINDS.some(({ value }) => value === bowler);

/** Usual numbers of the kind of bowler a person is. */
export const guessFor = (answers: Answers): ReleaseGuess => kindOf(answers).guess;
