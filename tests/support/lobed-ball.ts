import { type StartingCore, solveCore } from '../../src/ball/core/solve-core.js';
import type { Part } from '../../src/ball/solid/part.js';
import { scaleMat } from '../../src/math/mat3.js';
import { scale } from '../../src/math/vec3.js';
import { publishedBall } from './balls.js';

/*
 * An invented lobed core: a trunk that narrows toward the pin, and four equal noses around it, one toward
 * the marker. Found by a search among shapes of this kind for one that answers to the drilling angle.
 */
const SIZE = 0.0415; // m, the trunk's radius
const TRUNK: Part = {
  shape: { kind: 'cone', top: 0.7544 },
  A: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1.445],
  ],
  c: [0, 0, 0],
  excess: 1500,
};

/** Half axes of a nose, in trunk radii; it touches the trunk and does not enter it. */
const [RADIAL, ACROSS, HEIGHT] = [0.5284, 0.463, 0.7601];
const NOSE_DISTANCE = 1 + RADIAL;

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
    c: [NOSE_DISTANCE * c, NOSE_DISTANCE * s, 0.2355],
    excess: 1500 * 0.9968,
  };
};

/** kg/m³ */
const COVER_DENSITY = 1153;

/** Toward the lightest filler that works with it: 0.6075 g/cc. */
const FILLER_SHARE = 0.107;

const start: StartingCore = {
  coverThickness: 0.0193,
  coverDensity: COVER_DENSITY,
  lightestFiller: 600,
  core: [TRUNK, ...[0, 1, 2, 3].map(nose)].map((part) => ({
    ...part,
    A: scaleMat(SIZE, part.A),
    c: scale(SIZE, part.c),
  })),
};

/** The core solved for 15 lb, RG 2.52, differential 0.050; the trunk first, then the noses from the marker's on. */
export const lobedCore = solveCore(publishedBall('lobed', 15, 2.52, 0.05), start, FILLER_SHARE);
