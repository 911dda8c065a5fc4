import { coreAnswer } from '../../answer/core/core-answer.js';
import { formatFault } from '../../base/errors.js';
import { visible } from '../../base/visible.js';
import { layoutOnBall } from '../../prepare/layout-on-ball.js';
import { MIDDLE_LAYOUT } from '../../prepare/middle-layout.js';
import { corePicture } from '../../report/picture/core-picture.js';
import { coreReport } from '../../report/screens/core-report.js';
import { UNITS } from '../../report/text/display-units.js';
import { coreHtml } from '../../report/web/core-html.js';
import { pictureFile } from '../../report/web/picture-file.js';
import { formatRefusal } from '../../report/wording/refusals/word-refusal.js';
import { withFileAtFault } from '../files/file-at-fault.js';
import { loadCore } from '../files/load-core.js';
import { loadBowler } from '../files/load-record.js';
import { writeOut } from '../files/out-file.js';
import { pictureFlag } from '../files/picture-flag.js';
import { layoutFlag, missingFlag } from '../flags/flags.js';
import { globalFlags } from '../flags/global-flags.js';
import type { CoreOptions } from '../flags/options.js';
import { printAnswer } from '../print/print-answer.js';
import { collectFaults } from '../terminal/collect-faults.js';
import type { Terminal } from '../terminal/terminal.js';

/**
 * `flarewise core`: checks a core file, shows it cut in two planes, and weighs it. A core that makes no ball is drawn too, before the
 * command fails with what is wrong with it.
 *
 * @param words  the core file, or the ball that has one
 */
export async function coreCommand(
  options: CoreOptions,
  terminal: Terminal,
  words: readonly string[],
): Promise<void> {
  const {
    core,
    bowler,
    written,
    out,
    units: system,
  } = collectFaults({
    core: () => loadCore(words[0], options.ball, terminal),
    bowler: () => (options.bowler === undefined ? null : loadBowler(options.bowler, terminal)),
    written: () => (options.layout === undefined ? null : layoutOf(options)),
    out: () => pictureFlag(options.out),
    ...globalFlags(options, terminal),
  });
  const layout = written ? layoutOnBall(written, core.ball) : MIDDLE_LAYOUT;
  const { answer, refusal } = answerFor(words[0], options, () =>
    coreAnswer(core.ball, core.record, bowler && { bowler, layout }),
  );
  if (out) {
    const units = UNITS[system];
    const faults = refusal ? formatRefusal(refusal, units).faults.map(formatFault) : [];
    const picture = () => corePicture(answer, units);
    writeOut(out.path, await pictureFile(out.kind, { picture, page: () => coreHtml(answer, faults, units) }));
  }
  await printAnswer(
    answer,
    (page) => (out ? `${visible(out.path)}\n` : coreReport(answer, page)),
    options,
    terminal,
  );
  if (refusal) throw refusal;
}

/** A refusal of the ball is of the one that was named first; `--ball` is only compared with it. */
function answerFor<T>(word: string | undefined, { bowler }: CoreOptions, answer: () => T): T {
  try {
    return answer();
  } catch (error) {
    throw withFileAtFault(error, { bowler, ball: word });
  }
}

/** The layout of holes to draw, which needs whose they are. */
function layoutOf({ layout, bowler }: CoreOptions) {
  if (bowler === undefined)
    throw missingFlag('--bowler', 'A layout shows where the holes of a bowler come to lie: name the bowler.');
  return layoutFlag(layout);
}
