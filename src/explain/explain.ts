import { fromKeys } from '../base/from-keys.js';
import { placeLayout } from '../layout/placement.js';
import type { BallProblem } from '../prepare/ball-problem.js';
import { coresDriller } from '../prepare/drilled-cores.js';
import { inchesOf } from '../prepare/median-numbers.js';
import { toLayout } from '../prepare/to-layout.js';
import type { SharesAnswer, StepEffect } from '../records/answers/answer.js';
import type { Step } from '../records/answers/statements/changes.js';
import { type ReactionId, SHARED_IDS } from '../records/schemas/reaction-numbers.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import { score } from '../search/scoring/score.js';
import type { Target } from '../search/scoring/target.js';
import { reader } from '../simulate/readings.js';
import type { Setting } from '../simulate/setting.js';
import type { Outcome } from '../simulate/simulator.js';
import { mixtures, shapleyShares } from './shapley.js';

export interface Explained {
  readonly shares: SharesAnswer;
  readonly steps: StepEffect[];
  readonly centre: CentreEffect;
}

/** What a layout does against the reference, as it is and with the centre of mass of both at the ball's centre. */
export interface CentreEffect {
  readonly asDrilled: CentreReadings;
  readonly balanced: CentreReadings;
}

/** Differences of reaction numbers, in the units people read. */
export type CentreReadings = Readonly<Record<(typeof CENTRE_IDS)[number], number>>;

const CENTRE_IDS = ['hookStartFt', 'totalHookBoards'] as const;

/** Steps a person can make in each number; what each changes is simulated. */
const STEPS: readonly { change: Step; by: Partial<LayoutNumbers> }[] = [
  ...[-10, 10].map((byDeg) => ({
    change: { code: 'drilling-angle-by', params: { byDeg } } as const,
    by: { drillingAngleDeg: byDeg },
  })),
  ...[-0.25, 0.25].map((byIn) => ({
    change: { code: 'pin-to-pap-by', params: { byIn } } as const,
    by: { pinToPapIn: byIn },
  })),
  ...[-10, 10].map((byDeg) => ({
    change: { code: 'val-angle-by', params: { byDeg } } as const,
    by: { valAngleDeg: byDeg },
  })),
];

const stepped = (layout: LayoutNumbers, by: Partial<LayoutNumbers>): LayoutNumbers => ({
  drillingAngleDeg: Math.max(0, layout.drillingAngleDeg + (by.drillingAngleDeg ?? 0)),
  pinToPapIn: Math.max(0, layout.pinToPapIn + (by.pinToPapIn ?? 0)),
  valAngleDeg: Math.max(0, layout.valAngleDeg + (by.valAngleDeg ?? 0)),
});

/**
 * For each layout, exact shares of its three numbers against a reference (eight shots), what one more step in each number would
 * change (six), and what of the difference is left with the centre of mass at the ball's centre (two); all in the nominal
 * world, but for the differentials, which are medians of all cores, as in the rest of an answer.
 */
export async function explain(
  layouts: readonly LayoutNumbers[],
  reference: LayoutNumbers,
  targets: readonly Target[],
  { problem, evaluator }: Setting,
): Promise<readonly Explained[]> {
  const { radius } = problem.ball.published;
  const steps = STEPS.filter(({ by }) => problem.ball.marker !== null || by.drillingAngleDeg === undefined);
  const perLayout = layouts.map((layout) => [
    ...mixtures(reference, layout),
    ...steps.map(({ by }) => stepped(layout, by)),
  ]);
  const [outcomes, [balancedReference, ...balanced]] = await Promise.all([
    evaluator.evaluate(perLayout.flat().map((layout) => ({ layout: toLayout(layout, radius), world: 0 }))),
    evaluator.evaluate(
      [reference, ...layouts].map((layout) => ({
        layout: toLayout(layout, radius),
        world: 'balanced' as const,
      })),
    ),
  ]);
  const size = 8 + steps.length;
  const drilled = differentialShares(problem.ball);
  return layouts.map((layout, i) => {
    const own = outcomes.slice(i * size, (i + 1) * size);
    return {
      shares: { ...reactionShares(own.slice(0, 8), targets), ...drilled(mixtures(reference, layout)) },
      steps: stepsOf(steps, own[7], own.slice(8), targets),
      centre: {
        asDrilled: apart(CENTRE_IDS, own[7], own[0]),
        balanced: apart(CENTRE_IDS, balanced[i], balancedReference),
      },
    };
  });
}

const apart = <K extends ReactionId>(
  ids: readonly K[],
  a: Outcome,
  b: Outcome,
): Readonly<Record<K, number>> => fromKeys(ids, (id) => reader(id)(a) - reader(id)(b));

function share(values: readonly number[]): SharesAnswer['score'] {
  const [drillingAngle, pinToPap, valAngle] = shapleyShares(values);
  return { total: values[7] - values[0], drillingAngle, pinToPap, valAngle };
}

type DifferentialKey = 'differentialIn' | 'intermediateDifferentialIn';

const reactionShares = (
  mixed: readonly Outcome[],
  targets: readonly Target[],
): Omit<SharesAnswer, DifferentialKey> => ({
  score: share(mixed.map((o) => score(o, targets))),
  ...fromKeys(SHARED_IDS, (id) => share(mixed.map(reader(id)))),
});

/** Prepares the shares of the drilled differentials. */
function differentialShares(ball: BallProblem) {
  const drill = coresDriller(ball);
  return (mixed: readonly LayoutNumbers[]): Pick<SharesAnswer, DifferentialKey> => {
    const medians = mixed.map((layout) =>
      inchesOf(drill(placeLayout(toLayout(layout, ball.published.radius), ball.pap_B).R_BC).median),
    );
    return {
      differentialIn: share(medians.map(({ differentialIn }) => differentialIn)),
      intermediateDifferentialIn: share(medians.map((m) => m.intermediateDifferentialIn)),
    };
  };
}

const stepsOf = (
  steps: typeof STEPS,
  own: Outcome,
  after: readonly Outcome[],
  targets: readonly Target[],
): StepEffect[] =>
  steps.map(({ change }, i) => ({
    change,
    score: score(after[i], targets) - score(own, targets),
    ...apart(SHARED_IDS, after[i], own),
  }));
