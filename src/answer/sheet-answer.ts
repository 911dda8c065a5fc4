import type { OunceConvention } from '../ball/drill/static-weights.js';
import { drillingAssumptions, shotAssumptions, worldAssumptions } from '../explain/assumptions.js';
import { cautionsFor } from '../explain/cautions.js';
import { ballProblem } from '../prepare/ball-problem.js';
import { type Budget, USUAL_BUDGET } from '../prepare/budget.js';
import type { CoreFitter } from '../prepare/fit-cores.js';
import { undrilledAnswer } from '../prepare/undrilled.js';
import type { SheetAnswer } from '../records/answers/sheet-answer.js';
import { ballRecord } from '../records/schemas/ball.js';
import type { Lane } from '../records/schemas/lane.js';
import { loadRuleSet, loadRuleSets } from '../records/shared/rules.js';
import { loadPractice } from '../records/shared/shared-data.js';
import { VERSION } from '../records/shared/version.js';
import { objections, rejectByMarks } from '../search/candidates/constraints.js';
import type { ShotRecords } from '../simulate/aimed-shot.js';
import type { SettingOptions } from '../simulate/setting.js';
import { drilledFacts } from './parts/drilled-facts.js';
import { faceAnswer } from './parts/face-answer.js';
import { withNearestHole } from './parts/hole-clearances.js';
import { layoutAnswer } from './parts/layout-answer.js';
import { sheetRings } from './parts/sheet-rings.js';
import { tapePlan } from './parts/tape-plan.js';
import { undrilledStatics } from './parts/undrilled-statics.js';

export interface SheetOptions {
  /** YYYY-MM-DD */
  readonly date: string;
  readonly seed: number;
  /** One rule set's id; left out, all of them. */
  readonly ruleSet?: string | undefined;
  readonly ounce: OunceConvention;
  readonly fitter?: CoreFitter | undefined;
  /** How much is tried; the usual budget when left out. */
  readonly budget?: Budget | undefined;
  readonly onProgress?: SettingOptions['onProgress'];
}

/**
 * Everything that stands on a marking sheet: where the marks go and how exactly, what the drilled ball is,
 * whether it is allowed, and, on a lane, where its oil rings come to lie.
 *
 * @throws {Refusal} as `ballProblem` does
 */
export async function sheetAnswer(
  inputs: Omit<ShotRecords, 'lane'> & { readonly lane: Lane | null },
  { date, seed, ruleSet, ounce, fitter, budget = USUAL_BUDGET, onProgress }: SheetOptions,
): Promise<SheetAnswer> {
  const { bowler, ball: record, lane, layout } = inputs;
  const ball = ballProblem(record, bowler, ounce, fitter, budget);
  const rules = loadRuleSet(ruleSet);
  const others = ruleSet === undefined ? loadRuleSets().filter(({ id }) => id !== rules.id) : [];
  const facts = [rules, ...others].map((each) => drilledFacts(ball, each)(layout));
  const [{ drilled, bands, psa }] = facts;
  const practice = loadPractice();
  const rolled =
    lane && (await sheetRings({ bowler, ball: record, lane, layout }, seed, ball, budget, onProgress));
  return {
    schema: 'flarewise/sheet/3',
    version: VERSION,
    date,
    bowler,
    grip: bowler.grip ?? null,
    ball: ballRecord(record),
    layout: layoutAnswer(layout, ball),
    face: faceAnswer(layout, psa, bowler.hand, ball),
    tape: tapePlan(layout, bowler, ball),
    drilled,
    bands,
    undrilled: undrilledAnswer(record, ball),
    undrilledOz: undrilledStatics(layout, ball),
    psa,
    legality: facts.map(({ legality }) => legality),
    rings: rolled?.rings ?? null,
    objections: rolled
      ? withNearestHole(
          objections(layout, rolled.shot.outcome, { ball, rules, practice, line: rolled.shot.line }),
          rolled.shot.rolled.shot,
          ball,
        )
      : [rejectByMarks(layout, ball, practice)].filter((why) => why !== null),
    assumptions: [
      ...drillingAssumptions(record, bowler, ball),
      ...(rolled ? [...shotAssumptions(record, lane), ...worldAssumptions(bowler)] : []),
    ],
    cautions: cautionsFor(ball),
  };
}
