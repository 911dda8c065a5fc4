import { demoInputs } from './demo-inputs.js';
import { gather } from './gather.js';
import type { GlobalOptions } from './options.js';
import { answerRecommendation, searchFlags } from './recommend-command.js';
import { canAsk, type Terminal } from './terminal.js';

/** `flarewise` alone: asks, then recommends. Where nobody can be asked it answers for the demo records. */
export async function guidedCommand(options: GlobalOptions, terminal: Terminal): Promise<void> {
  const search = gather(searchFlags(options, terminal)); // a bad flag is told before any question
  const inputs = options.input && canAsk(terminal) ? await asked(terminal) : demo(terminal);
  await answerRecommendation(inputs, search, options, terminal);
}

async function asked({ stdin, stderr }: Terminal) {
  const { runInterview } = await import('../interview/ask.js');
  return runInterview({ input: stdin, output: stderr });
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
