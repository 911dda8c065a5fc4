import { spawnSync } from 'node:child_process';
import { availableParallelism, loadavg } from 'node:os';
import { fileURLToPath } from 'node:url';
import { machine } from './timing.js';

const MAIN = fileURLToPath(new URL('../../dist/cli/main.js', import.meta.url));
const RUNS = 5;

/** Bowler, ball, lane and want of eight pairings; the demo first. */
const PAIRINGS = [
  ['average-right', 'plain-medium', 'house-easy', '--hook-start', '4', '--sharpness', '4'],
  ['average-left', 'lobed-strong', 'league-night', '--hook-start', '5', '--sharpness', '5'],
  ['high-tilt', 'asymmetric-strong', 'long', '--total-hook', '5'],
  ['two-handed', 'plain-redrilled', 'worn', '--hook-start', '2'],
  ['rev-dominant', 'own-mesh', 'flat-demanding', '--hook-start', '2', '--sharpness', '4'],
  ['speed-dominant', 'own-solids', 'dry', '--hook-start', '4'],
  ['youth-twelve', 'plain-twelve', 'short', '--total-hook', '4'],
  ['average-right', 'plain-medium', 'dry', '--sharpness', '5', '--total-hook', '2'],
].map(([bowler, ball, lane, ...want]) => ['--bowler', bowler, '--ball', ball, '--lane', lane, ...want]);

const ALIKE = ['--json', '--no-input', '--workers'];

/** Wall time of a process that must end well, ms. */
function wallOf(args: readonly string[]): number {
  const from = performance.now();
  const { status, stderr } = spawnSync(process.execPath, args, {
    stdio: ['ignore', 'ignore', 'pipe'],
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(`node ${args.join(' ')} ended with ${status}: ${stderr}`);
  return performance.now() - from;
}

/**
 * Times whole answers of the program beside a bare start of Node, turn by turn: the demo's recommendation and a judgement by one thread
 * and by two, and seven other pairings by two. Prints ratios of medians, and how busy the machine was.
 */
export function answerBench(print: (line: string) => void = console.log): void {
  print(`whole answers: ${machine()}, ${availableParallelism()} cores, load ${loadavg()[0].toFixed(1)}`);
  const [demo, ...others] = PAIRINGS;
  const judge = [MAIN, 'judge', ...demo, '--layout', '50 x 4 x 40', ...ALIKE];
  const recommend = (pairing: readonly string[], threads: number): string[] => [
    MAIN,
    'recommend',
    ...pairing,
    ...ALIKE,
    `${threads}`,
  ];
  const rows = [
    { name: 'recommend, the demo, one thread', args: recommend(demo, 1) },
    { name: 'recommend, the demo, two threads', args: recommend(demo, 2) },
    { name: 'judge, one thread', args: [...judge, '1'] },
    { name: 'judge, two threads', args: [...judge, '2'] },
    ...others.map((pairing) => ({
      name: `recommend, ${pairing[1]}, ${pairing[3]}, ${pairing[5]}, two threads`,
      args: recommend(pairing, 2),
    })),
  ];
  const bare: number[] = [];
  const times = rows.map((): number[] => []);
  for (const { args } of rows) wallOf(args); // remembers the cores, warms the disk
  for (let run = 0; run < RUNS; run++)
    rows.forEach(({ args }, i) => {
      bare.push(wallOf(['-e', '0']));
      times[i].push(wallOf(args));
    });
  rows.forEach(({ name }, i) => {
    const took = median(times[i]);
    print(`  ${name.padEnd(64)} ${took.toFixed(0)} ms, ${(took / median(bare)).toFixed(1)} times bare Node`);
  });
}

const median = (times: readonly number[]): number =>
  [...times].sort((a, b) => a - b)[times.length >> 1] as number;
