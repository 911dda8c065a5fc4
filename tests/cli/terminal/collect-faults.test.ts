import { expect, test } from 'vitest';
import { InputError } from '../../../src/base/errors.js';
import { collectFaults, InputErrors } from '../../../src/cli/terminal/collect-faults.js';
import { Refusal } from '../../../src/records/refusals/refusal.js';

const fault = (field: string) => new InputError('flag', { field, rule: 'must be 1 to 5', got: '9' });
const fail = (error: Error) => () => {
  throw error;
};
const fieldsOf = (run: () => unknown): string[] => {
  try {
    run();
  } catch (error) {
    if (error instanceof InputErrors)
      return error.errors.flatMap((each) =>
        each instanceof Refusal
          ? each.statements.map(({ code }) => code)
          : each.faults.map(({ field }) => field),
      );
    throw error;
  }
  return [];
};

test('collectFaults: returns what each reader read, by name', () => {
  expect(collectFaults({ one: () => 1, two: () => 'b' })).toEqual({ one: 1, two: 'b' });
});

test('collectFaults: what is refused as data is gathered beside what has words', () => {
  const refusal = new Refusal([{ code: 'ball-would-hop', params: {} }]);
  expect(fieldsOf(() => collectFaults({ a: fail(fault('--a')), b: fail(refusal) }))).toEqual([
    '--a',
    'ball-would-hop',
  ]);
});

test('collectFaults: tells the faults of all readers at once, nested ones too', () => {
  const nested = () => collectFaults({ b: fail(fault('--b')), c: fail(fault('--c')) });
  expect(fieldsOf(() => collectFaults({ a: fail(fault('--a')), nested, fine: () => 1 }))).toEqual([
    '--a',
    '--b',
    '--c',
  ]);
});

test('collectFaults: a bug is no input error and passes through', () => {
  expect(() => collectFaults({ a: fail(fault('--a')), b: fail(new TypeError('bug')) })).toThrow(TypeError);
});
