import type { CoreFitter } from '../../prepare/fit-cores.js';
import type { RecommendInputs } from '../../simulate/setting.js';
import type { StartedThread } from '../../simulate/started-threads.js';
import { otherKeptBalls } from '../files/whole-shelf.js';
import type { Search } from '../flags/search-flags.js';
import { withLearned } from '../learned/learned-for.js';
import type { Terminal } from '../terminal/terminal.js';
import type { Finding } from './answered.js';

/** An answer, and what it was found with. */
export interface Searched<Answer> {
  readonly answer: Answer;
  readonly inputs: RecommendInputs;
  readonly fitter: CoreFitter | undefined;
}

/** Searches with what the log says and the other balls that are kept, in threads that start before the engine is loaded. */
export async function searched<Answer>(
  given: RecommendInputs,
  { line, ready, isAhead }: Finding,
  search: Search,
  options: { readonly unlearned?: boolean },
  terminal: Terminal,
  find: (inputs: RecommendInputs, how: How) => Promise<Answer>,
): Promise<Searched<Answer>> {
  const fitter = ready?.fitter;
  const inputs = await withLearned(given, options, { ...search, fitter, line, isAhead }, terminal);
  const { withStartedThreads } = await import('../../simulate/started-threads.js');
  const answer = await withStartedThreads(search.workers - 1, (threads) => {
    const otherBalls = otherKeptBalls(inputs.ball, terminal);
    return find(inputs, { ...search, threads, fitter, otherBalls, onProgress: line.show });
  });
  return { answer, inputs, fitter };
}

type How = Search & {
  readonly threads: readonly StartedThread[];
  readonly fitter: CoreFitter | undefined;
  readonly otherBalls: ReturnType<typeof otherKeptBalls>;
  readonly onProgress: Finding['line']['show'];
};
