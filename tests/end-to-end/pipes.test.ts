import { expect, test } from 'vitest';
import { DEMO } from '../../src/records/shelf.js';
import { runCli } from './run-cli.js';

const roll = [
  'roll',
  '--bowler',
  DEMO.bowler,
  '--ball',
  DEMO.ball,
  '--lane',
  DEMO.lane,
  '--layout',
  '70 x 4 1/2 x 30',
];

test('a reader that closes early, as head does, is no failure', async () => {
  const { code, err } = await runCli([...roll, '--json'], { onStart: (child) => child.stdout?.destroy() });
  expect(err).toBe('');
  expect(code).toBe(0);
});

test('an interrupt during the search ends it without an answer, quietly, with 130', async () => {
  const { code, signal, out, err } = await runCli(['--workers', '2'], {
    onStart: (child) => child.stderr?.once('data', () => setTimeout(() => child.kill('SIGINT'), 700)),
  });
  expect({ code, signal, out }).toEqual({ code: 130, signal: null, out: '' });
  expect(err).not.toMatch(/Error|\n {4}at /);
});
