import { cpSync, mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, test } from 'vitest';
import { demo, scratchFolder } from '../support/demo-files.js';
import { runCli } from '../support/run-cli.js';
import { wrongBy } from '../support/schema-validator.js';

const folder = scratchFolder();
afterAll(() => folder.remove());
const env = { FLAREWISE_HOME: join(folder.path, 'home') };
const shelf = (...args: string[]) => runCli(['shelf', ...args], { env, cwd: folder.path });

test('shelf: a bowler imported from a file is called by its id ever after', async () => {
  folder.write('kim.json', { ...demo.bowler(), name: 'Kim' });
  expect(await shelf('import', 'kim.json')).toMatchObject({ code: 0, out: 'bowler/kim\n' });
  const listed = await shelf();
  expect(listed.out).toMatch(/kim +right-handed/);
  expect(listed.out).toMatch(/average-left +demo: left-handed/);
  const drilled = await runCli(
    ['drilled', '--bowler', 'kim', '--ball', 'plain-medium', '--layout', '70 x 4 1/2 x 30'],
    { env },
  );
  expect(drilled.out).toContain('drilled for Kim');
});

test('shelf: what is exported can be imported elsewhere, with the same ids', async () => {
  const exported = await shelf('export');
  folder.write('all.json', exported.out);
  const elsewhere = { FLAREWISE_HOME: join(folder.path, 'elsewhere') };
  const { out } = await runCli(['shelf', 'import', 'all.json'], { env: elsewhere, cwd: folder.path });
  expect(out).toBe('bowler/kim\n');
  expect((await runCli(['shelf', 'export'], { env: elsewhere })).out).toBe(exported.out);
});

test('shelf --json: lists, bundles and what was done are JSON, the first two by their schemas', async () => {
  const asJson = async (...args: string[]) => JSON.parse((await shelf(...args, '--json')).out);
  folder.write('json.json', { ...demo.bowler(), name: 'Json' });
  expect(await asJson('import', 'json.json')).toEqual(['bowler/json']);
  expect(await asJson('rename', 'json', 'jason')).toEqual(['bowler/jason']);
  mkdirSync(join(folder.path, 'home', 'lanes'), { recursive: true });
  const broken = folder.write('home/lanes/broken.json', 'no JSON');
  const listed = await asJson();
  expect(listed.records.map(({ id }: { id: string }) => id)).toEqual(
    expect.arrayContaining(['jason', 'broken']),
  );
  expect(wrongBy('shelf-answer', listed)).toEqual([]);
  rmSync(broken);
  expect(wrongBy('shelf-bundle', await asJson('export'))).toEqual([]);
  expect(await asJson('remove', 'jason', '--yes')).toEqual(['bowler/jason']);
});

test("shelf: a coach's list goes out and comes in", async () => {
  const { out } = await shelf('export', '--csv');
  folder.write('list.csv', out.replace('Kim', 'Lee'));
  expect((await shelf('import', 'list.csv')).out).toBe('bowler/lee\n');
});

test('shelf: of a list that names balls it says that they are not kept', async () => {
  const [heads, ...rows] = (await shelf('export', '--csv')).out.trimEnd().split('\r\n');
  const withBalls = (balls: string): string =>
    [`${heads},balls`, ...rows.map((row) => `${row},${balls}`)].join('\n');
  folder.write('balls.csv', withBalls('plain-high'));
  const { code, err } = await shelf('import', 'balls.csv', '--replace');
  expect([code, err]).toEqual([
    0,
    'balls.csv: the column balls is not kept. flarewise coach reads it from the list.\n',
  ]);
  folder.write('none.csv', withBalls(''));
  expect((await shelf('import', 'none.csv', '--replace')).err).toBe('');
});

test('shelf: a list says whose grip and scatter it leaves out, and keeps how sure numbers are', async () => {
  const home = { FLAREWISE_HOME: join(folder.path, 'lists') };
  const run = (...words: string[]) => runCli(['shelf', ...words], { env: home, cwd: folder.path });
  const scatter = { speedMph: 1, revRateRpm: 9, axisTiltDeg: 2, axisRotationDeg: 3, launchAngleDeg: 0.5 };
  folder.write('ann.json', { ...demo.bowler(), name: 'Ann', scatter, axisTiltDeg: '12-16', speedMph: '~17' });
  await run('import', 'ann.json');
  const { out, err } = await run('export', '--csv');
  expect(err).toContain('scatter of ann');
  const [heads, ann] = out.split('\n').map((line) => line.split(','));
  const cell = (head: string): string | undefined => ann[heads.indexOf(head)];
  expect([cell('axisTiltDeg'), cell('axisTiltDeg +/-')]).toEqual(['14', '2']);
  expect([cell('speedMph'), cell('speedMph +/-')]).toEqual(['17', '0.6']);
  expect(JSON.parse((await run('export')).out).records[0].record).toMatchObject({
    scatter,
    uncertainty: { axisTiltDeg: 2, speedMph: 0.6 },
  });
});

test('shelf: a list imported once more with --replace replaces', async () => {
  const home = { FLAREWISE_HOME: join(folder.path, 'again') };
  const run = (...words: string[]) => runCli(['shelf', ...words], { env: home, cwd: folder.path });
  const heads = 'name;hand;thumbHole;speedMph;revRateRpm;axisTiltDeg;axisRotationDeg;papOverIn;papUpIn';
  for (const speed of ['17,5', '27 km/h']) {
    folder.write('club.csv', `${heads}\nAnna;right;yes;${speed};~320;13;40-50;4⅞;1/4 down`);
    expect((await run('import', 'club.csv', '--replace')).out).toBe('bowler/anna\n');
  }
  const { records } = JSON.parse((await run('export')).out);
  expect(records).toHaveLength(1);
  expect(records[0].record.speedMph).toBeCloseTo(27 / 1.609344, 9);
  expect(records[0].record).toMatchObject({ axisRotationDeg: 45, pap: { overIn: 4.875, upIn: -0.25 } });
});

test('shelf: a layout calls a kept record and a demo by id, a record in a file by its name', async () => {
  folder.write('reserve.json', { ...demo.ball(), name: 'My reserve' });
  const layout = ['--layout', '70 x 4 1/2 x 30'];
  await shelf('add', '--bowler', 'kim', '--ball', 'reserve.json', ...layout, '--as', 'spare');
  expect(JSON.parse((await shelf('show', 'spare')).out)).toMatchObject({
    name: 'My reserve 70 x 4 1/2 x 30',
    bowler: 'kim',
    ball: 'My reserve',
  });
});

test('shelf: a layout is added with the day it was drilled', async () => {
  const layout = ['--bowler', 'kim', '--ball', 'plain-low', '--layout', '70 x 4 1/2 x 30'];
  await shelf('add', 'first', ...layout, '--drilled-on', '2026-03-31');
  expect(JSON.parse((await shelf('show', 'first')).out)).toMatchObject({
    schema: 'flarewise/layout/2',
    drilledOn: '2026-03-31',
    nights: [],
  });
});

test('shelf: removing asks first; where there is no one to ask it takes --yes', async () => {
  const refused = await shelf('remove', 'lee');
  expect(refused).toMatchObject({ code: 2, out: '' });
  expect(refused.err).toContain('--yes');
  expect((await shelf('remove', 'lee', '--yes')).code).toBe(0);
  expect((await shelf('show', 'lee')).code).toBe(2);
});

test.each([
  { args: ['sell'], says: 'must be one of list, show, rename' },
  { args: ['lst'], says: 'Did you mean list?' },
  { args: ['show', 'kin'], says: 'Did you mean kim?' },
  { args: ['show'], says: 'the record is missing. Such as: flarewise shelf show kim' },
  { args: ['show', 'kim', 'lee'], says: 'the record must be one; got 2: kim lee.' },
  { args: ['rename'], says: 'the old id and the new one are missing. Such as' },
  { args: ['rename', 'kim'], says: 'the new id is missing; got only the old one, "kim".' },
  { args: ['rename', 'a', 'b', 'c'], says: 'rename takes the old id and the new one; got 3: a b c.' },
  { args: ['export', '--csv', '--json'], says: '--csv must not stand beside --json' },
  {
    args: ['add', '--bowler', 'kin', '--ball', 'nope', '--layout', '70 x 4 x 30'],
    says: '--ball must be a file',
  },
  {
    args: ['add', '--bowler', 'kin', '--ball', 'nope', '--layout', '70 x 4 x 30'],
    says: 'Did you mean kim?',
  },
  { args: ['import', 'nowhere.json'], says: 'does not exist' },
  { args: ['add', '--bowler', 'kim', '--layout', '400 x 4 x 30'], says: 'must be 0 to 180 degrees' },
  { args: ['rename', 'kim', 'Kim 2'], says: 'small letters, digits and hyphens' },
])('shelf: $args is refused; exit 2', async ({ args, says }) => {
  const { code, out, err } = await shelf(...args);
  expect({ code, out }).toEqual({ code: 2, out: '' });
  expect(err).toContain(says);
});

describe('a ball with a core of its own', () => {
  const drilled = ['drilled', '--ball', 'own', '--bowler', 'average-right', '--layout', '70 x 4 1/2 x 30'];
  const data = fileURLToPath(new URL('../../data/', import.meta.url));
  // so deep that the path of its core has more signs than a record may hold
  const deep = join(folder.path, ...Array(10).fill('x'.repeat(50)));
  mkdirSync(deep, { recursive: true });
  cpSync(join(data, 'cores'), join(deep, 'cores'), { recursive: true });
  const ball = JSON.parse(readFileSync(join(data, 'balls', 'own-mesh.json'), 'utf8'));
  writeFileSync(join(deep, 'own.json'), JSON.stringify({ ...ball, core: 'cores/own-mesh.json' }));

  test('its core is kept with it, and travels along to another machine', async () => {
    expect(await shelf('import', join(deep, 'own.json'))).toMatchObject({ code: 0, out: 'ball/own\n' });
    rmSync(join(deep, 'cores'), { recursive: true });
    const here = await runCli(drilled, { env });
    expect(here).toMatchObject({ code: 0, err: '' });

    const exported = await shelf('export', 'own');
    expect(exported.out).not.toContain(folder.path);
    folder.write('own-bundle.json', exported.out);
    const other = { FLAREWISE_HOME: join(folder.path, 'other') };
    expect(
      (await runCli(['shelf', 'import', 'own-bundle.json'], { env: other, cwd: folder.path })).code,
    ).toBe(0);
    rmSync(join(env.FLAREWISE_HOME, 'cores'), { recursive: true });
    expect(await runCli(drilled, { env: other })).toEqual(here);
    expect((await runCli(['shelf', 'export', 'own'], { env: other })).out).toBe(exported.out);
  });

  test('a ball whose core file is missing is refused when it is imported', async () => {
    const { code, err } = await shelf('import', join(deep, 'own.json'));
    expect(code).toBe(2);
    expect(err).toContain('does not exist');
  });
});

test('shelf: damaged and foreign records are named, and the others still served', async () => {
  const home = join(folder.path, 'damaged');
  const run = (...args: string[]) =>
    runCli(['shelf', ...args], { env: { FLAREWISE_HOME: home }, cwd: folder.path });
  await run('import', 'kim.json');
  writeFileSync(join(home, 'bowlers', 'torn.json'), '{"schema": "flarewise/bowl');
  mkdirSync(join(home, 'lanes', 'folder.json'), { recursive: true });
  mkdirSync(join(home, 'balls'));
  writeFileSync(join(home, 'balls', 'foreign.json'), '{"schema": "other/1"}');
  writeFileSync(
    join(home, 'balls', 'coreless.json'),
    JSON.stringify({ schema: 'flarewise/ball/1', name: 'X', weightLb: 15, core: 'gone.json' }),
  );

  const listed = await run('list');
  expect(listed.code).toBe(0);
  for (const line of [
    /kim +right-handed/,
    /torn +cannot be read/,
    /folder +cannot be read/,
    /foreign +cannot be read/,
  ])
    expect(listed.out).toMatch(line);

  const exported = await run('export');
  expect(exported.code).toBe(2);
  expect(JSON.parse(exported.out).records.map(({ id }: { id: string }) => id)).toEqual(['kim']);
  for (const name of ['bowler/torn', 'lane/folder', 'ball/foreign', 'ball/coreless'])
    expect(exported.err).toContain(`${name}, which is left out`);

  const asList = await run('export', '--csv');
  expect(asList.out).toContain('Kim');
  expect(asList.err).toContain('bowler/torn');
  expect(asList.err).not.toContain('ball/');
  expect(await run('export', 'torn')).toMatchObject({ code: 2, out: '' });
});
