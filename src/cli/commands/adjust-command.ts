import { atDesk } from '../../interview/ask/desk.js';
import { loggedBalls } from '../../learn/logged-balls.js';
import { sharedBalls } from '../../prepare/shared-balls.js';
import { UNITS } from '../../report/text/display-units.js';
import { coreFitter } from '../files/core-fitter.js';
import { type KeptDrilled, keptDrilled } from '../files/kept-drilled.js';
import { changeFlags, didFlags } from '../flags/change-flags.js';
import type { AdjustOptions } from '../flags/options.js';
import { unitsFlag } from '../flags/units-flag.js';
import { askStreams } from '../print/ask-streams.js';
import { printAnswer } from '../print/print-answer.js';
import { withProgress } from '../print/progress.js';
import { collectFaults } from '../terminal/collect-faults.js';
import { canAsk, type Terminal } from '../terminal/terminal.js';
import { askAdjust } from './ask-adjust.js';
import { searchFlags } from './recommend-command.js';

/** `flarewise adjust`: what to change where a drilled ball does not do what was wanted. */
export async function adjustCommand(given: AdjustOptions, terminal: Terminal): Promise<void> {
  const options =
    given.input && canAsk(terminal)
      ? await atDesk(askStreams(given, terminal), UNITS[unitsFlag(given.units)], (desk) =>
          askAdjust(given, desk, terminal),
        )
      : given;
  const { drilled, asked, told, ...search } = collectFaults({
    drilled: () => keptDrilled(options, terminal),
    asked: () => changeFlags(options),
    told: () => didFlags(options),
    ...searchFlags(options, terminal),
  });
  const { kept, bowler, lane, night, others } = drilled;
  const fitter = coreFitter(terminal);
  const readyBall = sharedBalls();
  const { withStartedThreads } = await import('../../simulate/started-threads.js');
  const answer = await withStartedThreads(search.workers - 1, async (threads) => {
    const { adjust } = await import('../../answer/adjust/adjust.js');
    return withProgress(terminal, async (onProgress) => {
      const how = { ...search, threads, fitter, readyBall, onProgress };
      const lesson = options.unlearned ? null : await lessonOf(drilled, how);
      return adjust({ bowler, kept, lane, asked, told, night, others, lesson }, how);
    });
  });
  const { adjustReport } = await import('../../report/screens/adjust-report.js');
  printAnswer(answer, (page) => adjustReport(answer, page, options.full), options, terminal);
}

/** What the bowler's logged shots teach; null where there are none. */
async function lessonOf(
  { bowler, called, layouts, shelf }: KeptDrilled,
  how: Parameters<typeof import('../../learn/learn.js').learn>[2],
) {
  const { balls } = loggedBalls(layouts, shelf, called);
  const { learn } = await import('../../learn/learn.js');
  const lesson = learn(bowler, balls, how);
  const shots = balls.flatMap(({ nights }) => nights).reduce((sum, { night }) => sum + night.shots.length, 0);
  return lesson && { lesson, shots };
}
