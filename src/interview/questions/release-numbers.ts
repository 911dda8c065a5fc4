import { fromKeys } from '../../base/from-keys.js';
import { DEGREE, from, INCH, MPH, RPM, to } from '../../base/units.js';
import { USUAL_CIRCUMFERENCE_IN } from '../../records/schemas/ball.js';
import {
  GUESS_DEVIATION,
  RELEASE_KEYS,
  type ReleaseGuess,
  type ReleaseKey,
} from '../../records/shared/release-guesses.js';
import { rotationFromPicture } from '../measure/axis-picture.js';
import { type PapPlace, papFromRing, tiltFromArc, tiltFromDiameter } from '../measure/first-ring.js';
import type { Measured } from '../measure/measured.js';
import { speedFromAverage, speedFromTime } from '../measure/release-speed.js';
import { spinFromFrames } from '../measure/rev-rate.js';
import { type Answers, numberAnswered } from './answers.js';
import { guessFor } from './bowler-kinds.js';

/** Numbers of a release in record units, with the deviation of those that were measured here or guessed. */
interface ReleaseNumbers {
  readonly values: ReleaseGuess;
  readonly deviations: Partial<ReleaseGuess>;
}

/** The release that answers amount to: as measured, else as typed, else guessed by the kind of bowler. */
export function releaseNumbers(answers: Answers): ReleaseNumbers {
  const found = fromKeys(RELEASE_KEYS, (key) => releaseNumber(key, answers));
  const unsure = RELEASE_KEYS.filter((key) => found[key].deviation > 0);
  return {
    values: fromKeys(RELEASE_KEYS, (key) => found[key].value),
    deviations: fromKeys(unsure, (key) => found[key].deviation),
  };
}

/** One of them; NaN while readings are missing. */
export function releaseNumber(key: ReleaseKey, answers: Answers): Measured {
  const measured = MEASURED[key](answers);
  if (measured) return { value: rounded(measured.value), deviation: rounded(measured.deviation) };
  const typed = answers[HOW_OF[key]] === 'guess' ? undefined : answers[key];
  return typed === undefined
    ? { value: guessFor(answers)[key], deviation: GUESS_DEVIATION[key] }
    : { value: typed, deviation: answers.deviations?.[key] ?? 0 };
}

/** The question how each number was found. */
export const HOW_OF = {
  speedMph: 'speedHow',
  revRateRpm: 'revRateHow',
  axisTiltDeg: 'tiltHow',
  axisRotationDeg: 'rotationHow',
  papOverIn: 'papHow',
  papUpIn: 'papHow',
} as const satisfies { readonly [K in ReleaseKey]: keyof Answers };

/** The PAP by the first oil ring, m; null when no ring of this tilt crosses where it was read. */
export function papOfRing(answers: Answers): PapPlace | null {
  const tilt = releaseNumber('axisTiltDeg', answers);
  return papFromRing(
    { value: from(tilt.value, DEGREE), deviation: from(tilt.deviation, DEGREE) },
    from(numberAnswered(answers, 'ringAsideIn'), INCH),
    answers.ringBelowIn === undefined ? null : from(answers.ringBelowIn, INCH),
    RADIUS,
  );
}

/** Axis rotation by a picture, rad; null when no axis of this tilt shows its mark there. */
export const picturedRotation = (answers: Answers): Measured | null =>
  rotationFromPicture(
    numberAnswered(answers, 'markAside'),
    numberAnswered(answers, 'ballWidth'),
    from(releaseNumber('axisTiltDeg', answers).value, DEGREE),
  );

const RADIUS = from(USUAL_CIRCUMFERENCE_IN, INCH) / (2 * Math.PI);

/** What was measured of each number, in record units; null where it is to be guessed. */
const MEASURED: { readonly [K in ReleaseKey]: (answers: Answers) => Measured | null } = {
  speedMph: (answers) => {
    if (answers.speedHow === 'display')
      return inUnit(speedFromAverage(from(numberAnswered(answers, 'displayMph'), MPH)), MPH);
    if (answers.speedHow === 'watch')
      return inUnit(
        speedFromTime(numberAnswered(answers, 'watchS'), numberAnswered(answers, 'timings')),
        MPH,
      );
    return null;
  },
  revRateRpm: (answers) =>
    answers.revRateHow === 'video'
      ? inUnit(
          spinFromFrames(
            numberAnswered(answers, 'turns'),
            numberAnswered(answers, 'frames'),
            numberAnswered(answers, 'framesPerSecond'),
          ),
          RPM,
        )
      : null,
  axisTiltDeg: (answers) => {
    if (answers.tiltHow === 'arc')
      return inUnit(tiltFromArc(from(numberAnswered(answers, 'ringArcIn'), INCH), RADIUS), DEGREE);
    if (answers.tiltHow === 'diameter')
      return inUnit(tiltFromDiameter(from(numberAnswered(answers, 'ringDiameterIn'), INCH), RADIUS), DEGREE);
    return null;
  },
  axisRotationDeg: (answers) => {
    const rotation = answers.rotationHow === 'picture' ? picturedRotation(answers) : null;
    return rotation && inUnit(rotation, DEGREE);
  },
  papOverIn: (answers) => inInches(ringPlace(answers)?.over),
  papUpIn: (answers) => inInches(ringPlace(answers)?.up),
};

/** Where the ring puts the PAP, when that is how it was to be found. */
const ringPlace = (answers: Answers): PapPlace | null =>
  answers.papHow === 'ring' ? papOfRing(answers) : null;

const inInches = (measured: Measured | undefined): Measured | null =>
  measured ? inUnit(measured, INCH) : null;

const inUnit = ({ value, deviation }: Measured, unit: number): Measured => ({
  value: to(value, unit),
  deviation: to(deviation, unit),
});

/** To a hundredth: no tape, watch or camera knows better. */
const rounded = (value: number): number => Math.round(value * 100) / 100;
