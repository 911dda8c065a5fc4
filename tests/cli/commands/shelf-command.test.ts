import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { run } from '../../../src/cli/run.js';
import { scratchFolder } from '../../support/demo-files.js';
import { fakeTerminal } from '../../support/fake-terminal.js';

const folder = scratchFolder();
afterAll(() => folder.remove());

const ADD = ['shelf', 'add', 'first', '--bowler', 'average-right', '--ball', 'plain-medium'];

test.each([
  ['a terminal', true, 'Next, log its shots: flarewise log first\n'],
  ['a pipe', false, ''],
])('shelf add: %s gets the id alone on stdout; a terminal also the next command', async (what, tty, said) => {
  const terminal = fakeTerminal({ tty, env: { FLAREWISE_HOME: join(folder.path, what) } });
  expect(await run([...ADD, '--layout', '70 x 4 1/2 x 30'], terminal)).toBe(0);
  expect(terminal.written.out()).toBe('layout/first\n');
  expect(terminal.written.err()).toBe(said);
});
