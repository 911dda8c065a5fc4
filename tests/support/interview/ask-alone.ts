import { runInterview } from '../../../src/interview/ask/run-interview.js';
import { checkBall } from '../../../src/prepare/check-ball.js';
import { demoShelf } from '../../../src/records/read/shelf.js';
import { UNITS } from '../../../src/report/text/display-units.js';

/* The interview alone, for the tests to run in a pseudo-terminal: its records go to stdout as JSON. With `--held` it then waits for a key. */

const remembered: unknown[] = [];
const has = (flag: string): boolean => process.argv.includes(flag);
try {
  const { interview: _, ...records } = await runInterview(
    {
      input: process.stdin,
      output: process.stderr,
      hasColour: !has('--no-color'),
      ascii: has('--ascii'),
      canMove: process.env.TERM !== 'dumb',
    },
    {
      shelf: demoShelf(),
      units: UNITS[has('--metric') ? 'metric' : 'trade'],
      ...(has('--check-ball') ? { checkBall } : {}),
      draft: process.env.INTERVIEW_DRAFT ? JSON.parse(process.env.INTERVIEW_DRAFT) : null,
      remember: (now) => remembered.push(now) > 0,
    },
  );
  process.stdout.write(`\n${JSON.stringify(records)}\n`);
} catch (error) {
  const { name, stack } = error as Error;
  process.stdout.write(
    `\n${name === 'Cancelled' ? name : stack}\nremembered: ${JSON.stringify(remembered.at(-1))}\n`,
  );
}
if (has('--held')) process.stdin.once('data', () => process.stdin.pause()).resume();
