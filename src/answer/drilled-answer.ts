import type { OunceConvention } from '../ball/drill/static-weights.js';
import { drillingAssumptions, guessedForDrilling } from '../explain/assumptions.js';
import { cautionsFor } from '../explain/cautions.js';
import { ballProblem } from '../prepare/ball-problem.js';
import type { Budget } from '../prepare/budget.js';
import { undrilledAnswer } from '../prepare/undrilled.js';
import type { DrilledAnswer } from '../records/answers/answer.js';
import type { Ball } from '../records/schemas/ball.js';
import type { Bowler } from '../records/schemas/bowler.js';
import { loadRuleSet } from '../records/shared/rules.js';
import { VERSION } from '../records/shared/version.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import { drilledFacts } from './parts/drilled-facts.js';
import { faceAnswer } from './parts/face-answer.js';
import { layoutAnswer } from './parts/layout-answer.js';
import { redrilledAnswer } from './parts/redrilled-answer.js';

/** What one layout does to one ball: drilled numbers with bands, statics, marks, legality. */
export function drilledAnswer(
  { bowler, ball: record, layout }: { bowler: Bowler; ball: Ball; layout: LayoutNumbers },
  {
    ruleSet,
    ounce,
    budget,
  }: {
    ruleSet?: string | undefined;
    ounce: OunceConvention;
    budget?: Budget | undefined;
  },
): DrilledAnswer {
  const rules = loadRuleSet(ruleSet);
  const ball = ballProblem(record, bowler, ounce, undefined, budget);
  const facts = drilledFacts(ball, rules)(layout);
  return {
    schema: 'flarewise/drilled/2',
    version: VERSION,
    ball: record.name,
    bowler: bowler.name,
    layout: layoutAnswer(layout, ball),
    undrilled: undrilledAnswer(record, ball),
    redrilled: redrilledAnswer(layout, ball),
    drilled: facts.drilled,
    bands: facts.bands,
    psa: facts.psa,
    flareStart: facts.flareStart,
    marks: [...facts.marks],
    face: faceAnswer(layout, facts.psa, bowler.hand, ball),
    legality: facts.legality,
    assumptions: [...guessedForDrilling(bowler, record), ...drillingAssumptions(record, bowler, ball)],
    cautions: cautionsFor(ball),
  };
}
