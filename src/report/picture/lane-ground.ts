import { scaleLinear } from 'd3-scale';
import { ARROWS, LENGTH_FT, PINS, POCKET_BOARDS } from '../lane/lane-marks.js';
import { part, segment, word } from '../scene/draw.js';
import type { GroupNode, SceneNode } from '../scene/scene.js';
import { circle, type Point, polygon, rectangle } from '../scene/shapes.js';
import type { Units } from '../text/display-units.js';
import { BOARD_PT, FOUL, GUTTER, LEFT, line, RIGHT, TOP } from './lane-frame.js';
import type { PointAt } from './paths.js';

/** Everything of the lane itself but its oil. */
export function laneGround(hand: 'right' | 'left', place: PointAt, units: Units): GroupNode[] {
  const boards = [5, 10, 15, 20, 25, 30, 35];
  const down = scaleLinear([0, LENGTH_FT * units.laneMark.per], [FOUL, TOP]);
  const across = (board: number): number => place(board, 0)[0];
  return [
    part(
      'boards',
      ...boards.map((board) => line([place(board, 0), place(board, LENGTH_FT)], 'faint', 0.5)),
      ...boards.map((board) =>
        word(`${board}`, [across(board), FOUL + 14], { anchor: 'middle', ink: 'soft' }),
      ),
      word(`boards from the ${hand}`, [(LEFT + RIGHT) / 2, FOUL + 29], { anchor: 'middle', ink: 'soft' }),
    ),
    part(
      'distances',
      ...down
        .ticks(6)
        .map((at) => word(`${at}`, [LEFT - GUTTER - 4, down(at) + 4], { anchor: 'end', ink: 'soft' })),
      word(units.laneMark.name, [LEFT - GUTTER - 4, FOUL + 18], { anchor: 'end', ink: 'soft' }),
    ),
    part(
      'edges',
      { kind: 'path', d: rectangle(LEFT - GUTTER, TOP, GUTTER, FOUL - TOP), fill: 'shade' },
      { kind: 'path', d: rectangle(RIGHT, TOP, GUTTER, FOUL - TOP), fill: 'shade' },
      {
        kind: 'path',
        d: rectangle(LEFT, TOP, RIGHT - LEFT, FOUL - TOP),
        stroke: { ink: 'soft', width: 0.8 },
      },
      segment([LEFT - GUTTER, FOUL], [RIGHT + GUTTER, FOUL], { ink: 'ink', width: 2 }),
    ),
    part(
      'arrows',
      ...ARROWS.map(({ board, ft }): SceneNode => {
        const [x, y] = place(board, ft);
        return {
          kind: 'path',
          d: polygon([
            [x, y - 4.5],
            [x + 2.6, y + 4.5],
            [x - 2.6, y + 4.5],
          ]),
          fill: 'soft',
        };
      }),
    ),
    part('pins', ...pins()),
    part(
      'pocket',
      line(
        POCKET_BOARDS.map((board, i): Point => place(board - 0.5 + i, LENGTH_FT)),
        'ink',
        3.5,
      ),
    ),
  ];
}

/** The ten pins above the lane's end; across they stand to scale. */
const pins = (): SceneNode[] =>
  PINS.map(({ row, acrossBoards }) => ({
    kind: 'path',
    d: circle([(LEFT + RIGHT) / 2 + acrossBoards * BOARD_PT, TOP - 9 - 12 * row], 4),
    fill: 'paper',
    stroke: { ink: 'soft', width: 1 },
  }));
