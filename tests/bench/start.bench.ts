import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { machine } from './timing.js';

const MAIN = fileURLToPath(new URL('../../dist/cli/main.js', import.meta.url));
const RUNS = 20;

/** Times how long `flarewise --help` takes beside a bare start of Node, turn by turn. Prints the ratio of medians. */
export function startBench(print: (line: string) => void = console.log): void {
  const start = (args: readonly string[]): number => {
    const from = performance.now();
    const { status } = spawnSync(process.execPath, args, { stdio: 'ignore' });
    if (status !== 0) throw new Error(`node ${args.join(' ')} ended with ${status}`);
    return performance.now() - from;
  };
  const bare: number[] = [];
  const help: number[] = [];
  start([MAIN, '--help']); // warm the disk
  for (let run = 0; run < RUNS; run++) {
    bare.push(start(['-e', '0']));
    help.push(start([MAIN, '--help']));
  }
  print(`start: ${machine()}`);
  print(
    `  --help ${median(help).toFixed(0)} ms, bare node ${median(bare).toFixed(0)} ms: ${(median(help) / median(bare)).toFixed(2)} times (medians of ${RUNS})`,
  );
}

const median = (times: readonly number[]): number =>
  [...times].sort((a, b) => a - b)[times.length >> 1] as number;
