import { expect, test } from 'vitest';
import { dateFlag } from '../../../src/cli/flags/date-flag.js';

const NOW = new Date(2026, 2, 1, 23, 30); // by the clock of the machine, whatever its zone

test('dateFlag: a day of the calendar is taken as given', () => {
  expect(dateFlag('2024-02-29', NOW)).toBe('2024-02-29');
});

test('dateFlag: left out it is today by the machine’s own clock, late in the evening too', () => {
  expect(dateFlag(undefined, NOW)).toBe('2026-03-01');
});

test.each(['2025-02-29', '2026-13-01', '1.3.2026', '2026-3-1', 'today', ''])(
  'dateFlag: %j is refused',
  (given) => {
    expect(() => dateFlag(given, NOW)).toThrow('--date must be a day as YYYY-MM-DD');
  },
);
