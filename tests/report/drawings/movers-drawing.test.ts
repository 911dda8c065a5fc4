import { describe, expect, test } from 'vitest';
import { type DrawnMover, moversDrawing } from '../../../src/report/drawings/movers-drawing.js';
import { columnsOf } from '../../../src/report/text/wrap.js';
import { pageOf } from '../../support/page.js';

const rows: readonly DrawnMover[] = [
  { mover: { kind: 'shots', name: 'shot to shot', sign: '', size: 4 }, size: '4.0 ft' },
  {
    mover: { kind: 'lever', name: 'cover at 500 grit, not 3000', sign: '', size: -5 },
    size: '5.0 ft earlier',
  },
  { mover: { kind: 'reach', name: 'all layouts', sign: '', size: 2.5 }, size: '2.5 ft' },
  { mover: { kind: 'layout', name: '40 x 5 x 42', sign: '1', size: 0.01 }, size: '0 ft' },
];

describe.each([
  { ascii: false, spread: '═', change: '█' },
  { ascii: true, spread: '=', change: '#' },
])('moversDrawing, ASCII $ascii', ({ ascii, spread, change }) => {
  test.each([40, 60, 80, 120])(
    'at %i columns bars are as long as what they stand for, on one scale',
    (width) => {
      const lines = moversDrawing(rows, pageOf(width, { ascii }));
      for (const line of lines) expect(columnsOf(line)).toBeLessThanOrEqual(width);
      const bars = lines.flatMap((line) => new RegExp(`[${spread}${change}]+(?= \\d)`).exec(line) ?? []);
      expect(bars).toHaveLength(4);
      const [shots, lever, reach, layout] = bars as [string, string, string, string];
      expect(shots.length / lever.length).toBeCloseTo(4 / 5, 1);
      expect(reach.length / lever.length).toBeCloseTo(1 / 2, 1);
      expect(layout).toBe(change); // something, however little
      expect([shots[0], reach[0], lever[0]]).toEqual([spread, spread, change]);
      expect(lines.join(' ')).toContain('1 40 x 5 x 42');
    },
  );
});
