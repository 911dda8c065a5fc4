import type { OunceConvention } from '../ball/static-weights.js';
import type { DrilledAnswer } from '../records/answer.js';
import type { Ball } from '../records/ball.js';
import type { Bowler } from '../records/bowler.js';
import type { LayoutNumbers } from '../records/layout-text.js';
import { loadRuleSet } from '../records/rules.js';
import { VERSION } from '../records/version.js';
import { drillingAssumptions } from './assumptions.js';
import { ballProblem } from './ball-problem.js';
import { cautionsFor } from './cautions.js';
import { drilledFacts } from './drilled-facts.js';
import { faceAnswer } from './face-answer.js';
import type { CoreFitter } from './fit-cores.js';
import { layoutAnswer } from './layout-answer.js';
import { redrilledAnswer } from './redrilled-answer.js';
import { undrilledAnswer } from './undrilled.js';

/** What one layout does to one ball: drilled numbers with bands, statics, marks, legality. */
export function drilledAnswer(
  { bowler, ball: record, layout }: { bowler: Bowler; ball: Ball; layout: LayoutNumbers },
  {
    ruleSet,
    ounce,
    fitter,
  }: { ruleSet?: string | undefined; ounce: OunceConvention; fitter?: CoreFitter | undefined },
): DrilledAnswer {
  const rules = loadRuleSet(ruleSet);
  const ball = ballProblem(record, bowler, ounce, fitter);
  const facts = drilledFacts(ball, rules)(layout);
  return {
    schema: 'flarewise/drilled/1',
    version: VERSION,
    ball: record.name,
    bowler: bowler.name,
    layout: layoutAnswer(layout, ball),
    undrilled: undrilledAnswer(record, ball),
    redrilled: redrilledAnswer(layout, ball),
    drilled: facts.drilled,
    bands: facts.bands,
    psa: facts.psa,
    marks: [...facts.marks],
    face: faceAnswer(layout, facts.psa, bowler.hand, ball),
    legality: facts.legality,
    assumptions: drillingAssumptions(record, bowler, ball),
    cautions: cautionsFor(ball),
  };
}
