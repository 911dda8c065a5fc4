import { scaleLinear } from 'd3-scale';
import type { Band, SharesAnswer } from '../../records/answers/answer.js';
import type { Scene, SceneNode } from '../scene/scene.js';
import { polygon, polyline } from '../scene/shapes.js';

/** How one number changes from one layout to another, and what each number of the layout has to do with it. */
export interface SharedChange {
  readonly title: string;
  readonly shares: SharesAnswer['score'];
  readonly from: ChangeEnd & { readonly value: number };
  readonly to: ChangeEnd;
  readonly show: (value: number) => string;
  readonly change: (value: number) => string;
}

/** A layout at an end of a change: what it is called, and how far its number varies. */
export interface ChangeEnd {
  readonly name: string;
  readonly band: Band;
}

const WIDTH = 320;
const PLOT = [104, 262] as const;
const ROW = 22;
const TOP = 4;
const TEXT = 12;
const HALF = 5.5;
/** Greatest length of an arrow's head. */
const HEAD = 5;

/** The numbers of a layout, in the order in which it is written. */
export const SHARE_NAMES = [
  ['drillingAngle', 'drilling angle'],
  ['pinToPap', 'pin-to-PAP'],
  ['valAngle', 'VAL angle'],
] as const;

/**
 * A change as arrows one below the other, each beginning where the last one ended.
 *
 * The scale takes in the bands of both ends, so that a change that is small beside them looks small.
 */
export function sharesPicture({ title, shares, from, to, show, change }: SharedChange): Scene {
  let at = from.value;
  const moves = SHARE_NAMES.map(([key, name]) => {
    const start = at;
    at += shares[key];
    return { name, start, end: at, text: change(shares[key]) };
  });
  const ends = [from.value, ...moves.map(({ end }) => end)];
  const all = [...ends, ...[from, to].flatMap(({ band }) => [band.low, band.high])];
  const [low, high] = [Math.min(...all), Math.max(...all)];
  const scale = scaleLinear(high > low ? [low, high] : [low - 1, high + 1], PLOT);
  const rowAt = (i: number): number => TOP + ROW * (i + 0.5);
  const last = moves.length + 1;
  const stop = (end: 'from' | 'to', value: number, row: number): SceneNode[] => {
    const { band } = { from, to }[end];
    const [x, y] = [scale(value), rowAt(row)];
    return [
      {
        kind: 'path',
        d: polyline([
          [scale(band.low), y + 8],
          [scale(band.high), y + 8],
        ]),
        stroke: { ink: 'soft', width: 1.2 },
      },
      {
        kind: 'group',
        name: `share ${end}`,
        nodes: [
          {
            kind: 'path',
            d: polyline([
              [x, y - 8],
              [x, y + 8],
            ]),
            stroke: { ink: 'ink', width: 3 },
          },
        ],
      },
      beside(x, x, y, show(value), true),
    ];
  };
  return {
    width: WIDTH,
    height: TOP + ROW * (last + 1) + 4,
    title,
    description: `${title}: from ${from.name} to ${to.name}, arrow by arrow.`,
    nodes: [
      ...[from.name, ...moves.map(({ name }) => name), to.name].map(
        (text, i): SceneNode => ({
          kind: 'text',
          x: 0,
          y: rowAt(i) + 4,
          text,
          size: TEXT,
          weight: i === 0 || i === last ? 'bold' : 'regular',
        }),
      ),
      ...ends.map(
        (value, i): SceneNode => ({
          kind: 'path',
          d: polyline([
            [scale(value), rowAt(i)],
            [scale(value), rowAt(i + 1)],
          ]),
          stroke: { ink: 'soft', width: 0.7, dash: [1.5, 2] },
        }),
      ),
      ...stop('from', from.value, 0),
      ...moves.flatMap(({ name, start, end, text }, i): SceneNode[] => [
        { kind: 'group', name: `share ${name}`, nodes: [arrow(scale(start), scale(end), rowAt(i + 1))] },
        beside(scale(start), scale(end), rowAt(i + 1), text),
      ]),
      ...stop('to', at, last),
    ],
  };
}

/** An arrow that says its direction by its head; a thin bar where nothing moves. */
function arrow(from: number, to: number, y: number): SceneNode {
  const way = Math.sign(to - from);
  const neck = to - way * Math.min(HEAD, Math.abs(to - from));
  const d =
    way === 0
      ? polyline([
          [from, y - HALF],
          [from, y + HALF],
        ])
      : polygon([
          [from, y - 0.55 * HALF],
          [neck, y - 0.55 * HALF],
          [neck, y - HALF],
          [to, y],
          [neck, y + HALF],
          [neck, y + 0.55 * HALF],
          [from, y + 0.55 * HALF],
        ]);
  const ink = way < 0 ? 'series2' : 'series1';
  return { kind: 'path', d, fill: ink, stroke: { ink, width: 0.8 } };
}

/** A text right of both ends, or left of them where there is more room. */
function beside(a: number, b: number, y: number, text: string, isBold = false): SceneNode {
  const isRight = Math.max(a, b) + 8 * text.length < WIDTH;
  return {
    kind: 'text',
    x: isRight ? Math.max(a, b) + 6 : Math.min(a, b) - 6,
    y: y + 4,
    text,
    size: TEXT,
    weight: isBold ? 'bold' : 'regular',
    anchor: isRight ? 'start' : 'end',
  };
}
