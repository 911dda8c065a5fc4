import type { Interviewed } from '../../interview/interview.js';
import { UNITS, type Units } from '../../report/text/display-units.js';
import type { RecommendInputs } from '../../simulate/setting.js';
import { demoInputs } from '../files/demo-inputs.js';
import { homeOf } from '../files/home.js';
import { readInterviewDraft, writeInterviewDraft } from '../files/interview-draft.js';
import { keepNamed } from '../files/keep-named.js';
import { wholeShelf } from '../files/whole-shelf.js';
import type { GlobalOptions } from '../flags/options.js';
import { isAscii, isColoured } from '../print/page-for.js';
import { collectFaults } from '../terminal/collect-faults.js';
import { endOnSignals } from '../terminal/signals.js';
import { canAsk, type Terminal } from '../terminal/terminal.js';
import { type MadeReady, makeReady } from './make-ready.js';
import { answerRecommendation, searchFlags } from './recommend-command.js';

/** `flarewise` alone: asks, then recommends. Where no one can be asked it answers for the demo records. */
export async function guidedCommand(options: GlobalOptions, terminal: Terminal): Promise<void> {
  // a bad flag is told before any question
  const search = collectFaults(searchFlags(options, terminal));
  const answerFor = (inputs: RecommendInputs, ready?: MadeReady): Promise<void> =>
    answerRecommendation(inputs, search, options, terminal, { ready });
  if (!options.input || !canAsk(terminal)) return await answerFor(demo(terminal));

  const home = homeOf(terminal);
  let making: Promise<MadeReady> | undefined;
  const { keep, ...inputs } = await asked(UNITS[search.units], options, terminal, (described) => {
    making ??= makeReady(described, terminal);
  });
  endOnSignals();
  // a disk that cannot be written must not cost the answer
  const [kept] = await Promise.allSettled([keepNamed(keep, inputs, terminal)]);
  await answerFor(inputs, await making);
  if (kept.status === 'rejected') throw kept.reason;
  writeInterviewDraft(home, null); // whatever goes wrong before this line, the answers are offered again
}

async function asked(
  units: Units,
  options: GlobalOptions,
  terminal: Terminal,
  onDescribed: (records: Pick<Interviewed, 'bowler' | 'ball'>) => void,
): Promise<Interviewed> {
  const [{ runInterview }, { checkBall }] = await Promise.all([
    import('../../interview/ask.js'),
    import('../../prepare/check-ball.js'),
  ]);
  const { stdin, stderr } = terminal;
  const home = homeOf(terminal);
  return runInterview(
    {
      input: stdin,
      output: stderr,
      color: isColoured(options, terminal),
      ascii: isAscii(options, terminal),
      units,
      checkBall,
    },
    {
      shelf: wholeShelf(terminal),
      draft: readInterviewDraft(home),
      onDescribed,
      remember: (draft) => writeInterviewDraft(home, draft),
    },
  );
}

function demo({ stderr }: Terminal) {
  const inputs = demoInputs();
  stderr.write(
    `No questions are asked here, so this answers for demo records: ${inputs.bowler.name}; ${inputs.ball.name}; ` +
      `${inputs.lane.name}.\nFor your own: flarewise recommend --bowler FILE --ball FILE --lane FILE ` +
      '--hook-start 1..5 (see flarewise recommend --help).\n',
  );
  return inputs;
}
