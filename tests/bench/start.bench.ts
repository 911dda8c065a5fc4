import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import { spawn as spawnTerminal } from '@lydell/node-pty';
import { ENTER, openSession, turnsOf } from '../support/pty-session.js';
import { machine } from './timing.js';

const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const MAIN = join(ROOT, 'dist/cli/main.js');
const RUNS = 20;
const FEW_RUNS = 5;

const RECORDS = ['--bowler', 'average-right', '--ball', 'plain-medium', '--lane', 'house-easy'];

/**
 * Times what a person waits for at the start, turn by turn with a bare start of Node: `--help`, the first
 * question of `npm start` on a tree in which nothing has changed, the first look of `recommend`, and its answer after a review that was
 * read for a while. Prints ratios of medians.
 */
export async function startBench(print: (line: string) => void = console.log): Promise<void> {
  const bare: number[] = [];
  const help: number[] = [];
  start([MAIN, '--help']); // warm the disk
  for (let run = 0; run < RUNS; run++) {
    bare.push(start(['-e', '0']));
    help.push(start([MAIN, '--help']));
  }
  print(`start: ${machine()}`);
  const beside = (times: readonly number[]): string =>
    `${median(times).toFixed(0)} ms, ${(median(times) / median(bare)).toFixed(2)} times bare Node's ${median(bare).toFixed(0)} ms`;
  print(`  --help ${beside(help)} (medians of ${RUNS})`);

  const folder = mkdtempSync(join(tmpdir(), 'flarewise-'));
  const env = {
    PATH: process.env.PATH ?? '',
    LANG: 'C.UTF-8',
    FLAREWISE_HOME: folder,
  };
  await seen('npm', ['start'], FIRST_QUESTION, env);
  const question: number[] = [];
  const look: number[] = [];
  for (let run = 0; run < FEW_RUNS; run++) {
    question.push(await seen('npm', ['start'], FIRST_QUESTION, env));
    look.push(await seen('node', [MAIN, 'recommend', ...RECORDS, '--hook-start', '4'], /First look/, env));
  }
  print(`  first question of npm start ${beside(question)} (medians of ${FEW_RUNS})`);
  print(`  first look of recommend ${beside(look)}`);
  for (const seconds of [0, 2, 5]) {
    const answer: number[] = [];
    for (let run = 0; run < FEW_RUNS; run++) answer.push(await afterReview(seconds));
    print(`  answer after a review read for ${seconds} s ${beside(answer)}`);
  }
  rmSync(folder, { recursive: true });
}

/** Wall time from start to end, ms. */
function start(args: readonly string[]): number {
  const from = performance.now();
  const { status } = spawnSync(process.execPath, args, { stdio: 'ignore' });
  if (status !== 0) throw new Error(`node ${args.join(' ')} ended with ${status}`);
  return performance.now() - from;
}

/** The head of the interview's first question. */
const FIRST_QUESTION = /1\/\d+ Who bowls/;

/** Far longer than anything waited for takes, ms. */
const PATIENCE = 60_000;

/** Wall time until a terminal shows something, ms; the program is then ended. */
function seen(
  command: string,
  args: readonly string[],
  what: RegExp,
  env: Record<string, string>,
): Promise<number> {
  return new Promise((resolve, reject) => {
    const from = performance.now();
    const pty = spawnTerminal(command, [...args], { cols: 80, rows: 50, cwd: ROOT, env });
    let shown = '';
    let time: number | undefined;
    pty.onData((data) => {
      shown += data;
      if (time !== undefined || !what.test(shown)) return;
      time = performance.now() - from;
      pty.write('\u0003');
    });
    const timer = setTimeout(() => pty.kill(), PATIENCE);
    pty.onExit(() => {
      clearTimeout(timer);
      if (time === undefined) reject(new Error(`never seen: ${what} in ${shown}`));
      else resolve(time);
    });
  });
}

/** Wall time from going on at a review that was read for so long until the answer stands, ms. */
async function afterReview(seconds: number): Promise<number> {
  const session = openSession(['recommend', ...RECORDS]);
  const turn = turnsOf(session);
  for (const question of [/hook start\?/, /hook look/, /hook in all/]) await turn(question, ENTER);
  await turn(/> Go on/);
  await pause(1000 * seconds);
  const from = performance.now();
  session.type(ENTER);
  await turn(/DRILL[\s\S]*Enter: done/);
  const time = performance.now() - from;
  session.type(ENTER);
  await session.exit;
  return time;
}

const median = (times: readonly number[]): number =>
  [...times].sort((a, b) => a - b)[times.length >> 1] as number;
