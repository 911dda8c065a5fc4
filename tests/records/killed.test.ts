import { join } from 'node:path';
import { afterAll, test } from 'vitest';
import { scratchFolder } from '../end-to-end/demo-files.js';
import { killOften } from './killed.js';

const scratch = scratchFolder();
afterAll(() => scratch.remove());

test('a program killed 30 times while it changes records leaves each change whole or not made', () =>
  killOften(join(scratch.path, 'home'), 30));
