import { describe, expect, test } from 'vitest';
import type { JudgeAnswer } from '../../src/records/answer.js';
import { judgeReport } from '../../src/report/judge-report.js';
import { columnsOf } from '../../src/report/wrap.js';
import { recommendAnswer } from './fixture.js';
import { pageOf } from './page.js';

const { layouts, seed, version, inputs, targets, assumptions, cautions } = recommendAnswer;
const {
  rank: _rank,
  confidence: _confidence,
  steps: _steps,
  reasons: _reasons,
  shares,
  ...layout
} = layouts[1];
const {
  psa: _psa,
  marks: _marks,
  legality: _legality,
  ...best
} = {
  ...layout,
  text: layouts[0].text,
  score: layouts[0].score,
};
const answer: JudgeAnswer = {
  schema: 'flarewise/judge/1',
  version,
  seed,
  inputs,
  verdict: 'probably-worse',
  noLine: null,
  targets,
  layout,
  place: { betterThan: 180, of: 240 },
  best,
  confidence: { bestBeatsIt: 0.78, beatsMiddle: 0.6, worlds: 200 },
  shares,
  marking: [{ error: '1/16 in of pin-to-PAP', score: -1.2, flareIn: 0.05, totalHookBoards: -0.1 }],
  assumptions,
  cautions,
};
const oneLine = (text: string): string => text.replace(/\s+/g, ' ');

describe('judgeReport', () => {
  test.each([60, 80, 120, 200])('keeps within %i columns', (width) => {
    for (const each of judgeReport(answer, pageOf(width)).split('\n'))
      expect(columnsOf(each), each).toBeLessThanOrEqual(width);
  });

  test('the verdict comes before all numbers, in words', () => {
    const lines = judgeReport(answer, pageOf(80)).split('\n');
    expect(lines.findIndex((each) => each.startsWith('Verdict:'))).toBe(3);
    const said = (verdict: JudgeAnswer['verdict']) =>
      oneLine(judgeReport({ ...answer, verdict }, pageOf(80)));
    expect(said('as-good')).toContain(`${layout.text} is about as good as any`);
    expect(said('clearly-worse')).toContain(`clearly better layout, ${best.text}`);
    expect(said('not-allowed')).toContain(`do not drill ${layout.text}`);
  });

  test('what speaks against a layout, its place and its marking errors are told', () => {
    const barred = { ...answer, layout: { ...layout, objections: ['an oil ring would run over a hole'] } };
    const text = oneLine(judgeReport(barred, pageOf(80)));
    expect(text).toContain('An oil ring would run over a hole.');
    expect(text).toContain('above 180 of 240 allowed layouts');
    expect(text).toContain('1/16 in of pin-to-PAP -1.2 +0.05 -0.10');
    expect(text).toContain(cautions[0]);
  });
});
