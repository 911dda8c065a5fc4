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
  { ruleSet, ounce }: { ruleSet?: string; ounce: OunceConvention },
): DrilledAnswer {
  const rules = loadRuleSet(ruleSet);
  const ball = ballProblem(record, bowler, ounce);
  const facts = drilledFacts(layout, ball, rules);
  return {
    schema: 'flarewise/drilled/1',
    version: VERSION,
    ball: record.name,
    bowler: bowler.name,
    layout: layoutAnswer(layout, ball),
    undrilled: {
      massLb: record.weightLb,
      rgIn: record.rgIn,
      differentialIn: record.differentialIn,
      intermediateDifferentialIn: record.intermediateDifferentialIn,
    },
    drilled: facts.drilled,
    bands: facts.bands,
    psa: facts.psa,
    marks: [...facts.marks],
    legality: facts.legality,
    assumptions: drillingAssumptions(record, bowler, ounce),
    cautions: loadCautions(),
  };
}
