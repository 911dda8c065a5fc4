import type { LearnedInputs, Taught } from '../../answer/learned-answer.js';
import type { TeachResult, TeachTask } from '../../answer/teach-worker.js';
import type { CoreFitter } from '../../prepare/fit-cores.js';
import type { Bowler } from '../../records/schemas/bowler.js';
import type { Lane } from '../../records/schemas/lane.js';
import type { Learned } from '../../simulate/worlds/learned.js';
import { homeOf } from '../files/home.js';
import { type ProgressLine, withProgress } from '../print/progress.js';
import type { Terminal } from '../terminal/terminal.js';
import { type BowlerLog, bowlerLog, type KeptLogs, keptLogs } from './bowler-log.js';
import { lessonPlace } from './kept-lesson.js';

/** For whom, and where. */
interface Asked {
  readonly bowler: Bowler;
  readonly lane: Lane;
}

/** How to learn. */
interface How {
  readonly seed: number;
  readonly practiceWeight?: number | undefined;
  readonly fitter?: CoreFitter | undefined;
  /** Where its progress is shown; on a line of its own when left out. */
  readonly line?: Pick<ProgressLine, 'show'> | undefined;
  /**
   * Whether a person may still press keys: learning takes a second or more, in which this thread would hear none, and so gets one of its
   * own where there may be several.
   */
  readonly isAhead?: boolean | undefined;
  readonly workers?: number | undefined;
}

/**
 * What the kept log says of a bowler on a lane, for an answer to count in; undefined where there is nothing to learn from, or the person
 * wants it left out. Nights on other lanes count as far as lanes are alike.
 */
export async function taughtFor(
  { bowler, lane }: Asked,
  { unlearned }: { readonly unlearned?: boolean },
  how: How,
  terminal: Terminal,
): Promise<Taught | undefined> {
  const log = unlearned ? undefined : logToLearnFrom(bowler, keptLogs(terminal));
  return log && taughtBy({ bowler, lane, ...log }, how, terminal);
}

/** What a log teaches, as it was kept, or learned now and kept; undefined where there is no night to learn from. */
export async function taughtBy(
  inputs: LearnedInputs,
  how: How,
  terminal: Terminal,
): Promise<Taught | undefined> {
  const { seed, practiceWeight, fitter, line, isAhead = false, workers = 1 } = how;
  const options = { seed, practiceWeight, budget: terminal.budget };
  const place = lessonPlace(homeOf(terminal), inputs, options);
  const kept = place.read();
  if (kept) return kept;
  const learn = async ({ show }: Pick<ProgressLine, 'show'>): Promise<Taught | undefined> => {
    show({ stage: 'logged shots', done: 0, total: 1 });
    const result = isAhead && workers > 1 && (await learnAside({ inputs, options }));
    if (result && result !== 'refused') return result.taught ?? undefined;
    const { teach } = await import('../../answer/learned-answer.js');
    return teach(inputs, { ...options, fitter }) ?? undefined;
  };
  const taught = await (line ? learn(line) : withProgress(terminal, learn));
  if (taught) place.keep(taught);
  return taught;
}

/** What of the logs is a bowler's; undefined where there is nothing to learn from. */
export function logToLearnFrom(
  bowler: Bowler,
  logs: KeptLogs | null,
): Pick<BowlerLog, 'balls' | 'leftOut'> | undefined {
  const log = bowlerLog(bowler, {}, logs);
  return log && log.balls.length > 0 ? { balls: log.balls, leftOut: log.leftOut } : undefined;
}

/** What a thread of its own learns. */
async function learnAside(task: TeachTask): Promise<TeachResult> {
  const { threadPool } = await import('../../threads/thread-pool.js');
  const module = new URL('../../answer/teach-worker.js', import.meta.url);
  const pool = threadPool<TeachTask, TeachResult>(module, 1);
  return pool.run(task).finally(() => pool.close());
}

/** The same, without the line that mentions it. */
export const learnedFor = async (...asked: Parameters<typeof taughtFor>): Promise<Learned | undefined> =>
  (await taughtFor(...asked))?.learned;

/** The same inputs with what the kept log says; as they are where it says nothing. */
export async function withLearned<T extends Asked>(
  inputs: T,
  options: { readonly unlearned?: boolean },
  how: How,
  terminal: Terminal,
): Promise<T & { readonly learned?: Learned }> {
  const learned = await learnedFor(inputs, options, how, terminal);
  return learned ? { ...inputs, learned } : inputs;
}
