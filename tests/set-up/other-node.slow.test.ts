import { execFileSync } from 'node:child_process';
import { describe, expect, test } from 'vitest';
import { otherNodes } from '../support/other-nodes.js';
import { ENV, MAIN } from '../support/run-cli.js';

/* The same answer, byte for byte, from every version of Node that is to be had here. */

const RECORDS = ['--bowler', 'average-right', '--ball', 'plain-medium', '--lane', 'house-easy'];
const LAYOUT = ['--layout', '70 x 4 1/2 x 30'];

/** Commands that between them go through cores, drilling, shots, worlds, the search and reasons. */
const ANSWERS: readonly (readonly string[])[] = [
  ['recommend', ...RECORDS, '--hook-start', '4', '--workers', '1'],
  [
    'judge',
    '--bowler',
    'average-left',
    '--ball',
    'own-solids',
    '--lane',
    'worn',
    ...LAYOUT,
    '--total-hook',
    '4',
  ],
  ['sheet', ...RECORDS, ...LAYOUT, '--date', '2026-01-01'],
];

const others = otherNodes();

describe.skipIf(others.length === 0)('bytes are those of this Node', () => {
  test.each(others.flatMap((node) => ANSWERS.map((args) => ({ ...node, args, command: args[0] }))))(
    'of $command by Node $version',
    ({ path, args }) => {
      const [here, there] = [process.execPath, path].map((node) =>
        execFileSync(node, [MAIN, ...args, '--json'], { env: ENV, encoding: 'utf8', maxBuffer: 2 ** 28 }),
      );
      expect(here.length).toBeGreaterThan(1000);
      expect(there).toBe(here);
    },
  );
});

test.runIf(others.length === 0)('no second Node was found: name some in FLAREWISE_OTHER_NODES', () => {
  expect(otherNodes()).toEqual([]);
  process.stdout.write(
    'No second Node was found, so bytes were not compared: name some in FLAREWISE_OTHER_NODES.\n',
  );
});
