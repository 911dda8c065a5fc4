import type { LaneAnswer } from '../../records/answers/lane-answer.js';
import { usualBreakpoint } from '../../simulate/usual-breakpoint.js';

type Facts = Pick<LaneAnswer, 'lane' | 'hand' | 'oil' | 'wear'>;

/** Ratios of middle to outside that divide steep from middling from flat patterns (common practice, no source). */
const STEEP = 4;
const FLAT = 2;

/** Middle-to-outside ratios of the two sides that count as the same. */
const ALIKE = 1.15;

/** What a bowler would say of a lane, in plain sentences. */
export const laneWords = (facts: Facts): string[] => [
  lengthLine(facts),
  ratioLine(facts),
  ...sidesLine(facts),
  amountLine(facts),
  ...(facts.wear ? [wearLine(facts.wear)] : []),
];

function lengthLine({ lane: { patternFt } }: Facts): string {
  const length = patternFt < 36 ? 'short' : patternFt <= 42 ? 'of middling length' : 'long';
  const { board, patternFtLess } = usualBreakpoint(patternFt);
  return `${patternFt} ft of oil, ${length}; by common practice the path is widest near board ${board}, the length in feet less ${patternFtLess}.`;
}

function ratioLine({ oil: { middleToOwn, meanUnits } }: Facts): string {
  const films = `on the mean ${meanUnits.middle.toFixed(0)} units on boards 18 to 22, ${meanUnits.own.toFixed(0)} on boards 3 to 7`;
  if (middleToOwn === null) return `Bare outside: ${films}.`;
  const times = `${middleToOwn.toFixed(1)} times`;
  if (middleToOwn >= STEEP)
    return `Much thicker in the middle (${times}): ${films}. A ball sent too far out finds friction and comes back, one sent too far in keeps sliding: forgiving.`;
  if (middleToOwn > FLAT) return `Thicker in the middle (${times}): ${films}. It helps a miss a little.`;
  if (middleToOwn >= 1 / ALIKE)
    return `Nearly as much oil outside as in the middle (${times}): ${films}. It helps no miss.`;
  return `Thicker outside than in the middle (${times}): ${films}. A ball sent too far out stays out.`;
}

function sidesLine({ hand, oil: { middleToOwn, middleToFar, meanUnits } }: Facts): string[] {
  if (middleToOwn === null || middleToFar === null) return [];
  const unlike = Math.max(middleToOwn / middleToFar, middleToFar / middleToOwn);
  if (unlike < ALIKE) return ['Both sides are alike.'];
  const other = hand === 'right' ? 'left' : 'right';
  return [
    `The sides differ: outside boards on the ${hand} carry ${meanUnits.own.toFixed(0)} units, on the ${other} ${meanUnits.far.toFixed(0)}.`,
  ];
}

function amountLine({ oil: { total, endsByFoot } }: Facts): string {
  const shares = endsByFoot
    .slice(0, -1)
    .map(({ toFt, share }) => `${(100 * share).toFixed(0)} % of it within the first ${toFt} ft`);
  return `In all ${Math.round(total)} units times square feet, ${shares.join(', ')}.`;
}

const wearLine = ({
  games,
  wornSide,
  takenOfAll,
  takenFromTrack,
  carriedDown,
  carriedOff,
}: NonNullable<Facts['wear']>): string =>
  `After ${games} games, most on the ${wornSide}, ${percent(takenFromTrack)} of the film in the middle of the track is gone: ` +
  `${percent(takenOfAll)} of all oil was taken up, ${percent(carriedOff)} has left on balls and ${percent(carriedDown)} lies past the pattern’s end.`;

const percent = (share: number): string => `${(100 * share).toFixed(share < 0.1 ? 1 : 0)} %`;
