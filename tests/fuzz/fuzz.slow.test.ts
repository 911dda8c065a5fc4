import { expect, test } from 'vitest';
import { fuzzTarget } from './fuzz-target.js';
import { TARGETS } from './targets.js';

/** A hundredth of a full run, of another seed than that one’s. */
const SHARE = 0.01;
const SEED = 50_000;

test.each(TARGETS)(
  '$name: random inputs are taken or refused with field, rule, value and remedy',
  async (target) => {
    const { failures } = await fuzzTarget(target, Math.ceil(SHARE * target.inputs), SEED);
    expect(failures.filter(({ outcome }) => outcome !== 'slow')).toEqual([]);
  },
);
