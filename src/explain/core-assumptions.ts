import { standsUnderCg } from '../ball/core/published.js';
import { USUAL_LOBES } from '../base/constants.js';
import type { BallProblem } from '../prepare/ball-problem.js';
import { markOf } from '../prepare/mark-of.js';
import { inchesOf } from '../prepare/median-numbers.js';
import { familiesOf } from '../prepare/published-numbers.js';
import { undrilledNumbers } from '../prepare/undrilled.js';
import type { Assumption } from '../records/answers/statements/assumptions.js';
import type { PublishedBall } from '../records/schemas/ball.js';
import { hasMassBias, hasNoses } from '../records/schemas/core-families.js';

/** What was assumed about a core that is fitted to a ball's published numbers. */
export const coreAssumptions = (
  ball: PublishedBall,
  { published, bodies }: Pick<BallProblem, 'published' | 'bodies'>,
): Assumption[] => [
  ...shapeAssumption(ball),
  ...(markOf(ball) === null ? noMarkAssumptions(ball) : lobesAssumption(ball)),
  ...(standsUnderCg(published) && published.pinToCg > 0 ? [UNDER_CG] : []),
  {
    code: 'many-cores',
    params: { byTopWeightIn: familiesOf(ball).every(hasMassBias) ? null : leftByTopWeight(bodies) },
  },
];

/** Greatest difference between the drilled differentials of plain and lobed cores with the same published numbers, in. */
const SHAPES_APART_IN = 0.007;

function shapeAssumption(ball: PublishedBall): Assumption[] {
  if (ball.coreShape) return [];
  return familiesOf(ball).length === 1
    ? [{ code: 'asymmetric-by-mass-bias', params: {} }]
    : [{ code: 'plain-or-lobed', params: { apartIn: SHAPES_APART_IN } }];
}

/** What was assumed about the noses of a core that is, or may be, lobed. */
function lobesAssumption(ball: PublishedBall): Assumption[] {
  if (!familiesOf(ball).some(hasNoses)) return [];
  const { lobes = USUAL_LOBES, lobeFromMarkDeg } = ball;
  const isCountGiven = ball.lobes !== undefined;
  if (lobeFromMarkDeg === undefined) return [{ code: 'lobes-toward-mark', params: { lobes, isCountGiven } }];
  return isCountGiven ? [] : [{ code: 'lobes-usual', params: { lobes } }];
}

function noMarkAssumptions(ball: PublishedBall): Assumption[] {
  const { lobes = USUAL_LOBES } = ball;
  const assumed: Assumption[] = [{ code: 'no-mark', params: {} }];
  if (familiesOf(ball).some(hasNoses)) assumed.push({ code: 'lobes-any-way', params: { lobes } });
  return assumed;
}

/** Least intermediate differential that does not round to 0.000, in. */
const SHOWS_IN = 0.0005;

/** Intermediate differential that off-axis top weight gives a symmetric ball, in; null where it rounds to 0. */
function leftByTopWeight(bodies: BallProblem['bodies']): number | null {
  const { intermediateDifferentialIn: left } = inchesOf(undrilledNumbers({ bodies }));
  return left < SHOWS_IN ? null : left;
}

const UNDER_CG: Assumption = { code: 'core-under-cg', params: {} };
