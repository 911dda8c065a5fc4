import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { scratchFolder } from '../support/demo-files.js';
import { KilledCommand } from './killed-commands.js';
import { killInterview } from './killed-interview.js';
import { killRows } from './killed-rows.js';
import { countKills } from './kills-page.js';
import { WRITING } from './writing-commands.js';

const scratch = scratchFolder();
afterAll(() => scratch.remove());

test.each(Object.entries(WRITING))(
  '%s: killed at any step or moment, what it writes is as it was or done, and the next command works at once',
  async (name, writing) => {
    const killed = new KilledCommand(join(scratch.path, name.replaceAll(' ', '-')), writing);
    await killed.prepare();
    const kills = await killed.kill();
    countKills(name, kills);
    expect(kills.aimed).toBeGreaterThan(3);
  },
);

test('an interview killed at any step: the draft holds what was answered', async () => {
  const kills = await killInterview(join(scratch.path, 'interview'));
  countKills('the interview, its draft', kills);
  expect(kills.aimed).toBeGreaterThan(20);
});

test('the shots of a fit, killed at any step or moment: what is kept is whole', async () => {
  const kills = await killRows(join(scratch.path, 'rows'), 10);
  countKills('fit, its shots', kills);
  expect(kills.aimed).toBeGreaterThan(10);
});
