import { oncePer } from '../base/once-per.js';
import { ln } from '../math/ln.js';
import { type BallProblem, ballProblem } from '../prepare/ball-problem.js';
import type { CoreFitter } from '../prepare/fit-cores.js';
import { toLayout } from '../prepare/to-layout.js';
import type { LeverEffect } from '../records/answers/answer.js';
import type { Lever } from '../records/answers/statements/changes.js';
import { Refusal } from '../records/refusals/refusal.js';
import { type Ball, USUAL_GRIT } from '../records/schemas/ball.js';
import { MOST_LAYDOWN_BOARD } from '../records/schemas/bowler.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import { score } from '../search/scoring/score.js';
import type { Target } from '../search/scoring/target.js';
import { beliefEffects } from '../search/voices/belief-effects.js';
import { expectedSizes } from '../search/voices/draw-beliefs.js';
import { layoutQuantities } from '../search/voices/layout-quantities.js';
import { believedOutcome } from '../search/voices/weighed-voice.js';
import { findLine } from '../simulate/line.js';
import { reactionAnswer } from '../simulate/reaction-answer.js';
import type { RecommendInputs, Setting } from '../simulate/setting.js';
import { unaimedProblem } from '../simulate/shot-problem.js';
import { simulator } from '../simulate/simulator.js';

/**
 * What else would change the reaction with the same layout: the cover's finish, the line, another ball.
 *
 * Each is one simulated shot in the nominal world, on the line that then brings the ball to the pocket, scored
 * against the same targets as the layouts, with what the beliefs of practice add on average. Changes with which no line reaches the pocket
 * are left out.
 *
 * @param others  the person's other balls
 */
export function otherLevers(
  inputs: RecommendInputs,
  { ball: own, budget, chanceOf }: Pick<Setting, 'ball' | 'budget' | 'chanceOf'>,
  numbers: LayoutNumbers,
  laydownBoard: number,
  targets: readonly Target[],
  {
    others,
    fitter,
    readyBall = ballProblem,
  }: {
    readonly others: readonly Ball[];
    readonly fitter?: CoreFitter | undefined;
    readonly readyBall?: typeof ballProblem | undefined;
  },
): LeverEffect[] {
  const { bowler, ball, lane, learned } = inputs;
  const layout = toLayout(numbers, own.published.radius);
  const grit = ball.surfaceGrit ?? USUAL_GRIT;
  const quantitiesOf = oncePer((ready: BallProblem) =>
    layoutQuantities({ ball: ready, grit }, [numbers])(numbers),
  );
  const sizes = expectedSizes(chanceOf);

  const effect = (
    kind: LeverEffect['kind'],
    change: Lever,
    changed: Partial<RecommendInputs>,
    drillable = own,
  ): LeverEffect[] => {
    const { bowler: who, ball: what } = { ...inputs, ...changed };
    const problem = unaimedProblem(lane, who, what, drillable, learned);
    const line = findLine(problem, layout);
    if (!line.reachesPocket) return [];
    const engine = simulator(problem);
    const byPhysics = engine.read(engine.shot(layout, problem.worlds[0], line.launch));
    const quantities = { ...quantitiesOf(drillable), finishGrit: problem.grit };
    const outcome = believedOutcome(byPhysics, beliefEffects(quantities, quantitiesOf(own)), sizes);
    return [{ kind, change, score: score(outcome, targets), reaction: reactionAnswer(outcome) }];
  };

  const laidDown = { ...bowler, laydownBoard };
  return [
    ...budget.levers.grits
      .filter((each) => Math.abs(ln(each / grit)) > 0.3)
      .flatMap((surfaceGrit) =>
        effect(
          'surface',
          { code: 'finish-at', params: { grit: surfaceGrit, insteadOf: grit } },
          {
            bowler: laidDown,
            ball: { ...ball, surfaceGrit },
          },
        ),
      ),
    ...budget.levers.movesBoards
      .map((boards) => laydownBoard + boards)
      .filter((board) => board >= 1 && board <= MOST_LAYDOWN_BOARD)
      .flatMap((board) =>
        effect(
          'line',
          { code: 'laid-down-on', params: { board, insteadOf: laydownBoard } },
          {
            bowler: { ...bowler, laydownBoard: board },
          },
        ),
      ),
    ...others.flatMap((other) => {
      try {
        const drillable = readyBall(other, bowler, 'moment', fitter, budget);
        return effect(
          'ball',
          { code: 'another-ball', params: { ball: other.name } },
          { bowler: laidDown, ball: other },
          drillable,
        );
      } catch (error) {
        if (error instanceof Refusal) return []; // an impossible ball is refused when it is asked about itself
        throw error;
      }
    }),
  ];
}
