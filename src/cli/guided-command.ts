import type { Interviewed } from '../interview/interview.js';
import type { RecommendInputs } from '../recommend/setting.js';
import { UNITS, type Units } from '../report/display-units.js';
import { demoInputs } from './demo-inputs.js';
import { gather } from './gather.js';
import { homeOf } from './home.js';
import { keepNamed } from './keep-named.js';
import { readLeftInterview, writeLeftInterview } from './left-interview.js';
import type { GlobalOptions } from './options.js';
import { isColoured } from './page-for.js';
import { answerRecommendation, searchFlags } from './recommend-command.js';
import { endOnSignals } from './signals.js';
import { canAsk, type Terminal } from './terminal.js';
import { wholeShelf } from './whole-shelf.js';

/** `flarewise` alone: asks, then recommends. Where nobody can be asked it answers for the demo records. */
export async function guidedCommand(options: GlobalOptions, terminal: Terminal): Promise<void> {
  // a bad flag is told before any question
  const search = gather(searchFlags(options, terminal));
  const answerFor = (inputs: RecommendInputs): Promise<void> =>
    answerRecommendation(inputs, search, options, terminal);
  if (!options.input || !canAsk(terminal)) return await answerFor(demo(terminal));

  const home = homeOf(terminal);
  const { keep, ...inputs } = await asked(UNITS[search.units], options, terminal);
  endOnSignals();
  // a disk that cannot be written must not cost the answer
  const [kept] = await Promise.allSettled([keepNamed(keep, inputs, terminal)]);
  await answerFor(inputs);
  if (kept.status === 'rejected') throw kept.reason;
  writeLeftInterview(home, null); // whatever goes wrong before this line, the answers are offered again
}

async function asked(units: Units, options: GlobalOptions, terminal: Terminal): Promise<Interviewed> {
  const [{ runInterview }, { checkBall }] = await Promise.all([
    import('../interview/ask.js'),
    import('../recommend/check-ball.js'),
  ]);
  const { stdin, stderr } = terminal;
  const home = homeOf(terminal);
  return runInterview(
    { input: stdin, output: stderr, color: isColoured(options, terminal), units, checkBall },
    {
      shelf: wholeShelf(terminal),
      left: readLeftInterview(home),
      remember: (left) => writeLeftInterview(home, left),
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
