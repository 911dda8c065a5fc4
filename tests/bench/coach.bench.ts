import { spawnSync } from 'node:child_process';
import { SMALL_BUDGET } from '../support/small-budget.js';
import { machine } from './timing.js';

const built = (path: string): string => JSON.stringify(new URL(`../../dist/${path}`, import.meta.url).href);

/** Built files in a Node without loaders: a loader runs in every worker too and would be timed along. */
const script = (pairs: number, workers: number, budget: unknown): string => `
import { coach } from ${built('coach/coach.js')};
import { demoShelf } from ${built('records/read/shelf.js')};
const { bowlers, balls, lanes } = demoShelf();
const all = bowlers.flatMap(({ record: bowler }) => lanes.flatMap(({ record: lane }) =>
  ['plain-low', 'plain-medium', 'asymmetric-mild'].map((ball) =>
    ({ bowler, lane, balls: [balls.find(({ id }) => id === ball).record], want: { totalHook: 4 } }))));
const units = Array.from({ length: ${pairs} }, (_, i) => all[(7 * i) % all.length]);
const [start, used] = [performance.now(), process.cpuUsage()];
const answer = [];
await coach(units, { seed: 1, budget: ${JSON.stringify(budget)} }, ${workers}, (lines) => answer.push(...lines));
const { user, system } = process.cpuUsage(used);
console.log(JSON.stringify({ seconds: (performance.now() - start) / 1000, busy: (user + system) / 1e6,
  megabytes: process.resourceUsage().maxRSS / 1024, answer: JSON.stringify(answer) }));
`;

interface Ran {
  readonly seconds: number;
  /** Processor time, s. */
  readonly busy: number;
  readonly megabytes: number;
  readonly answer: string;
}

/** Each in a process of its own, so that all start alike. */
function ran(pairs: number, workers: number, budget?: unknown): Ran {
  const args = ['--input-type=module', '-e', script(pairs, workers, budget)];
  const { stdout, stderr, status } = spawnSync(process.execPath, args, {
    encoding: 'utf8',
    maxBuffer: 2 ** 28,
  });
  if (status !== 0) throw new Error(stderr);
  return JSON.parse(stdout) as Ran;
}

/** Pairs with the usual budget, and how many with the small one show whether cost stays in proportion. */
const PAIRS = 16;
const FEW = 100;
const MANY = 1000;

/**
 * Times a coach's table: ten times the pairs take ten times the time, two workers about half of it. Prints ratios.
 *
 * On a machine that others use, wall time tells little; the processor time that two workers take in all beside one then
 * says what they could save.
 */
export function coachBench(print: (line: string) => void = console.log): void {
  print(`coach: ${machine()}`);
  const times = (a: number, b: number): string => (a / b).toFixed(2);
  const [one, two] = [ran(PAIRS, 1), ran(PAIRS, 2)];
  if (one.answer !== two.answer) throw new Error('two workers answered otherwise than one');
  print(
    `  ${PAIRS} pairs ${one.seconds.toFixed(1)} s, ${(one.busy / PAIRS).toFixed(1)} s of processor time each: two workers are ` +
      `${times(one.seconds, two.seconds)} times as fast as one, with ${times(two.busy, one.busy)} times its processor time; ` +
      `memory ${one.megabytes.toFixed(0)} MB, with two workers ${two.megabytes.toFixed(0)} MB in all`,
  );
  const [few, many] = [ran(FEW, 1, SMALL_BUDGET), ran(MANY, 1, SMALL_BUDGET)];
  print(
    `  small budget: ${MANY} pairs take ${times(many.busy, few.busy)} times the processor time of ${FEW} ` +
      `(${(many.busy / MANY).toFixed(2)} s each), and ${times(many.megabytes, few.megabytes)} times its memory`,
  );
}
