import { expect, test } from 'vitest';
import { usualBreakpoint } from '../../src/simulate/usual-breakpoint.js';

test.each([
  { patternFt: 40, board: 9, source: 'common practice: the length in feet less 31' },
  { patternFt: 47, board: 16, source: 'the same' },
  { patternFt: 32, board: 3, source: 'no farther out than board 3' },
])('usualBreakpoint: $patternFt ft of oil, board $board ($source)', ({ patternFt, board }) =>
  expect(usualBreakpoint(patternFt).board).toBe(board),
);
