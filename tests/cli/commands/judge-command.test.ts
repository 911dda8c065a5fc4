import { expect, test } from 'vitest';
import { run } from '../../../src/cli/run.js';
import { fakeTerminal } from '../../support/fake-terminal.js';
import { TINY_BUDGET } from '../../support/small-budget.js';

const CASE = '--bowler average-right --ball plain-medium --lane house-easy --workers 1'.split(' ');

/** What follows the verdict, as one line. */
async function nextAfter(layout: string): Promise<string> {
  const terminal = { ...fakeTerminal(), budget: TINY_BUDGET };
  const code = await run(['judge', ...CASE, '--hook-start', '4', '--layout', layout], terminal);
  expect(code, terminal.written.err()).toBe(0);
  const [, next = ''] = terminal.written.out().split('\nNext\n');
  return next.replace(/ \\\n/g, ' ').replace(/\s+/g, ' ');
}

test('judge: of a layout that may be drilled the sheet comes next; of one that may not, the sheet of the best found, in words', async () => {
  expect(await nextAfter('50 x 4 1/2 x 35')).toMatch(
    /^ The sheet for the shop: flarewise sheet .*--layout "50 x 4 1\/2 x 35" --out/,
  );
  const instead = await nextAfter('50 x 4 1/2 x 110');
  expect(instead).toMatch(
    /^ The sheet of the best layout found instead, for the shop: flarewise sheet .*--layout "/,
  );
  expect(instead).not.toContain('50 x 4 1/2 x 110');
});
