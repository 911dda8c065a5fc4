import { runInterview } from '../../../src/interview/ask.js';
import { checkBall } from '../../../src/prepare/check-ball.js';
import { demoShelf } from '../../../src/records/read/shelf.js';
import { UNITS } from '../../../src/report/text/display-units.js';

/* The interview alone, for the tests to run in a pseudo-terminal: its records go to stdout as JSON. */

const remembered: unknown[] = [];
try {
  const color = !process.argv.includes('--no-color');
  const units = UNITS[process.argv.includes('--metric') ? 'metric' : 'trade'];
  const check = process.argv.includes('--check-ball') ? { checkBall } : {};
  const draft = process.env.INTERVIEW_DRAFT ? JSON.parse(process.env.INTERVIEW_DRAFT) : null;
  const records = await runInterview(
    { input: process.stdin, output: process.stderr, color, units, ...check },
    { shelf: demoShelf(), draft, remember: (now) => remembered.push(now) },
  );
  process.stdout.write(`\n${JSON.stringify(records)}\n`);
} catch (error) {
  process.stdout.write(`\n${(error as Error).name}\nremembered: ${JSON.stringify(remembered.at(-1))}\n`);
}
