import { layoutOnBall } from '../../prepare/layout-on-ball.js';
import { readLayout } from '../../records/text/written-layout.js';
import { printAnswer } from '../print/print-answer.js';
import { withProgress } from '../print/progress.js';
import { askedLine } from './asked-line.js';
import type { Standing } from './standing.js';

/** Asks for a layout and prints a second opinion on it, as `judge` does. */
export async function judgeAnother(standing: Standing): Promise<void> {
  const { inputs, search, fitter, options, terminal } = standing;
  const layout = await askedLine(
    {
      question: 'Judge which layout?',
      help: 'Angles, 70 x 4 1/2 x 30, or distances, 4 1/2 x 3 3/8 x 2. Escape: not now.',
      read: (text) => layoutOnBall(readLayout(text), inputs.ball),
    },
    standing,
  );
  if (!layout) return;
  const [{ judge }, { judgeReport }] = await Promise.all([
    import('../../answer/judge.js'),
    import('../../report/screens/judge-report.js'),
  ]);
  const answer = await withProgress(terminal, ({ show: onProgress }) =>
    judge({ ...inputs, layout }, { ...search, fitter, onProgress }),
  );
  await printAnswer(answer, (page) => judgeReport(answer, page, false, false), options, terminal);
}
