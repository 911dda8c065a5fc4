import { setImmediate as nextTurn } from 'node:timers/promises';
import type { Layout } from '../layout/layout.js';
import type { Launch } from '../motion/shot/release.js';
import type { ShotProblem } from './shot-problem.js';
import { type Outcome, type Simulator, simulator } from './simulator.js';
import type { AlteredBall } from './unreal/altered-ball.js';
import type { MixedBall } from './unreal/mixed-ball.js';
import type { Deviations } from './worlds/deviations.js';

/** A layout to be tried in one of the problem's worlds. */
export interface Trial {
  readonly layout: Layout;
  /** Index into the problem's worlds, followed by its `luck`. */
  readonly world: number;
  /** The line played; the layout's own when left out. */
  readonly launch?: Launch;
  /** A line near the layout's own, which makes that quicker to find. */
  readonly near?: Launch;
}

/** A virtual ball, to be tried in the nominal world on its own line. */
export interface MixedTrial {
  readonly mixed: MixedBall;
  /** A line near its own, which makes that quicker to find. */
  readonly near?: Launch;
}

/** Another virtual ball, to be tried in one of the problem's worlds. */
export interface AlteredTrial {
  readonly altered: AlteredBall;
  /** As in `Trial`. */
  readonly world: number;
  readonly launch: Launch;
}

export type AnyTrial = Trial | MixedTrial | AlteredTrial;

export const deviationsOf = ({ worlds, luck }: ShotProblem, { world }: Pick<Trial, 'world'>): Deviations =>
  world < worlds.length ? worlds[world] : luck[world - worlds.length];

/** The outcome of a trial. @param engine  of the same problem */
export function outcomeOf(trial: AnyTrial, problem: ShotProblem, engine: Simulator): Outcome {
  if ('mixed' in trial) return engine.mixed(trial.mixed, trial.near);
  const deviations = deviationsOf(problem, trial);
  return 'altered' in trial
    ? engine.altered(trial.altered, deviations, trial.launch)
    : engine.outcome(trial.layout, deviations, trial.launch, trial.near);
}

/**
 * Finds what layouts do, by the physics engine in this thread or in workers.
 */
export interface Evaluator {
  /** Outcomes in the order of the trials. */
  evaluate(trials: readonly AnyTrial[], onDone?: (count: number) => void): Promise<readonly Outcome[]>;
}

/** Trials rolled between two turns of the event loop. */
const CHUNK = 24;

/** The physics engine in this thread. */
export function localEvaluator(problem: ShotProblem): Evaluator {
  const engine = simulator(problem);
  return {
    async evaluate(trials, onDone) {
      const outcomes: Outcome[] = [];
      for (const trial of trials) {
        outcomes.push(outcomeOf(trial, problem, engine));
        if (outcomes.length % CHUNK === 0) {
          onDone?.(CHUNK);
          await nextTurn(); // lets keys, ctrl-C and the progress bar through
        }
      }
      onDone?.(outcomes.length % CHUNK);
      return outcomes;
    },
  };
}
