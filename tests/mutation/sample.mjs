import { createHash } from 'node:crypto';
import { relative } from 'node:path';

/**
 * Leaves out all but a share of the mutants (`MUTATED_SHARE`, 1 by itself), by a hash of what each is and so the same in every run: a
 * mutant is in a larger sample if it is in a smaller one. What is left out counts as not compiled, which is no part of the score.
 */
class Sample {
  #share = Number(process.env.MUTATED_SHARE ?? 1);

  async init() {}

  async check(mutants) {
    return Object.fromEntries(
      mutants.map((mutant) => [
        mutant.id,
        place(mutant) < this.#share ? { status: 'passed' } : { status: 'compileError', reason: LEFT_OUT },
      ]),
    );
  }
}

const LEFT_OUT = 'not in the sample';

/** Where a mutant stands in [0, 1), evenly and without regard to what it is. */
function place({ fileName, location, mutatorName, replacement }) {
  const { start, end } = location;
  const what = [
    relative(process.cwd(), fileName),
    start.line,
    start.column,
    end.line,
    end.column,
    mutatorName,
    replacement,
  ];
  return createHash('sha256').update(what.join('|')).digest().readUInt32BE() / 2 ** 32;
}

export const strykerPlugins = [
  { kind: 'Checker', name: 'sample', factory: Object.assign(() => new Sample(), { inject: [] }) },
];
