import { withInterview } from '../../../src/cli/answering/with-interview.js';
import { demoInputs } from '../../../src/cli/files/demo-inputs.js';

/* Asks for the wish in a pseudo-terminal, and says when an answer is looked for, given up and shown. It never finds one of a wish for an early hook. */

const { bowler, ball, lane } = demoInputs();
const say = (text: string): void => void process.stdout.write(`\n<${text}>\n`);

await withInterview(
  {
    needs: { layout: false, bowler: false, ball: false, lane: false, want: true },
    given: { bowler, ball, lane },
    isSimulated: false,
  },
  { color: false, input: true },
  { stdin: process.stdin, stdout: process.stdout, stderr: process.stderr, env: process.env, cores: 1 },
  {
    async find({ want }, { line }) {
      const wish = JSON.stringify(want);
      say(`looking for ${wish}`);
      while (want.hookStart === 1) {
        await new Promise((resume) => setTimeout(resume, 5));
        try {
          line.show({ stage: 'shots', done: 1, total: 9 });
        } catch (error) {
          say(`given up ${wish}`);
          throw error;
        }
      }
      return wish;
    },
    async show(found) {
      say(`shown ${found}`);
      return { goesOn: false, surer: [] };
    },
  },
);
process.exit();
