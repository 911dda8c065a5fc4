import { setImmediate as nextTurn } from 'node:timers/promises';
import { type BallProblem, ballProblem } from '../prepare/ball-problem.js';
import { type Budget, USUAL_BUDGET } from '../prepare/budget.js';
import type { CoreFitter } from '../prepare/fit-cores.js';
import { MIDDLE_LAYOUT } from '../prepare/middle-layout.js';
import { toLayout } from '../prepare/to-layout.js';
import type { Stage } from '../records/answers/stage.js';
import { type Ball, ballUncertainty } from '../records/schemas/ball.js';
import type { Bowler } from '../records/schemas/bowler.js';
import type { Lane } from '../records/schemas/lane.js';
import type { PinSide } from '../records/schemas/pin-side.js';
import type { Want } from '../records/schemas/want.js';
import { type Belief, USUAL_PRACTICE_WEIGHT } from '../records/shared/beliefs.js';
import { loadRuleSet, type RuleSet } from '../records/shared/rules.js';
import { loadPractice, type Practice } from '../records/shared/shared-data.js';
import { type SharedRegression, shareRegression } from '../regression/open-regression.js';
import type { Evaluator } from './evaluator.js';
import { findLineInTurns, type Line } from './line.js';
import { withNearLines } from './near-lines.js';
import { type ShotProblem, unaimedProblem } from './shot-problem.js';
import { type ShotThreads, shotThreads } from './shot-threads.js';
import { type StartedThread, withStartedThreads } from './started-threads.js';
import { beliefChance } from './worlds/belief-chance.js';
import { drawDeviations, luckOf } from './worlds/deviations.js';
import { asLearned, type Learned } from './worlds/learned.js';

/** The records and the wish that a recommendation depends on. */
export interface RecommendInputs {
  readonly bowler: Bowler;
  readonly ball: Ball;
  readonly lane: Lane;
  readonly want: Want;
  /** What logged shots taught, if anything. */
  readonly learned?: Learned | undefined;
}

/** How a recommendation is computed. */
export interface SettingOptions {
  /** The same seed gives the same answer, byte for byte. */
  readonly seed: number;
  /** Number of threads that search, including this one. The answer does not depend on it. */
  readonly workers: number;
  /** Other threads that are already started; their starter stops them. */
  readonly threads?: readonly StartedThread[] | undefined;
  readonly pinSide: PinSide | 'both';
  readonly ruleSet?: string | undefined;
  /** Folder of the fitted regression: the package's own when left out, null to have physics alone. */
  readonly models?: string | null | undefined;
  /** A fitted regression shared with other settings, which its owner closes; if left out, one is opened for this setting alone. */
  readonly regression?: SharedRegression | undefined;
  /** Fits cores to published numbers. Whether it remembers them changes no answer. */
  readonly fitter?: CoreFitter | undefined;
  /** Weight of practice beside physics: the chance, 0 to 1, that a belief holds; `USUAL_PRACTICE_WEIGHT` when left out. */
  readonly practiceWeight?: number | undefined;
  /** Makes balls ready to drill. Whether it remembers them changes no answer. */
  readonly readyBall?: typeof ballProblem | undefined;
  /** Number of cores, worlds, layouts and shots to try; the usual budget when left out. */
  readonly budget?: Budget | undefined;
  readonly onProgress?: (progress: { stage: Stage; done: number; total: number }) => void;
}

/** One bowler, ball and lane made ready: cores fitted, line found, worlds drawn, engine started. */
export interface Setting {
  readonly ball: BallProblem;
  readonly problem: ShotProblem;
  /** The line of the usual middle layout. */
  readonly line: Line;
  readonly evaluator: Evaluator;
  readonly rules: RuleSet;
  readonly practice: Practice;
  readonly seed: number;
  readonly practiceWeight: number;
  /** The chance that a belief of practice holds: the weight of practice, updated by logged shots. */
  readonly chanceOf: (belief: Belief) => number;
  readonly sides: readonly PinSide[];
  /** The fitted regression, opened when it is first asked for. */
  readonly regression: Pick<SharedRegression, 'open' | 'glance'>;
  readonly budget: Budget;
  /** Reports how far a stage has come. */
  readonly progress: (stage: Stage) => (done: number, total: number) => void;
}

/** Progress of what goes on beside the search that a person waits for. */
export const SILENT: Setting['progress'] = () => () => undefined;

/** What remains of a setting once its engine has stopped: enough to answer about shots already rolled. */
export type Grounds = Omit<Setting, 'evaluator' | 'regression'>;

/**
 * Makes a setting, passes it to `use`, and stops its engine in any case.
 *
 * @throws {Refusal} when the ball's numbers fit no core or the grip cannot be placed
 */
export const withSetting = <T>(
  inputs: RecommendInputs,
  options: SettingOptions,
  use: (setting: Setting) => Promise<T>,
): Promise<T> => {
  const make = (threads: readonly StartedThread[]): Promise<T> =>
    withThreads(inputs, options, shotThreads(threads), use);
  return options.threads ? make(options.threads) : withStartedThreads(options.workers - 1, make);
};

async function withThreads<T>(
  { bowler, ball: record, lane, learned }: RecommendInputs,
  options: SettingOptions,
  threads: ShotThreads,
  use: (setting: Setting) => Promise<T>,
): Promise<T> {
  const rules = loadRuleSet(options.ruleSet);
  const regression = options.regression ?? shareRegression(options.models);
  try {
    const {
      budget = USUAL_BUDGET,
      readyBall = ballProblem,
      practiceWeight = USUAL_PRACTICE_WEIGHT,
    } = options;
    const ball = readyBall(record, bowler, 'moment', options.fitter, budget);
    const uncertainty = ballUncertainty(record);
    await nextTurn(); // keys are heard
    const unaimed = unaimedProblem(lane, bowler, record, ball, learned);
    const line = await findLineInTurns(unaimed, toLayout(MIDDLE_LAYOUT, ball.published.radius));
    const worlds = drawDeviations({
      seed: options.seed,
      count: budget.worlds,
      bowler: asLearned(bowler, learned),
      published: ball.published,
      uncertainty,
      bodyCount: ball.bodies.length,
      known: learned,
    });
    const problem: ShotProblem = {
      ...unaimed,
      launch: line.launch,
      worlds: [...unaimed.worlds, ...worlds],
      luck: worlds.map((world) => luckOf(world, uncertainty)),
    };
    return await use({
      ball,
      problem,
      line,
      evaluator: withNearLines(threads.evaluator(problem), problem),
      rules,
      practice: loadPractice(),
      seed: options.seed,
      practiceWeight,
      chanceOf: beliefChance(practiceWeight, learned),
      regression: { glance: regression.glance, open: () => regression.open(threads.fingerprint) },
      budget,
      sides: options.pinSide === 'both' ? ['above', 'below'] : [options.pinSide],
      progress: (stage) => (done, total) => options.onProgress?.({ stage, done, total }),
    });
  } finally {
    if (!options.regression) await regression.close();
  }
}
