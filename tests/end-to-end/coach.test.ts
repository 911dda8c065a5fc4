import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { scratchFolder } from '../support/demo-files.js';
import { runCli, runSmall } from '../support/run-cli.js';

const folder = scratchFolder();
afterAll(() => folder.remove());

const GIVEN = ['--bowlers', 'average-right,slow-straight', '--balls', 'plain-low', '--lanes', 'short'];
const coach = (...args: string[]) => runSmall(['coach', ...GIVEN, ...args], { cwd: folder.path });

test('coach: parts join to the whole, whatever the number of workers, and a second run reads what the first wrote', async () => {
  const whole = await coach('--jsonl', '--workers', '2', '--out', 'all.jsonl');
  expect(whole.err).toBe('');
  expect(whole.out.trim().split('\n')).toHaveLength(2);
  const [one, two] = [
    await coach('--jsonl', '--workers', '1', '--part', '1/2'),
    await coach('--jsonl', '--part', '2/2'),
  ];
  expect(one.out + two.out).toBe(whole.out);

  const written = readFileSync(join(folder.path, 'all.jsonl'), 'utf8');
  const again = await coach('--jsonl', '--out', 'all.jsonl');
  expect(again.out).toBe(whole.out);
  expect(readFileSync(join(folder.path, 'all.jsonl'), 'utf8')).toBe(written);
});

test('coach: an unknown id is told by the flag that was typed; exit 2', async () => {
  const { code, err } = await runCli(['coach', '--bowlers', 'nope', '--balls', 'nope', '--lanes', 'shrt']);
  expect(code).toBe(2);
  for (const flag of ['--bowlers', '--balls', '--lanes'])
    expect(err).toMatch(new RegExp(`^ *${flag} must be a file, or the id of a`, 'm'));
  expect(err).toContain('Did you mean short?');
});

test('coach: two forms of the answer at once are refused; exit 2', async () => {
  const { code, out, err } = await coach('--csv', '--jsonl');
  expect({ code, out }).toEqual({ code: 2, out: '' });
  expect(err).toContain('--csv must not stand beside --jsonl');
});

test('coach: all that is wrong is told at once; exit 2', async () => {
  folder.write('list.csv', 'name,hand\nKim,right\n');
  const { code, out, err } = await runCli(
    ['coach', '--bowlers', 'list.csv', '--balls', 'plain-lou', '--part', '3/2'],
    { cwd: folder.path },
  );
  expect({ code, out }).toEqual({ code: 2, out: '' });
  for (const words of [
    'column speedMph must be there',
    'Did you mean plain-low?',
    '--lanes is missing',
    'K from 1 to N',
  ])
    expect(err).toContain(words);
});
