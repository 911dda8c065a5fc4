import { formatOn } from '../answer/parts/layout-answer.js';
import { nothingAllowed } from '../answer/recommend.js';
import { otherLevers } from '../explain/other-levers.js';
import { xToBoard } from '../motion/lane/boards.js';
import type { Budget } from '../prepare/budget.js';
import { MIDDLE_LAYOUT } from '../prepare/middle-layout.js';
import type { LeverEffect } from '../records/answers/answer.js';
import type { CoachPair } from '../records/answers/coach-answer.js';
import type { Ball } from '../records/schemas/ball.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import { orderRules } from '../search/order-rules.js';
import { rankInWorlds } from '../search/rank.js';
import { score } from '../search/scoring/score.js';
import { shareAbove } from '../search/scoring/world-statistics.js';
import { search } from '../search/search.js';
import { reactionAnswer } from '../simulate/reaction-answer.js';
import { type RecommendInputs, withSetting } from '../simulate/setting.js';
import { shotScatter } from '../simulate/shot-scatter.js';
import type { Outcome } from '../simulate/simulator.js';
import type { PairsShare } from './pairs-share.js';

export interface CoachOptions extends Partial<PairsShare> {
  readonly seed: number;
  readonly ruleSet?: string | undefined;
  /** The chance that a belief of practice holds. */
  readonly practiceWeight?: number | undefined;
  readonly budget?: Budget | undefined;
}

/** A gain smaller than this many points of score is none. */
const NOTABLE_GAIN = 3;

/**
 * The best layout of one ball for one bowler on one lane, and whether layout, surface or another ball moves the
 * reaction most toward the want.
 *
 * Gains are counted from the usual middle layout, in the nominal world, against one set of targets: those that
 * layouts of this ball can reach.
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
    const voices = await search(inputs.want, setting, { alone: false });
    const result = voices.weighed;
    if (result.found.length === 0) throw nothingAllowed(result);
    const scatter = shotScatter(setting.problem, inputs.bowler, options.seed);
    const order = orderRules(inputs.want, scatter, voices, setting);
    const { ranked, middle } = await rankInWorlds(result, 1, setting, order);
    const [best] = ranked;
    const rolled = (layout: LayoutNumbers, outcome: Outcome) => ({
      layout: formatOn(setting.ball, layout),
      score: score(outcome, result.targets),
      reaction: reactionAnswer(outcome),
    });
    const usual = rolled(MIDDLE_LAYOUT, middle.nominal);
    const found = rolled(best.layout, best.nominal);
    const laydownBoard = xToBoard(middle.nominal.launch.x);
    const levers = otherLevers(inputs, setting.ball, MIDDLE_LAYOUT, laydownBoard, result.targets, {
      ...options,
      others,
      budget: setting.budget,
    });
    return {
      schema: 'flarewise/coach-pair/2',
      bowler: inputs.bowler.name,
      ball: inputs.ball.name,
      lane: inputs.lane.name,
      want: inputs.want,
      best: {
        ...found,
        beatsMiddle: shareAbove(best.worlds, middle.worlds),
        meanScore: best.worlds.meanScore,
      },
      middle: usual,
      levers,
      ...advise(found, usual, levers),
    };
  });

/** Which of layout, surface and another ball brings most, and by how much. */
function advise(
  best: { readonly layout: string; readonly score: number },
  usual: { readonly score: number },
  levers: readonly LeverEffect[],
): Pick<CoachPair, 'advice' | 'says'> {
  const most = (kind: LeverEffect['kind']): LeverEffect | undefined =>
    levers.filter((lever) => lever.kind === kind).sort((a, b) => b.score - a.score)[0];
  const ways = [
    { advice: 'layout' as const, way: { layout: best.layout, gain: best.score - usual.score } },
    ...[most('surface'), most('ball')].flatMap((lever) =>
      lever
        ? [
            {
              advice: lever.kind === 'ball' ? ('ball' as const) : ('surface' as const),
              way: { lever: lever.change, gain: lever.score - usual.score },
            },
          ]
        : [],
    ),
  ].sort((a, b) => b.way.gain - a.way.gain);
  const params = { ways: ways.map(({ way }) => way) };
  return ways[0].way.gain < NOTABLE_GAIN
    ? { advice: 'none', says: { code: 'nothing-helps-much', params } }
    : { advice: ways[0].advice, says: { code: 'something-helps', params } };
}
