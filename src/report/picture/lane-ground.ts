import { scaleLinear } from 'd3-scale';
import { ARROWS, LENGTH_FT, PINS, POCKET_BOARDS } from '../lane/lane-marks.js';
import type { GroupNode, SceneNode } from '../scene/scene.js';
import { circle, type Point, polygon, rectangle } from '../scene/shapes.js';
import type { Units } from '../text/display-units.js';
import { BOARD_PT, FOUL, GUTTER, LEFT, line, RIGHT, TEXT, TOP } from './lane-frame.js';
import type { PointAt } from './paths.js';

/** Everything of the lane itself but its oil. */
export function laneGround(hand: 'right' | 'left', place: PointAt, units: Units): GroupNode[] {
  const boards = [5, 10, 15, 20, 25, 30, 35];
  const down = scaleLinear([0, LENGTH_FT * units.laneMark.per], [FOUL, TOP]);
  const across = (board: number): number => place(board, 0)[0];
  return [
    {
      kind: 'group',
      name: 'boards',
      nodes: [
        ...boards.map((board): SceneNode => line([place(board, 0), place(board, LENGTH_FT)], 'faint', 0.5)),
        ...boards.map(
          (board): SceneNode => ({
            kind: 'text',
            x: across(board),
            y: FOUL + 14,
            text: `${board}`,
            size: TEXT,
            anchor: 'middle',
            ink: 'soft',
          }),
        ),
        {
          kind: 'text',
          x: (LEFT + RIGHT) / 2,
          y: FOUL + 29,
          text: `boards from the ${hand}`,
          size: TEXT,
          anchor: 'middle',
          ink: 'soft',
        },
      ],
    },
    {
      kind: 'group',
      name: 'distances',
      nodes: [
        ...down.ticks(6).map(
          (at): SceneNode => ({
            kind: 'text',
            x: LEFT - GUTTER - 4,
            y: down(at) + 4,
            text: `${at}`,
            size: TEXT,
            anchor: 'end',
            ink: 'soft',
          }),
        ),
        {
          kind: 'text',
          x: LEFT - GUTTER - 4,
          y: FOUL + 18,
          text: units.laneMark.name,
          size: TEXT,
          anchor: 'end',
          ink: 'soft',
        },
      ],
    },
    {
      kind: 'group',
      name: 'edges',
      nodes: [
        { kind: 'path', d: rectangle(LEFT - GUTTER, TOP, GUTTER, FOUL - TOP), fill: 'shade' },
        { kind: 'path', d: rectangle(RIGHT, TOP, GUTTER, FOUL - TOP), fill: 'shade' },
        {
          kind: 'path',
          d: rectangle(LEFT, TOP, RIGHT - LEFT, FOUL - TOP),
          stroke: { ink: 'soft', width: 0.8 },
        },
        line(
          [
            [LEFT - GUTTER, FOUL],
            [RIGHT + GUTTER, FOUL],
          ],
          'ink',
          2,
        ),
      ],
    },
    {
      kind: 'group',
      name: 'arrows',
      nodes: ARROWS.map(({ board, ft }) => {
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
    },
    { kind: 'group', name: 'pins', nodes: pins() },
    {
      kind: 'group',
      name: 'pocket',
      nodes: [
        line(
          POCKET_BOARDS.map((board, i): Point => place(board - 0.5 + i, LENGTH_FT)),
          'ink',
          3.5,
        ),
      ],
    },
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
