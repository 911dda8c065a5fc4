import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect } from 'vitest';
import { killedAtWrite, killedWhileWriting } from '../support/killed-command.js';
import type { Kills } from './killed-commands.js';

const ROLL = fileURLToPath(new URL('../fit/roll-shots-main.ts', import.meta.url));

/** Kills a run that rolls the shots of a fit: each time every file that is there is whole, and the next run rolls the rest. */
export async function killRows(scratch: string, times: number): Promise<Kills> {
  const [whole, now] = ['whole', 'now'].map((name) => join(scratch, name)) as [string, string];
  mkdirSync(scratch, { recursive: true });
  const main = (directory: string) => ['--import', import.meta.resolve('tsx'), ROLL, directory];
  const command = { args: [], cwd: process.cwd(), env: {}, main: main(now) };
  const finish = (directory: string): void => {
    const { status, stderr } = spawnSync(process.execPath, main(directory), { encoding: 'utf8' });
    expect(status, stderr).toBe(0);
  };
  const rows = (directory: string): string[] =>
    existsSync(directory)
      ? readdirSync(directory)
          .filter((name) => name.endsWith('.f32'))
          .sort()
      : [];
  const expectWhole = (): void => {
    for (const name of rows(now))
      expect(readFileSync(join(now, name))).toEqual(readFileSync(join(whole, name)));
  };
  finish(whole);
  expect(rows(whole)).toHaveLength(4);
  let aimed = 0;
  for (;;) {
    rmSync(now, { recursive: true, force: true });
    if (!killedAtWrite(command, aimed + 1)) break;
    aimed += 1;
    expectWhole();
  }
  let random = 0;
  for (let time = 0; time < times; time++) {
    rmSync(now, { recursive: true, force: true });
    if (await killedWhileWriting(command, 300 * Math.random())) random += 1;
    expectWhole();
  }
  finish(now);
  expect(rows(now)).toEqual(rows(whole));
  expectWhole();
  return { aimed, random };
}
