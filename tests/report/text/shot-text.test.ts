import { expect, test } from 'vitest';
import { UNITS } from '../../../src/report/text/display-units.js';
import { besidesText, nightText, shotText } from '../../../src/report/text/shot-text.js';

test.each([
  { shot: { laydownBoard: 20, arrowsBoard: 14, pinsBoard: 17.5 }, says: '20 14 - 17.5' },
  { shot: { arrowsBoard: 14, gutter: true as const, note: 'late' }, says: '- 14 - g, late' },
  {
    shot: { pinsBoard: 17, ringOverHole: 'thumb' as const },
    says: '- - - 17, an oil ring over the thumb hole',
  },
])('a shot is the line that was typed, then all else that was seen: $says', ({ shot, says }) => {
  expect(shotText(shot, UNITS.trade)).toBe(says);
});

test('what was judged by eye says so, in the units of the person who reads', () => {
  const shot = { hookStartFt: 38, totalHookBoards: 22, entryAngleDeg: 5, note: 'late' };
  expect(besidesText(shot, UNITS.trade)).toEqual([
    'by eye: hook start 38 ft, total hook 22 boards, entry angle 5 deg',
    'late',
  ]);
  expect(besidesText(shot, UNITS.metric)[0]).toContain('hook start 11.6 m');
});

test('a night in words leaves out what was not said', () => {
  expect(
    nightText({ on: '2026-03-31', lane: 'dry', games: 1, targetBoard: 14, patternFt: 41 }, UNITS.trade),
  ).toBe('2026-03-31, dry, 1 game on the oil, target 14, oil to 41 ft');
  expect(nightText({ lane: 'dry' }, UNITS.trade)).toBe('dry');
});
