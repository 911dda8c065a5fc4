import type { Answers } from './answers.js';
import { kindOf } from './bowler-kinds.js';

/** Published numbers of a ball, record units. */
export interface BallGuess {
  readonly weightLb: number;
  readonly rgIn: number;
  readonly differentialIn: number;
  readonly intermediateDifferentialIn: number;
  readonly pinToCgIn: number;
  readonly topWeightOz: number;
}

/** Kinds of new ball a person may have, with everyday numbers (common practice, no source). No id of a record has a colon. */
export const BALL_KINDS = [
  {
    value: 'new:symmetric',
    label: 'A new ball with a symmetric core',
    note: 'it has no mass-bias mark',
    numbers: { rgIn: 2.53, differentialIn: 0.04, intermediateDifferentialIn: 0 },
  },
  {
    value: 'new:asymmetric',
    label: 'A new ball with an asymmetric core',
    note: 'it has a mass-bias mark',
    numbers: { rgIn: 2.5, differentialIn: 0.048, intermediateDifferentialIn: 0.013 },
  },
] as const;

/** How far a guess may be off (one standard deviation; assumed, no source). */
export const BALL_GUESS_DEVIATION: BallGuess = {
  weightLb: 1,
  rgIn: 0.03,
  differentialIn: 0.01,
  intermediateDifferentialIn: 0.004,
  pinToCgIn: 0.5,
  topWeightOz: 0.5,
};

/** What a box usually says of a ball, whatever its kind (common practice, no source). */
const USUAL_BOX = { pinToCgIn: 2.75, topWeightOz: 3 };

/** Whether the ball is described by answers, and is no record. */
export const isNewBall = ({ ball }: Answers): boolean => BALL_KINDS.some(({ value }) => value === ball);

/** Everyday numbers of the kind of ball, in the weight that is usual for the kind of bowler; no mass bias above its differential. */
export function ballGuessFor(answers: Answers): BallGuess {
  const { numbers } = BALL_KINDS.find(({ value }) => value === answers.ball) ?? BALL_KINDS[0];
  const { differentialIn = numbers.differentialIn } = answers;
  return {
    weightLb: kindOf(answers).weightLb,
    ...numbers,
    ...USUAL_BOX,
    intermediateDifferentialIn: Math.min(numbers.intermediateDifferentialIn, differentialIn),
  };
}
