import { existsSync, mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { demo, scratchFolder } from '../support/demo-files.js';
import { type Ended, runCli, runSmall } from '../support/run-cli.js';

/* What is asked to be written where nothing can be, and what a kill leaves. */

const scratch = scratchFolder();
afterAll(() => scratch.remove());
const at = (...names: string[]): string => join(scratch.path, ...names);
scratch.write('file', 'as it was');
mkdirSync(at('folder'));

const LAYOUT = '70 x 4 1/2 x 30';
const PAIR = ['--bowler', 'average-right', '--ball', 'plain-medium'];
const COACH = ['coach', '--bowlers', 'average-right', '--balls', 'plain-low', '--lanes', 'short', '--out'];

/** Exit 2, nothing on stdout, one sentence that names the place, and no stack. */
function expectRefused({ code, out, err }: Ended, says: RegExp): void {
  expect(err).toMatch(says);
  expect(err).not.toMatch(/bug|\n {4}at /);
  expect(err.trimEnd().split('\n')).toHaveLength(2); // where it stood, and what is wrong
  expect({ code, out }).toEqual({ code: 2, out: '' });
}

const nowhere = [
  { place: 'a folder that is missing', path: ['none', 'a'], says: /in a folder that does not exist/ },
  { place: 'a file as a folder', path: ['file', 'a'], says: /a file stands in place of a folder/ },
  { place: 'a name that is too long', path: ['x'.repeat(300)], says: /a name too long/ },
];

/** Ends the program, with a code of its own, once it begins to work something out. */
const IDLE = `
  const { sqrt } = Math;
  let left = 20_000;
  Math.sqrt = (x) => { if (left-- === 0) process.exit(9); return sqrt(x); };`;
const idle = { NODE_OPTIONS: `--import data:text/javascript,${encodeURIComponent(IDLE)}` };

describe.each(nowhere)('written to $place', ({ path, says }) => {
  test.each([
    { command: 'coach --out', args: COACH, ending: '.jsonl' },
    { command: 'sheet --out', args: ['sheet', ...PAIR, '--layout', LAYOUT, '--out'], ending: '.svg' },
    {
      command: 'recommend --report',
      args: ['recommend', ...PAIR, '--lane', 'short', '--hook-start', '3', '--report'],
      ending: '.html',
    },
  ])('$command is refused before anything is worked out', async ({ args, ending }) => {
    expectRefused(await runCli([...args, `${at(...path)}${ending}`], { env: idle }), says);
  });
});

test('a program that works something out is seen to do so', async () => {
  const args = ['sheet', ...PAIR, '--layout', LAYOUT, '--out', at('sheet.svg')];
  expect((await runCli(args, { env: idle })).code).toBe(9);
});

test.each([
  { what: 'a folder', path: 'folder', says: /, a folder\. Name a file in it/ },
  ...(existsSync('/dev/full')
    ? [{ what: 'a device', path: '/dev/full', says: /not an ordinary file\. Name an ordinary file/ }]
    : []),
])('coach --out names $what: refused', async ({ path, says }) => {
  expectRefused(await runCli([...COACH, path], { cwd: scratch.path }), says);
});

test.each(['my notes', 'my notes\n', 'one\ntwo'])(
  'coach --out names a file of notes (%j): not a byte changes',
  async (text) => {
    scratch.write('notes.txt', text);
    expectRefused(await runCli([...COACH, at('notes.txt')]), /notes\.txt.*Name another file/);
    expect(readFileSync(at('notes.txt'), 'utf8')).toBe(text);
  },
);

test('coach: while one run adds to a file a second one is refused, and the first one is right', async () => {
  const file = at('both.jsonl');
  let second: Promise<Ended> | undefined;
  const first = await runSmall([...COACH, file, '--jsonl', '--workers', '1'], {
    onStart: (child) => {
      const look = setInterval(() => {
        if (child.exitCode !== null) clearInterval(look);
        if (!existsSync(`${file}.lock`)) return;
        clearInterval(look);
        // stands still meanwhile, so that it cannot be done before the second one looks
        child.kill('SIGSTOP');
        second = runCli([...COACH, file]).finally(() => child.kill('SIGCONT'));
      }, 20);
    },
  });
  expectRefused((await second) as Ended, /must be a file that no other run adds to; got .*process \d+/);
  expect(first.code).toBe(0);
  expect(readFileSync(file, 'utf8').startsWith(first.out)).toBe(true);
  expect(existsSync(`${file}.lock`)).toBe(false);
});

test.each([
  { what: 'is a file', home: ['file'] },
  { what: 'would lie in a file', home: ['file', 'a'] },
  { what: 'has a name too long', home: ['x'.repeat(300)] },
])('a home that $what: importing is refused with what to do', async ({ home }) => {
  const record = scratch.write('kim.json', demo.bowler());
  const env = { FLAREWISE_HOME: at(...home) };
  expectRefused(await runCli(['shelf', 'import', record], { env }), /kept records.*set FLAREWISE_HOME/);
  expect(readFileSync(at('file'), 'utf8')).toBe('as it was');
});

test('a home of which only the folder itself can be written, as one that is mounted, is enough', async () => {
  const record = scratch.write('kim.json', demo.bowler());
  const home = at('mounted', 'home');
  mkdirSync(home, { recursive: true });
  await runCli(['shelf', 'import', record], { env: { FLAREWISE_HOME: home } });
  expect(readdirSync(at('mounted'))).toEqual(['home']); // nothing beside it, a lock least of all
  expect(readdirSync(home)).toEqual(['bowlers']);
});

describe('shelf', () => {
  const env = { FLAREWISE_HOME: at('home') };
  const shelf = (...args: string[]) => runCli(['shelf', ...args], { env, cwd: scratch.path });
  const bundle = (...ids: string[]) => ({
    schema: 'flarewise/shelf/1',
    records: ids.map((id) => ({ kind: 'bowler', id, record: { ...demo.bowler(), name: id } })),
  });

  test('a bundle with bad ids imports nothing and names them all', async () => {
    scratch.write('bad.json', bundle('good', 'Bad Id', 'nul', 'fine'));
    const { code, out, err } = await shelf('import', 'bad.json');
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(/records\[1\]\.id must be small letters.*\n *records\[2\]\.id .*Windows/);
    expect(existsSync(at('home', 'bowlers'))).toBe(false);
  });

  test('an id given with --as is taken as it is, or refused when it is taken', async () => {
    scratch.write('kim.json', demo.bowler());
    const id = 'k'.repeat(61);
    expect(await shelf('import', 'kim.json', '--as', id)).toMatchObject({ code: 0, out: `bowler/${id}\n` });
    expectRefused(await shelf('import', 'kim.json', '--as', id), /must get an id that is free.*k{61}/);
    expect((await shelf('import', 'kim.json', '--as', id, '--replace')).out).toBe(`bowler/${id}\n`);
    expectRefused(await shelf('import', 'kim.json', '--as', 'com1'), /Windows keeps for devices/);
    expect(await shelf('remove', id, '--yes')).toMatchObject({ code: 0 });
  });

  test('an id made from a name that is taken gets a number, and that is said', async () => {
    expect((await shelf('import', 'kim.json')).err).toBe('');
    const second = await shelf('import', 'kim.json');
    expect(second).toMatchObject({ out: 'bowler/kim-2\n', err: 'bowler/kim is taken: kept as kim-2.\n' });
  });

  test('a list imported again with --replace makes no second records', async () => {
    scratch.write(
      'club.csv',
      (await shelf('export', 'kim', '--csv')).out.replace(/,?"?Average.*?"?,/i, 'Anna,'),
    );
    const first = await shelf('import', 'club.csv', '--replace');
    expect(first.code).toBe(0);
    expect((await shelf('import', 'club.csv', '--replace')).out).toBe(first.out);
  });

  test('of several records to remove all go, or none', async () => {
    expectRefused(await shelf('remove', 'kim', 'nobody', 'kim-2', '--yes'), /"nobody"/);
    expect((await shelf('show', 'kim')).code).toBe(0);
    expect((await shelf('remove', 'kim', 'kim-2', '--yes')).code).toBe(0);
    expect((await shelf('show', 'kim')).code).toBe(2);
  });

  test('a bundle imported with --replace and killed 8 times is there whole, the old one or the new', async () => {
    const ids = Array.from({ length: 12 }, (_, i) => `b${i}`);
    const version = (n: number) => {
      const { schema, records } = bundle(...ids);
      return {
        schema,
        records: records.map((each) => ({ ...each, record: { ...each.record, name: `v${n}` } })),
      };
    };
    scratch.write('v0.json', version(0));
    expect((await shelf('import', 'v0.json')).code).toBe(0);
    let killed = 0;
    for (let n = 1; n <= 8; n++) {
      scratch.write('next.json', version(n));
      const { signal } = await runCli(['shelf', 'import', 'next.json', '--replace'], {
        env,
        cwd: scratch.path,
        onStart: (child) => {
          // some while after it has begun to write
          const look = setInterval(() => {
            if (child.exitCode !== null) clearInterval(look);
            if (!existsSync(at('home', 'lock'))) return;
            clearInterval(look);
            setTimeout(() => child.kill('SIGKILL'), 60 * Math.random());
          }, 1);
        },
      });
      if (signal === 'SIGKILL') killed += 1;
      const exported = JSON.parse((await shelf('export')).out) as ReturnType<typeof bundle>;
      const names = exported.records.filter(({ id }) => ids.includes(id)).map(({ record }) => record.name);
      expect(names).toHaveLength(12);
      expect(new Set(names).size).toBe(1);
    }
    expect(killed).toBeGreaterThan(0); // else nothing was tried
  });
});

test.each([
  ['roll', ...PAIR, '--lane', 'short', '--layout', LAYOUT],
  ['drilled', ...PAIR, '--layout', LAYOUT],
  ['map', ...PAIR],
  ['sheet', ...PAIR, '--layout', LAYOUT],
  ['lane', '--lane', 'short'],
  ['explain', 'flare'],
  ['shelf'],
  ['completions', 'bash'],
])('%s --workers abc is refused', async (...args) => {
  expectRefused(
    await runCli([...args, '--workers', 'abc']),
    /--workers must be a whole number, 1 to 64; got "abc"/,
  );
});

test('numbers are decimal: board 0x10 is not 16', async () => {
  const env = { FLAREWISE_HOME: at('numbers') };
  await runCli(
    ['shelf', 'add', 'one', '--bowler', 'average-right', '--ball', 'plain-low', '--layout', LAYOUT],
    { env },
  );
  const log = (board: string) =>
    runCli(['log', 'one', '--lane', 'l', '--at-50', board, '20', '-', '-', '17'], { env });
  for (const board of ['0x10', '1e1', '0b11', 'Infinity'])
    expectRefused(await log(board), new RegExp(`--at-50.*${board}`));
  expect(await log('7.5')).toMatchObject({ code: 0 });
  expect(await log('7,25')).toMatchObject({ code: 0 });
  const kept = readFileSync(at('numbers', 'layouts', 'one.json'), 'utf8');
  expect(kept).toContain('"boardAt50Ft": 7.5');
  expect(kept).toContain('"boardAt50Ft": 7.25');
});
