import type { PlanePoint } from '../../math/polygon.js';
import { cos, sin } from '../../math/sin-cos.js';
import type { CoreAnswer, CoreSection } from '../../records/answers/answer.js';
import { type Ink, type SceneNode, TONES } from '../scene/scene.js';
import { circle, type Point, polygon, polyline } from '../scene/shapes.js';
import { hatch } from './hatch.js';
import { markSign } from './mark-signs.js';
import { letters } from './part-letters.js';

const TEXT = 11;

export const AXIS_DASH = [8, 2, 1.5, 2];
export const HOLE_DASH = [3, 2];

/** One section of a core to scale, its ball's centre in the middle of a point. */
export function sectionNodes(
  section: CoreSection,
  answer: CoreAnswer,
  middle: Point,
  ptPerInch: number,
): SceneNode[] {
  const { radiusIn, reachIn, cover, parts } = answer;
  const at = ([x, y]: PlanePoint): Point => [middle[0] + ptPerInch * x, middle[1] - ptPerInch * y];
  const ring = (radius: number): string => circle(middle, ptPerInch * radius);
  const drawn = section.parts.map(({ part, loops }) => ({ part, loops: loops.map((loop) => loop.map(at)) }));
  return [
    { kind: 'path', d: ring(radiusIn), fill: 'shade', stroke: { ink: 'ink', width: 1.2 } },
    ...(cover.thicknessIn < radiusIn
      ? [
          {
            kind: 'path',
            d: ring(radiusIn - cover.thicknessIn),
            fill: 'paper',
            stroke: { ink: 'ink', width: 0.8 },
          } as const,
        ]
      : []),
    ...drawn.flatMap(({ part, loops }): SceneNode[] => {
      const { densityGcc, sign } = parts[part];
      return [
        {
          kind: 'group',
          name: `part ${sign}`,
          nodes: [
            {
              kind: 'path',
              d: loops.map(polygon).join(''),
              fill: toneOf(densityGcc),
              stroke: { ink: 'ink', width: 1 },
            },
            hatch(loops, part, densityGcc),
          ],
        },
      ];
    }),
    ...(reachIn > radiusIn ? overParts(ring(radiusIn)) : []),
    ...section.holes.map(
      ({ outline }): SceneNode => ({
        kind: 'path',
        d: polygon(outline.map(at)),
        stroke: { ink: 'ink', width: 0.8, dash: HOLE_DASH },
      }),
    ),
    ...section.axes.flatMap(({ axis, ends }): SceneNode[] => {
      const [from, to] = ends.map(at);
      return [
        { kind: 'path', d: polyline([from, to]), stroke: { ink: 'ink', width: 0.8, dash: AXIS_DASH } },
        ...axisLabel(`${axis} RG`, from, to),
      ];
    }),
    ...letters(
      drawn,
      parts,
      section.marks.filter(({ mark }) => mark === 'CG').map(({ at: place }) => at(place)),
    ),
    ...[...section.marks].reverse().flatMap(({ mark, at: place }) => markNodes(mark, at(place), middle)),
  ];
}

/** The ball's edge once more, where a core in a wrong unit or place reaches over it and would hide it. */
const overParts = (edge: string): SceneNode[] => [
  { kind: 'path', d: edge, stroke: { ink: 'paper', width: 4 } },
  { kind: 'path', d: edge, stroke: { ink: 'ink', width: 1.2 } },
];

/** The part's tone; how dense it is also shows in its hatch, and stands in the key. */
export const toneOf = (densityGcc: number): Ink =>
  TONES[Math.min(TONES.length - 1, Math.max(0, Math.floor((densityGcc / MOST_GCC) * TONES.length)))];

/** A core's densest matter, about, g/cc. */
const MOST_GCC = 3.8;

/** A mark's sign, and the name of one on the ball's surface outside it: above a pin, beside what lies to a side. */
function markNodes(
  mark: CoreSection['marks'][number]['mark'],
  [x, y]: Point,
  [middleX, middleY]: Point,
): SceneNode[] {
  if (mark === 'CG') return balanceSign([x, y]);
  const side = Math.sign(x - middleX);
  const isAside = Math.abs(x - middleX) > Math.abs(y - middleY);
  const below = mark === 'PSA' ? TEXT + 2 : 0; // the marker, which lies near it, has its name beside it
  return [
    ...markSign(mark, [x, y]),
    isAside
      ? {
          kind: 'text',
          x: x + 7 * side,
          y: y + 3 + below,
          text: mark,
          size: TEXT,
          anchor: side > 0 ? 'start' : 'end',
        }
      : { kind: 'text', x, y: y < middleY ? y - 8 : y + 15, text: mark, size: TEXT, anchor: 'middle' },
  ];
}

/** The engineering sign of a centre of mass: a disc with two of its quarters filled. */
export function balanceSign([x, y]: Point): SceneNode[] {
  const r = 4.5;
  const quarter = (sx: 1 | -1, sy: 1 | -1): string =>
    polygon([
      [x, y],
      ...Array.from({ length: 9 }, (_, i): Point => {
        const angle = (Math.PI / 2) * (i / 8);
        return [x + sx * r * cos(angle), y + sy * r * sin(angle)];
      }),
    ]);
  return [
    { kind: 'path', d: circle([x, y], r), fill: 'paper', stroke: { ink: 'ink', width: 1 } },
    { kind: 'path', d: quarter(1, -1) + quarter(-1, 1), fill: 'ink' },
  ];
}

/** What an axis is called, at its lower or its left end, outside the ball, where no mark lies. */
function axisLabel(said: string, from: Point, to: Point): SceneNode[] {
  if (Math.abs(from[1] - to[1]) > Math.abs(from[0] - to[0])) {
    const [x, y] = from[1] > to[1] ? from : to;
    return [{ kind: 'text', x, y: y + TEXT + 2, text: said, size: TEXT, anchor: 'middle' }];
  }
  const [x, y] = from[0] < to[0] ? from : to;
  return [{ kind: 'text', x: x - 3, y: y + 3, text: said, size: TEXT, anchor: 'end' }];
}
