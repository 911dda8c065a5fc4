import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { usualGrip } from '../../src/records/schemas/grip.js';
import { demo, scratchFolder } from '../support/demo-files.js';
import { runCli, runSmall } from '../support/run-cli.js';
import { wrongBy } from '../support/schema-validator.js';

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

test('coach: what cannot be is told in the person’s units, from a kept file too, and a file of another version is refused', async () => {
  const vents = [{ into: 'thumb', diameterIn: 0.25, overIn: 0.2, upIn: -2.7 }];
  const bowler = folder.write('vent.json', { ...demo.bowler(), grip: { ...usualGrip(true), vents } });
  const given = ['coach', '--bowlers', bowler, '--balls', 'plain-low', '--lanes', 'short', '--workers', '1'];
  const run = (...args: string[]) => runCli([...given, '--out', 'kept.jsonl', ...args], { cwd: folder.path });

  const lines = await run('--jsonl');
  expect(lines).toMatchObject({ code: 0, err: '' });
  const line = JSON.parse(lines.out);
  expect(line).toMatchObject({
    schema: 'flarewise/coach-fault/2',
    refusals: [{ code: 'vent-impossible', params: { why: 'mouth-in-hole', overIn: 0.2 } }],
  });
  expect(line.fault).toContain('from 0.2 in over, -2.7 in up');
  expect(JSON.parse((await run('--json')).out)).toEqual([line]);

  const shown = async (): Promise<string> => (await run('--units', 'metric')).out.replace(/\s+/g, ' ');
  const kept = join(folder.path, 'kept.jsonl');
  const written = readFileSync(kept, 'utf8');
  expect(written).toContain(lines.out.trim());
  for (const each of written.trim().split('\n')) expect(wrongBy('coach-line', JSON.parse(each))).toEqual([]);
  expect(await shown()).toContain('from 5.1 mm over, -68.6 mm up');
  expect((await run('--csv')).out).toContain('from 0.2 in over, -2.7 in up');
  expect(readFileSync(kept, 'utf8')).toBe(written);

  const { refusals: _, ...older } = { ...line, schema: 'flarewise/coach-fault/1' };
  const done = { schema: 'flarewise/coach-done/1', key: 'of another version' };
  writeFileSync(kept, [older, done].map((each) => `${JSON.stringify(each)}\n`).join(''));
  const refused = await run('--jsonl');
  expect(refused.code).toBe(2);
  expect(refused.err).toContain('Another version wrote it.');
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

test('coach: a student whose log cannot be learned from takes no answer from the others', async () => {
  const home = join(folder.path, 'home');
  for (const kind of ['bowlers', 'layouts']) mkdirSync(join(home, kind), { recursive: true });
  const noThumb = { ...usualGrip(true), thumb: null }; // and thumbHole says true
  folder.write('home/bowlers/kim.json', { ...demo.bowler(), name: 'Kim', grip: noThumb });
  folder.write('home/bowlers/lee.json', { ...demo.bowler(), name: 'Lee' });
  const shots = [{ laydownBoard: 20, arrowsBoard: 14, breakpointBoard: 8, pinsBoard: 17 }];
  const layout = { schema: 'flarewise/layout/2', ball: 'plain-low', layout: '45 x 4 x 35' };
  for (const bowler of ['kim', 'lee'])
    folder.write(`home/layouts/${bowler}-1.json`, {
      ...layout,
      name: `of ${bowler}`,
      bowler,
      nights: [{ on: '2026-03-31', lane: 'short', shots }],
    });
  const run = (workers: string) =>
    runSmall(
      [
        'coach',
        '--bowlers',
        'kim,lee',
        '--balls',
        'plain-low',
        '--lanes',
        'short',
        '--jsonl',
        '--workers',
        workers,
      ],
      { env: { FLAREWISE_HOME: home } },
    );
  const { code, out } = await run('2');
  expect(code).toBe(0);
  expect(
    out
      .trim()
      .split('\n')
      .map((line) => JSON.parse(line)),
  ).toMatchObject([
    { bowler: 'Kim', refusals: [{ code: 'thumb-disagrees' }] },
    { bowler: 'Lee', learned: { shots: 1, nights: 1 } },
  ]);
  folder.write('home/bowlers/ann.json', 'no JSON');
  const again = await run('1');
  expect(again.out).toBe(out);
  expect(again.err.match(/bowler\/ann is left out/g)).toHaveLength(1);
});
