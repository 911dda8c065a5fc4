import { expect, test } from 'vitest';
import type { Wish } from '../../../src/records/schemas/reaction-numbers.js';
import { readChange } from '../../../src/records/schemas/read-change.js';

test.each([
  ['hookStart', 'later', { is: 'more', by: null }],
  ['hookStart', 'EARLIER', { is: 'less', by: null }],
  ['hookStart', '3 ft later', { is: 'more', by: 3 }],
  ['hookStart', '3 later', { is: 'more', by: 3 }],
  ['hookStart', '41 ft', { is: 'number', number: 41 }],
  ['hookStart', 'latest', { is: 'step', step: 5 }],
  ['hookStart', '2', { is: 'step', step: 2 }],
  ['totalHook', '4 boards less', { is: 'less', by: 4 }],
  ['totalHook', 'more', { is: 'more', by: null }],
  ['sharpness', 'smoother', { is: 'less', by: null }],
  ['sharpness', 'smooth', { is: 'step', step: 2 }],
] as const)('%s: %s', (wish, text, asked) => {
  expect(readChange(wish, text)).toEqual(asked);
});

test('metres are turned into feet', () => {
  expect(readChange('hookStart', '1 m later')).toMatchObject({ is: 'more', by: expect.closeTo(3.2808, 3) });
});

test.each<[Wish, string]>([
  ['hookStart', ''],
  ['hookStart', 'more'],
  ['hookStart', '0 ft later'],
  ['hookStart', '-2 ft later'],
  ['hookStart', '99 ft later'],
  ['hookStart', '2 to 4 ft later'],
  ['totalHook', 'later'],
  ['totalHook', 'x boards less'],
  ['totalHook', '22'],
])('%s: %j is refused, with the rule and what to do', (wish, text) => {
  const read = readChange(wish, text);
  expect(read).toMatchObject({ rule: expect.stringMatching(/^must be /), hint: expect.stringMatching(/\S/) });
});
