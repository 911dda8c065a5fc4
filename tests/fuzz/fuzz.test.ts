import { expect, test } from 'vitest';
import { fuzzTarget } from './fuzz-target.js';
import { TARGETS } from './targets.js';

/** A four-thousandth of a full run: some 300 inputs. */
const SHARE = 1 / 4000;

test.each(TARGETS)(
  '$name: random inputs are taken or refused with field, rule, value and remedy',
  async (target) => {
    const { counted, failures } = await fuzzTarget(target, Math.ceil(SHARE * target.inputs), 1);
    expect(failures.filter(({ outcome }) => outcome !== 'slow')).toEqual([]);
    expect(counted.inputs).toBe(Math.ceil(SHARE * target.inputs));
  },
);
