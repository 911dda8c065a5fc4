import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeEach, describe, expect, test } from 'vitest';
import { scratchFolder } from '../support/demo-files.js';
import { killedAfter } from '../support/killed.js';
import { MAIN, runCli } from '../support/run-cli.js';

const folder = scratchFolder();
afterAll(() => folder.remove());

let home = '';
let count = 0;
const run = (...args: string[]) => runCli(args, { env: { FLAREWISE_HOME: home }, cwd: folder.path });
const log = (...args: string[]) => run('log', ...args);
const kept = (id = 'first') => JSON.parse(readFileSync(join(home, 'layouts', `${id}.json`), 'utf8'));

beforeEach(async () => {
  count += 1;
  home = join(folder.path, `home-${count}`);
  await run(
    'shelf',
    'add',
    'first',
    '--bowler',
    'average-right',
    '--ball',
    'plain-medium',
    '--layout',
    '45 x 4 x 35',
  );
});

const NIGHT = ['--night', '2026-03-31'];

test('log: a line is kept; lane, games and target go on to the next, and the answer says so', async () => {
  const first = await log(
    'first',
    '20',
    '14',
    '8',
    '17',
    ...NIGHT,
    '--lane',
    'house-easy',
    '--games',
    '3',
    '--target',
    '14',
  );
  expect(first).toMatchObject({ code: 0, err: '' });
  expect(first.out).toMatch(/^Kept shot 1 with first: 20 14 8 17\. 2026-03-31: house-easy, 3 games/);
  expect(first.out).toContain('assumed, no source');
  const second = await log(
    'first',
    '20',
    '14,5',
    '-',
    'g',
    ...NIGHT,
    '--flare',
    '95 mm',
    '--ring-over',
    'thumb',
  );
  expect(second.out.replace(/\s+/g, ' ')).toBe(
    'Kept shot 2 with first: 20 14.5 - g, flare 3.74 in, an oil ring over the thumb hole. As before: house-easy, 3 games on the oil, target 14. 2 shots. ',
  );
  expect(kept()).toMatchObject({
    schema: 'flarewise/layout/2',
    nights: [
      {
        on: '2026-03-31',
        lane: 'house-easy',
        games: 3,
        targetBoard: 14,
        shots: [
          { laydownBoard: 20, arrowsBoard: 14, breakpointBoard: 8, pinsBoard: 17 },
          { laydownBoard: 20, arrowsBoard: 14.5, gutter: true, ringOverHole: 'thumb' },
        ],
      },
    ],
  });
});

test('log: another ball on the same evening takes over the lane, not the target', async () => {
  await run(
    'shelf',
    'add',
    'second',
    '--bowler',
    'average-right',
    '--ball',
    'plain-high',
    '--layout',
    '45 x 4 x 35',
  );
  await log('first', '20', '14', '8', '17', ...NIGHT, '--lane', 'dry', '--games', '3', '--target', '14');
  await log('second', '22', '15', '8', '17', ...NIGHT);
  expect(kept('second').nights).toMatchObject([{ on: '2026-03-31', lane: 'dry', games: 3 }]);
  expect(kept('second').nights[0].targetBoard).toBeUndefined();
});

test('log: lists the nights, the shots of one ball, and the same as data', async () => {
  expect((await log()).out.replace(/\s+/g, ' ')).toContain(
    'No shot is logged yet. flarewise log first 20 14 8 17',
  );
  await log('first', '20', '14', '8', '17', ...NIGHT, '--lane', 'house-easy', '--target', '14');
  await log('first', '20', '14', '9', '18', ...NIGHT);
  await log('first', '21', '15', '9', '18', ...NIGHT, '--target', '15', '--note', 'moved in');
  expect((await log()).out).toMatch(/first: 45 x 4 x 35 on plain-medium for average-right, 3 shots/);
  const listed = await log('first');
  expect(listed.out).toMatch(/ 3 +21 +15 +9 +18 +moved in/);
  expect(listed.out.replace(/\s+/g, ' ')).toContain(
    'breakpoint ±1, pins ±0.5 boards (one standard deviation',
  );
  const { logs } = JSON.parse((await log('--json')).out);
  expect(logs[0].nights.map(({ shots }: { shots: unknown[] }) => shots.length)).toEqual([2, 1]);
});

test('log: the last shot is taken back, any is changed, and with it what was wrong of its night', async () => {
  for (const pins of ['17', '18', '19']) await log('first', '20', '14', '8', pins, ...NIGHT, '--lane', 'dry');
  expect((await log('first', '--undo')).out).toBe('Taken back: shot 3 with first: 20 14 8 19.\n');
  expect((await log('first', '--edit', '1', '20', '14', '-', '16', '--lane', 'long')).code).toBe(0);
  expect(kept().nights).toEqual([
    {
      on: '2026-03-31',
      lane: 'long',
      shots: [
        { laydownBoard: 20, arrowsBoard: 14, pinsBoard: 16 },
        { laydownBoard: 20, arrowsBoard: 14, breakpointBoard: 8, pinsBoard: 18 },
      ],
    },
  ]);
  await log('first', '--undo', '1');
  await log('first', '--undo');
  expect(kept().nights).toEqual([]);
  expect((await log('first', '--undo')).err).toContain('a log without shots');
});

test('log: goes out as a list and comes in again; a second time it is refused', async () => {
  await log('first', '20', '14', '8', '17', ...NIGHT, '--lane', 'dry', '--error', 'pins=1');
  await log('first', '20', '14', '-', 'g', ...NIGHT, '--note', '=1+1');
  const { nights } = kept();
  folder.write('shots.csv', (await log('first', '--csv')).out);
  const again = await log('first', '--import', 'shots.csv');
  expect(again).toMatchObject({ code: 2, out: '' });
  expect(again.err).toContain('these 2 shots of that night already');
  await log('first', '--undo');
  await log('first', '--undo');
  expect((await log('first', '--import', 'shots.csv')).out).toContain('Kept shots 1 to 2 with first.');
  expect(kept().nights).toEqual(nights);
});

describe('log: what looks odd is refused where there is no one to ask, and nothing is kept', () => {
  const lane = ['--lane', 'house-easy', ...NIGHT];
  test.each([
    {
      args: ['first', '20', '26', '32', '23', ...lane],
      says: 'the path bends the wrong way. If its boards were counted from the other side, --other-side',
    },
    {
      args: ['first', '20', '14', '8', '17', '--display-speed', '26', ...lane],
      says: 'Was it in kilometres an hour? Then it is 16.2 mph.',
    },
    {
      args: ['first', '20', '14', '8', '17', '--breakpoint-ft', '12.5', ...lane],
      says: 'Was it in metres? Then it is 41.0 ft.',
    },
    {
      args: ['first', '20', '14', '8', '17', '--target', '21', ...lane],
      says: 'Board 14 at the arrows is 7 boards from the target, 21. If the target has changed, --target',
    },
    {
      args: ['first', '20', '14', '8', '17', ...NIGHT, '--lane', 'hous-easy'],
      says: 'Did you mean house-easy?',
    },
    {
      args: ['first', '20', '14', '8', '17', '--night', '9999-12-31', '--lane', 'house-easy'],
      says: '9999-12-31 is still to come',
    },
    {
      args: ['first', '20', '14', '8', '17', '--pattern', '47', ...lane],
      says: 'the oil ends at 40 ft, not 47 ft',
    },
  ])('$args', async ({ args, says }) => {
    const { code, out, err } = await log(...args);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain(says);
    expect(err).toContain('--really');
    expect(kept().nights).toEqual([]);
    expect((await log(...args, '--really')).code).toBe(0);
    expect(kept().nights[0].shots[0].confirmed).toBe(true);
  });

  test('boards from the other side are turned round', async () => {
    await log('first', '20', '26', '32', '23', ...lane, '--target', '26', '--other-side');
    expect(kept().nights[0]).toMatchObject({
      targetBoard: 14,
      shots: [{ laydownBoard: 20, arrowsBoard: 14, breakpointBoard: 8, pinsBoard: 17 }],
    });
  });

  test('of a list every such row is named, and none is kept', async () => {
    folder.write(
      'odd.csv',
      'lane;laydownBoard;arrowsBoard;breakpointBoard;pinsBoard\ndry;20;14;8;17,5\ndry;20;26;32;23\n',
    );
    const { code, err } = await log('first', '--import', 'odd.csv');
    expect(code).toBe(2);
    expect(err).toContain('row 3 looks odd');
    expect(kept().nights).toEqual([]);
  });
});

test.each([
  { args: ['first', '20', '14', '8', '17'], says: '--lane is missing. The first line of an evening' },
  {
    args: ['first', '20', '14', '8'],
    says: 'must be four boards: laydown, arrows, breakpoint, pins; got 3: 20 14 8.',
  },
  {
    args: ['first', '20', '14', '8', '17', '--night', '31.3.2026', '--flare', '95'],
    says: '--night must be a day',
  },
  {
    args: ['first', '20', '14', '8', '17', '--night', '31.3.2026', '--flare', '95'],
    says: '--flare must be 0 to 9 in',
  },
  { args: ['frist', '20', '14', '8', '17'], says: 'Did you mean first?' },
  { args: ['first', '--edit', '3'], says: 'a log without shots' },
  { args: ['first', '--lane', 'dry'], says: 'the shot is missing' },
  { args: ['first', '-', '-', '-', '-', '--lane', 'dry'], says: 'must say at least one thing that was seen' },
  { args: ['first', '--undo', '--csv'], says: '--undo must not stand beside --csv' },
  { args: ['--undo'], says: 'the drilled layout is missing' },
  { args: ['first', '20', '14', '8', '17', '--error', 'pns=1'], says: 'Did you mean pins?' },
])('log: $args is refused; exit 2', async ({ args, says }) => {
  const { code, out, err } = await log(...args);
  expect({ code, out }).toEqual({ code: 2, out: '' });
  expect(err).toContain(says);
});

test('log: several programs at once lose no shot, and two lists are kept whole', async () => {
  await log('first', '20', '14', '8', '16', ...NIGHT, '--lane', 'dry');
  const boards = ['17', '18', '19', '20', '21'];
  folder.write('a.csv', `lane,pinsBoard,note\n${'dry,17,a\n'.repeat(30)}`);
  folder.write('b.csv', `lane,pinsBoard,note\n${'dry,18,b\n'.repeat(30)}`);
  const ended = await Promise.all([
    ...boards.map((pins) => log('first', '20', '14', '8', pins, ...NIGHT)),
    log('first', '--import', 'a.csv'),
    log('first', '--import', 'b.csv'),
  ]);
  expect(ended.map(({ code, err }) => ({ code, err }))).toEqual(ended.map(() => ({ code: 0, err: '' })));
  const shots = kept().nights.flatMap(
    ({ shots }: { shots: { pinsBoard: number; note?: string }[] }) => shots,
  );
  const typed = shots.filter(({ note }: { note?: string }) => note === undefined);
  expect(typed.map(({ pinsBoard }: { pinsBoard: number }) => pinsBoard).sort()).toEqual([
    16, 17, 18, 19, 20, 21,
  ]);
  const notes = shots.map(({ note }: { note?: string }) => note ?? '').join('');
  expect(notes).toMatch(/^(a{30}b{30}|b{30}a{30})$/);
});

test('log: a program that is killed leaves each shot whole or not made, and the next waits for nothing', async () => {
  await log('first', '20', '14', '8', '16', ...NIGHT, '--lane', 'dry');
  const script = `
    const { changeKept } = await import(${JSON.stringify(`file://${MAIN}`.replace('cli/main.js', 'records/home/change-records.js'))});
    const { addShot } = await import(${JSON.stringify(`file://${MAIN}`.replace('cli/main.js', 'records/log/add-shot.js'))});
    process.stdout.write('begun');
    for (let n = 0; ; n++)
      await changeKept(${JSON.stringify(home)}, 'layout', 'first', (record) =>
        ({ ...record, nights: addShot(record.nights, { lane: 'dry', on: '2026-03-31' }, { pinsBoard: 17, note: String(n) }) }));`;
  let before = 1;
  for (let time = 0; time < 8; time++) {
    await killedAfter(script, 40 * Math.random());
    const [{ shots }] = kept().nights;
    expect(shots.length).toBeGreaterThanOrEqual(before);
    const notes = shots.slice(before).map(({ note }: { note: string }) => note);
    expect(notes).toEqual(notes.map((_: string, i: number) => String(i)));
    before = shots.length;
  }
  expect((await log('first', '20', '14', '8', '17', ...NIGHT)).code).toBe(0);
  expect(kept().nights[0].shots).toHaveLength(before + 1);
});
