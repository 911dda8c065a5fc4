import { spawnSync } from 'node:child_process';
import { machine } from './timing.js';

const built = (path: string): string => JSON.stringify(new URL(`../../dist/${path}`, import.meta.url).href);

/** Built files in a Node without loaders: a loader runs in every worker too and would be timed along. */
const SCRIPT = `
import { coach } from ${built('coach/coach.js')};
import { demoShelf } from ${built('records/read/shelf.js')};
const { bowlers, balls, lanes } = demoShelf();
const plain = balls.find(({ id }) => id === 'plain-low');
const units = bowlers.slice(0, 4).flatMap(({ record: bowler }) =>
  lanes.slice(0, 4).map(({ record: lane }) => ({ bowler, lane, balls: [plain.record], want: { totalHook: 4 } })));
const runs = [];
for (const [count, workers] of [[1, 1], [8, 1], [16, 1], [16, 2]]) {
  const [start, used] = [performance.now(), process.cpuUsage()];
  const answer = [];
  await coach(units.slice(0, count), { seed: 1 }, workers, (lines) => answer.push(...lines));
  const { user, system } = process.cpuUsage(used);
  runs.push({ seconds: (performance.now() - start) / 1000, busy: (user + system) / 1e6, answer: JSON.stringify(answer) });
}
if (runs[2].answer !== runs[3].answer) throw new Error('two workers answered otherwise than one');
console.log(JSON.stringify(runs.map(({ seconds, busy }) => ({ seconds, busy }))));
`;

/**
 * Times a coach's table: twice the pairs take twice the time, two workers about half of it. Prints ratios.
 *
 * On a machine that others use, wall time tells little; the processor time that two workers take in all beside one then
 * says what they could save.
 */
export function coachBench(print: (line: string) => void = console.log): void {
  print(`coach: ${machine()}`);
  const { stdout, stderr, status } = spawnSync(process.execPath, ['--input-type=module', '-e', SCRIPT], {
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(stderr);
  const [, half, all, both] = JSON.parse(stdout) as { seconds: number; busy: number }[]; // the first one warms
  const times = (a: number, b: number): string => (a / b).toFixed(2);
  print(
    `  16 pairs ${all.seconds.toFixed(1)} s: ${times(all.seconds, half.seconds)} times half of them ` +
      `(${times(all.busy, half.busy)} in processor time); two workers are ${times(all.seconds, both.seconds)} times as fast ` +
      `as one, with ${times(both.busy, all.busy)} times its processor time`,
  );
}
