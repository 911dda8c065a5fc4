import { expect, test } from 'vitest';
import { run } from '../../src/cli/run.js';
import { fakeTerminal } from '../support/fake-terminal.js';

const PASTED = 'pasted '.repeat(200).trim();

test.each([
  ['a command', [PASTED]],
  ['a flag', ['roll', `--${PASTED}`]],
  ['a layout', ['drilled', '--bowler', 'average-right', '--ball', 'plain-low', '--layout', PASTED]],
  ['a wish', ['recommend', '--hook-start', PASTED]],
  ['a term', ['explain', PASTED]],
  ['an action', ['shelf', PASTED]],
  ['a rule set', ['drilled', '--rules', PASTED]],
  ['a day', ['sheet', '--date', PASTED]],
])('what was pasted as %s is echoed on a line at most', async (_, args) => {
  const terminal = fakeTerminal();
  expect(await run(args, terminal)).toBe(2);
  const echoed = terminal.written.err().match(/(pasted\s*)+/g) ?? [];
  expect(echoed.length).toBeGreaterThan(0);
  for (const each of echoed) expect(each.length).toBeLessThanOrEqual(60);
});
