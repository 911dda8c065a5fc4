import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demo, scratchFolder } from '../support/demo-files.js';
import { runCli } from '../support/run-cli.js';

/* Records that were cut short or come from a later flarewise, pipes that close, clocks that are off. */

const scratch = scratchFolder();
afterAll(() => scratch.remove());
const at = (...names: string[]): string => join(scratch.path, ...names);

const LAYOUT = ['--layout', '70 x 4 1/2 x 30'];
const PAIR = ['--bowler', 'average-right', '--ball', 'plain-medium'];

const LATER = 'A later version of flarewise wrote it: install that version.';
const TOO_SOON = 'a file that ends too soon';

describe('kept records that are damaged or of a later version', () => {
  const env = { FLAREWISE_HOME: at('home') };
  beforeAll(() => {
    for (const folder of ['balls', 'lanes', 'bowlers', 'layouts'])
      mkdirSync(at('home', folder), { recursive: true });
    const put = (name: string, text: string): void => writeFileSync(at('home', name), text);
    put('lanes/sound.json', JSON.stringify(demo.lane()));
    put('balls/cut.json', JSON.stringify(demo.ball()).slice(0, 100));
    put('bowlers/empty.json', '');
    for (const [kind, record] of [
      ['lane', demo.lane()],
      ['ball', demo.ball()],
      ['bowler', demo.bowler()],
    ] as const)
      put(`${kind}s/later.json`, JSON.stringify({ ...record, schema: `flarewise/${kind}/9` }));
    put('layouts/later.json', JSON.stringify({ schema: 'flarewise/layout/9' }));
  });

  test.each([
    {
      what: 'a ball cut short',
      args: ['drilled', '--bowler', 'average-right', '--ball', 'cut', ...LAYOUT],
      says: TOO_SOON,
    },
    {
      what: 'an empty bowler',
      args: ['drilled', '--bowler', 'empty', '--ball', 'plain-low', ...LAYOUT],
      says: 'an empty file',
    },
    { what: 'a later lane', args: ['lane', '--lane', 'later'], says: LATER },
    {
      what: 'a later ball',
      args: ['drilled', '--bowler', 'average-right', '--ball', 'later', ...LAYOUT],
      says: LATER,
    },
    {
      what: 'a later bowler',
      args: ['drilled', '--bowler', 'later', '--ball', 'plain-low', ...LAYOUT],
      says: LATER,
    },
    { what: 'a later log', args: ['log', 'later'], says: LATER },
  ])('$what: exit 2, its file and what is wrong with it', async ({ args, says }) => {
    const { code, out, err } = await runCli(args, { env });
    expect(err).toContain(says);
    expect(err).toContain(at('home'));
    expect(err).not.toMatch(/bug|\n {4}at /);
    expect({ code, out }).toEqual({ code: 2, out: '' });
  });

  test('what is sound can still be listed, exported and used; what is left out is named', async () => {
    const listed = await runCli(['shelf'], { env });
    expect(listed.code).toBe(0);
    for (const id of ['sound', 'cut', 'later', 'empty']) expect(listed.out).toContain(id);
    expect(await runCli(['lane', '--lane', 'sound'], { env })).toMatchObject({ code: 0, err: '' });
    const { out, err } = await runCli(['shelf', 'export'], { env });
    expect(JSON.parse(out).records.map(({ id }: { id: string }) => id)).toEqual(['sound']);
    for (const name of ['ball/cut', 'ball/later', 'bowler/empty', 'lane/later', 'layout/later'])
      expect(err).toContain(`${name}, which is left out`);
  });

  test('a bundle of a later version is refused as one', async () => {
    const file = scratch.write('later-shelf.json', { schema: 'flarewise/shelf/9', records: [] });
    const { code, err } = await runCli(['shelf', 'import', file], { env });
    expect([code, err]).toEqual([2, expect.stringContaining(LATER)]);
  });

  test('a bundle cut short keeps nothing', async () => {
    const { out } = await runCli(['shelf', 'export'], { env });
    const file = scratch.write('cut-shelf.json', out.slice(0, -40));
    const fresh = { FLAREWISE_HOME: at('fresh') };
    const { code, err } = await runCli(['shelf', 'import', file], { env: fresh });
    expect([code, err]).toEqual([2, expect.stringContaining(TOO_SOON)]);
    expect(JSON.parse((await runCli(['shelf', 'export'], { env: fresh })).out).records).toEqual([]);
  });
});

describe('a reader that closes early is no failure', () => {
  const coach = [
    'coach',
    '--bowlers',
    'average-right',
    '--balls',
    'plain-low',
    '--lanes',
    'short',
    '--jsonl',
  ];
  test.each([
    { name: 'a coach with threads', args: [...coach, '--workers', '2'] },
    { name: 'a work sheet', args: ['sheet', ...PAIR, ...LAYOUT] },
    { name: 'the shelf', args: ['shelf', '--json'] },
    { name: 'a help', args: ['--help'] },
  ])('of $name', async ({ args }) => {
    const { code, err } = await runCli(args, { onStart: (child) => child.stdout?.destroy() });
    expect([code, err]).toEqual([0, '']);
  });

  test('what is kept is kept all the same', async () => {
    const env = { FLAREWISE_HOME: at('piped') };
    const file = scratch.write('lane.json', demo.lane());
    await runCli(['shelf', 'import', file], { env, onStart: (child) => child.stdout?.destroy() });
    expect(JSON.parse((await runCli(['shelf', 'export'], { env })).out).records).toHaveLength(1);
  });

  test('of what is said beside the answer: the answer is whole', async () => {
    const args = ['roll', ...PAIR, '--lane', 'short', ...LAYOUT, '--json'];
    const { code, out } = await runCli(args, { onStart: (child) => child.stderr?.destroy() });
    expect(code).toBe(0);
    expect(JSON.parse(out).schema).toMatch(/^flarewise\/roll/);
  });
});

describe('a clock that is off', () => {
  const off = (days: number) => ({
    NODE_OPTIONS: `--import ${new URL(`../support/clock-moved.mjs?days=${days}`, import.meta.url).href}`,
  });

  test.each([-3650, 3650])(
    'by %i days: records are changed as ever, and no lock or half-written file stays',
    async (days) => {
      const home = at(`clock-${days}`);
      const later = { FLAREWISE_HOME: home };
      const now = { ...later, ...off(days) };
      const file = scratch.write('lane.json', demo.lane());
      const did = async (args: readonly string[], env: Record<string, string>) =>
        expect(await runCli(args, { env })).toMatchObject({ code: 0 });
      await did(['shelf', 'import', file, '--as', 'one'], later);
      await did(['shelf', 'import', file, '--as', 'one', '--replace'], now);
      await did(['shelf', 'add', 'first', ...PAIR, ...LAYOUT], later);
      await did(['log', 'first', '20', '14', '8', '17', '--lane', 'one'], later);
      await did(['log', 'first', '20', '14', '8', '18', '--lane', 'one'], now);
      await did(['shelf', 'rename', 'lane/one', 'two'], now);
      await did(['shelf', 'import', file, '--as', 'one'], later);
      const { nights } = JSON.parse(readFileSync(join(home, 'layouts', 'first.json'), 'utf8'));
      // by the clock these are two nights, and each says its day
      expect(nights.map(({ shots }: { shots: unknown[] }) => shots.length)).toEqual([1, 1]);
      expect(new Set(nights.map(({ on }: { on: string }) => on)).size).toBe(2);
    },
  );

  test('leaves an answer the same bytes', async () => {
    const args = ['roll', ...PAIR, '--lane', 'short', ...LAYOUT, '--json'];
    const [right, back] = [await runCli(args), await runCli(args, { env: off(-3650) })];
    expect(right.code).toBe(0);
    expect(back.out).toBe(right.out);
  });
});
