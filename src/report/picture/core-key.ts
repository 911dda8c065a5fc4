import { decimals } from '../../base/decimals.js';
import type { CoreAnswer } from '../../records/answers/answer.js';
import type { Ink, SceneNode } from '../scene/scene.js';
import { polyline, rectangle } from '../scene/shapes.js';
import { hatch } from './hatch.js';
import { AXIS_DASH, balanceSign, HOLE_DASH, toneOf } from './section-picture.js';

/** Width and height of a key's sample, pt. */
export const SWATCH = [26, 13] as const;

/** A line of the key: what is drawn, from its top left corner, and what it stands for. */
export interface KeyRow {
  readonly swatch: readonly SceneNode[];
  readonly said: string;
}

/** The key of a core's sections: parts, cover and filler with their densities, then the signs that occur. */
export const coreKey = ({ parts, cover, numbers, sections }: CoreAnswer): readonly KeyRow[] => [
  ...parts.map(({ sign, name, densityGcc }, part) => ({
    swatch: [ground(toneOf(densityGcc)), hatch([OUTLINE], part, densityGcc)],
    said: `${sign}  ${name}, ${gcc(densityGcc)}`,
  })),
  { swatch: [ground('shade')], said: `cover, ${gcc(cover.densityGcc)}` },
  ...(numbers
    ? [
        { swatch: [ground('paper')], said: `filler, ${gcc(numbers.fillerGcc)}` },
        { swatch: balanceSign([WIDE / 2, HIGH / 2]), said: 'CG' },
        { swatch: [dashed(AXIS_DASH)], said: 'principal axis through the CG' },
      ]
    : []),
  ...(sections.some(({ holes }) => holes.length > 0)
    ? [{ swatch: [dashed(HOLE_DASH)], said: 'hole, before or behind the section' }]
    : []),
];

const [WIDE, HIGH] = SWATCH;

const OUTLINE = [
  [0, 0],
  [WIDE, 0],
  [WIDE, HIGH],
  [0, HIGH],
] as const;

const ground = (fill: Ink): SceneNode => ({
  kind: 'path',
  d: rectangle(0, 0, WIDE, HIGH),
  fill,
  stroke: { ink: 'ink', width: 0.8 },
});

const dashed = (dash: readonly number[]): SceneNode => ({
  kind: 'path',
  d: polyline([
    [0, HIGH / 2],
    [WIDE, HIGH / 2],
  ]),
  stroke: { ink: 'ink', width: 0.8, dash },
});

const gcc = (density: number): string => `${decimals(density, 2)} g/cc`;
