import fc from 'fast-check';
import { type Ending, endingOf } from './outcome.js';
import { type Counted, Tally } from './tally.js';
import type { Target } from './target.js';

/** An input that ended as none should, made as small as fast-check could, and what gives it again. */
export interface Failure extends Ending {
  readonly target: string;
  readonly input: string;
  readonly seed: number;
  readonly path: string;
}

class Bad extends Error {
  constructor(readonly ending: Ending) {
    super(`${ending.outcome}: ${ending.detail}`);
  }
}

/** Most failures of a target that are made smaller and saved; all are counted. */
const MOST_FAILURES = 5;

/**
 * Gives a target random inputs. After one that fails, its chunk ends and the next goes on.
 *
 * @param inputs  how many
 * @param seed    of the first chunk; the next ones count on from it
 * @param onChunk  is told the seed before each: should an input never end, it is among those of the last seed
 */
export async function fuzzTarget(
  target: Target,
  inputs: number,
  seed: number,
  onChunk: (seed: number) => void = () => undefined,
): Promise<{ readonly counted: Counted; readonly failures: readonly Failure[] }> {
  const tally = new Tally();
  const failures: Failure[] = [];
  const most = Math.ceil(inputs / target.chunk) + MOST_FAILURES;
  for (let i = 0; tally.counted.inputs < inputs && i < most; i++) {
    onChunk(seed + i);
    const numRuns = Math.min(target.chunk, inputs - tally.counted.inputs);
    const failure = await fuzzChunk(target, { seed: seed + i, numRuns }, tally);
    if (failure) failures.push(failure);
    if (failures.length === MOST_FAILURES) break;
  }
  return { counted: tally.counted, failures };
}

/** Gives a target the input of a saved failure again. @returns the failure, null where it is mended */
export const replay = (
  target: Target,
  { seed, path }: Pick<Failure, 'seed' | 'path'>,
): Promise<Failure | null> =>
  fuzzChunk(target, { seed, path, endOnFailure: true, numRuns: target.chunk }, new Tally());

async function fuzzChunk(
  target: Target,
  parameters: fc.Parameters<[unknown]>,
  tally: Tally,
): Promise<Failure | null> {
  let isShrinking = false;
  const property = fc.asyncProperty(target.arbitrary, async (input) => {
    const ending = await endingOf(target, input);
    if (!isShrinking) tally.add(input, ending);
    if (ending.outcome === 'accepted' || ending.outcome === 'refused') return;
    isShrinking = true;
    throw new Bad(ending);
  });
  const { failed, counterexample, counterexamplePath, seed, errorInstance } = await fc.check(
    property,
    parameters,
  );
  if (!failed) return null;
  if (!(errorInstance instanceof Bad)) throw errorInstance;
  return {
    target: target.name,
    ...errorInstance.ending,
    input: fc.stringify(counterexample?.[0]),
    seed,
    path: counterexamplePath ?? '',
  };
}
