import { fitEnsemble } from '../../../src/ball/core/ensemble.js';
import { randomCases } from './random-case.js';
import { type Checked, reasonsHold } from './reasons-hold.js';

/** What came of holding the reasons of many random cases against numbers. */
interface Held extends Checked {
  readonly cases: number;
  /** How often each reason was given; a cause by its name. */
  readonly given: ReadonlyMap<string, number>;
}

/** Makes random cases, these seeds, and holds every sentence of their reasons against numbers. */
export async function holdOverCases(seeds: readonly number[]): Promise<Held> {
  const make = randomCases(fitEnsemble);
  const checked: Checked = { rolled: 0, offPocket: 0 };
  const given = new Map<string, number>();
  let cases = 0;
  for (const seed of seeds)
    await make(seed, (made) => {
      reasonsHold(made, checked);
      cases += 1;
      for (const { reason } of made.said) {
        const name = reason.code === 'cause-of-difference' ? reason.params.cause : reason.code;
        given.set(name, (given.get(name) ?? 0) + 1);
      }
    });
  return { ...checked, cases, given };
}
