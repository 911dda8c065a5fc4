import { median as medianOf } from 'simple-statistics';
import { inertiaNumbers } from '../../ball/drill/drilled-numbers.js';
import { flareStart } from '../../ball/drill/flare-start.js';
import { staticWeights } from '../../ball/drill/static-weights.js';
import { fromKeys } from '../../base/from-keys.js';
import { from, INCH, OUNCE, POUND, to } from '../../base/units.js';
import type { Placement } from '../../layout/placement.js';
import { arcAngle } from '../../math/sphere.js';
import { dot, scale, type Vec3 } from '../../math/vec3.js';
import type { BallProblem } from '../../prepare/ball-problem.js';
import { coresDriller } from '../../prepare/drilled-cores.js';
import { inchesOf, type RgNumbers } from '../../prepare/median-numbers.js';
import type {
  Band,
  DrilledNumbersAnswer,
  FlareStartAnswer,
  LegalityAnswer,
  MarkAnswer,
  PsaAnswer,
  SimulatedLayout,
} from '../../records/answers/answer.js';
import { hasMassBias } from '../../records/schemas/core-families.js';
import type { RuleSet } from '../../records/shared/rules.js';
import type { LayoutNumbers } from '../../records/text/layout-text.js';
import { markClearanceIn } from '../../search/candidates/candidates.js';
import { bandOf } from '../../search/scoring/world-statistics.js';
import { depthFindings } from './depth-findings.js';
import { arcsIn } from './face-answer.js';
import { legality } from './legality.js';
import { GRIP_CENTRE, markAnswer, placedOn } from './mark-answer.js';
import { plugFindings } from './plug-findings.js';

/** All that is known of a drilled ball before it rolls. */
export interface DrilledFacts {
  readonly drilled: DrilledNumbersAnswer;
  readonly bands: SimulatedLayout['bands']['drilled'];
  /** Intermediate over total differential: median and band of all cores. */
  readonly asymmetry: Band & { readonly middle: number };
  readonly psa: PsaAnswer;
  readonly flareStart: FlareStartAnswer;
  readonly marks: readonly MarkAnswer[];
  readonly legality: LegalityAnswer;
}

/** Below this drilled intermediate differential the high-RG axis is anywhere within some inches, m. */
const CERTAIN_AXIS = from(0.004, INCH);

/**
 * Prepares to drill layouts into every core of the ensemble: medians and bands of all; mass, statics and axis of the mean of all drilled
 * balls.
 *
 * @returns layout ↦ what is known of the ball drilled so
 */
export function drilledFacts(ball: BallProblem, rules: RuleSet): (numbers: LayoutNumbers) => DrilledFacts {
  const drill = coresDriller(ball);
  return (numbers) => factsOf(numbers, ball, rules, drill);
}

function factsOf(
  numbers: LayoutNumbers,
  ball: BallProblem,
  rules: RuleSet,
  drill: ReturnType<typeof coresDriller>,
): DrilledFacts {
  const { radius } = ball.published;
  const placement = placedOn(ball, numbers);
  const { all, median, mean } = drill(placement.R_BC);
  const drilled = mean();
  const inertia = inertiaNumbers(drilled);
  const statics = staticWeights(drilled, radius, ball.ounce);
  const { perTurn, share } = flareStart(drilled, placement.pap_B);
  const asymmetries = all.map((n) => n.intermediateDifferential / n.differential);
  const band = (pick: (n: RgNumbers) => number) => bandOf(all.map((n) => to(pick(n), INCH)));
  return {
    drilled: {
      massLb: to(inertia.mass, POUND),
      ...inchesOf(median),
      staticOz: fromKeys(['top', 'side', 'finger'], (side) => to(statics[side], OUNCE)),
    },
    bands: {
      rgIn: band((n) => n.lowRg),
      differentialIn: band((n) => n.differential),
      intermediateDifferentialIn: band((n) => n.intermediateDifferential),
    },
    asymmetry: { middle: medianOf(asymmetries), ...bandOf(asymmetries) },
    psa: psaOf(inertia.highAxis_B, median, placement, ball),
    flareStart: { perTurnIn: to(perTurn * radius, INCH), share },
    marks: marksOf(placement, ball),
    legality: legality({ statics, inertia }, ball, rules, markClearanceIn(numbers, ball), [
      ...plugFindings(placement, ball),
      ...depthFindings(placement, ball),
    ]),
  };
}

/** Below the grip centre by an eighth of the ball, about where a thumb is. */
const BY_THE_THUMB: Vec3 = [0, -Math.SQRT1_2, Math.SQRT1_2];

/** The end of the high-RG axis on the side of the mass-bias mark, which drilling moves it away from; without one, the end nearest the thumb. */
function psaOf(
  axis: Vec3,
  { intermediateDifferential }: RgNumbers,
  placement: Placement,
  ball: BallProblem,
): PsaAnswer {
  const arcIn = (u: Vec3, v: Vec3): number => to(arcAngle(u, v) * ball.published.radius, INCH);
  const mark = hasMassBias(ball.published.family) ? placement.marker_B : null;
  const end = dot(axis, mark ?? BY_THE_THUMB) >= 0 ? axis : scale(-1, axis);
  return {
    ...arcsIn(end, ball.published.radius),
    fromPapIn: arcIn(end, placement.pap_B),
    fromPinIn: arcIn(end, placement.pin_B),
    fromMarkIn: mark && arcIn(end, mark),
    fromGripCentreIn: arcIn(end, GRIP_CENTRE),
    certain: intermediateDifferential >= CERTAIN_AXIS,
  };
}

/** Tape arcs of every mark from the grip centre, the PAP and the pin. */
function marksOf(placement: Placement, ball: BallProblem): readonly MarkAnswer[] {
  const mark = markAnswer(placement, ball.published.radius);
  return [
    mark('grip centre', GRIP_CENTRE),
    mark('PAP', placement.pap_B),
    mark('pin', placement.pin_B),
    ...(ball.marker === null ? [] : [mark(ball.marker, placement.marker_B)]),
    ...ball.holes.map((hole) => mark(`${hole.name} hole`, hole.mouth_B)),
  ];
}
