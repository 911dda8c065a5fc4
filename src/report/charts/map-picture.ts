import { scaleLinear, scaleQuantize } from 'd3-scale';
import type { DrilledMap, DrilledPoint } from '../../records/answers/web-report-data.js';
import { type Compared, partOf } from '../picture/compared.js';
import { signDisc } from '../picture/sign-disc.js';
import { CHART_WIDTH, part, word } from '../scene/draw.js';
import { type Ink, type Scene, type SceneNode, TONES } from '../scene/scene.js';
import { type Point, rectangle } from '../scene/shapes.js';
import type { Units } from '../text/display-units.js';

const PLOT = [44, 318] as const;
const TOP = 6;
const ROW = 23;

/** A drilled number to be drawn. */
interface DrawnNumber {
  readonly key: keyof DrilledPoint;
  readonly title: string;
  /** Where tones begin and end: the same for every ball, so that what hardly moves looks even. */
  readonly scale: readonly [number, number];
}

/**
 * A drilled number over drilling angle and pin-to-PAP: more is darker, and each cell holds its number unless a layout
 * covers it; on it the layouts that are compared, each where its two numbers put it.
 */
export function mapPicture(
  map: DrilledMap,
  { key, title, scale }: DrawnNumber,
  compared: readonly Compared[],
  units: Units,
): Scene {
  const { drillingAnglesDeg, pinToPapsIn, rows } = map;
  const bottom = TOP + ROW * pinToPapsIn.length;
  const width = (PLOT[1] - PLOT[0]) / drillingAnglesDeg.length;
  const x = centred(drillingAnglesDeg, [PLOT[0] + width / 2, PLOT[1] - width / 2]);
  const y = centred(pinToPapsIn, [bottom - ROW / 2, TOP + ROW / 2]);
  const places = compared.map(({ layout }): Point => [x(layout.drillingAngleDeg ?? 0), y(layout.pinToPapIn)]);
  const tone = scaleQuantize(scale, TONES as readonly Ink[]);
  return {
    width: CHART_WIDTH,
    height: bottom + 34,
    title,
    description: `${title} over drilling angle and pin-to-PAP, with the layouts on it.`,
    nodes: [
      ...rows.flatMap((row, i) =>
        row.flatMap((point, j): SceneNode[] => {
          const at: Point = [x(drillingAnglesDeg[j]), y(pinToPapsIn[i])];
          const area = rectangle(at[0] - width / 2, at[1] - ROW / 2, width, ROW);
          const isCovered = places.some(([dx, dy]) => Math.abs(dx - at[0]) < 24 && Math.abs(dy - at[1]) < 12);
          return [
            { kind: 'path', d: area, fill: tone(point[key]), stroke: { ink: 'paper', width: 1 } },
            ...(isCovered ? [] : [number(units.gyration.show(point[key]), at)]),
          ];
        }),
      ),
      ...labels(map, x, y, bottom, units),
      ...compared.map((each, i) => part(partOf(each.sign), ...signDisc(each, places[i]))).reverse(),
    ],
  };
}

/** A scale that puts the first and the last of even steps on these places. */
const centred = (steps: readonly number[], places: readonly [number, number]) =>
  scaleLinear([steps[0], steps.at(-1) as number], places);

const number = (text: string, [x, y]: Point): SceneNode => word(text, [x, y + 4.3], { anchor: 'middle' });

function labels(
  { drillingAnglesDeg, pinToPapsIn }: DrilledMap,
  x: (deg: number) => number,
  y: (inches: number) => number,
  bottom: number,
  { tape }: Units,
): SceneNode[] {
  return [
    ...pinToPapsIn.map((inches) =>
      word(tape.show(inches), [PLOT[0] - 6, y(inches) + 4], { anchor: 'end', ink: 'soft' }),
    ),
    ...drillingAnglesDeg.map((deg) =>
      word(`${deg}°`, [x(deg), bottom + 14], { anchor: 'middle', ink: 'soft' }),
    ),
    word(`across: drilling angle; up: pin-to-PAP, ${tape.name}`, [(PLOT[0] + PLOT[1]) / 2, bottom + 29], {
      anchor: 'middle',
      ink: 'soft',
    }),
  ];
}
