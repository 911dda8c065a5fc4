import { describe, expect, test } from 'vitest';
import type { JudgeAnswer } from '../../../src/records/answers/answer.js';
import type { Objection } from '../../../src/records/answers/statements/objections.js';
import { judgeReport } from '../../../src/report/screens/judge-report.js';
import { columnsOf } from '../../../src/report/text/wrap.js';
import { judgeAnswer as answer } from '../../support/judge-answer.js';
import { pageOf } from '../../support/page.js';
import { said as sentencesOf } from '../../support/said.js';

const { layout, best, cautions } = answer;
const RING_NEAR_HOLE: Objection = { code: 'ring-near-hole', params: {} };
const oneLine = (text: string): string => text.replace(/\s+/g, ' ');

describe('judgeReport', () => {
  test.each([40, 60, 80, 120, 200])('keeps within %i columns', (width) => {
    for (const each of judgeReport(answer, pageOf(width), true).split('\n'))
      expect(columnsOf(each), each).toBeLessThanOrEqual(width);
  });

  test('a VAL angle no larger than a pin buffer could be is questioned below the verdict, a usual one and none are not', () => {
    const at = (valAngleDeg: number) =>
      oneLine(judgeReport({ ...answer, layout: { ...layout, valAngleDeg, pinToPapIn: 4.5 } }, pageOf(80)));
    for (const angle of [1, 3, 4.5])
      expect(at(angle)).toMatch(
        /VERDICT .* FIRST The VAL angle is only \d°.* meant as a pin buffer, write its unit: \d+ x 4 1\/2 x [\d /]+ in\./,
      );
    for (const angle of [0, 5, 20, 90]) expect(at(angle)).not.toContain('meant as a pin buffer');
  });

  test('holes that meet old ones are told first, and where each is named; others are not', () => {
    const edges = [{ hole: 'ring', oldHole: 'middle', drilling: null }] as const;
    const legality = { ...layout.legality, findings: [{ code: 'edges-over-plugs', params: { edges } }] };
    const redrilled = { ...answer, layout: { ...layout, legality } } as unknown as JudgeAnswer;
    expect(oneLine(judgeReport(redrilled, pageOf(80)))).toContain(
      'FIRST New holes meet old ones, whose plugs may chip or crack: see --full.',
    );
    expect(oneLine(judgeReport(answer, pageOf(80)))).not.toContain('old ones');
  });

  test('the verdict comes before all numbers, in words', () => {
    for (const isFull of [false, true]) {
      const lines = judgeReport(answer, pageOf(80), isFull).split('\n');
      expect(lines.findIndex((each) => each.startsWith('VERDICT '))).toBe(1);
    }
    const said = (verdict: JudgeAnswer['verdict']) =>
      oneLine(judgeReport({ ...answer, verdict }, pageOf(80)));
    expect(said('as-good')).toContain(`${layout.text} is fine to drill: about as good as any`);
    expect(said('clearly-worse')).toContain(`${best.text} is clearly better, and you would see it.`);
    expect(said('not-allowed')).toContain(`Do not drill ${layout.text}`);
  });

  test('what one steady shot does is said to be that, since the mean of all tries may say otherwise', () => {
    const score = { ...answer.shares.score, total: -5 };
    const better = {
      ...answer,
      best: { ...best, score: layout.score + 3 },
      shares: { ...answer.shares, score },
    };
    const headings = judgeReport(better, pageOf(80), true)
      .split('\n')
      .filter((line) => /by (number of the layout|cause)/.test(line));
    expect(headings).toHaveLength(2);
    for (const each of headings) expect(each).toContain('(one steady shot)');
  });

  test('how far a ring runs over a hole is told to a hundredth, as where it bars the layout', () => {
    const reaction = { ...layout.reaction, ringClearanceIn: -0.03 };
    const text = oneLine(judgeReport({ ...answer, layout: { ...layout, reaction } }, pageOf(80)));
    expect(text).toContain('An oil ring runs over a hole by 0.03 in.');
  });

  test('what speaks against a layout, its place and its marking errors are said', () => {
    const barred = { ...answer, layout: { ...layout, objections: [RING_NEAR_HOLE] } };
    const text = oneLine(judgeReport(barred, pageOf(80), true));
    expect(text).toMatch(/VERDICT .* STOP An oil ring would run over or too near to a hole\. .*SIZE/);
    expect(text).toContain('better than 75 % of the allowed layouts');
    expect(text).toContain('1/16 in of pin-to-PAP -1.2 +0.05 -0.10');
    expect(text).toContain(sentencesOf(cautions.slice(0, 1)));
  });

  test('a guessed PAP is said before anything is drilled', () => {
    const bowler = { ...answer.inputs.bowler, uncertainty: { papOverIn: 0.4, papUpIn: 0.45 } };
    const guessed = { ...answer, inputs: { ...answer.inputs, bowler } };
    const first = 'Your PAP is a guess (± 0.45 in). Have it measured before drilling.';
    expect(oneLine(judgeReport(guessed, pageOf(80)))).toContain(`FIRST ${first}`);
    expect(oneLine(judgeReport(answer, pageOf(80)))).not.toContain('FIRST');
  });

  test('a cause that others work against is not called a part of the whole', () => {
    const causes = answer.causes as NonNullable<JudgeAnswer['causes']>;
    const hookStartFt = { ...causes.hookStartFt, total: 4.3, centre: 0, inertia: -0.2, flare: 4.5 };
    const text = oneLine(judgeReport({ ...answer, causes: { ...causes, hookStartFt } }, pageOf(80)));
    expect(text).toContain(
      'Flare alone: 4.5 ft later; all causes together: 4.3 ft later (by physics, one steady shot).',
    );
  });

  test.each([80, 120])(
    'without more asked for it is a few lines at %i columns: verdict, size, legality',
    (width) => {
      const lines = judgeReport(answer, pageOf(width)).trimEnd().split('\n');
      expect(lines.length).toBeLessThanOrEqual(12);
      const text = oneLine(lines.join(' '));
      for (const label of ['VERDICT', 'SIZE', 'LEGAL']) expect(text).toContain(` ${label} `);
      expect(text).toContain(`${best.text}, the best found, is`);
    },
  );
});
