import { demoInputs } from './demo-inputs.js';
import { gather } from './gather.js';
import type { GlobalOptions } from './options.js';
import { isColoured } from './page-for.js';
import { answerRecommendation, searchFlags } from './recommend-command.js';
import { canAsk, type Terminal } from './terminal.js';

/** `flarewise` alone: asks, then recommends. Where nobody can be asked it answers for the demo records. */
export async function guidedCommand(options: GlobalOptions, terminal: Terminal): Promise<void> {
  const search = gather(searchFlags(options, terminal)); // a bad flag is told before any question
  const inputs = options.input && canAsk(terminal) ? await asked(options, terminal) : demo(terminal);
  await answerRecommendation(inputs, search, options, terminal);
}

async function asked(options: GlobalOptions, terminal: Terminal) {
  const [{ runInterview }, { checkBall }] = await Promise.all([
    import('../interview/ask.js'),
    import('../recommend/check-ball.js'),
  ]);
  const { stdin, stderr } = terminal;
  return runInterview({ input: stdin, output: stderr, color: isColoured(options, terminal), checkBall });
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
