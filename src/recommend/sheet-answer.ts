import type { OunceConvention } from '../ball/static-weights.js';
import { ballRecord } from '../records/ball.js';
import type { Lane } from '../records/lane.js';
import { loadRuleSet, loadRuleSets } from '../records/rules.js';
import { loadPractice } from '../records/shared-data.js';
import type { SheetAnswer } from '../records/sheet-answer.js';
import { VERSION } from '../records/version.js';
import type { ShotInputs } from './aimed-shot.js';
import { drillingAssumptions, shotAssumptions, worldAssumptions } from './assumptions.js';
import { ballProblem } from './ball-problem.js';
import { cautionsFor } from './cautions.js';
import { objections, rejectByMarks } from './constraints.js';
import { drilledFacts } from './drilled-facts.js';
import { faceAnswer } from './face-answer.js';
import type { CoreFitter } from './fit-cores.js';
import { gripOf } from './grip-holes.js';
import { layoutAnswer } from './layout-answer.js';
import type { SettingOptions } from './setting.js';
import { sheetRings } from './sheet-rings.js';
import { tapePlan } from './tape-plan.js';
import { undrilledAnswer } from './undrilled.js';

export interface SheetOptions {
  /** YYYY-MM-DD */
  readonly date: string;
  readonly seed: number;
  /** One rule set's id; left out, all of them. */
  readonly ruleSet?: string | undefined;
  readonly ounce: OunceConvention;
  readonly fitter?: CoreFitter | undefined;
  readonly onProgress?: SettingOptions['onProgress'];
}

/**
 * Everything that stands on a marking sheet: where the marks go and how exactly, what the drilled ball is,
 * whether it is allowed, and, on a lane, where its oil rings come to lie.
 *
 * @throws {InputError} as `ballProblem` does
 */
export async function sheetAnswer(
  inputs: Omit<ShotInputs, 'lane'> & { readonly lane: Lane | null },
  { date, seed, ruleSet, ounce, fitter, onProgress }: SheetOptions,
): Promise<SheetAnswer> {
  const { bowler, ball: record, lane, layout } = inputs;
  const ball = ballProblem(record, bowler, ounce, fitter);
  const rules = loadRuleSet(ruleSet);
  const others = ruleSet === undefined ? loadRuleSets().filter(({ id }) => id !== rules.id) : [];
  const facts = [rules, ...others].map((each) => drilledFacts(ball, each)(layout));
  const [{ drilled, bands, psa }] = facts;
  const practice = loadPractice();
  const rolled = lane && (await sheetRings({ bowler, ball: record, lane, layout }, seed, ball, onProgress));
  return {
    schema: 'flarewise/sheet/1',
    version: VERSION,
    date,
    bowler,
    grip: gripOf(bowler),
    ball: ballRecord(record),
    layout: layoutAnswer(layout, ball),
    face: faceAnswer(layout, psa, bowler.hand, ball),
    tape: tapePlan(layout, bowler, ball),
    drilled,
    bands,
    undrilled: undrilledAnswer(record, ball),
    psa,
    legality: facts.map(({ legality }) => legality),
    rings: rolled?.rings ?? null,
    objections: rolled
      ? objections(layout, rolled.shot.outcome, { ball, rules, practice, line: rolled.shot.line })
      : [rejectByMarks(layout, ball, practice)].filter((why) => why !== null),
    assumptions: [
      ...drillingAssumptions(record, bowler, ball),
      ...(rolled ? [...shotAssumptions(record, lane), ...worldAssumptions(bowler)] : []),
    ],
    cautions: cautionsFor(ball),
  };
}
