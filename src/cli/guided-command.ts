import type { RecommendInputs } from '../recommend/setting.js';
import { type Ball, type BallRecord, ballRecord, hasOwnCore } from '../records/ball.js';
import { keepCore } from '../records/kept-core.js';
import { keepNew } from '../records/saved-records.js';
import { UNITS, type Units } from '../report/display-units.js';
import { demoInputs } from './demo-inputs.js';
import { gather } from './gather.js';
import { homeOf } from './home.js';
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
  const inputs =
    options.input && canAsk(terminal) ? await asked(UNITS[search.units], options, terminal) : demo(terminal);
  await answerRecommendation(inputs, search, options, terminal);
}

async function asked(units: Units, options: GlobalOptions, terminal: Terminal): Promise<RecommendInputs> {
  const [{ runInterview }, { checkBall }] = await Promise.all([
    import('../interview/ask.js'),
    import('../recommend/check-ball.js'),
  ]);
  const { stdin, stderr } = terminal;
  const home = homeOf(terminal);
  const { keep, ...inputs } = await runInterview(
    { input: stdin, output: stderr, color: isColoured(options, terminal), units, checkBall },
    {
      shelf: wholeShelf(home),
      left: readLeftInterview(home),
      remember: (left) => writeLeftInterview(home, left),
    },
  );
  const kept = [
    ...(keep.bowler ? [`bowler/${await keepNew(home, 'bowler', keep.bowler, inputs.bowler)}`] : []),
    ...(keep.ball ? [`ball/${await keepNew(home, 'ball', keep.ball, ballToKeep(home, inputs.ball))}`] : []),
  ];
  if (kept.length > 0) stderr.write(`Kept as ${kept.join(' and ')}.\n`);
  endOnSignals();
  return inputs;
}

/** A ball's record, its core kept beside it if it has one of its own. */
const ballToKeep = (home: string, ball: Ball): BallRecord =>
  hasOwnCore(ball) ? { ...ballRecord(ball), core: keepCore(home, ball.coreFile) } : ball;

function demo({ stderr }: Terminal) {
  const inputs = demoInputs();
  stderr.write(
    `No questions are asked here, so this answers for demo records: ${inputs.bowler.name}; ${inputs.ball.name}; ` +
      `${inputs.lane.name}.\nFor your own: flarewise recommend --bowler FILE --ball FILE --lane FILE ` +
      '--hook-start 1..5 (see flarewise recommend --help).\n',
  );
  return inputs;
}
