import { ARROWS_FT } from '../../base/constants.js';
import type { LineAnswer, MissRoomAnswer } from '../../records/answers/answer.js';
import { type Units, withUnit } from '../text/display-units.js';
import { boards, decimals, degrees, percent } from '../text/figures.js';
import type { Page } from '../text/page.js';
import { paragraph } from '../text/section.js';
import { type Grid, gridLines } from '../text/table.js';

/** A layout with the line it is played on. */
interface Played {
  readonly text: string;
  readonly line: LineAnswer;
  readonly missRoom: MissRoomAnswer | null;
  readonly pocketShare?: number;
}

type Sides = MissRoomAnswer['angleDeg'];

/** A miss was not followed farther than this; it stands with a plus. */
const MOST = { boards: 6, degrees: 3 };

/** The line each layout is played on, one row a layout, and how far it may be missed to either side. */
export const linesTable = (played: readonly Played[], page: Page): string[] => [
  ...gridLines(linesGrid(played, page.units), page),
  ...paragraph(linesNote(played, page.units), page, page.paint.quiet),
];

const hasWorlds = (played: readonly Played[]): boolean =>
  played.some(({ pocketShare }) => pocketShare !== undefined);

export function linesGrid(played: readonly Played[], { laneMark }: Units): Grid {
  const arrows = withUnit(ARROWS_FT, laneMark);
  return {
    columns: [
      { head: 'layout' },
      { head: 'laid\ndown' },
      { head: `over\n${arrows}` },
      { head: 'deg\nout' },
      { head: 'wide\nboard' },
      { head: 'room\nlaid' },
      { head: `room\n${arrows}` },
      { head: 'room\ndeg' },
      ...(hasWorlds(played) ? [{ head: 'pocket\n%' }] : []),
    ],
    rows: played.map(({ text, line, missRoom, pocketShare }) => [
      text,
      boards(line.laydownBoard),
      line.arrowsBoard === null ? '' : boards(line.arrowsBoard),
      degrees(line.launchAngleDeg),
      boards(line.breakpointBoard),
      ...(missRoom
        ? [
            sides(missRoom.laydownBoards, MOST.boards, 1),
            sides(missRoom.arrowsBoards, Number.POSITIVE_INFINITY, 1),
            sides(missRoom.angleDeg, MOST.degrees, 2),
          ]
        : ['no line', '', '']),
      ...(pocketShare === undefined ? [] : [percent(pocketShare)]),
    ]),
  };
}

/** What the columns of lines mean. */
export const linesNote = (played: readonly Played[], { laneMark }: Units): string =>
  `Boards laid down on, crossed at ${withUnit(ARROWS_FT, laneMark)} and at the widest point; degrees sent out. Room, out/in: how far one ` +
  'undisturbed shot may miss toward your gutter / away from it, changing one thing at a time, and still reach ' +
  'boards 16.5 to 18.5.' +
  (hasWorlds(played) ? ' pocket: share of simulated tries in which it still gets there.' : '');

const sides = ({ outside, inside }: Sides, most: number, digits: number): string => {
  const show = (value: number): string => `${decimals(value, digits)}${value >= most ? '+' : ''}`;
  return `${show(outside)}/${show(inside)}`;
};
