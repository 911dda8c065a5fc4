import { fromKeys } from '../base/from-keys.js';
import { allAssumptions } from '../explain/assumptions.js';
import { cautionsFor } from '../explain/cautions.js';
import { explain } from '../explain/explain.js';
import { noLine } from '../explain/no-line.js';
import { otherLevers } from '../explain/other-levers.js';
import { MIDDLE_LAYOUT } from '../prepare/middle-layout.js';
import { toLayout } from '../prepare/to-layout.js';
import type { JudgeAnswer } from '../records/answers/answer.js';
import type { MarkingError } from '../records/answers/statements/changes.js';
import { type Ball, ballRecord } from '../records/schemas/ball.js';
import { WISHED_IDS } from '../records/schemas/reaction-numbers.js';
import { VERSION } from '../records/shared/version.js';
import type { LayoutNumbers } from '../records/text/layout-text.js';
import { keyOf } from '../search/candidates/candidates.js';
import { orderRules } from '../search/order-rules.js';
import type { ScoredCache } from '../search/outcome-cache.js';
import type { SearchResult } from '../search/race.js';
import { rankInWorlds } from '../search/rank.js';
import { score } from '../search/scoring/score.js';
import type { Target } from '../search/scoring/target.js';
import { pairedTwentieths, shareAbove } from '../search/scoring/world-statistics.js';
import { search } from '../search/search.js';
import { type LayoutOutcomes, simulateLayouts } from '../search/simulate-layouts.js';
import { reader } from '../simulate/readings.js';
import { type RecommendInputs, type Setting, type SettingOptions, withSetting } from '../simulate/setting.js';
import { shotScatter } from '../simulate/shot-scatter.js';
import { MARKING_DEG, MARKING_IN } from '../simulate/worlds/drilled-ball.js';
import { saysLearned } from '../simulate/worlds/learned.js';
import { aheadByPhysics, differences } from './parts/difference-answer.js';
import { drilledFacts } from './parts/drilled-facts.js';
import { judgeVerdict } from './parts/judge-verdict.js';
import { regressionAnswer } from './parts/regression-answer.js';
import { answerer, targetAnswer } from './parts/simulated-answer.js';
import { nothingAllowed } from './recommend.js';

/** Errors of marking by hand, in both directions; the answer gives the effect of the worse direction. */
const ERRORS: readonly { error: MarkingError; by: Partial<LayoutNumbers> }[] = [
  { error: { code: 'pin-to-pap-off', params: { byIn: MARKING_IN } }, by: { pinToPapIn: MARKING_IN } },
  {
    error: { code: 'drilling-angle-off', params: { byDeg: MARKING_DEG } },
    by: { drillingAngleDeg: MARKING_DEG },
  },
  { error: { code: 'val-angle-off', params: { byDeg: MARKING_DEG } }, by: { valAngleDeg: MARKING_DEG } },
];

/**
 * A second opinion on one layout: what it does, where it stands among all, what the best one does
 * differently, what marking errors cost, what else would move it, and whether it may be drilled.
 *
 * It searches and ranks as `recommend` does, without the layout to be judged, so that the best layout is the same.
 *
 * @param options  with the number of layouts that `recommend` would list, and the person's other balls
 * @throws {Refusal} as `recommend` does
 */
export const judge = (
  inputs: RecommendInputs & { readonly layout: LayoutNumbers },
  options: SettingOptions & { readonly top: number; readonly otherBalls?: readonly Ball[] },
): Promise<JudgeAnswer> =>
  withSetting(inputs, options, async (setting): Promise<JudgeAnswer> => {
    const { ball, problem, rules, budget, seed } = setting;
    const { layout, learned, ...given } = inputs;
    const voices = await search(inputs.want, setting, { also: [layout] });
    const result = voices.weighed;
    if (result.found.length === 0) throw nothingAllowed(result);
    const scatter = shotScatter(problem, inputs.bowler, seed);
    const order = orderRules(inputs.want, scatter, voices, setting);
    const { ranked, middle } = await rankInWorlds(result, options.top, setting, order);
    const [best] = ranked;
    const own = await rollEverywhere(layout, result.cache, setting);
    const place = await placeOf(own, result);
    // rolled by the other threads while this one puts into words
    const rolling = Promise.all([
      explain([best.layout], layout, result.targets, setting),
      markingErrors(own, result.targets, setting),
    ]);
    const difference = differences(voices, order.ids, scatter);
    const bestOverIt = difference(best.layout, layout);
    const inWords = answerer(result.targets, setting);
    const factsOf = drilledFacts(ball, rules);
    const facts = factsOf(layout);
    const simulated = inWords(own, facts);
    const bestBeatsIt = shareAbove(best.worlds, own.worlds);
    const bestInWords = inWords(best, factsOf(best.layout));
    const [[toBest], marking] = await rolling;
    return {
      schema: 'flarewise/judge/3',
      version: VERSION,
      seed: options.seed,
      inputs: { ...given, ball: ballRecord(given.ball) },
      ...saysLearned(learned),
      verdict: judgeVerdict(
        simulated.objections.length > 0 || !facts.legality.legal,
        bestBeatsIt,
        bestOverIt,
      ),
      noLine: simulated.line.reachesPocket
        ? null
        : noLine(inputs, ball, toLayout(layout, ball.published.radius)),
      targets: result.targets.map(targetAnswer),
      layout: { ...simulated, psa: facts.psa, marks: [...facts.marks], legality: facts.legality },
      place,
      best: bestInWords,
      regression: await regressionAnswer(result, [own, best], ball),
      confidence: {
        bestBeatsIt,
        beatsMiddle: shareAbove(own.worlds, middle.worlds),
        worlds: budget.worlds,
        byPhysics: {
          bestBeatsIt: aheadByPhysics(voices, best.layout, layout),
          beatsMiddle: aheadByPhysics(voices, layout, MIDDLE_LAYOUT),
        },
        bestOverIt,
        paired: pairedTwentieths(WISHED_IDS, best.worlds, own.worlds),
        overMiddle: difference(layout, MIDDLE_LAYOUT),
      },
      scatter,
      shares: toBest.shares,
      causes: toBest.causes,
      marking,
      levers: otherLevers(inputs, setting, layout, simulated.line.laydownBoard, result.targets, {
        others: options.otherBalls ?? [],
        fitter: options.fitter,
      }),
      assumptions: allAssumptions(inputs, ball),
      cautions: cautionsFor(ball),
    };
  });

/** Rolls the layout to be judged in the nominal world and in all others. */
async function rollEverywhere(
  layout: LayoutNumbers,
  cache: ScoredCache,
  setting: Setting,
): Promise<LayoutOutcomes> {
  const marked = toLayout(layout, setting.ball.published.radius);
  const [outcome] = await setting.evaluator.evaluate([{ layout: marked, world: 0 }]);
  const { rows } = await simulateLayouts([{ layout, outcome }], cache, setting);
  return rows[0];
}

/** Place of a layout among all that may be marked, by the regression; without one, among those of the grid, by physics. */
async function placeOf(
  { layout, nominal }: LayoutOutcomes,
  { surveyed, attained, targets }: SearchResult,
): Promise<JudgeAnswer['place']> {
  if ('ranked' in surveyed) {
    await surveyed.look([layout]);
    const others = surveyed.ranked.filter((each) => keyOf(each) !== keyOf(layout));
    const own = surveyed.expected(layout)!;
    const below = others.filter((each) => surveyed.expected(each)! < own).length;
    return { betterThan: below, of: surveyed.ranked.length, by: 'regression' };
  }
  const own = score(nominal, targets);
  const below = attained.filter(({ outcome }) => score(outcome, targets) < own).length;
  return { betterThan: below, of: attained.length, by: 'physics' };
}

/** What each error of marking by hand would change. */
async function markingErrors(
  { layout, nominal }: LayoutOutcomes,
  targets: readonly Target[],
  { ball, evaluator }: Setting,
): Promise<JudgeAnswer['marking']> {
  const { radius } = ball.published;
  const off = (by: Partial<LayoutNumbers>, side: 1 | -1): LayoutNumbers => ({
    drillingAngleDeg: Math.max(0, layout.drillingAngleDeg + side * (by.drillingAngleDeg ?? 0)),
    pinToPapIn: Math.max(0, layout.pinToPapIn + side * (by.pinToPapIn ?? 0)),
    valAngleDeg: Math.max(0, layout.valAngleDeg + side * (by.valAngleDeg ?? 0)),
  });
  const errors = ERRORS.filter(({ by }) => ball.marker !== null || by.drillingAngleDeg === undefined);
  const outcomes = await evaluator.evaluate(
    errors
      .flatMap(({ by }) => [off(by, -1), off(by, 1)])
      .map((each) => ({
        layout: toLayout(each, radius),
        world: 0,
      })),
  );
  return errors.map(({ error }, i) => {
    const [low, high] = outcomes.slice(2 * i, 2 * i + 2);
    const worse = score(low, targets) < score(high, targets) ? low : high;
    return {
      error,
      score: score(worse, targets) - score(nominal, targets),
      ...fromKeys(['flareIn', 'totalHookBoards'], (id) => reader(id)(worse) - reader(id)(nominal)),
    };
  });
}
