import { describe, expect, test } from 'vitest';
import type { CompareAnswer } from '../../../src/records/answers/compare-answer.js';
import { compareReport } from '../../../src/report/screens/compare-report.js';
import { columnsOf } from '../../../src/report/text/wrap.js';
import { compareAnswer as answer } from '../../support/compare-answer.js';
import { pageOf } from '../../support/page.js';

const oneLine = (text: string): string => text.replace(/\s+/g, ' ');
const withVerdict = (verdict: CompareAnswer['verdict']): string =>
  oneLine(compareReport({ ...answer, verdict }, pageOf(80)));

describe('compareReport', () => {
  test.each([40, 60, 80, 120, 200])('keeps within %i columns, whole and short', (width) => {
    for (const isFull of [false, true])
      for (const each of compareReport(answer, pageOf(width), isFull).split('\n'))
        expect(columnsOf(each), each).toBeLessThanOrEqual(width);
  });

  test('fits a screen of 24 lines at 80 columns, the verdict before all numbers', () => {
    const lines = compareReport(answer, pageOf(80)).trimEnd().split('\n');
    expect(lines.length).toBeLessThan(24);
    expect(oneLine(lines.slice(0, 6).join(' '))).toContain(
      'You would see 30 x 5 1/4 x 60 (1.5 ft later, 2.4 boards less) differ from 45 x 4 x 45.',
    );
  });

  test('of each layout whose VAL angle may have been meant as a pin buffer that is asked, below the verdict', () => {
    const [first, second, ...others] = answer.rows;
    const small = { ...second, text: '50 x 4 x 3', pinToPapIn: 4, valAngleDeg: 3, pinBufferIn: 0.2 };
    const text = oneLine(compareReport({ ...answer, rows: [first, small, ...others] as never }, pageOf(80)));
    expect(text).toContain('50 x 4 x 3: The VAL angle is only 3°, which puts the pin 3/16 in from the VAL.');
    expect(oneLine(compareReport(answer, pageOf(80)))).not.toContain('meant as a pin buffer');
  });

  test('a row each, with its differences by physics and by practice and the share of tries ahead', () => {
    const text = oneLine(compareReport(answer, pageOf(120)));
    expect(text).toContain('3 30 x 5 1/4 x 60 +1.5! +0.036! -2.4! +0.3! -0.3! 71 0.4 yes');
    expect(text).toContain('by practice +0.8 +0.018 -1.2 -0.2'); // none on the entry angle
    expect(text).toContain('shots vary by ±1.0 ±0.024 ±1.6 ±0.2 ±0.2');
  });

  test('no difference, an even wish and what may not be drilled are said in words', () => {
    expect(withVerdict([{ code: 'all-look-alike', params: { names: ['A', 'B'] } }])).toContain(
      'You would not see a difference between A and B.',
    );
    expect(withVerdict([{ code: 'all-look-alike', params: { names: ['A', 'B', 'C'] } }])).toContain(
      'You would not see a difference between any of these 3.',
    );
    expect(
      withVerdict([
        {
          code: 'not-to-be-drilled',
          params: { barred: [{ name: 'B', why: { code: 'ring-near-hole', params: {} } }] },
        },
        { code: 'none-comes-nearer', params: { name: 'A', over: 'B', ahead: 0.52, worlds: 64 } },
      ]),
    ).toContain(
      'B (an oil ring would run over or too near to a hole) should not be drilled. ' +
        'For your wish they are about even: A is ahead of B in 52 of 100 simulated tries.',
    );
  });
});
