import { execFileSync } from 'node:child_process';
import { chmodSync, mkdirSync, readFileSync } from 'node:fs';
import { delimiter, join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { demo, scratchFolder } from '../support/demo-files.js';
import { ENV, MAIN } from '../support/run-cli.js';
import { readmeCommands } from './page-commands.js';

/* What the pages tell to type works as it stands, in a folder that holds the files it names, with nothing kept or remembered. */

const folder = scratchFolder();
afterAll(() => folder.remove());

for (const name of ['balls', 'lanes', 'bin']) mkdirSync(join(folder.path, name));
folder.write('me.json', demo.bowler());
for (const name of ['new.json', 'balls/a.json']) folder.write(name, demo.ball());
for (const name of ['league.json', 'lanes/a.json']) folder.write(name, demo.lane());
folder.write('club.csv', 'name,hand,thumbHole,speedMph,revRateRpm\nKim,right,yes,17,300\n');

const program = folder.write(
  'bin/flarewise',
  `#!/bin/sh\nexec ${[process.execPath, MAIN].map((word) => `'${word}'`).join(' ')} "$@"\n`,
);
chmodSync(program, 0o755);

const env = {
  ...ENV,
  PATH: `${join(folder.path, 'bin')}${delimiter}${ENV.PATH}`,
  FLAREWISE_HOME: join(folder.path, 'home'),
  SLURM_ARRAY_TASK_ID: '1',
  SLURM_CPUS_ON_NODE: '1',
};
const shell = (line: string): string =>
  execFileSync('sh', ['-c', line], {
    cwd: folder.path,
    env,
    encoding: 'utf8',
    stdio: ['ignore', 'pipe', 'inherit'],
  });

const commands = readmeCommands();

test.skipIf(process.platform === 'win32')('records are kept first, as the README says one can', () => {
  expect(commands.length).toBeGreaterThan(6);
  for (const line of commands.filter((each) => /^flarewise shelf +import /.test(each))) shell(line);
});

test
  .skipIf(process.platform === 'win32')
  .each(commands.filter((each) => !/^flarewise shelf +import /.test(each)))('%s', (line) => {
  const printed = shell(line);
  const kept = />\s*(\S+)$/.exec(line)?.[1]?.replace('$SLURM_ARRAY_TASK_ID', '1');
  expect(kept ? readFileSync(join(folder.path, kept), 'utf8') : printed).not.toBe('');
});

test.skipIf(process.platform === 'win32')(
  'what the README shows first is what its command prints where nothing is kept',
  () => {
    const line =
      commands.find((each) => each.startsWith('flarewise recommend ')) ?? expect.fail('no such command');
    const shown = readFileSync(new URL('../../shared/examples/first-screen.txt', import.meta.url), 'utf8');
    expect(shell(`FLAREWISE_HOME=nothing-kept ${line}`)).toBe(shown);
  },
);
