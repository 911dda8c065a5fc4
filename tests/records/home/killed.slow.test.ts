import { join } from 'node:path';
import { afterAll, test } from 'vitest';
import { countKills } from '../../end-to-end/kills-page.js';
import { scratchFolder } from '../../support/demo-files.js';
import { killOften } from '../../support/killed.js';

const scratch = scratchFolder();
afterAll(() => scratch.remove());

test('a program killed 500 times while it changes records leaves each change whole or not made', async () => {
  await killOften(join(scratch.path, 'home'), 500);
  countKills('records, one change after another', { aimed: 0, random: 500 });
});
