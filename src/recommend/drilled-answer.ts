import type { OunceConvention } from '../ball/static-weights.js';
import type { DrilledAnswer } from '../records/answer.js';
import type { Ball } from '../records/ball.js';
import type { Bowler } from '../records/bowler.js';
import type { LayoutNumbers } from '../records/layout-text.js';
import { loadRuleSet } from '../records/rules.js';
import { loadCautions } from '../records/shared-data.js';
import { VERSION } from '../records/version.js';
import { drillingAssumptions } from './assumptions.js';
import { ballProblem } from './ball-problem.js';
import { drilledFacts } from './drilled-facts.js';
import { layoutAnswer } from './layout-answer.js';

/** What one layout does to one ball: drilled numbers with bands, statics, marks, legality. */
export function drilledAnswer(
  { bowler, ball: record, layout }: { bowler: Bowler; ball: Ball; layout: LayoutNumbers },
  { ruleSet, ounce }: { ruleSet?: string | undefined; ounce: OunceConvention },
): DrilledAnswer {
  const rules = loadRuleSet(ruleSet);
  const ball = ballProblem(record, bowler, ounce);
  const facts = drilledFacts(ball, rules)(layout);
  return {
    schema: 'flarewise/drilled/1',
    version: VERSION,
    ball: record.name,
    bowler: bowler.name,
    layout: layoutAnswer(layout, ball),
    undrilled: undrilledAnswer(record),
    drilled: facts.drilled,
    bands: facts.bands,
    psa: facts.psa,
    marks: [...facts.marks],
    legality: facts.legality,
    assumptions: drillingAssumptions(record, bowler, ounce),
    cautions: loadCautions(),
  };
}

/** A ball's published numbers, as they stand beside the drilled ones. */
export const undrilledAnswer = (ball: Ball): DrilledAnswer['undrilled'] => ({
  massLb: ball.weightLb,
  rgIn: ball.rgIn,
  differentialIn: ball.differentialIn,
  intermediateDifferentialIn: ball.intermediateDifferentialIn,
});
