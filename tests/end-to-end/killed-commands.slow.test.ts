import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { scratchFolder } from '../support/demo-files.js';
import { KilledCommand } from './killed-commands.js';
import { WRITING } from './writing-commands.js';

const scratch = scratchFolder();
let total = 0;
afterAll(() => {
  scratch.remove();
  process.stdout.write(`killed ${total} times\n`);
});

test.each(Object.entries(WRITING))(
  '%s: killed at any step or moment, what it writes is as it was or done, and the next command works at once',
  async (name, writing) => {
    const killed = new KilledCommand(join(scratch.path, name.replaceAll(' ', '-')), writing);
    await killed.prepare();
    const kills = await killed.kill();
    total += kills;
    process.stdout.write(`${name}: killed ${kills} times\n`);
    expect(kills).toBeGreaterThan(4);
  },
);
