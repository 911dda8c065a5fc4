import { layoutOnBall } from '../../prepare/layout-on-ball.js';
import { singleBlanks } from '../../records/text/single-blanks.js';
import { readLayout } from '../../records/text/written-layout.js';
import { UNITS } from '../../report/text/display-units.js';
import { inventedAmong } from '../files/invented.js';
import { writeOut } from '../files/out-file.js';
import { dateFlag } from '../flags/date-flag.js';
import { paperFlag } from '../flags/paper-flag.js';
import { unitsFlag } from '../flags/units-flag.js';
import { withProgress } from '../print/progress.js';
import { askedFile } from './asked-file.js';
import { askedLine } from './asked-line.js';
import { bestOf, type Standing } from './standing.js';

/** Writes the work sheet of a layout, the recommended one unless another is typed. @returns what was written; null for nothing */
export async function writeSheet(standing: Standing): Promise<string | null> {
  const { inputs, search, fitter, options, terminal } = standing;
  const asked = await askedLine(
    {
      question: 'Work sheet for which layout?',
      help: 'Enter takes the recommended one. Escape: not now.',
      usual: bestOf(standing).text,
      read: (text) => ({
        typed: singleBlanks(text),
        layout: layoutOnBall(readLayout(text), inputs.ball),
      }),
    },
    standing,
  );
  if (!asked) return null;
  const [{ SHEET_KINDS, sheetFile }, { sheetAnswer }] = await Promise.all([
    import('../../report/sheet/sheet-file.js'),
    import('../../answer/sheet-answer.js'),
  ]);
  const file = await askedFile('Write the sheet to which file?', SHEET_KINDS, standing);
  if (!file) return null;
  const { seed, ruleSet, budget } = search;
  const date = dateFlag(undefined, new Date());
  const answer = await withProgress(terminal, ({ show: onProgress }) =>
    sheetAnswer(
      { ...inputs, layout: asked.layout },
      {
        date,
        seed,
        ruleSet,
        ounce: 'moment',
        typed: asked.typed,
        invented: inventedAmong(inputs),
        fitter,
        budget,
        onProgress,
      },
    ),
  );
  const paper = paperFlag(undefined, terminal);
  writeOut(file.path, await sheetFile(answer, file.kind, paper, UNITS[unitsFlag(options.units)]));
  return file.path;
}
