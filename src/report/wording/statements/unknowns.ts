import type { Unknowns } from '../../../records/answers/statements/unknowns.js';
import { ballNames } from '../../text/ball-numbers.js';
import { givenWithUnit, type Units } from '../../text/display-units.js';
import type { Wording } from './wording.js';

/** What was not known, as the name of a thing. */
export const UNKNOWNS: Wording<Unknowns> = {
  'release-number': ({ number, offBy }, units) => RELEASE_NUMBERS[number](offBy, units),
  'pap-place': ({ overOffByIn, upOffByIn }, { arc }) =>
    `the PAP (±${givenWithUnit(overOffByIn, arc)} over, ±${givenWithUnit(upOffByIn, arc)} up)`,
  'which-core': () => 'which core the ball has',
  'ball-as-made': () => 'how far this very ball differs from its published numbers',
  'ball-numbers': ({ guessed }) => `the ball’s ${ballNames(guessed)} (guessed)`,
  'lane-friction': ({ of }) => FRICTIONS[of],
  'oil-on-rings': () => 'how much oil the ball carries on its rings',
  'wear-of-games': ({ games }) => `how much oil ${games} games have taken`,
  'belief-of-practice': ({ says }) => `whether practice is right: “${says.replace(/\.$/, '')}”`,
};

const RELEASE_NUMBERS: Readonly<
  Record<Unknowns['release-number']['number'], (offBy: number, units: Units) => string>
> = {
  speedMph: (offBy, { speed }) => `ball speed (±${givenWithUnit(offBy, speed)})`,
  revRateRpm: (offBy) => `rev rate (±${offBy} rpm)`,
  axisTiltDeg: (offBy) => `axis tilt (±${offBy}°)`,
  axisRotationDeg: (offBy) => `axis rotation (±${offBy}°)`,
};

const FRICTIONS: Readonly<Record<Unknowns['lane-friction']['of'], string>> = {
  oiled: 'the lane’s friction on heavy oil',
  dry: 'the lane’s friction on dry boards',
  film: 'how thin the oil must be before the ball grips',
  finish: 'how much the cover’s finish changes friction',
};
