import type { Part } from '../../src/ball/part.js';
import { type StartingShape, solveCore } from '../../src/ball/solve-core.js';
import { scaleMat } from '../../src/mat3.js';
import { scale } from '../../src/vec3.js';
import { publishedBall } from './fixtures.js';

/*
 * An invented lobed core: a trunk that narrows toward the pin, and four equal noses around it, one toward
 * the marker. Found by a search among shapes of this kind for one that answers to the drilling angle.
 */
const SIZE = 0.04873; // m, the trunk's radius
const TRUNK: Part = {
  shape: { kind: 'cone', top: 0.5133 },
  A: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1.214],
  ],
  c: [0, 0, 0],
  excess: 1500,
};

/** Distance of a nose's centre from the pin's axis, in trunk radii; its half axes below. */
const NOSE_DISTANCE = 1.35;
const [RADIAL, ACROSS, HEIGHT] = [0.516, 0.3209, 0.4548];

const nose = (quarter: number): Part => {
  const [c, s] = [
    [1, 0],
    [0, 1],
    [-1, 0],
    [0, -1],
  ][quarter];
  return {
    shape: { kind: 'ball' },
    A: [
      [RADIAL * c, -ACROSS * s, 0],
      [RADIAL * s, ACROSS * c, 0],
      [0, 0, HEIGHT],
    ],
    c: [NOSE_DISTANCE * c, NOSE_DISTANCE * s, -0.06813],
    excess: 1500 * 0.9996,
  };
};

/** kg/m³. At 1185 the filler that makes the weight is 599, a hair below the least that is built. */
const COVER_DENSITY = 1183;

const start: StartingShape = {
  coverThickness: 0.01916,
  coverDensity: COVER_DENSITY,
  core: [TRUNK, ...[0, 1, 2, 3].map(nose)].map((part) => ({
    ...part,
    A: scaleMat(SIZE, part.A),
    c: scale(SIZE, part.c),
  })),
};

/** The core solved for 15 lb, RG 2.52, differential 0.050; the trunk first, then the noses from the marker's on. */
export const lobedCore = solveCore(publishedBall('lobed', 15, 2.52, 0.05), start);
