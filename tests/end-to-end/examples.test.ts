import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { COMMANDS } from '../../src/cli/command-table.js';
import { demo, scratchFolder } from '../support/demo-files.js';
import { runCli, runSmall } from '../support/run-cli.js';

const folder = scratchFolder();
afterAll(() => folder.remove());
folder.write('me.json', demo.bowler());
folder.write('new.json', demo.ball());
folder.write('league.json', demo.lane());
folder.write('shots.csv', 'lane,laydownBoard,arrowsBoard,breakpointBoard,pinsBoard\nhouse-easy,20,14,8,17\n');

/** Arguments as a shell would part them, but for where the output goes; examples use double quotes only. */
const parted = (line: string): string[] =>
  [...line.replace(/ > .*/, '').matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, bare]) => quoted ?? bare);

/** A shelf with a drilled ball and its log, for the commands that go on from one. */
const shelf = { FLAREWISE_HOME: join(folder.path, 'shelf') };
for (const line of [
  'shelf import me.json new.json league.json',
  'shelf add first --bowler me --ball new --layout "70 x 4 1/2 x 30" --as first',
  'log first 20 14 8 17 --lane house-easy --target 14 --night 2026-03-31',
])
  await runCli(parted(line), { cwd: folder.path, env: shelf });
const GOES_ON = /^(adjust|learned) /;

const examples: string[] = [];
for (const command of [[], ...COMMANDS.map(({ name }) => [name])]) {
  const { out } = await runCli([...command, '--help']);
  examples.push(...[...out.matchAll(/^ {2}\$ flarewise (.+)$/gm)].map(([, line]) => line));
}

describe('examples in the help', () => {
  test('every command has one', () => {
    for (const { name } of COMMANDS)
      expect(
        examples.some((line) => line.startsWith(name)),
        name,
      ).toBe(true);
  });

  test.each(examples)('flarewise %s', async (line) => {
    const { code, out, err } = await runSmall(parted(line), {
      cwd: folder.path,
      env: GOES_ON.test(line) ? shelf : { FLAREWISE_HOME: join(folder.path, 'home') },
    });
    expect(err).toBe('');
    expect(code).toBe(0);
    expect(out.length).toBeGreaterThan(5); // at least the id of what was kept
  });
});
