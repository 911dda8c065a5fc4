import { standsUnderCg } from '../ball/core/published.js';
import { USUAL_LOBES } from '../base/constants.js';
import type { BallProblem } from '../prepare/ball-problem.js';
import { markOf } from '../prepare/mark-of.js';
import { inchesOf } from '../prepare/median-numbers.js';
import { familiesOf } from '../prepare/published-numbers.js';
import { undrilledNumbers } from '../prepare/undrilled.js';
import type { PublishedBall } from '../records/schemas/ball.js';
import { hasMassBias, hasNoses } from '../records/schemas/core-families.js';

/** What was assumed of a core that is fitted to a ball's published numbers. */
export const coreAssumptions = (
  ball: PublishedBall,
  { published, bodies }: Pick<BallProblem, 'published' | 'bodies'>,
): string[] => [
  ...shapeAssumption(ball),
  ...(markOf(ball) === null ? noMarkAssumptions(ball) : lobesAssumption(ball)),
  ...(standsUnderCg(published) && published.pinToCg > 0 ? [UNDER_CG] : []),
  `Many cores with the published numbers stand for the one that is not known: drilled numbers are medians, bands hold 9 of 10.${familiesOf(ball).every(hasMassBias) ? '' : leftByTopWeight(bodies)}`,
];

function shapeAssumption(ball: PublishedBall): string[] {
  if (ball.coreShape) return [];
  return familiesOf(ball).length === 1
    ? ['The core is taken as asymmetric, since a mass bias is published.']
    : [
        'Whether the core is a plain body of revolution or has side features is not given, and its numbers do not tell: half the cores tried are plain, half lobed. Their drilled numbers can differ by 0.007 in; set coreShape to "plain" or "lobed" to narrow the bands.',
      ];
}

/** What was assumed of the noses of a core that is lobed or may be. */
function lobesAssumption(ball: PublishedBall): string[] {
  if (!familiesOf(ball).some(hasNoses)) return [];
  const { lobes = USUAL_LOBES, lobeFromMarkDeg } = ball;
  if (lobeFromMarkDeg !== undefined)
    return ball.lobes === undefined
      ? [`A lobed core is taken to have ${lobes} noses; set lobes if it has others.`]
      : [];
  return [
    `A lobed core is taken to have ${lobes} noses, one of them toward the CG mark. Turned by half their spacing, drilled numbers of drilling angles ${180 / lobes}° apart${lobes === 4 ? ', such as 25° and 70°,' : ''} would change places: see how the maker shows the noses, and set ${ball.lobes === undefined ? 'lobes and ' : ''}lobeFromMarkDeg.`,
  ];
}

function noMarkAssumptions(ball: PublishedBall): string[] {
  const { lobes = USUAL_LOBES } = ball;
  return [
    'The CG lies on the pin, so there is no mark to aim at and no drilling angle: the layout is pin-to-PAP and VAL angle (or pin buffer) alone.',
    ...(familiesOf(ball).some(hasNoses)
      ? [
          `A lobed core is taken to have ${lobes} noses. How they will stand about the pin cannot be seen, so the cores are turned every way.`,
        ]
      : []),
  ];
}

/** Intermediate differential that shows once it is rounded, in. */
const SHOWS_IN = 0.0005;

/** What top weight beside the pin's axis does to a symmetric ball, where it shows. */
function leftByTopWeight(bodies: BallProblem['bodies']): string {
  const { intermediateDifferentialIn: left } = inchesOf(undrilledNumbers({ bodies }));
  return left < SHOWS_IN ? '' : ` Top weight gives them ${left.toFixed(3)} in of intermediate differential.`;
}

const UNDER_CG =
  'With so little differential the low-RG axis means nothing: the cores stand under the CG mark, not under the pin.';
