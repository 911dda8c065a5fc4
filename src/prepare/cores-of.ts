import { HEAVY, isUnusual, LIGHT, THIN } from '../ball/core/build.js';
import type { PublishedNumbers } from '../ball/core/published.js';
import type { BallBody } from '../ball/drill/ball-body.js';
import type { OunceConvention } from '../ball/drill/static-weights.js';
import { turnPart } from '../ball/solid/part.js';
import { GRAM_PER_CC, INCH, to } from '../base/units.js';
import { turnAboutZ } from '../math/mat3.js';
import type { Assumption } from '../records/answers/statements/assumptions.js';
import type { Caution } from '../records/answers/statements/cautions.js';
import { type Ball, hasOwnCore } from '../records/schemas/ball.js';
import type { Bowler } from '../records/schemas/bowler.js';
import { type CoreFamily, hasMassBias } from '../records/schemas/core-families.js';
import { MARK_NAMES } from '../records/text/written-layout.js';
import { type CoreFitter, fitCores } from './fit-cores.js';
import { markOf } from './mark-of.js';
import { ownBall } from './own-core.js';
import { familiesOf, publishedNumbers, seenBy } from './published-numbers.js';

/** What kind of core a ball may have: a family fitted to published numbers, or its own. */
export type CoreKind = CoreFamily | 'own';

/** The possible cores of a ball. */
interface Cores {
  readonly numbers: PublishedNumbers;
  readonly families: readonly CoreKind[];
  /** Several that all give the published numbers, or only the ball's own. */
  readonly bodies: readonly BallBody[];
  /** Arc from the pin to the marker, rad: a quarter of the ball to a mass-bias mark, else as far as the CG. */
  readonly pinToMarker: number;
  /** Name of the marker; null where it lies on the pin and shows no direction. */
  readonly marker: string | null;
  /** Facts about the ball's own core; empty for a fitted one. */
  readonly known: readonly Assumption[];
  readonly warnings: readonly Caution[];
}

/**
 * The possible cores of a ball: its own, or some fitted to its published numbers.
 *
 * @param count  how many to fit
 * @throws {Refusal} as `fitCores` does, or as `ownBall` when the ball's own core is impossible
 */
export function coresOf(
  ball: Ball,
  hand: Bowler['hand'],
  ounce: OunceConvention,
  count: number,
  fitter?: CoreFitter,
): Cores {
  if (hasOwnCore(ball)) {
    const { numbers, body, known, warnings } = ownBall(ball, hand);
    const marker = hasMassBias(numbers.family) ? 'mass-bias mark' : 'marker';
    return { numbers, families: ['own'], bodies: [body], pinToMarker: Math.PI / 2, marker, known, warnings };
  }
  const seen = seenBy(hand, ball);
  const numbers = publishedNumbers(seen, ounce);
  const mark = markOf(ball);
  const fitted = fitCores(seen, ounce, count, fitter);
  const bodies = mark ? fitted : fitted.map(turnedSomehow);
  return {
    numbers,
    families: familiesOf(ball),
    bodies,
    pinToMarker: mark === 'mass-bias' ? Math.PI / 2 : numbers.pinToCg,
    marker: mark && MARK_NAMES[mark],
    known: [],
    warnings: fitWarnings(bodies, numbers.mass, count),
  };
}

/** Without a mark, nothing shows how a core is turned about its pin, so each core is turned differently. */
const turnedSomehow = (body: BallBody, i: number): BallBody => {
  const turn = turnAboutZ(GOLDEN_ANGLE * i);
  return { ...body, core: body.core.map((part) => turnPart(part, turn)) };
};

/** Any number of multiples of this angle, rad, are spread evenly over a turn. */
const GOLDEN_ANGLE = Math.PI * (3 - Math.sqrt(5));

/** Warnings from fitted cores: that such a ball is seldom built, or hardly possible. */
function fitWarnings(bodies: readonly BallBody[], mass: number, count: number): Caution[] {
  const unusual = bodies.filter((body) => isUnusual(body, mass)).length;
  const warnings: Caution[] = [];
  if (bodies.length < count) warnings.push({ code: 'few-cores', params: { found: bodies.length } });
  if (unusual > bodies.length / 2) warnings.push({ code: 'unusual-build', params: USUAL_BUILD });
  return warnings;
}

/** A cover as it is usually built. */
const USUAL_BUILD = {
  thinCoverIn: to(THIN, INCH),
  coverGcc: { least: to(LIGHT, GRAM_PER_CC), most: to(HEAVY, GRAM_PER_CC) },
};
