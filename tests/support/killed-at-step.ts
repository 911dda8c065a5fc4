import { spawnSync } from 'node:child_process';

/*
 * Loaded before a program: counts what it does to files, and kills it at the step that is named, before it is done or,
 * where something is written, when half of it is.
 */
const HOOK = `
  import fs from 'node:fs';
  import { syncBuiltinESMExports } from 'node:module';
  const { writeFileSync } = fs;
  let step = 0;
  for (const name of ['openSync', 'writeFileSync', 'fsyncSync', 'closeSync', 'renameSync', 'rmSync', 'mkdirSync', 'utimesSync']) {
    const act = fs[name];
    fs[name] = (...args) => {
      if (++step === Number(process.env.KILL_AT)) {
        if (name === 'writeFileSync') writeFileSync(args[0], args[1].slice(0, args[1].length / 2));
        process.kill(process.pid, 'SIGKILL');
      }
      return act(...args);
    };
  }
  syncBuiltinESMExports();`;

/**
 * Runs a program that is killed at one step of what it does to files.
 *
 * @returns false when it ended before that step came
 */
export function killedAtStep(script: string, step: number): boolean {
  const hook = `data:text/javascript,${encodeURIComponent(HOOK)}`;
  const { status, signal, stderr } = spawnSync(
    process.execPath,
    ['--import', hook, '--input-type=module', '-e', script],
    { env: { ...process.env, KILL_AT: String(step) }, encoding: 'utf8' },
  );
  if (signal === 'SIGKILL') return true;
  if (status === 0) return false;
  throw new Error(stderr);
}
