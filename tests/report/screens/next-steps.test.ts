import { expect, test } from 'vitest';
import { nextCommands, SAVED } from '../../../src/cli/print/next-commands.js';
import { nextSteps } from '../../../src/report/screens/next-steps.js';
import { pageOf } from '../../support/page.js';

const typed = {
  bowler: 'me',
  ball: 'my balls/red.json',
  lane: 'long',
  layout: '45 x 4 5/8 x 23',
  hookStart: '41 ft',
  units: 'metric',
};

/** The commands as a shell reads them, a line each. */
const commands = (text: string): string[] =>
  text
    .replace(/ \\\n\s+/g, ' ')
    .split('\n')
    .flatMap((line) => (/^ {4}flarewise /.test(line) ? [line.trim()] : []));

test('nextSteps: each command stands whole, with records, wishes and layout quoted for the shell', () => {
  const steps = nextCommands(typed, ['sheet', 'judge', 'recommend', 'lane', 'map', 'drilled', 'keep']);
  for (const width of [40, 60, 80, 200])
    expect(commands(nextSteps(steps, pageOf(width)))).toEqual([
      'flarewise sheet --bowler me --ball "my balls/red.json" --lane long --layout "45 x 4 5/8 x 23" --units metric --out sheet.pdf',
      'flarewise judge --bowler me --ball "my balls/red.json" --lane long --units metric --hook-start "41 ft" --layout "45 x 4 5/8 x 23"',
      'flarewise recommend --bowler me --ball "my balls/red.json" --lane long --units metric --hook-start "41 ft"',
      'flarewise recommend --lane long --units metric',
      'flarewise map --bowler me --ball "my balls/red.json" --layout "45 x 4 5/8 x 23" --units metric',
      'flarewise drilled --bowler me --ball "my balls/red.json" --layout "45 x 4 5/8 x 23" --units metric',
      'flarewise shelf add --bowler me --ball "my balls/red.json" --layout "45 x 4 5/8 x 23"',
    ]);
});

test('nextSteps: no line is wider than the page where its words allow it', () => {
  const lines = nextSteps(nextCommands(typed, ['sheet', 'judge']), pageOf(60)).split('\n');
  for (const line of lines) expect(line.length, line).toBeLessThanOrEqual(60);
  expect(lines.filter((line) => line.endsWith('\\')).length).toBeGreaterThan(1);
});

test('nextSteps: a flag that was not typed is left out; after the interview the shelf is named', () => {
  expect(commands(nextSteps(nextCommands({ bowler: 'me', ball: 'red' }, ['drilled']), pageOf(80)))).toEqual([
    'flarewise drilled --bowler me --ball red',
  ]);
  expect(commands(nextSteps([SAVED], pageOf(80)))).toEqual(['flarewise shelf']);
});
