import type { NightHead } from '../../records/log/add-shot.js';
import { formatLine } from '../../records/log/read-line.js';
import { LINE_READINGS, READINGS } from '../../records/log/readings.js';
import { type LoggedShot, READING_IDS } from '../../records/schemas/shot-log.js';
import { countOf } from './count-of.js';
import { givenWithUnit, type Units } from './display-units.js';
import { boardText, readingText } from './reading-text.js';
import { withQuantities } from './with-quantities.js';

/** A shot in one line: `20 14 8 17, the flare 5.5 in`. */
export const shotText = (shot: LoggedShot, units: Units): string =>
  [formatLine(shot), ...besidesText(shot, units)].join(', ');

/** What was seen of a shot in addition to the boards of its line. */
export const besidesText = (shot: LoggedShot, units: Units): string[] => [
  ...READING_IDS.filter((id) => !LINE_READINGS.some((each) => each === id)).flatMap((id) => {
    const value = shot[id];
    return value === undefined
      ? []
      : [`${withQuantities(READINGS[id].name, units)} ${readingText(id, value, units)}`];
  }),
  ...(shot.ringOverHole ? [`an oil ring over the ${shot.ringOverHole} hole`] : []),
  ...byEyeText(shot, units),
  ...(shot.note ? [shot.note] : []),
];

/** What was judged by eye. */
function byEyeText({ hookStartFt, totalHookBoards, entryAngleDeg }: LoggedShot, units: Units): string[] {
  const told = [
    ...(hookStartFt === undefined ? [] : [`hook start ${givenWithUnit(hookStartFt, units.lane)}`]),
    ...(totalHookBoards === undefined ? [] : [`total hook ${givenWithUnit(totalHookBoards, units.boards)}`]),
    ...(entryAngleDeg === undefined ? [] : [`entry angle ${givenWithUnit(entryAngleDeg, units.angle)}`]),
  ];
  return told.length === 0 ? [] : [`by eye: ${told.join(', ')}`];
}

/** A night in words: `2026-03-31, house-easy, 3 games on the oil, target 14`. */
export const nightText = (
  { on, lane, games, targetBoard, patternFt }: Partial<NightHead>,
  units: Units,
): string =>
  [
    ...(on === undefined ? [] : [on]),
    ...(lane === undefined ? [] : [lane]),
    ...(games === undefined ? [] : [`${countOf(games, 'game')} on the oil`]),
    ...(targetBoard === undefined ? [] : [`target ${boardText(targetBoard)}`]),
    ...(patternFt === undefined ? [] : [`oil to ${givenWithUnit(patternFt, units.lane)}`]),
  ].join(', ');
