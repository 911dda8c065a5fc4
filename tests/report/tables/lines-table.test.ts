import { describe, expect, test } from 'vitest';
import type { NoLineAnswer } from '../../../src/records/answers/answer.js';
import { linesTable } from '../../../src/report/tables/lines-table.js';
import { columnsOf } from '../../../src/report/text/wrap.js';
import { noLineText } from '../../../src/report/wording/no-line-text.js';
import { pageOf } from '../../support/page.js';
import { line, recommendAnswer } from '../../support/recommend-answer.js';

const { layouts, middle } = recommendAnswer;

describe('linesTable', () => {
  test.each([40, 60, 80, 200])('keeps within %i columns', (width) => {
    for (const each of linesTable([...layouts, middle], pageOf(width)))
      expect(columnsOf(each), each).toBeLessThanOrEqual(width);
  });

  test('one row a layout: its line, and the room to both sides, with a plus where it was followed no farther', () => {
    const lines = linesTable([...layouts, middle], pageOf(120));
    for (const { text } of [...layouts, middle])
      expect(lines.filter((each) => each.includes(text))).toHaveLength(1);
    const row = lines.find((each) => each.includes(layouts[0].text));
    expect(row).toMatch(/20\.0 +15\.1 +1\.8 +7\.6 +6\.0\+\/1\.1 +0\.4\/0\.3 +0\.12\/0\.09 +31/);
  });

  test('a layout that reaches no pocket has no room, and one shot alone no share of worlds', () => {
    const text = linesTable([{ text: 'one', line, missRoom: null }], pageOf(120)).join('\n');
    expect(text).toContain('no line');
    expect(text).not.toContain('worlds');
  });
});

describe('noLineText', () => {
  const noLine: NoLineAnswer = {
    why: 'hooks-past',
    nearest: { laydownBoard: 10, launchAngleDeg: 2, pinsBoard: 24 },
    says: {
      code: 'hooks-past-pocket',
      params: { laydownBoard: 10, launchAngleDeg: 2, pinsBoard: 24, stop: 'gutter', steepestDeg: 5.5 },
    },
    remedies: [{ code: 'another-speed', params: { byMph: 1, laydownBoard: 10, launchAngleDeg: 2.2 } }],
  };

  test('says why and what would help', () => {
    const text = noLineText(noLine, pageOf(80)).join('\n');
    expect(text).toContain('hooks too much');
    expect(text).toContain('1 mph faster');
  });

  test('says that nothing tried would help, and nothing at all where a line exists', () => {
    expect(noLineText({ ...noLine, remedies: [] }, pageOf(80)).join('\n')).toContain('Neither');
    expect(noLineText(null, pageOf(80))).toEqual([]);
  });
});
