import type { LogRemarks } from '../../../records/answers/statements/log-remarks.js';
import { READINGS } from '../../../records/log/readings.js';
import { givenWithUnit, type Units, withUnit } from '../../text/display-units.js';
import { boardText as board, readingText } from '../../text/reading-text.js';
import { withQuantities } from '../../text/with-quantities.js';
import type { Wording } from './wording.js';

/** What looks odd about logged shots, or is worth saying of them, as sentences. */
export const LOG_REMARKS: Wording<LogRemarks> = {
  'bends-outward': ({ laydownBoard, arrowsBoard, straightBoard, pinsBoard }) =>
    `From ${board(laydownBoard)} over ${board(arrowsBoard)} at the arrows a straight ball ends on board ${board(straightBoard)}; board ${board(pinsBoard)} is farther out, so the path bends the wrong way.`,
  'sent-too-far': ({ laydownBoard, arrowsBoard, toward, angleDeg, mostDeg }, { angle }) =>
    `From ${board(laydownBoard)} to ${board(arrowsBoard)} at the arrows is ${withUnit(angleDeg, angle)} toward the ${toward}; ${givenWithUnit(mostDeg, angle)} is about the most a bowler can do.`,
  'breakpoint-not-outermost': ({ breakpointBoard, place, board: other }, units) =>
    `The breakpoint is where the ball is farthest out, but board ${board(breakpointBoard)} lies farther in than board ${board(other)} ${withQuantities(PLACES[place], units)}.`,
  'breakpoint-past-line': ({ breakpointBoard, straightBoard, straightFt }, { laneMark }) =>
    `The breakpoint on board ${board(breakpointBoard)} lies farther out than the line of the shot, which is at board ${board(straightBoard)} after ${withUnit(straightFt, laneMark)}.`,
  'turns-too-much': ({ place, angleDeg, mostDeg }, { angle, laneMark }) =>
    `From ${place === 'at-50' ? `its board at ${withUnit(50, laneMark)}` : 'its breakpoint'} to the pins it would come in at ${withUnit(angleDeg, angle)}; ${givenWithUnit(mostDeg, angle)} is more than any ball does.`,
  'gutter-from-inside': ({ breakpointBoard }) =>
    `A ball that falls into the gutter does not turn back on board ${board(breakpointBoard)}.`,
  'off-target': ({ arrowsBoard, targetBoard }) =>
    `Board ${board(arrowsBoard)} at the arrows is ${board(Math.abs(arrowsBoard - targetBoard))} boards from the target, ${board(targetBoard)}. If the target has changed, --target gives the new one.`,
  'breakpoint-near': ({ breakpointFt, asMetresFt }, { lane }) =>
    `A breakpoint at ${givenWithUnit(breakpointFt, lane)} is very early in the oil.${asMetresFt > 60 ? '' : ` Was it in metres? Then it is ${withUnit(asMetresFt, lane)}.`}`,
  'display-too-fast': ({ displaySpeedMph, releaseMph, meantMph }, units) =>
    `${releaseMph === null ? 'No display shows' : `This bowler releases at ${withUnit(releaseMph, units.speed)}, and the display shows less than that, not`} ${withUnit(displaySpeedMph, units.speed)}.${meant(meantMph, 'kilometres', units)}`,
  'display-too-slow': ({ displaySpeedMph, releaseMph, meantMph }, units) =>
    `This bowler releases at ${withUnit(releaseMph, units.speed)}; ${withUnit(displaySpeedMph, units.speed)} on the display is far too little.${meant(meantMph, 'miles', units)}`,
  'night-to-come': ({ on, today }) => `${on} is still to come: today is ${today}.`,
  'night-before-drilling': ({ on, drilledOn }) =>
    `On ${on} this ball was not drilled yet: that was on ${drilledOn}.`,
  'lane-misspelt': ({ lane, near }) => `No lane is kept as ${lane}. Did you mean ${near}?`,
  'pattern-not-of-lane': ({ patternFt, lanePatternFt }, { lane }) =>
    `The record of this lane says that the oil ends at ${givenWithUnit(lanePatternFt, lane)}, not ${givenWithUnit(patternFt, lane)}.`,
  'logged-before': ({ shots }) =>
    `The log holds ${shots === 1 ? 'this shot' : `these ${shots} shots`} of that night already.`,
  'wild-shot': ({ shot, reading, value, median, shots }, units) =>
    `Shot ${shot} stands out: the ${withQuantities(READINGS[reading].name, units)} is ${readingText(reading, value, units)}, the median of ${shots} shots is ${readingText(reading, median, units)}. It stays in the log.`,
  'breakpoint-not-of-pattern': ({ breakpointFt, shots, patternFt }, { lane }) =>
    `The breakpoint lies at ${withUnit(breakpointFt, lane)} (median of ${shots} shots), but the oil ends at ${givenWithUnit(patternFt, lane)}: is it the right pattern?`,
  'lane-not-kept': ({ lane }) =>
    `No lane is kept as ${lane}: its shots are kept, but their oil is not known. flarewise shelf import keeps a lane.`,
};

const PLACES = {
  laydown: 'at the laydown',
  arrows: 'at the arrows',
  'at-50': 'at {50 laneMark}',
  pins: 'at the pins',
} as const;

const meant = (mph: number | null, unit: string, { speed }: Units): string =>
  mph === null ? '' : ` Was it in ${unit} an hour? Then it is ${withUnit(mph, speed)}.`;
