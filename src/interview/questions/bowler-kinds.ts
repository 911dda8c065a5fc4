import type { Answers } from './answers.js';

/** Release numbers of a bowler, and each one's deviation when it is only guessed. Record units. */
export interface ReleaseGuess {
  readonly speedMph: number;
  readonly revRateRpm: number;
  readonly axisTiltDeg: number;
  readonly axisRotationDeg: number;
  readonly papOverIn: number;
  readonly papUpIn: number;
}

/** A kind of bowler a person may call themselves. */
export interface BowlerKind {
  /** As it stands among the answers to who bowls; no id of a record has a colon. */
  readonly value: string;
  readonly label: string;
  /** Weight of ball that is usual, lb. */
  readonly weightLb: number;
  readonly usesThumb: boolean;
  readonly guess: ReleaseGuess;
}

/** All kinds, with usual numbers (common practice, no source). */
export const BOWLER_KINDS: readonly [BowlerKind, ...BowlerKind[]] = [
  {
    value: 'kind:usual',
    label: 'One-handed, hooks as most do',
    weightLb: 15,
    usesThumb: true,
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
    value: 'kind:straight',
    label: 'One-handed, goes nearly straight',
    weightLb: 15,
    usesThumb: true,
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
    value: 'kind:many-revs',
    label: 'One-handed, many revs, big hook',
    weightLb: 15,
    usesThumb: true,
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
    value: 'kind:two-handed',
    label: 'Two-handed',
    weightLb: 15,
    usesThumb: false,
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
    value: 'kind:young',
    label: 'A child, or an adult with a light ball',
    weightLb: 12,
    usesThumb: true,
    guess: {
      speedMph: 13,
      revRateRpm: 190,
      axisTiltDeg: 14,
      axisRotationDeg: 40,
      papOverIn: 4.375,
      papUpIn: 0.25,
    },
  },
];

/** How far a guess by kind may be off (one standard deviation; assumed, no source). */
export const GUESS_DEVIATION: ReleaseGuess = {
  speedMph: 1.2,
  revRateRpm: 50,
  axisTiltDeg: 5,
  axisRotationDeg: 11,
  papOverIn: 0.4,
  papUpIn: 0.45,
};

/** The kind of bowler a person chose; the first one where the bowler is on the shelf, or not yet chosen. */
export const kindOf = ({ bowler }: Answers): BowlerKind =>
  BOWLER_KINDS.find(({ value }) => value === bowler) ?? BOWLER_KINDS[0];

/** Whether the bowler is described by answers, and is no record. */
export const isDescribed = ({ bowler }: Answers): boolean =>
  BOWLER_KINDS.some(({ value }) => value === bowler);

/** Usual numbers of the kind of bowler a person is. */
export const guessFor = (answers: Answers): ReleaseGuess => kindOf(answers).guess;
