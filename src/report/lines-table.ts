import type { LineAnswer, MissRoomAnswer } from '../records/answer.js';
import { boards, decimals, degrees, percent } from './figures.js';
import type { Page } from './page.js';
import { paragraph } from './section.js';
import { table } from './table.js';

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
export function linesTable(played: readonly Played[], page: Page): string[] {
  const hasWorlds = played.some(({ pocketShare }) => pocketShare !== undefined);
  return [
    ...table(
      [
        { head: 'layout' },
        { head: 'laid\ndown' },
        { head: 'over\n15 ft' },
        { head: 'deg\nout' },
        { head: 'wide\nboard' },
        { head: 'room\nlaid' },
        { head: 'room\n15 ft' },
        { head: 'room\ndeg' },
        ...(hasWorlds ? [{ head: 'pocket\n%' }] : []),
      ],
      played.map(({ text, line, missRoom, pocketShare }) => [
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
      page,
    ),
    ...paragraph(
      'Boards laid down on, crossed at 15 ft and at the widest point; degrees sent out. Room, out/in: how far one ' +
        'undisturbed shot may miss toward the own gutter / away from it, in one thing at a time, and still reach ' +
        'boards 16.5 to 18.5.' +
        (hasWorlds ? ' pocket: share of worlds in which it still gets there.' : ''),
      page,
      page.paint.quiet,
    ),
  ];
}

const sides = ({ outside, inside }: Sides, most: number, digits: number): string => {
  const show = (value: number): string => `${decimals(value, digits)}${value >= most ? '+' : ''}`;
  return `${show(outside)}/${show(inside)}`;
};
