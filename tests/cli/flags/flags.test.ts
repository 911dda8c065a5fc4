import { expect, test } from 'vitest';
import { layoutFlag, oneOf, wholeNumber } from '../../../src/cli/flags/flags.js';
import type { RecommendCommandOptions } from '../../../src/cli/flags/options.js';
import { wantFlags } from '../../../src/cli/flags/want-flags.js';
import { workersFlag } from '../../../src/cli/flags/workers-flag.js';

const options: RecommendCommandOptions = { color: true, input: true };

test.each(['0', '6', '-1', '1.5', '1e0', '0x1', '', ' 3', 'three', '3 '])(
  'wholeNumber: refuses %j for 1 to 5',
  (text) => {
    expect(() => wholeNumber('--hook-start', text, [1, 5], 'Give a step.')).toThrow(
      `--hook-start must be a whole number, 1 to 5; got ${JSON.stringify(text)}. Give a step.`,
    );
  },
);

test('wholeNumber: takes both ends of its range', () => {
  expect(['1', '5', '03'].map((text) => wholeNumber('--top', text, [1, 5], ''))).toEqual([1, 5, 3]);
});

test('oneOf: names the words it takes', () => {
  expect(oneOf('--pin-side', 'below', ['above', 'below'], '')).toBe('below');
  expect(() => oneOf('--pin-side', 'up', ['above', 'below'], 'Seen from the midline.')).toThrow(
    '--pin-side must be above or below; got "up". Seen from the midline.',
  );
});

test('oneOf: asks whether a near word was meant', () => {
  expect(() => oneOf('--over', 'bufer', ['pin-to-pap', 'buffer'], 'Which number.')).toThrow(
    '--over must be pin-to-pap or buffer; got "bufer". Did you mean buffer? Which number.',
  );
});

test('layoutFlag: reads fractions, names itself when missing or unreadable', () => {
  expect(layoutFlag('70 x 4 1/2 x 30').numbers).toEqual({
    drillingAngleDeg: 70,
    pinToPapIn: 4.5,
    valAngleDeg: 30,
  });
  expect(() => layoutFlag(undefined)).toThrow('--layout is missing');
  expect(() => layoutFlag('70')).toThrow(expect.objectContaining({ source: '--layout' }));
});

test('wantFlags: a preference left out is ignored', () => {
  expect(wantFlags({ ...options, sharpness: '2' })).toEqual({ sharpness: 2 });
  expect(wantFlags(options)).toEqual({});
});

test('wantFlags: a word is its step, a number stands with the unit of answers', () => {
  expect(
    wantFlags({ ...options, hookStart: 'late', sharpness: '0,35 °/ft', totalHook: '22 boards' }),
  ).toEqual({
    hookStart: 4,
    sharpness: '0.35 deg/ft',
    totalHook: '22 boards',
  });
  expect(wantFlags({ ...options, hookStart: '12.192 m' })).toEqual({ hookStart: '40 ft' });
});

test('wantFlags: tells all bad steps at once', () => {
  expect(() => wantFlags({ ...options, hookStart: '0', totalHook: 'lots' })).toThrow(
    /--hook-start must be[^\n]*\n--total-hook must be/,
  );
});

test('workersFlag: one thread for each core unless told', () => {
  expect([workersFlag(undefined, 8), workersFlag('1', 8)]).toEqual([8, 1]);
});
