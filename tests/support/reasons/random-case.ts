import { drilledFacts } from '../../../src/answer/parts/drilled-facts.js';
import { targetAnswer } from '../../../src/answer/parts/simulated-answer.js';
import { explain } from '../../../src/explain/explain.js';
import { type ReasonFacts, reasons } from '../../../src/explain/reasons.js';
import type { CoreFitter } from '../../../src/prepare/fit-cores.js';
import { MIDDLE_LAYOUT } from '../../../src/prepare/middle-layout.js';
import { toLayout } from '../../../src/prepare/to-layout.js';
import { undrilledAnswer } from '../../../src/prepare/undrilled.js';
import type { Reason } from '../../../src/records/answers/statements/reasons.js';
import { demoShelf } from '../../../src/records/read/shelf.js';
import { WISHES } from '../../../src/records/schemas/reaction-numbers.js';
import { formatLayout, type LayoutNumbers } from '../../../src/records/text/layout-text.js';
import { UNITS } from '../../../src/report/text/display-units.js';
import { say } from '../../../src/report/wording/say.js';
import { gridCandidates, layoutOf } from '../../../src/search/candidates/candidates.js';
import { score } from '../../../src/search/scoring/score.js';
import { type Target, targetsOf } from '../../../src/search/scoring/target.js';
import { reactionAnswer } from '../../../src/simulate/reaction-answer.js';
import type { RecommendInputs, Setting } from '../../../src/simulate/setting.js';
import { withSetting } from '../../../src/simulate/setting.js';
import { seeded } from '../bodies.js';
import { SMALL_BUDGET } from '../small-budget.js';

/** A layout of some ball for somebody on some lane, and why it does what it does. */
export interface ReasonCase {
  readonly setting: Setting;
  readonly targets: readonly Target[];
  readonly layout: LayoutNumbers;
  readonly facts: ReasonFacts;
  readonly said: readonly { readonly reason: Reason; readonly sentence: string }[];
}

/** Layouts from which what is attainable is read, and one is taken. */
const LAYOUTS = 12;

/** Prepares to make random cases, the same ones every run; the cores of a ball are fitted once. */
export function randomCases(fitEnsemble: CoreFitter) {
  const shelf = demoShelf();
  const balls = shelf.balls.filter(({ id }) => !id.startsWith('own-'));
  const ensembles = new Map<string, ReturnType<CoreFitter>>();
  const fitter: CoreFitter = (published, count) => {
    const key = JSON.stringify([published, count]);
    const known = ensembles.get(key) ?? fitEnsemble(published, count);
    ensembles.set(key, known);
    return known;
  };

  return async (seed: number, use: (made: ReasonCase) => void): Promise<void> => {
    const random = seeded(1000 + 7919 * seed);
    for (let i = 0; i < 5; i++) random(); // neighbouring seeds begin alike
    const one = <T>(of: readonly T[]): T => of[Math.floor(random() * of.length)]!;
    const inputs = randomInputs(shelf, balls, random);
    const options = { seed: 1, workers: 1, pinSide: 'both' as const, budget: SMALL_BUDGET, fitter };
    await withSetting(inputs, options, async (setting) => {
      const { ball, evaluator, practice, sides } = setting;
      const { radius } = ball.published;
      const grid = gridCandidates(practice, radius, { arcIn: 0.25, angleDeg: 5 }, sides);
      const layouts = Array.from({ length: LAYOUTS }, () => layoutOf(one(grid), practice, radius)!);
      const rolled = await evaluator.evaluate(
        [MIDDLE_LAYOUT, ...layouts].map((each) => ({ layout: toLayout(each, radius), world: 0 })),
      );
      const [middle, ...outcomes] = rolled;
      const targets = targetsOf(
        inputs.want,
        rolled.filter(({ shot }) => shot === 'pins'),
      );
      const [layout, next] = layouts as [LayoutNumbers, LayoutNumbers];
      const [outcome, after] = outcomes;
      if ([middle, outcome, after].some((each) => each!.shot !== 'pins')) return;
      const [explained] = await explain([layout], MIDDLE_LAYOUT, targets, setting);
      const factsOf = drilledFacts(ball, setting.rules);
      const { drilled, flareStart } = factsOf(layout);
      const { drilled: middleDrilled, flareStart: middleStart } = factsOf(MIDDLE_LAYOUT);
      const facts: ReasonFacts = {
        families: ball.families,
        hasMark: ball.marker !== null,
        undrilled: undrilledAnswer(inputs.ball, ball),
        drilled,
        reaction: reactionAnswer(outcome!),
        flareStart,
        middle: { drilled: middleDrilled, reaction: reactionAnswer(middle!), flareStart: middleStart },
        ...explained!,
        targets: targets.map(targetAnswer),
        pinToPapIn: layout.pinToPapIn,
        next: { text: formatLayout(next), score: score(after!, targets), reaction: reactionAnswer(after!) },
        score: score(outcome!, targets),
      };
      const said = reasons(facts).map((reason) => ({ reason, sentence: say(reason, UNITS.trade) }));
      use({ setting, targets, layout, facts, said });
    });
  };
}

/** Somebody much like one of the demo's bowlers with one of its balls, finished anyhow, on one of its lanes. */
function randomInputs(
  { bowlers, lanes }: ReturnType<typeof demoShelf>,
  balls: ReturnType<typeof demoShelf>['balls'],
  random: () => number,
): RecommendInputs {
  const one = <T>(of: readonly T[]): T => of[Math.floor(random() * of.length)]!;
  const about = (value: number, by: number): number => value + by * (2 * random() - 1);
  const { record: bowler } = one(bowlers);
  const { record: ball } = one(balls);
  const { record: lane } = one(lanes);
  return {
    bowler: {
      ...bowler,
      speedMph: about(bowler.speedMph, 1),
      revRateRpm: about(bowler.revRateRpm, 30),
      axisTiltDeg: Math.max(0, about(bowler.axisTiltDeg, 4)),
      axisRotationDeg: about(bowler.axisRotationDeg, 8),
      pap: { overIn: about(bowler.pap.overIn, 0.4), upIn: about(bowler.pap.upIn, 0.3) },
    },
    ball: { ...ball, surfaceGrit: one([500, 1000, 2000, 2000, 3000, 4000]) },
    lane,
    want: Object.fromEntries(
      WISHES.filter(() => random() < 0.6).map((wish) => [wish, 1 + Math.floor(5 * random())]),
    ),
  };
}
