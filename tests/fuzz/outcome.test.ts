import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { InputError } from '../../src/base/errors.js';
import { fuzzTarget, replay } from './fuzz-target.js';
import { endingOf, notFinite } from './outcome.js';
import { target } from './target.js';

/* What counts must notice each kind of failure. */

const taking = (take: (input: number) => unknown) =>
  target({ name: 'test', what: 'numbers', inputs: 100, chunk: 50, arbitrary: fc.nat(1000), take });

describe('endingOf', () => {
  test.each([
    ['accepted', (x: number) => ({ x })],
    ['not finite', () => ({ a: [1, { b: Number.NaN }] })],
    ['not finite', () => new Map([['a', Number.POSITIVE_INFINITY]])],
    ['crash', () => (undefined as unknown as { x: number }).x],
    ['refused', () => refuse({ field: 'a', rule: 'must be b', got: 'c', hint: 'Give b.' })],
    ['unworded', () => refuse({ field: 'a', rule: 'must be b', got: 'c' })],
    ['unworded', () => refuse({ field: ' ', rule: 'must be b', got: 'c', hint: 'Give b.' })],
  ])('%s', async (outcome, take) => expect((await endingOf(taking(take), 1)).outcome).toBe(outcome));
});

const refuse = (fault: ConstructorParameters<typeof InputError>[1]): never => {
  throw new InputError('test', fault);
};

test('notFinite: says where', () => {
  expect(notFinite({ a: [1, { b: Number.NaN }] })).toBe('.a.1.b is NaN');
  expect(notFinite({ a: [1, 'NaN', null] })).toBe(null);
  expect(notFinite(Float64Array.of(0, Number.NEGATIVE_INFINITY))).toBe('.1 is -Infinity');
});

test('fuzzTarget: a failure is counted, made as small as can be, and given again by its seed and path', async () => {
  const failing = taking((x) => {
    if (x >= 700) throw new Error('too large');
    return x;
  });
  const { counted, failures } = await fuzzTarget(failing, 100, 1);
  expect(failures.length).toBeGreaterThan(0);
  expect(counted.outcomes.crash).toBe(failures.length);
  for (const failure of failures) {
    expect(failure.input).toBe('700');
    expect(await replay(failing, failure)).toMatchObject({ outcome: 'crash', input: '700' });
    expect(
      await replay(
        taking((x) => x),
        failure,
      ),
    ).toBe(null);
  }
});
