import type { PublishedNumbers } from '../ball/core/published.js';
import { type OunceConvention, staticLever } from '../ball/drill/static-weights.js';
import { USUAL_LOBES } from '../base/constants.js';
import { DEGREE, from, INCH, OUNCE, POUND } from '../base/units.js';
import { type PublishedBall, USUAL_CIRCUMFERENCE_IN } from '../records/schemas/ball.js';
import type { Bowler } from '../records/schemas/bowler.js';
import { type CoreFamily, familiesWith, hasMassBias } from '../records/schemas/core-families.js';

/** The families a ball's core may be of; see `familiesWith`. */
export const familiesOf = (ball: PublishedBall): readonly CoreFamily[] =>
  familiesWith(ball.coreShape, ball.intermediateDifferentialIn);

/** A ball record in SI, with a core of the first family it may be of. */
export function publishedNumbers(ball: PublishedBall, ounce: OunceConvention): PublishedNumbers {
  const radius = from(ball.circumferenceIn ?? USUAL_CIRCUMFERENCE_IN, INCH) / (2 * Math.PI);
  const [family] = familiesOf(ball);
  return {
    mass: from(ball.weightLb, POUND),
    radius,
    lowRg: from(ball.rgIn, INCH),
    differential: from(ball.differentialIn, INCH),
    intermediateDifferential: hasMassBias(family) ? from(ball.intermediateDifferentialIn, INCH) : 0,
    pinToCg: from(ball.pinToCgIn, INCH) / radius,
    topMoment: from(ball.topWeightOz, OUNCE) * staticLever(radius, ounce),
    family,
    lobes: { count: ball.lobes ?? USUAL_LOBES, fromMarker: from(ball.lobeFromMarkDeg ?? 0, DEGREE) },
  };
}

/** A left-hander's ball is computed as its mirror image. */
export const seenBy = (hand: Bowler['hand'], ball: PublishedBall): PublishedBall =>
  hand === 'left' && ball.lobeFromMarkDeg ? { ...ball, lobeFromMarkDeg: -ball.lobeFromMarkDeg } : ball;
