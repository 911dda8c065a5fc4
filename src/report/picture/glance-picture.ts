import { scaleLinear } from 'd3-scale';
import type { MapAnswer } from '../../records/answers/answer.js';
import type { MapNumber } from '../../records/schemas/map-numbers.js';
import { capital } from '../../records/text/capital.js';
import { part, segment, word } from '../scene/draw.js';
import type { Scene, SceneNode } from '../scene/scene.js';
import { type Point, polyline, rectangle } from '../scene/shapes.js';
import type { Units } from '../text/display-units.js';
import { MAP_ORDER, MAP_WORDS, moveOf, undrilledOf } from '../wording/map-words.js';

/** One number's bars, and how several stand together. */
const WIDTH = 350;
const HEIGHT = 92;
const PLOT = [8, 248] as const;
const ROW = 18;
const FIRST_ROW = 28;
const BAR = 10;
const COLUMNS = 2;
const GAP = 34;
const TITLE = 24;

/** All numbers of a map in one picture, with the signs of the bars. */
export function glancePicture(answer: MapAnswer, title: string, units: Units): Scene {
  const rows = Math.ceil(MAP_ORDER.length / COLUMNS);
  const blockHeight = TITLE + HEIGHT + 14;
  return {
    width: COLUMNS * WIDTH + GAP,
    height: rows * blockHeight + 24,
    title,
    description:
      'How far RG, differentials and asymmetry of the drilled ball move over the layouts, beside a plain and an asymmetric ball.',
    nodes: [
      ...MAP_ORDER.map(
        (key, i): SceneNode => ({
          kind: 'group',
          dx: (i % COLUMNS) * (WIDTH + GAP),
          dy: Math.floor(i / COLUMNS) * blockHeight,
          nodes: [
            word(`${capital(MAP_WORDS[key].name)}, ${MAP_WORDS[key].unit(units)}`, [PLOT[0], 18], {
              weight: 'bold',
            }),
            { kind: 'group', dy: TITLE, nodes: bars(answer, key, units) },
          ],
        }),
      ),
      ...signs(answer, rows * blockHeight + 8),
    ],
  };
}

/** Three bars of one number on a scale that is the same for all balls: a plain ball, this ball, an asymmetric one. */
export const numberPicture = (answer: MapAnswer, key: MapNumber, units: Units): Scene => ({
  width: WIDTH,
  height: HEIGHT,
  title: `${capital(MAP_WORDS[key].name)}, ${MAP_WORDS[key].unit(units)}`,
  description: `How far the ${MAP_WORDS[key].name} moves over the layouts, beside a plain and an asymmetric ball.`,
  nodes: bars(answer, key, units),
});

function bars(answer: MapAnswer, key: MapNumber, units: Units): SceneNode[] {
  const { reach, scales, beside, undrilled } = answer;
  const { show, unit } = MAP_WORDS[key];
  const { least, most, low, high, bandWidth, matters } = reach.numbers[key];
  const x = scaleLinear([scales[key].least, scales[key].most], PLOT).clamp(true);
  const middleOf = (row: number): number => FIRST_ROW + ROW * row;
  const span = (from: number, to: number, row: number, height: number): string =>
    rectangle(x(from), middleOf(row) - height / 2, Math.max(1.5, x(to) - x(from)), height);
  const bottom = FIRST_ROW + ROW * 2 + 10;
  const verdict = matters === null ? '' : matters ? ': matters' : ': hardly matters';
  const rows = [
    ...beside.filter(({ kind }) => kind === 'plain'),
    null,
    ...beside.filter(({ kind }) => kind === 'asymmetric'),
  ];
  return [
    word(`moves ${show(moveOf(reach, key), units)} ${unit(units)}${verdict}`, [PLOT[0], 12]),
    ...rows.flatMap((other, row): SceneNode[] => {
      if (other)
        return [
          {
            kind: 'path',
            d: span(other.numbers[key].least, other.numbers[key].most, row, BAR / 2),
            fill: 'paper',
            stroke: { ink: 'soft', width: 1.2 },
          },
          word(other.kind, [PLOT[1] + 10, middleOf(row) + 4], { ink: 'soft' }),
        ];
      return [
        ...(bandWidth > 0 ? [segment([x(low), middleOf(row)], [x(high), middleOf(row)], CORES)] : []),
        part(`moved ${key}`, { kind: 'path', d: span(least, most, row, BAR), fill: 'series1' }),
        ...crossAt([x(undrilledOf(undrilled, key)), middleOf(row)]),
        word(rangeText(show(least, units), show(most, units)), [PLOT[1] + 10, middleOf(row) + 4], {
          weight: 'bold',
        }),
      ];
    }),
    segment([PLOT[0], bottom], [PLOT[1], bottom], SCALE),
    ...x
      .ticks(5)
      .flatMap((value): SceneNode[] => [
        segment([x(value), bottom], [x(value), bottom + 4], SCALE),
        word(`${Number(show(value, units))}`, [x(value), bottom + 16], { ink: 'soft', anchor: 'middle' }),
      ]),
  ];
}

/** The spread over cores, and the scale. */
const CORES = { ink: 'ink', width: 1.4 } as const;
const SCALE = { ink: 'soft', width: 0.8 } as const;

const rangeText = (from: string, to: string): string => (from === to ? from : `${from} – ${to}`);

/** The signs of the bars, in a line. */
function signs({ reach, beside }: MapAnswer, y: number): SceneNode[] {
  const hasCores = Object.values(reach.numbers).some(({ bandWidth }) => bandWidth > 0);
  return [
    { kind: 'path', d: rectangle(PLOT[0], y - BAR / 2, 22, BAR), fill: 'series1' },
    word('this ball over the layouts', [36, y + 4]),
    ...(hasCores ? [segment([216, y], [238, y], CORES), word('9 of 10 cores', [244, y + 4])] : []),
    ...crossAt([352, y]),
    word('undrilled', [362, y + 4]),
    ...(beside.length > 0
      ? [
          {
            kind: 'path',
            d: rectangle(440, y - BAR / 4, 22, BAR / 2),
            fill: 'paper',
            stroke: { ink: 'soft', width: 1.2 },
          } as const,
          word('other balls, drilled alike', [468, y + 4]),
        ]
      : []),
  ];
}

/** A slanted cross with a rim of the ground, to be seen on a bar and beside it. */
function crossAt([x, y]: Point): SceneNode[] {
  const r = 4;
  const d =
    polyline([
      [x - r, y - r],
      [x + r, y + r],
    ]) +
    polyline([
      [x - r, y + r],
      [x + r, y - r],
    ]);
  return [
    { kind: 'path', d, stroke: { ink: 'paper', width: 4 } },
    { kind: 'path', d, stroke: { ink: 'ink', width: 1.6 } },
  ];
}
