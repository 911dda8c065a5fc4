import { fromKeys } from '../base/from-keys.js';
import { placeLayout } from '../layout/placement.js';
import type { BallProblem } from '../prepare/ball-problem.js';
import { coresDriller } from '../prepare/drilled-cores.js';
import { inchesOf } from '../prepare/median-numbers.js';
import { toLayout } from '../prepare/to-layout.js';
import type { CausesAnswer, SharesAnswer } from '../records/answers/answer.js';
import { SHARED_IDS } from '../records/schemas/reaction-numbers.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import { score } from '../search/scoring/score.js';
import type { Target } from '../search/scoring/target.js';
import { reader } from '../simulate/readings.js';
import type { Setting } from '../simulate/setting.js';
import type { Outcome } from '../simulate/simulator.js';
import { causes } from './causes.js';
import { mixtures, shapleyShares } from './shapley.js';

/** Why a layout's shot differs from the reference's. */
interface Explained {
  readonly shares: SharesAnswer;
  readonly causes: CausesAnswer | null;
}

/**
 * For each layout, exact shares of its three numbers in its difference from a reference (eight shots), and the properties of the drilled
 * ball that make the difference. All in the nominal world, except the differentials, which are medians over all cores, as in the rest
 * of an answer.
 */
export async function explain(
  layouts: readonly LayoutNumbers[],
  reference: LayoutNumbers,
  targets: readonly Target[],
  setting: Pick<Setting, 'problem' | 'evaluator'>,
): Promise<readonly Explained[]> {
  const { problem, evaluator } = setting;
  const { radius } = problem.ball.published;
  const mixed = layouts.map((layout) => mixtures(reference, layout));
  const [outcomes, made] = await Promise.all([
    evaluator.evaluate(mixed.flat().map((layout) => ({ layout: toLayout(layout, radius), world: 0 }))),
    causes(layouts, reference, targets, setting),
  ]);
  const drilled = differentialShares(problem.ball);
  return mixed.map((eight, i) => ({
    shares: { ...reactionShares(outcomes.slice(i * 8, (i + 1) * 8), targets), ...drilled(eight) },
    causes: made[i],
  }));
}

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
