import { scaleLinear } from 'd3-scale';
import type { Band, SimulatedLayout } from '../../records/answers/answer.js';
import type { Scene, SceneNode } from '../scene/scene.js';
import { circle, polygon, polyline } from '../scene/shapes.js';
import { type Compared, partOf } from './compared.js';
import { DISC_RADIUS, signDisc } from './sign-disc.js';

/** A number that every layout has in every world. */
export interface WorldsNumber {
  readonly key: keyof SimulatedLayout['twentieths'];
  readonly title: string;
  readonly nominalOf: (layout: SimulatedLayout) => number;
  readonly bandOf: (layout: SimulatedLayout) => Band;
  readonly show: (value: number) => string;
  /** What was asked for; null where nothing was. */
  readonly target: number | null;
}

const WIDTH = 320;
const PLOT = [32, 306] as const;
const TOP = 22;
const ROW = 36;
const DOT = 2.9;
/** Room for dots above a row's line. */
const STACK = 24;
const TEXT = 12;

/**
 * How one number is spread over the worlds: for each layout twenty dots, each for one world in twenty, stacked where
 * they are close; below them the span of nine worlds in ten, and a diamond at the undisturbed shot.
 */
export function worldsPicture(compared: readonly Compared[], number: WorldsNumber): Scene {
  const { key, title, nominalOf, bandOf, show, target } = number;
  const all = compared.flatMap(({ layout }) => [...layout.twentieths[key], nominalOf(layout)]);
  const scale = scaleLinear(extent([...all, ...(target === null ? [] : [target])]), PLOT).nice(5);
  const bottom = TOP + ROW * compared.length;
  return {
    width: WIDTH,
    height: bottom + 24,
    title,
    description: `${title}: for each layout twenty dots, each for one world in twenty.`,
    nodes: [
      ...axis(scale, bottom, show),
      ...(target === null ? [] : targetLine(scale(target), bottom, `aimed at ${show(target)}`)),
      ...compared.map(({ sign, ink, layout }, i): SceneNode => {
        const y = TOP + ROW * (i + 1) - 8;
        const { low, high } = bandOf(layout);
        const xs = layout.twentieths[key].map(scale);
        return {
          kind: 'group',
          name: partOf(sign),
          nodes: [
            ...signDisc({ sign, ink }, [DISC_RADIUS + 4, y - 8]),
            {
              kind: 'path',
              d: polyline([
                [scale(low), y],
                [scale(high), y],
              ]),
              stroke: { ink: 'soft', width: 1.4 },
            },
            {
              kind: 'group',
              name: `worlds ${sign}`,
              nodes: [
                {
                  kind: 'path',
                  d: stacked(xs)
                    .map(([x, height]) => circle([x, y - 4.5 - height], DOT))
                    .join(''),
                  fill: ink,
                },
              ],
            },
            diamond(scale(nominalOf(layout)), y),
          ],
        };
      }),
    ],
  };
}

/** Least and greatest; widened where they are the same. */
function extent(values: readonly number[]): [number, number] {
  const [low, high] = [Math.min(...values), Math.max(...values)];
  return high > low ? [low, high] : [low - 0.5, high + 0.5];
}

/** Dots with the height each is lifted by, so that none covers another; pressed together where room runs out. */
function stacked(xs: readonly number[]): (readonly [x: number, height: number])[] {
  const levels: number[] = [];
  xs.forEach((x, i) => {
    let level = 0;
    while (xs.some((other, j) => j < i && levels[j] === level && x - other < 2 * DOT)) level += 1;
    levels.push(level);
  });
  const lift = Math.min(2 * DOT, (STACK - DOT) / Math.max(1, ...levels));
  return xs.map((x, i) => [x, (levels[i] as number) * lift]);
}

function axis(
  scale: ReturnType<typeof scaleLinear<number>>,
  bottom: number,
  show: (value: number) => string,
): SceneNode[] {
  return [
    {
      kind: 'path',
      d: polyline([
        [PLOT[0], bottom],
        [PLOT[1], bottom],
      ]),
      stroke: { ink: 'soft', width: 0.8 },
    },
    ...scale.ticks(5).flatMap((at): SceneNode[] => [
      {
        kind: 'path',
        d: polyline([
          [scale(at), TOP - 4],
          [scale(at), bottom + 3],
        ]),
        stroke: { ink: 'faint', width: 0.5 },
      },
      {
        kind: 'text',
        x: scale(at),
        y: bottom + 16,
        text: show(at),
        size: TEXT,
        anchor: 'middle',
        ink: 'soft',
      },
    ]),
  ];
}

function targetLine(x: number, bottom: number, text: string): SceneNode[] {
  const anchor = x < PLOT[0] + 50 ? 'start' : x > PLOT[1] - 50 ? 'end' : 'middle';
  return [
    {
      kind: 'path',
      d: polyline([
        [x, TOP - 6],
        [x, bottom],
      ]),
      stroke: { ink: 'ink', width: 1, dash: [3, 2.5] },
    },
    { kind: 'text', x, y: TOP - 9, text, size: TEXT, anchor },
  ];
}

const diamond = (x: number, y: number): SceneNode => ({
  kind: 'path',
  d: polygon([
    [x, y - 4],
    [x + 4, y],
    [x, y + 4],
    [x - 4, y],
  ]),
  fill: 'paper',
  stroke: { ink: 'ink', width: 1.2 },
});
