import type { JudgeAnswer } from '../../records/answers/answer.js';
import { ballUncertainty } from '../../records/schemas/ball.js';
import { unsureNumbers } from '../../records/schemas/ball-uncertainty.js';
import { GUESSED_PAP_IN, papUncertaintyIn } from '../../records/schemas/bowler.js';
import { ballNames } from '../text/ball-numbers.js';
import { givenWithUnit, type Units } from '../text/display-units.js';

/** What of a bowler and a ball was guessed, and has to be found out before a hole is drilled. */
export function guessedTexts(
  { bowler, ball }: Pick<JudgeAnswer['inputs'], 'bowler' | 'ball'>,
  { fineTape }: Units,
): string[] {
  const off = papUncertaintyIn(bowler);
  const guessed = unsureNumbers(ballUncertainty(ball));
  return [
    ...(off >= GUESSED_PAP_IN
      ? [`Your PAP is a guess (± ${givenWithUnit(off, fineTape)}). Have it measured before drilling.`]
      : []),
    ...(guessed.length > 0
      ? [
          `${guessed.length > 2 ? 'The ball’s numbers' : `The ball’s ${ballNames(guessed)}`} are guesses: look them up.`,
        ]
      : []),
  ];
}
