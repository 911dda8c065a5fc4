import type { Answers, AnswerTypes } from './answers.js';

/** Release numbers of a bowler, and each one's deviation when it is only guessed. Record units. */
export interface ReleaseGuess {
  readonly speedMph: number;
  readonly revRateRpm: number;
  readonly axisTiltDeg: number;
  readonly axisRotationDeg: number;
  readonly papOverIn: number;
  readonly papUpIn: number;
}

/** Kinds of bowler a person may call themselves, with usual numbers (common practice, no source). */
export const BOWLER_KINDS = [
  {
    value: 'usual',
    label: 'One-handed, it hooks as most do',
    guess: {
      speedMph: 17.5,
      revRateRpm: 310,
      axisTiltDeg: 14,
      axisRotationDeg: 48,
      papOverIn: 4.875,
      papUpIn: 0.375,
    },
  },
  {
    value: 'straight',
    label: 'It goes nearly straight',
    guess: {
      speedMph: 15,
      revRateRpm: 160,
      axisTiltDeg: 16,
      axisRotationDeg: 20,
      papOverIn: 4.25,
      papUpIn: 0,
    },
  },
  {
    value: 'many-revs',
    label: 'One-handed, many turns, big hook',
    guess: {
      speedMph: 17,
      revRateRpm: 430,
      axisTiltDeg: 12,
      axisRotationDeg: 55,
      papOverIn: 5.125,
      papUpIn: 0.5,
    },
  },
  {
    value: 'two-handed',
    label: 'Two-handed',
    guess: {
      speedMph: 18,
      revRateRpm: 460,
      axisTiltDeg: 8,
      axisRotationDeg: 62,
      papOverIn: 5.375,
      papUpIn: 1,
    },
  },
  {
    value: 'young',
    label: 'A child, or an adult with a light ball',
    guess: {
      speedMph: 13,
      revRateRpm: 190,
      axisTiltDeg: 14,
      axisRotationDeg: 40,
      papOverIn: 4.375,
      papUpIn: 0.25,
    },
  },
] as const satisfies readonly { value: AnswerTypes['kind']; label: string; guess: ReleaseGuess }[];

/** How far a guess by kind may be off (one standard deviation; assumed, no source). */
export const GUESS_DEVIATION: ReleaseGuess = {
  speedMph: 1.2,
  revRateRpm: 50,
  axisTiltDeg: 5,
  axisRotationDeg: 11,
  papOverIn: 0.4,
  papUpIn: 0.45,
};

/** Usual numbers of the kind of bowler a person is; of the first kind until it is known. */
export const guessFor = (answers: Answers): ReleaseGuess =>
  (BOWLER_KINDS.find(({ value }) => value === answers.kind) ?? BOWLER_KINDS[0]).guess;
