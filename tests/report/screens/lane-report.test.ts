import { describe, expect, test } from 'vitest';
import type { LaneAnswer } from '../../../src/records/answers/lane-answer.js';
import { laneReport } from '../../../src/report/screens/lane-report.js';
import { columnsOf } from '../../../src/report/text/wrap.js';
import { pageOf } from '../../support/page.js';
import { lane } from '../../support/recommend-answer.js';

/** Board b at foot f carries b units, up to 40 ft: every column differs from the next. */
const answer = (hand: 'right' | 'left'): LaneAnswer => ({
  schema: 'flarewise/lane-answer/2',
  version: '0.1.0',
  lane: { ...lane, patternFt: 40 },
  hand,
  film: Array.from({ length: 61 }, (_, distanceFt) => ({
    distanceFt,
    units: Array.from({ length: 39 }, (_, i) => (distanceFt <= 40 ? i + 1 : 0)),
  })),
  oil: {
    total: 2900,
    meanUnits: { own: 5, middle: 20, far: 35 },
    middleToOwn: 4,
    middleToFar: 0.57,
    endsByFoot: [
      { toFt: 15, share: 0.4 },
      { toFt: 30, share: 0.8 },
      { toFt: 60, share: 1 },
    ],
  },
  friction: [{ distanceFt: 5, boards: [5, 10].map((board) => ({ board, friction: 0.04 })) }],
  wear: null,
  says: [{ code: 'oil-length', params: { patternFt: 40, length: 'medium', widestBoard: 9, lessFt: 31 } }],
  assumptions: [{ code: 'usual-finish', params: { grit: 2000 } }],
});

const rowsOf = (text: string): string[] => [...text.matchAll(/^.{5}[│|](.*?)[│|]/gm)].map(([, row]) => row);

describe('laneReport', () => {
  test.each([40, 60, 80, 116, 200])('keeps within %i columns', (width) => {
    for (const line of laneReport(answer('right'), pageOf(width)).split('\n'))
      expect(columnsOf(line), line).toBeLessThanOrEqual(width);
  });

  test('a column is a board, from the side asked for; the signs alone say how thick the film is', () => {
    const right = rowsOf(laneReport(answer('right'), pageOf(80)));
    const left = rowsOf(laneReport(answer('left'), pageOf(80)));
    expect(right).toHaveLength(31);
    const at20 = right[20];
    // 1 to 4 thin, 5 to 14, 15 to 29, 30 and more, from the right edge
    expect([...at20].reverse().join('')).toBe(
      '·'.repeat(4) + '░'.repeat(10) + '▒'.repeat(15) + '▓'.repeat(10),
    );
    expect(left[20]).toBe([...at20].reverse().join(''));
    expect(right[0].trim()).toBe('');
  });

  test('the end of the oil, arrows and foul line are marked; seven arrows stand on every fifth board', () => {
    const text = laneReport(answer('right'), pageOf(80));
    for (const mark of ['oil ends', 'arrows', 'foul line']) expect(text).toContain(`< ${mark}`);
    const arrows = rowsOf(text).flatMap((row) =>
      [...row].flatMap((sign, i) => (sign === '^' ? [39 - i] : [])),
    );
    expect(arrows.sort((a, b) => a - b)).toEqual([5, 10, 15, 20, 25, 30, 35]);
  });

  test('on a wide page a board takes two columns, and its number stands under it', () => {
    const text = laneReport(answer('right'), pageOf(130));
    const rows = rowsOf(text);
    expect(rows[20]).toHaveLength(78);
    const scale = text.split('\n').find((line) => line.trim().endsWith('board')) ?? '';
    expect(scale.indexOf('35') + 2 - 6).toBe(2 * (39 - 35 + 1));
  });

  test('ASCII on request, with the signs explained', () => {
    const text = laneReport(answer('right'), pageOf(80, { ascii: true }));
    // biome-ignore lint/suspicious/noControlCharactersInRegex: everything outside ASCII is meant
    expect(text).toMatch(/^[\x00-\x7f]*$/);
    for (const words of [
      '. under 5',
      ': 5 to 15',
      '- 15 to 30',
      '= 30 to 45',
      '% 45 and more',
      'from the right',
    ])
      expect(text).toContain(words);
  });
});
