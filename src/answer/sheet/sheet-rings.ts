import type { BallProblem } from '../../prepare/ball-problem.js';
import type { Budget } from '../../prepare/budget.js';
import { toLayout } from '../../prepare/to-layout.js';
import type { SheetAnswer } from '../../records/answers/sheet-answer.js';
import { ballUncertainty } from '../../records/schemas/ball.js';
import { bandAtPins } from '../../search/scoring/world-statistics.js';
import { type AimedShot, aimedShot, type ShotRecords } from '../../simulate/aimed-shot.js';
import { localEvaluator } from '../../simulate/evaluator.js';
import { reader } from '../../simulate/readings.js';
import type { SettingOptions } from '../../simulate/setting.js';
import { drawDeviations } from '../../simulate/worlds/deviations.js';
import { asLearned, saysLearned } from '../../simulate/worlds/learned.js';
import { holeClearances } from '../parts/hole-clearances.js';
import { ringsAnswer, ringsInOil } from '../parts/rings-answer.js';

/** The rings one layout lays on the ball, how near they come to each hole, and how far worlds differ in both. */
export async function sheetRings(
  inputs: ShotRecords,
  seed: number,
  ball: BallProblem,
  { worlds: count }: Budget,
  onProgress: SettingOptions['onProgress'],
): Promise<{ readonly rings: NonNullable<SheetAnswer['rings']>; readonly shot: AimedShot }> {
  const { radius } = ball.published;
  const aimed = aimedShot(inputs, ball);
  const { problem, outcome, rolled } = aimed;
  const worlds = drawDeviations({
    seed,
    count,
    bowler: asLearned(inputs.bowler, inputs.learned),
    published: ball.published,
    uncertainty: ballUncertainty(inputs.ball),
    bodyCount: ball.bodies.length,
    known: inputs.learned,
  });
  const layout = toLayout(inputs.layout, radius);
  const trials = worlds.map((_, world) => ({ layout, world, launch: rolled.launch }));
  let done = 0;
  const outcomes = await localEvaluator({ ...problem, worlds }).evaluate(trials, (count) => {
    done += count;
    onProgress?.({ stage: 'worlds', done, total: trials.length });
  });
  return {
    shot: aimed,
    rings: {
      lane: inputs.lane.name,
      ...saysLearned(inputs.learned),
      seed,
      worlds: worlds.length,
      rings: ringsAnswer(rolled.shot, radius),
      ringsInOil: ringsInOil(rolled.shot),
      flareIn: reader('flareIn')(outcome),
      clearances: holeClearances(rolled.shot, ball),
      bands: {
        flareIn: bandAtPins(outcomes, reader('flareIn')),
        ringClearanceIn: bandAtPins(outcomes, reader('ringClearanceIn')),
      },
    },
  };
}
