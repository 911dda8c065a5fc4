import { existsSync, mkdirSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { expect } from 'vitest';
import { readInterviewDraft } from '../../src/cli/files/interview-draft.js';
import { KILLED } from '../support/killed-command.js';
import { CTRL_C, ENTER, openSession } from '../support/pty-session.js';
import { MAIN } from '../support/run-cli.js';
import type { Kills } from './killed-commands.js';

const SIGKILL = 9;
const KEYS = ENTER.repeat(11); // all questions up to the review, typed ahead

/** An interview at a keyboard, killed at one step in which it changes files, else left with ctrl-C from the review. */
async function interview(home: string, killAt: number): Promise<boolean> {
  rmSync(home, { recursive: true, force: true });
  mkdirSync(home, { recursive: true });
  const env = { FLAREWISE_HOME: home, KILL_AT: String(killAt), NODE_NO_WARNINGS: '1' };
  const session = openSession([], { env, main: [...KILLED, MAIN] });
  await session.waitFor(/1\/\d+ /);
  session.type(KEYS);
  await session.waitFor(/> Go on/).then(
    () => session.type(CTRL_C),
    () => undefined, // it has ended
  );
  const { exitCode, signal } = await session.exit;
  if (signal === SIGKILL) return true;
  expect(exitCode).toBe(130);
  return false;
}

/** Kills an interview at every step in which it changes files: each time the draft holds answers that were given, or there is none. */
export async function killInterview(scratch: string): Promise<Kills> {
  const home = join(scratch, 'home');
  await interview(home, Number.POSITIVE_INFINITY);
  const given = (readInterviewDraft(home) ?? []).map((pair) => JSON.stringify(pair));
  expect(given.length).toBeGreaterThan(5);
  let aimed = 0;
  let most = 0;
  while (await interview(home, aimed + 1)) {
    aimed += 1;
    const draft = readInterviewDraft(home);
    if (draft === null) expect(existsSync(join(home, 'interview-draft.json'))).toBe(false);
    const kept = (draft ?? []).map((pair) => JSON.stringify(pair));
    for (const pair of kept) expect(given).toContain(pair);
    expect(kept.length).toBeGreaterThanOrEqual(most - 1); // no more than the last answer is lost
    most = Math.max(most, kept.length);
  }
  return { aimed, random: 0 };
}
