import { fitEnsemble } from '../../src/ball/core/ensemble.js';
import type { PublishedNumbers } from '../../src/ball/core/published.js';
import type { BallBody } from '../../src/ball/drill/ball-body.js';
import { DEGREE, from, INCH, OUNCE, POUND } from '../../src/base/units.js';
import type { Layout } from '../../src/layout/layout.js';
import { ballPoint } from '../../src/math/ball-point.js';
import { gripHoles } from '../../src/prepare/grip-holes.js';
import type { CoreFamily } from '../../src/records/schemas/core-families.js';
import { averageBowler } from './problems.js';

/* Invented balls and grips of the tests. */

/** Of a ball 27 in around, m. */
export const RADIUS = from(27, INCH) / (2 * Math.PI);

/** Arc on that ball, rad. */
export const arc = (inches: number): number => from(inches, INCH) / RADIUS;

/** PAP 5 in over and 1/2 in up. */
export const PAP_B = ballPoint(arc(5), arc(0.5));

export const layoutOf = (drillingDeg: number, pinToPapIn: number, valDeg: number): Layout => ({
  drillingAngle: drillingDeg * DEGREE,
  pinToPap: arc(pinToPapIn),
  valAngle: valDeg * DEGREE,
});

/** A ball with 3 oz of top weight and its CG mark 3 in from the pin. */
export const publishedBall = (
  family: CoreFamily,
  weightLb: number,
  rgIn: number,
  differentialIn: number,
  intermediateIn = 0,
): PublishedNumbers => ({
  mass: from(weightLb, POUND),
  radius: RADIUS,
  lowRg: from(rgIn, INCH),
  differential: from(differentialIn, INCH),
  intermediateDifferential: from(intermediateIn, INCH),
  pinToCg: arc(3),
  topMoment: from(3, OUNCE) * RADIUS,
  family,
});

/** A ball of each family as many are. */
export const USUAL_BALLS: readonly PublishedNumbers[] = [
  publishedBall('plain', 15, 2.54, 0.045),
  publishedBall('lobed', 15, 2.54, 0.045),
  publishedBall('asymmetric', 15, 2.54, 0.045, 0.015),
];

/** Balls that few shapes can be: at the edges where the core gets too dense or too big. */
export const EDGE_BALLS: readonly PublishedNumbers[] = [
  publishedBall('plain', 15, 2.46, 0.058),
  publishedBall('lobed', 14, 2.52, 0.048),
  publishedBall('asymmetric', 15, 2.48, 0.05, 0.017),
  publishedBall('asymmetric', 14, 2.52, 0.048, 0.017),
  publishedBall('plain', 15, 2.62, 0.054),
  publishedBall('lobed', 12, 2.62, 0.048),
];

/** The usual grip (slug in the thumb, inserts in the fingers) placed on the ball. */
export const usualHoles = (thumbHole = true) => gripHoles({ ...averageBowler, thumbHole }, RADIUS);

/** Cores that all have the numbers of a 15 lb ball with RG 2.54 and differential 0.045. */
export const fittedBodies = (family: CoreFamily, count: number): readonly BallBody[] =>
  fitEnsemble(publishedBall(family, 15, 2.54, 0.045, family === 'asymmetric' ? 0.015 : 0), count).bodies;
