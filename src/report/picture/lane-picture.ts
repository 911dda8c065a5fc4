import { ARROWS_FT, BOARD_COUNT } from '../../base/constants.js';
import type { Lane } from '../../records/schemas/lane.js';
import { boardAt } from '../lane/board-at.js';
import { bar, part, segment, textRoom, word } from '../scene/draw.js';
import type { GroupNode, Scene, SceneNode } from '../scene/scene.js';
import { type Units, withUnit } from '../text/display-units.js';
import { PHASES, phaseSpans } from '../wording/phases.js';
import { type Compared, partOf } from './compared.js';
import { HEIGHT, placeOn, TEXT, WIDTH } from './lane-frame.js';
import { laneGround } from './lane-ground.js';
import { laneOil } from './lane-oil.js';
import { type PointAt, pathsOf } from './paths.js';

/** Layouts rolled on a lane. Boards count from the bowler's own side. */
interface PicturedLane {
  readonly hand: 'right' | 'left';
  readonly lane: Lane;
  readonly compared: readonly Compared[];
}

/** The lane from above, pins at the top: oil, boards, arrows, pins, and the paths of all layouts. */
export function lanePicture({ hand, lane, compared }: PicturedLane, units: Units): Scene {
  const place = placeOn(hand);
  return {
    width: WIDTH,
    height: HEIGHT,
    title: 'Paths over the lane',
    description:
      'The lane from above, stretched across: oil, boards, arrows and pins, and the path of each layout by phase.',
    nodes: [
      { kind: 'group', name: 'oil', nodes: laneOil(lane) },
      ...laneGround(hand, place, units),
      ...pathsOf(compared, place),
      ...(compared[0] ? [phaseNames(compared[0], hand, place, units), room(compared[0], place)] : []),
    ],
  };
}

/** How far the first layout's shot may miss to either side, laid down and at the arrows, and still reach the pocket. */
function room({ sign, layout: { line: played, missRoom } }: Compared, place: PointAt): GroupNode {
  const misses = missRoom
    ? [
        { board: played.laydownBoard, sides: missRoom.laydownBoards, ft: LAYDOWN_FT },
        { board: played.arrowsBoard, sides: missRoom.arrowsBoards, ft: ARROWS_FT },
      ]
    : [];
  return {
    kind: 'group',
    name: partOf(sign),
    nodes: misses.flatMap(({ board, sides, ft }) => {
      if (board === null) return [];
      const [from, to] = [place(board - sides.outside, ft), place(board + sides.inside, ft)];
      const ends = [from, to].map(([x, y]) => segment([x, y - 5], [x, y + 5], ROOM));
      return [part('room', segment(from, to, ROOM), ...ends)];
    }),
  };
}

const ROOM = { ink: 'ink', width: 1.6 } as const;

/** Where the room at the foul line is drawn: a little beyond it, ft. */
const LAYDOWN_FT = 1;

/** Where the first path's phases begin, said on the side with more room. */
function phaseNames(
  { sign, layout: { path, reaction } }: Compared,
  hand: 'right' | 'left',
  place: PointAt,
  { lane }: Units,
): GroupNode {
  const spans = phaseSpans(reaction, path.at(-1)?.distanceFt ?? 0);
  const said = PHASES.filter((phase) => spans[phase][1] > spans[phase][0]);
  return {
    kind: 'group',
    name: partOf(sign),
    nodes: said.flatMap((phase): SceneNode[] => {
      const [from] = spans[phase];
      const ft = Math.max(2.5, from);
      const board = boardAt(path, ft) as number;
      const isFar = board < BOARD_COUNT / 2 + 6; // names are about twenty boards long
      const onLeft = isFar === (hand === 'right');
      const [x, y] = place(board, ft);
      const start = place(isFar ? BOARD_COUNT - 1 : 2, ft)[0];
      const text = phase === 'skid' ? 'skid' : `${phase} from ${withUnit(from, lane)}`;
      return [
        segment([start, y + 4], [x + (onLeft ? -3 : 3), y + 4], { ink: 'soft', width: 0.7 }),
        bar([start, start + (onLeft ? 1 : -1) * textRoom(`${sign}: ${text}`)], [y - TEXT, 1.2 * TEXT], {
          fill: 'paper',
        }),
        word(`${sign}: ${text}`, [start, y], { anchor: onLeft ? 'start' : 'end' }),
      ];
    }),
  };
}
