import { z } from 'zod';
import { ANY_UNIT } from '../../records/text/read-number.js';
import type { Quantity } from '../../report/text/display-units.js';
import type { Answers, AnswerTypes, IdOf } from './answers.js';
import { isDescribed } from './bowler-kinds.js';
import { formatFound, type MeasuredKey, measuredClash } from './measured-numbers.js';
import type { NumberQuestion, QuestionEntry } from './question.js';

/* What is asked from the review about a number of the release: how it can be measured, and what was read. */

const between = (low: number, high: number, unit: string): z.ZodType =>
  z
    .number({ error: `must be a number, ${low} to ${high} ${unit}` })
    .min(low, `must be ${low} to ${high} ${unit}`)
    .max(high, `must be ${low} to ${high} ${unit}`)
    .meta({ unit });

const GUESS = {
  value: 'guess' as const,
  label: 'Guess it',
  note: 'by the kind of bowler; the answer becomes less certain',
};

const TYPED = { value: 'typed' as const, label: 'Type it' };

/** The ways of measuring, each with the number it is for. */
const OF = {
  speedHow: 'speedMph',
  revRateHow: 'revRateRpm',
  tiltHow: 'axisTiltDeg',
  rotationHow: 'axisRotationDeg',
  papHow: 'papOverIn',
} as const satisfies { readonly [Id in keyof AnswerTypes]?: MeasuredKey };

interface Reading {
  readonly id: IdOf<number>;
  readonly text: string;
  readonly help: string;
  readonly schema: z.ZodType;
  readonly quantity?: Quantity;
  readonly usual: string;
  /** Whether there may be none: `?` then leaves it out, and is no reason to guess. */
  readonly mayBeNone?: true;
}

/** The readings that one way of measuring takes; with the last, what they amount to must be a number a bowler can have. */
const readings = <How extends keyof typeof OF>(
  how: How,
  way: AnswerTypes[How],
  list: readonly Reading[],
): readonly NumberQuestion[] =>
  list.map(({ mayBeNone, ...each }, i) => ({
    ...each,
    kind: 'number',
    name: each.text,
    follows: how,
    ...(mayBeNone ? { guess: () => null } : { givesUp: how }),
    usual: () => each.usual,
    when: (answers) => isDescribed(answers) && answers[how] === way,
    ...(i === list.length - 1 ? resultOf(OF[how]) : {}),
  }));

/** With the last reading: whether what the readings amount to can be, and what it is. */
const resultOf = (key: MeasuredKey): Pick<NumberQuestion, 'check' | 'tell'> => ({
  check: (answers) => measuredClash(key, answers),
  tell: (answers) => formatFound(key, answers),
});

/** What all questions share that ask how a number was found. */
const asHow = <Id extends keyof typeof OF>(id: Id) => ({
  id,
  kind: 'choice' as const,
  stage: 'more' as const,
  givesUp: id,
  when: isDescribed,
  tell: (answers: Answers): string | null =>
    answers[id] === GUESS.value ? formatFound(OF[id], answers) : null,
  /** Typed where nothing else was chosen: then the number's own question counts. */
  usual: () => TYPED.value,
});

export const SPEED_MEASURED: readonly QuestionEntry[] = [
  {
    ...asHow('speedHow'),
    name: 'Ball speed',
    term: 'ball speed',
    text: 'How do you want to give your ball speed?',
    help: 'What a screen over the lane shows is an average, below release speed; it is corrected by {1.6 speed}, give or take {0.4 speed}.',
    options: [
      TYPED,
      { value: 'display', label: 'Measure it: the screen over the lane' },
      { value: 'watch', label: 'Measure it: a stopwatch, foul line to head pin' },
      GUESS,
    ],
  },
  ...readings('speedHow', 'display', [
    {
      id: 'displayMph',
      text: 'What does the screen show, in {unit}?',
      quantity: 'speed',
      help: 'The mean of a few good shots, {range}.',
      schema: between(6, 25, 'mph'),
      usual: '16',
    },
  ]),
  ...readings('speedHow', 'watch', [
    {
      id: 'watchS',
      text: 'Seconds from foul line to head pin?',
      help: 'The mean of your timings: 2 is very fast, 2.5 usual, 3.5 slow.',
      schema: between(1.6, 5.5, 's'),
      usual: '2.5',
    },
    {
      id: 'timings',
      text: 'How many shots did you time?',
      help: 'More timings make it surer: {range}.',
      schema: between(1, 50, 'shots'),
      usual: '3',
    },
  ]),
];

export const REV_RATE_MEASURED: readonly QuestionEntry[] = [
  {
    ...asHow('revRateHow'),
    name: 'Rev rate',
    term: 'rev rate',
    text: 'How do you want to give your rev rate?',
    help: 'Put a strip of tape on the ball and film the first turns after the release from behind; slow motion is best.',
    options: [TYPED, { value: 'video', label: 'Measure it from a video' }, GUESS],
  },
  ...readings('revRateHow', 'video', [
    {
      id: 'turns',
      text: 'How many turns of the tape did you count?',
      help: 'From the release on: {range}, halves and quarters count.',
      schema: between(0.25, 20, 'turns'),
      usual: '2',
    },
    {
      id: 'frames',
      text: 'How many frames did they take?',
      help: 'Step through the video and count: {range}.',
      schema: between(1, 5000, 'frames'),
      usual: '24',
    },
    {
      id: 'framesPerSecond',
      text: 'How many frames a second has the video?',
      help: 'Phones record 30 or 60 frames a second, in slow motion 120 or 240.',
      schema: between(10, 2000, 'frames a second'),
      usual: '60',
    },
  ]),
];

export const TILT_MEASURED: readonly QuestionEntry[] = [
  {
    ...asHow('tiltHow'),
    name: 'Axis tilt',
    term: 'axis tilt',
    text: 'How do you want to give your axis tilt?',
    help: 'From the first oil ring on the ball, the one nearest the thumb. A ring around the ball’s middle means no tilt; a smaller ring, more tilt.',
    options: [
      TYPED,
      { value: 'arc', label: 'Measure it: a tape across the ring' },
      { value: 'diameter', label: 'Measure it: the ring’s straight diameter' },
      GUESS,
    ],
  },
  ...readings('tiltHow', 'arc', [
    {
      id: 'ringArcIn',
      text: 'Tape from edge to edge over the PAP side, in {unit}?',
      quantity: 'tape',
      help: 'Along the ball, across the middle of the ring: {range}. {13 1/2 tape} is no tilt, {11 1/2 tape} is 13 degrees.',
      schema: between(4, 13.5, 'in'),
      usual: '11 1/2',
    },
  ]),
  ...readings('tiltHow', 'diameter', [
    {
      id: 'ringDiameterIn',
      text: 'How wide is the ring, straight across, in {unit}?',
      quantity: 'tape',
      help: 'Between two rulers: {range}. Near {8.6 tape} it is far less exact than a tape.',
      schema: between(3, 8.6, 'in'),
      usual: '8 3/8',
    },
  ]),
];

export const ROTATION_MEASURED: readonly QuestionEntry[] = [
  {
    ...asHow('rotationHow'),
    name: 'Axis rotation',
    term: 'axis rotation',
    text: 'How do you want to give your axis rotation?',
    help: 'From a picture taken straight from behind as the ball leaves the hand, with a mark on the PAP.',
    options: [TYPED, { value: 'picture', label: 'Measure it from a picture' }, GUESS],
  },
  ...readings('rotationHow', 'picture', [
    {
      id: 'markAside',
      text: 'How far aside from the ball’s centre is the mark?',
      help: 'In the picture, in any unit; 0 when it is in the middle.',
      schema: between(0, 10000, ANY_UNIT),
      usual: '2',
    },
    {
      id: 'ballWidth',
      text: 'And how wide is the ball in the picture?',
      help: 'In the same unit.',
      schema: between(0.01, 10000, ANY_UNIT),
      usual: '6',
    },
  ]),
];

export const PAP_MEASURED: readonly QuestionEntry[] = [
  {
    ...asHow('papHow'),
    name: 'PAP',
    term: 'PAP',
    text: 'How do you want to give your PAP?',
    help: 'From the first oil ring on a ball that is drilled for you: where it crosses the midline and the centre line of the grip.',
    options: [TYPED, { value: 'ring', label: 'Measure it from the first oil ring' }, GUESS],
  },
  ...readings('papHow', 'ring', [
    {
      id: 'ringAsideIn',
      text: 'Grip centre to the ring along the midline, in {unit}?',
      quantity: 'tape',
      help: 'On the side away from the PAP, by tape: {1/2 tape} is usual. On the PAP side write it with a minus.',
      schema: between(-3, 6, 'in'),
      usual: '1/2',
    },
    {
      id: 'ringBelowIn',
      text: 'Grip centre to the ring below the thumb, in {unit}?',
      quantity: 'tape',
      help: 'Along the centre line, past the thumb hole, by tape; ? if the ring does not get there.',
      schema: between(0.5, 9, 'in'),
      usual: '5',
      mayBeNone: true,
    },
  ]),
];
