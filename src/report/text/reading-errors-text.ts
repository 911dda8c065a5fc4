import { READINGS, readingError } from '../../records/log/readings.js';
import { type Night, READING_IDS, type ReadingId } from '../../records/schemas/shot-log.js';
import type { Units } from './display-units.js';
import { readingText } from './reading-text.js';
import { withQuantities } from './with-quantities.js';

const SHORT: Readonly<Record<ReadingId, string>> = {
  laydownBoard: 'laydown',
  arrowsBoard: 'arrows',
  breakpointBoard: 'breakpoint',
  breakpointFt: 'breakpoint distance',
  boardAt50Ft: 'at {50 laneMark}',
  pinsBoard: 'pins',
  displaySpeedMph: 'display speed',
  flareIn: 'flare',
};

/** How far off the readings of a night are taken to be, and that it is assumed where the person has said nothing; empty without readings. */
export function readingErrorsText(night: Night, units: Units): string {
  const errors = READING_IDS.flatMap((id) => {
    const shot = night.shots.find((each) => each[id] !== undefined);
    return shot ? [{ id, error: readingError(id, shot, night) }] : [];
  });
  const textOf = ({ id, error }: (typeof errors)[number]): string =>
    `${withQuantities(SHORT[id], units)} ±${readingText(id, error, units)}`;
  const isBoard = ({ id }: (typeof errors)[number]): boolean => READINGS[id].quantity === 'boards';
  const boards = errors.filter(isBoard).map(textOf);
  const others = errors.filter((each) => !isBoard(each)).map(textOf);
  const all = [...(boards.length > 0 ? [`${boards.join(', ')} boards`] : []), ...others].join(', ');
  if (all === '') return '';
  const whose = night.readingErrors ? 'in part yours, the others assumed, no source' : 'assumed, no source';
  return `How far off readings may be: ${all} (one standard deviation; ${whose}; --error changes it).`;
}
