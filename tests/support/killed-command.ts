import { spawn, spawnSync } from 'node:child_process';
import { ENV, MAIN } from './run-cli.js';

/*
 * Loaded before the program: counts the steps in which it changes files (a file that is opened to be written, written, flushed, put in
 * place, removed; a folder made), says so before the first one, and kills it before the one that is named, or with half of it written.
 */
const HOOK = `
  import fs from 'node:fs';
  import { syncBuiltinESMExports } from 'node:module';
  const { writeFileSync, writeSync } = fs;
  const { O_WRONLY, O_RDWR } = fs.constants;
  const isRead = (flags = 'r') => (typeof flags === 'number' ? (flags & (O_WRONLY | O_RDWR)) === 0 : flags === 'r');
  let step = 0;
  for (const name of ['openSync', 'writeFileSync', 'fsyncSync', 'renameSync', 'rmSync', 'mkdirSync', 'utimesSync']) {
    const act = fs[name];
    fs[name] = (...args) => {
      if (name === 'openSync' && isRead(args[1])) return act(...args);
      step += 1;
      if (step === 1) process.send?.('writes');
      if (step === Number(process.env.KILL_AT)) {
        if (name === 'writeFileSync') writeFileSync(args[0], args[1].slice(0, args[1].length / 2));
        process.kill(process.pid, 'SIGKILL');
      }
      return act(...args);
    };
  }
  syncBuiltinESMExports();`;

/** Arguments of Node that load it. */
export const KILLED: readonly string[] = ['--import', `data:text/javascript,${encodeURIComponent(HOOK)}`];

/** A command line of the built program, and where it runs. */
export interface Command {
  readonly args: readonly string[];
  readonly cwd: string;
  readonly env: Readonly<Record<string, string>>;
  readonly main?: readonly string[];
}

/** Runs a command that is killed at one step in which it changes files. @returns false when it ended before that step came */
export function killedAtWrite({ args, cwd, env, main = [MAIN] }: Command, step: number): boolean {
  const { status, signal, stderr } = spawnSync(process.execPath, [...KILLED, ...main, ...args], {
    cwd,
    env: { ...ENV, ...env, KILL_AT: String(step) },
    stdio: ['ignore', 'ignore', 'pipe'],
    encoding: 'utf8',
  });
  if (signal === 'SIGKILL') return true;
  if (status === 0) return false;
  throw new Error(stderr);
}

/** Runs a command that is killed some while after it begins to change files. @returns whether it was killed before it ended */
export function killedWhileWriting({ args, cwd, env, main = [MAIN] }: Command, ms: number): Promise<boolean> {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, [...KILLED, ...main, ...args], {
      cwd,
      env: { ...ENV, ...env },
      stdio: ['ignore', 'ignore', 'ignore', 'ipc'],
    });
    child.once('message', () => setTimeout(() => child.kill('SIGKILL'), ms));
    child.on('close', (_, signal) => resolve(signal === 'SIGKILL'));
  });
}
