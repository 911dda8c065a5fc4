import type { LaneRemarks } from '../../../records/answers/statements/lane-remarks.js';
import { givenWithUnit, type Units, withUnit } from '../../text/display-units.js';
import { decimals, finePercent, percent } from '../../text/figures.js';
import type { Wording } from './wording.js';

/** What a bowler would say of a lane, as sentences. */
export const LANE_REMARKS: Wording<LaneRemarks> = {
  'oil-length': ({ patternFt, length, widestBoard, lessFt }, { lane }) =>
    `${givenWithUnit(patternFt, lane)} of oil, ${length === 'medium' ? 'medium length' : length}; by common practice the breakpoint is near board ${widestBoard}${lane.name === 'ft' ? `, the length in feet less ${lessFt}` : ''}.`,
  'oil-bare-outside': (films) => `Bare outside: ${filmsText(films)}.`,
  'oil-much-thicker-inside': ({ times, ...films }) =>
    `Much thicker in the middle (${timesText(times)}): ${filmsText(films)}. A ball missed outside finds friction and comes back, one missed inside keeps sliding: forgiving.`,
  'oil-thicker-inside': ({ times, ...films }) =>
    `Thicker in the middle (${timesText(times)}): ${filmsText(films)}. It forgives a miss a little.`,
  'oil-even': ({ times, ...films }) =>
    `Nearly as much oil outside as in the middle (${timesText(times)}): ${filmsText(films)}. It forgives no miss.`,
  'oil-thicker-outside': ({ times, ...films }) =>
    `Thicker outside than in the middle (${timesText(times)}): ${filmsText(films)}. A ball missed outside stays outside.`,
  'sides-alike': () => 'Both sides are alike.',
  'sides-differ': ({ hand, ownUnits, otherUnits }) =>
    `The sides differ: outside boards on the ${hand} carry ${decimals(ownUnits, 0)} units, on the ${hand === 'right' ? 'left' : 'right'} ${decimals(otherUnits, 0)}.`,
  'oil-in-all': ({ unitSquareFeet, before }, units) =>
    `In all ${totalText(unitSquareFeet, units)} of oil, ${before
      .map(
        ({ toFt, share }) => `${percent(share)} % of it within the first ${withUnit(toFt, units.laneMark)}`,
      )
      .join(', ')}.`,
  'oil-after-games': ({ games, side, goneFromTrack, takenOfAll, carriedOff, carriedDown }) =>
    `After ${games} games, most on the ${side}, ${finePercent(goneFromTrack)} % of the film in the middle of the track is gone: ` +
    `${finePercent(takenOfAll)} % of all oil was taken up, ${finePercent(carriedOff)} % has left on balls and ${finePercent(carriedDown)} % lies past the pattern’s end.`,
};

const filmsText = ({ middleUnits, outsideUnits }: LaneRemarks['oil-bare-outside']): string =>
  `on average ${decimals(middleUnits, 0)} units on boards 18 to 22, ${decimals(outsideUnits, 0)} on boards 3 to 7`;

const timesText = (times: number): string => `${decimals(times, 1)} times`;

const totalText = (unitSquareFeet: number, { lane: { name, per } }: Units): string =>
  `${decimals(unitSquareFeet * per ** 2, 0)} units × square ${name === 'ft' ? 'feet' : 'metres'}`;
