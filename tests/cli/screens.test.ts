import { expect, test } from 'vitest';
import { run } from '../../src/cli/run.js';
import { fakeTerminal } from '../support/fake-terminal.js';

/*
 * Whole screens of commands that compute little, looked at by a person and kept as text. `npm run screens` rewrites them
 * after a change of words; read the difference before it is committed.
 */

// biome-ignore format: one screen a line
test.each([
  { name: 'help', args: ['--help'], columns: 80 },
  { name: 'help of recommend', args: ['recommend', '--help'], columns: 80 },
  { name: 'explain', args: ['explain'], columns: 60 },
  { name: 'explain flare', args: ['explain', 'flare'], columns: 60 },
  { name: 'lane', args: ['lane', '--lane', 'house-easy'], columns: 60 },
  { name: 'lane wide', args: ['lane', '--lane', 'house-easy'], columns: 200 },
  { name: 'core', args: ['core', 'own-solids'], columns: 80 },
  { name: 'core', args: ['core', 'own-mesh', '--ascii'], columns: 60 },
  { name: 'lane metric left', args: ['lane', '--lane', 'worn', '--hand', 'left', '--units', 'metric'], columns: 80 },
])('the screen of $name, a terminal with NO_COLOR and $columns columns', async ({ name, args, columns }) => {
  const terminal = fakeTerminal({ tty: true, columns, env: { NO_COLOR: '1' } });
  expect(await run(args, terminal)).toBe(0);
  expect(terminal.written.err()).toBe('');
  await expect(terminal.written.out()).toMatchFileSnapshot(`screens/${name}, ${columns} columns.txt`);
});

// biome-ignore format: one screen a line
test.each([
  { name: 'a flag misspelt', args: ['roll', '--bowlr', 'average-right'] },
  { name: 'a command misspelt', args: ['recomend'] },
  { name: 'several faults', args: ['judge', '--bowler', 'average-rigth', '--ball', 'plain-medium', '--layout', '70 x 4', '--hook-start', '6', '--units', 'feet', '--no-input'] },
  { name: 'a layout of the wrong mark', args: ['drilled', '--bowler', 'average-right', '--ball', 'asymmetric-mild', '--layout', '70 cg x 4 x 30'] },
  { name: 'distances that do not go together', args: ['drilled', '--bowler', 'average-right', '--ball', 'asymmetric-mild', '--layout', '2 x 3 x 4'] },
])('the screen of $name; exit 2', async ({ name, args }) => {
  const terminal = fakeTerminal({ tty: true, columns: 80 });
  expect(await run(args, terminal)).toBe(2);
  expect(terminal.written.out()).toBe('');
  await expect(terminal.written.err()).toMatchFileSnapshot(`screens/${name}, 80 columns.txt`);
});
