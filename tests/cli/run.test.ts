import { expect, test } from 'vitest';
import { run } from '../../src/cli/run.js';
import { fakeTerminal } from '../support/fake-terminal.js';

test.each([[['--help']], [['recommend', '--help']], [['drilled', '--help']], [['roll', '-h']]])(
  'run: help of %j goes to stdout with examples; exit 0',
  async (args) => {
    const terminal = fakeTerminal();
    expect(await run(args, terminal)).toBe(0);
    expect(terminal.written.out()).toMatch(/Usage: flarewise/);
    expect(terminal.written.out()).toMatch(/Examples:\n {2}\$ flarewise/);
    expect(terminal.written.out()).toContain('--json');
    expect(terminal.written.err()).toBe('');
  },
);

test('run: help fits 80 columns, but for examples to be copied whole', async () => {
  const terminal = fakeTerminal();
  await run(['recommend', '--help'], terminal);
  const [flags = ''] = terminal.written.out().split('Examples:');
  for (const line of flags.split('\n')) expect(line.length, line).toBeLessThanOrEqual(80);
});

test('run: --version prints the version of package.json', async () => {
  const terminal = fakeTerminal();
  expect(await run(['--version'], terminal)).toBe(0);
  expect(terminal.written.out()).toMatch(/^\d+\.\d+\.\d+\n$/);
});

test.each([
  { args: ['recomend'], says: ["unknown command 'recomend'", 'Did you mean recommend?'] },
  { args: ['*', 'x'], says: ["unknown command '*'"] },
  { args: ['rec'], says: ["unknown command 'rec'", 'Did you mean recommend?'] },
  { args: ['lst'], says: ["unknown command 'lst'", 'Did you mean shelf list?'] },
  { args: ['shelf', '--drilld-on', 'x'], says: ['Did you mean --drilled-on?'] },
  { args: ['recommend', '--bowlr', 'x'], says: ["unknown option '--bowlr'", 'Did you mean --bowler?'] },
  { args: ['--jsn'], says: ["unknown option '--jsn'", 'Did you mean --json?'] },
  { args: ['recommend', '--top'], says: ['--top <n>', 'argument missing'] },
  {
    args: ['roll', '--layout', '70', 'x', '4', '1/2', 'x', '30'],
    says: ['too many arguments', 'a layout needs quotes'],
  },
  {
    args: ['lane', 'league-night'],
    says: [
      'too many arguments',
      '(--help shows every flag with examples, such as:\nflarewise lane --lane house-easy)',
    ],
  },
  {
    args: ['drilled', '--layout', '20 x 4 x 30', '--layout', '70 x 4 x 30'],
    says: ["'20 x 4 x 30' stands before it", 'flarewise compare takes several'],
  },
  { args: ['judge', '--seed', '1', '--seed', '2'], says: ['--seed <n>', "'1' stands before it."] },
])('run: $args is refused with a remedy on stderr; exit 2', async ({ args, says }) => {
  const terminal = fakeTerminal();
  expect(await run(args, terminal)).toBe(2);
  for (const words of says) expect(terminal.written.err()).toContain(words);
  expect(terminal.written.err()).toContain('--help');
  expect(terminal.written.out()).toBe('');
});
