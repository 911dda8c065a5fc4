import type { Adjustments } from '../../../records/answers/statements/adjustments.js';
import { givenWithUnit } from '../../text/display-units.js';
import type { Wording } from './wording.js';

/** From this grit on a finish is a polish. */
const POLISH_GRIT = 5500;

/** What can be changed where a drilled ball does not do what was wanted, as clauses. */
export const ADJUSTMENTS: Wording<Adjustments> = {
  'move-on-lane': ({ hand, feetBoards, targetBoards }) => {
    const inside = hand === 'right' ? 'left' : 'right';
    const outside = hand === 'right' ? 'right' : 'left';
    const moved = (boards: number): string => {
      const size = given(boards < 0 ? -boards : boards);
      return size === '0' ? 'as now' : `${size} ${boards > 0 ? inside : outside}`;
    };
    return `stand ${moved(feetBoards)}, aim ${moved(targetBoards)}`;
  },
  'another-drilled-ball': ({ id }) => `your ball ${id}`,
  refinish: ({ grit, insteadOf }) => `${finishText(grit)}, not ${finishText(insteadOf)}`,
  'speed-by': ({ mph }, { speed }) =>
    `${givenWithUnit(Math.abs(mph), speed, 2)} ${mph > 0 ? 'faster' : 'slower'}`,
  'plug-and-redrill': ({ layout }) => `plug, redrill ${layout}`,
};

/** Boards to the half, as a bowler aims. */
const given = (boards: number): string => String(Math.round(2 * boards) / 2);

const finishText = (grit: number): string => (grit >= POLISH_GRIT ? 'polish' : `${grit} grit`);
