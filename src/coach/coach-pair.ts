import { standardDeviation } from 'simple-statistics';
import { differences } from '../answer/parts/difference-answer.js';
import { formatOn } from '../answer/parts/layout-answer.js';
import { laydownBoardOf } from '../answer/parts/line-answer.js';
import { targetAnswer } from '../answer/parts/simulated-answer.js';
import { nothingAllowed } from '../answer/recommend.js';
import { fromKeys } from '../base/from-keys.js';
import { USUAL_TOP } from '../base/search-limits.js';
import { otherLevers } from '../explain/other-levers.js';
import type { Budget } from '../prepare/budget.js';
import { MIDDLE_LAYOUT } from '../prepare/middle-layout.js';
import type { CoachPair } from '../records/answers/coach-answer.js';
import { type Ball, ballUncertainty } from '../records/schemas/ball.js';
import { type BallUncertainty, UNCERTAIN_BALL_KEYS } from '../records/schemas/ball-uncertainty.js';
import type { Bowler } from '../records/schemas/bowler.js';
import { COMPARED_IDS, WISHED_IDS } from '../records/schemas/reaction-numbers.js';
import { RELEASE_KEYS } from '../records/shared/release-guesses.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import { keyOf } from '../search/candidates/candidates.js';
import { orderRules } from '../search/order-rules.js';
import { rankInWorlds } from '../search/rank.js';
import { score } from '../search/scoring/score.js';
import { pairedDeviations, shareAbove, valuesAtPins } from '../search/scoring/world-statistics.js';
import { search } from '../search/search.js';
import { reactionAnswer } from '../simulate/reaction-answer.js';
import { reader } from '../simulate/readings.js';
import { type RecommendInputs, withSetting } from '../simulate/setting.js';
import { shotScatter } from '../simulate/shot-scatter.js';
import type { Outcome } from '../simulate/simulator.js';
import { saysLearned } from '../simulate/worlds/learned.js';
import type { PairsShare } from './pairs-share.js';
import { whatMoves } from './what-moves.js';

/** How all pairs of a run are worked out; a worker receives it once. */
export interface CoachRun {
  readonly seed: number;
  readonly ruleSet?: string | undefined;
  /** The chance that a belief of practice holds. */
  readonly practiceWeight?: number | undefined;
  readonly budget?: Budget | undefined;
}

/** The same, and what pairs that are worked out one after the other share. */
export type CoachOptions = CoachRun & Partial<PairsShare>;

/**
 * The best layout of one ball for one bowler on one lane, and whether the layout, the cover, the line or another ball moves the
 * reaction most.
 *
 * The best layout is the one that `recommend` lists first. It is held against the usual middle one, all else against the best
 * layout; each by what it does to the wished numbers beside the scatter of the bowler's shots.
 *
 * @param others  the bowler's other balls
 * @throws {Refusal} as `recommend` does
 */
export const coachPair = (
  inputs: RecommendInputs,
  others: readonly Ball[],
  options: CoachOptions,
): Promise<CoachPair> =>
  withSetting(inputs, { ...options, workers: 1, pinSide: 'above' }, async (setting) => {
    const voices = await search(inputs.want, setting);
    const result = voices.weighed;
    if (result.found.length === 0) throw nothingAllowed(result);
    const scatter = shotScatter(setting.problem, inputs.bowler, options.seed);
    const order = orderRules(inputs.want, scatter, voices, setting);
    const { ranked, middle } = await rankInWorlds(result, USUAL_TOP, setting, order);
    const [best] = ranked;
    const rolled = (layout: LayoutNumbers, outcome: Outcome) => ({
      layout: formatOn(setting.ball, layout),
      score: score(outcome, result.targets),
      reaction: reactionAnswer(outcome),
    });
    const usual = rolled(MIDDLE_LAYOUT, middle.nominal);
    const found = rolled(best.layout, best.nominal);
    const overMiddle =
      keyOf(best.layout) === keyOf(MIDDLE_LAYOUT)
        ? null
        : differences(voices, order.ids, scatter)(best.layout, MIDDLE_LAYOUT);
    const laydownBoard = laydownBoardOf(best.nominal.launch);
    const levers = otherLevers(inputs, setting, best.layout, laydownBoard, result.targets, {
      ...options,
      others,
    });
    return {
      schema: 'flarewise/coach-pair/4',
      bowler: inputs.bowler.name,
      unsure: unsureBy({ ...inputs.bowler.uncertainty, ...ballUncertainty(inputs.ball) }),
      ball: inputs.ball.name,
      lane: inputs.lane.name,
      want: inputs.want,
      ...saysLearned(inputs.learned),
      best: {
        ...found,
        beatsMiddle: shareAbove(best.worlds, middle.worlds),
        meanScore: best.worlds.meanScore,
        deviations: fromKeys(COMPARED_IDS, (id) =>
          standardDeviation(valuesAtPins(best.worlds.outcomes, reader(id))),
        ),
      },
      middle: usual,
      targets: result.targets.map(targetAnswer),
      overMiddle,
      overMiddleDeviations: overMiddle && pairedDeviations(WISHED_IDS, best.worlds, middle.worlds),
      scatter,
      levers,
      ...whatMoves({ best: found, usual, overMiddle, levers }, scatter, order.ids),
    };
  });

/** How far off the numbers are that are not known exactly. */
const unsureBy = (uncertainty: NonNullable<Bowler['uncertainty']> & BallUncertainty): CoachPair['unsure'] =>
  Object.fromEntries(
    [...RELEASE_KEYS, ...UNCERTAIN_BALL_KEYS].flatMap((key) =>
      (uncertainty[key] ?? 0) > 0 ? [[key, uncertainty[key]]] : [],
    ),
  );
