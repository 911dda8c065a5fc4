import { join } from 'node:path';
import { afterAll, test } from 'vitest';
import { scratchFolder } from '../../support/demo-files.js';
import { killOften } from '../../support/killed.js';

const scratch = scratchFolder();
afterAll(() => scratch.remove());

test('a program killed 12 times while it changes records leaves each change whole or not made', () =>
  killOften(join(scratch.path, 'home'), 12));
