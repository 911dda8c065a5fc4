import type { BowlerKind, ReleaseGuess } from '../records/shared/release-guesses.js';
import { RELEASE_GUESSES } from '../records/shared/release-guesses.js';
import type { Answers } from './answers.js';

/** What each kind of bowler is called in a question. */
const LABELS: Readonly<Record<BowlerKind, string>> = {
  usual: 'One-handed, it hooks as most do',
  straight: 'It goes nearly straight',
  'many-revs': 'One-handed, many turns, big hook',
  'two-handed': 'Two-handed',
  young: 'A child, or an adult with a light ball',
};

/** Kinds of bowler a person may call themselves, with usual numbers. */
export const BOWLER_KINDS: readonly {
  readonly value: BowlerKind;
  readonly label: string;
  readonly guess: ReleaseGuess;
}[] = (Object.keys(LABELS) as BowlerKind[]).map((value) => ({
  value,
  label: LABELS[value],
  guess: RELEASE_GUESSES[value],
}));

/** Usual numbers of the kind of bowler a person is; of the usual kind until it is known. */
export const guessFor = ({ kind = 'usual' }: Answers): ReleaseGuess => RELEASE_GUESSES[kind];
