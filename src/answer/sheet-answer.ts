import { holeDepths } from '../ball/drill/hole-depths.js';
import type { OunceConvention } from '../ball/drill/static-weights.js';
import { SIXTEENTH } from '../base/tape-reading.js';
import { INCH, to } from '../base/units.js';
import { drillingAssumptions } from '../explain/assumptions.js';
import { cautionsFor } from '../explain/cautions.js';
import { holeName } from '../layout/hole.js';
import { type BallProblem, ballProblem } from '../prepare/ball-problem.js';
import { type Budget, USUAL_BUDGET } from '../prepare/budget.js';
import type { CoreFitter } from '../prepare/fit-cores.js';
import { undrilledAnswer } from '../prepare/undrilled.js';
import type { SheetAnswer } from '../records/answers/sheet-answer.js';
import { type Ball, ballRecord, hasOwnCore } from '../records/schemas/ball.js';
import type { Lane } from '../records/schemas/lane.js';
import { loadRuleSet, loadRuleSets } from '../records/shared/rules.js';
import { loadPractice } from '../records/shared/shared-data.js';
import { VERSION } from '../records/shared/version.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import { MARK_NAMES } from '../records/text/written-layout.js';
import { objections, rejectByMarks } from '../search/candidates/constraints.js';
import type { ShotRecords } from '../simulate/aimed-shot.js';
import type { SettingOptions } from '../simulate/setting.js';
import { drilledFacts } from './parts/drilled-facts.js';
import { faceAnswer } from './parts/face-answer.js';
import { withNearestHole } from './parts/hole-clearances.js';
import { layoutAnswer } from './parts/layout-answer.js';
import { barring } from './parts/legality.js';
import { placedOn } from './parts/mark-answer.js';
import { undrilledStatics } from './parts/undrilled-statics.js';
import { gripMarks } from './sheet/grip-marks.js';
import { markingPlan } from './sheet/marking-plan.js';
import { sheetRings } from './sheet/sheet-rings.js';

interface SheetOptions {
  /** YYYY-MM-DD */
  readonly date: string;
  readonly seed: number;
  /** One rule set's id; left out, all of them. */
  readonly ruleSet?: string | undefined;
  readonly ounce: OunceConvention;
  /** Smallest division to which the tape is read, in; a sixteenth when left out. */
  readonly tapeStepIn?: number | undefined;
  /** The layout as it was typed, for the head. */
  readonly typed?: string | null | undefined;
  /** Which of bowler, ball and lane are demo records. */
  readonly invented?: readonly string[] | undefined;
  readonly fitter?: CoreFitter | undefined;
  /** How much is tried; the usual budget when left out. */
  readonly budget?: Budget | undefined;
  readonly onProgress?: SettingOptions['onProgress'];
}

/**
 * Everything on a work sheet: where the marks go and how exactly, the numbers of the drilled ball,
 * whether it is legal, and, on a lane, where its oil rings lie.
 *
 * @throws {Refusal} as `ballProblem` does
 */
export async function sheetAnswer(
  inputs: Omit<ShotRecords, 'lane'> & { readonly lane: Lane | null },
  {
    date,
    seed,
    ruleSet,
    ounce,
    tapeStepIn = SIXTEENTH,
    typed = null,
    invented = [],
    fitter,
    budget = USUAL_BUDGET,
    onProgress,
  }: SheetOptions,
): Promise<SheetAnswer> {
  const { bowler, ball: record, lane, layout, learned } = inputs;
  const ball = ballProblem(record, bowler, ounce, fitter, budget);
  const rules = loadRuleSet(ruleSet);
  const others = ruleSet === undefined ? loadRuleSets().filter(({ id }) => id !== rules.id) : [];
  const facts = [rules, ...others].map((each) => drilledFacts(ball, each)(layout));
  const [{ drilled, bands, psa }] = facts;
  const practice = loadPractice();
  const rolled =
    lane &&
    (await sheetRings({ bowler, ball: record, lane, layout, learned }, seed, ball, budget, onProgress));
  const against = rolled
    ? withNearestHole(
        objections(layout, rolled.shot.outcome, { ball, rules, practice, line: rolled.shot.line }),
        rolled.shot.rolled.shot,
        ball,
      )
    : [rejectByMarks(layout, ball, practice)].filter((why) => why !== null);
  const barred = facts[0].legality.findings.filter(barring);
  return {
    schema: 'flarewise/sheet/4',
    version: VERSION,
    date,
    bowler,
    grip: bowler.grip ?? null,
    ball: ballRecord(record),
    layout: layoutAnswer(layout, ball),
    typed,
    invented: [...invented],
    // the rule set's finding says more than that a limit is exceeded
    stop: [
      ...barred,
      ...against.filter(({ code }) => barred.length === 0 || code !== 'static-weight-over-limit'),
    ],
    check: checkOf(record, ball),
    face: faceAnswer(layout, psa, bowler.hand, ball),
    marking: markingPlan(layout, bowler, ball, tapeStepIn),
    gripMarks: bowler.grip ? gripMarks(bowler.grip, ball) : null,
    depths: hasOwnCore(record) && bowler.grip ? depthsOf(layout, ball) : [],
    drilled,
    bands,
    undrilled: undrilledAnswer(record, ball),
    undrilledOz: undrilledStatics(layout, ball),
    psa,
    legality: facts.map(({ legality }) => legality),
    limits: [rules, ...others].map(({ title, staticWeight: { mostOz, aboveLb } }) => ({
      ruleSet: title,
      mostOz,
      aboveLb,
      applies: record.weightLb > aboveLb,
    })),
    rings: rolled?.rings ?? null,
    // how shots and lanes differ is noise at the drill
    assumptions: drillingAssumptions(record, bowler, ball),
    cautions: cautionsFor(ball),
  };
}

/** Where holes leave the cover and meet the ball's own core. */
const depthsOf = (layout: LayoutNumbers, ball: BallProblem): SheetAnswer['depths'] =>
  holeDepths(ball.bodies[0], ball.holes, placedOn(ball, layout).R_BC).map(
    ({ hole, cover, coverBelow, core }) => ({
      hole: holeName(hole),
      coverIn: cover && to(cover, INCH),
      coverBelowIn: coverBelow && to(coverBelow, INCH),
      coreIn: core && to(core, INCH),
    }),
  );

/** What to measure on the ball before marking it, with the values that the sheet assumes. */
function checkOf(record: Ball, ball: BallProblem): SheetAnswer['check'] {
  const { radius } = ball.published;
  const isMassBias = ball.marker !== null && ball.marker !== MARK_NAMES.cg;
  return {
    pinToCgIn: record.pinToCgIn ?? null,
    pinToMassBiasIn: isMassBias ? to(ball.pinToMarker * radius, INCH) : null,
    circumferenceIn: to(2 * Math.PI * radius, INCH),
    topWeightOz: record.topWeightOz ?? null,
    weightLb: record.weightLb,
  };
}
