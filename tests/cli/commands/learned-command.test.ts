import { copyFileSync, existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { run } from '../../../src/cli/run.js';
import { scratchFolder } from '../../support/demo-files.js';
import { fakeTerminal } from '../../support/fake-terminal.js';
import { TINY_BUDGET } from '../../support/small-budget.js';

/* What logged shots teach, from the log to the answers that count it in; a small budget, for only its form and its path are looked at. */

const folder = scratchFolder();
afterAll(() => folder.remove());
const home = join(folder.path, 'home');

async function flarewise(at: string, ...args: readonly string[]) {
  const terminal = { ...fakeTerminal({ env: { FLAREWISE_HOME: at } }), budget: TINY_BUDGET };
  const code = await run(args, terminal);
  return { code, out: terminal.written.out(), err: terminal.written.err() };
}
const atHome = (...args: readonly string[]) => flarewise(home, ...args);
const elsewhere = (...args: readonly string[]) => flarewise(join(folder.path, 'empty'), ...args);

const BOWLER = ['--bowler', 'average-right'];
const CASE = [...BOWLER, '--ball', 'plain-medium', '--lane', 'house-easy'];
const LAYOUT = ['--layout', '50 x 4 1/2 x 35'];
const nightsKept = () => JSON.parse(readFileSync(join(home, 'layouts', 'first.json'), 'utf8')).nights;

beforeAll(async () => {
  await atHome('shelf', 'add', 'first', ...BOWLER, '--ball', 'plain-medium', ...LAYOUT);
  const evening = ['--night', '2026-03-31', '--lane', 'house-easy', '--target', '15'];
  for (const pins of ['20', '21', '20.5', '21'])
    await atHome('log', 'first', '22', '15', '10', pins, ...evening);
  await atHome('log', 'first', '22', '15', '9', '20', '--night', '2026-04-07', '--lane', 'house-easy');
});

describe('flarewise learned', () => {
  test('foretells the next night nearer than before, and says how', async () => {
    const { code, out } = await atHome('learned', ...BOWLER, '--json');
    expect(code).toBe(0);
    const { nights, foretold, numbers } = JSON.parse(out);
    expect(nights.map(({ on, shots }: { on: string; shots: number }) => [on, shots])).toEqual([
      ['2026-03-31', 4],
      ['2026-04-07', 1],
    ]);
    expect(foretold.after.pinsBoard.deviation).toBeLessThan(foretold.before.pinsBoard.deviation);
    expect(numbers[0].leftShare).toBeLessThan(1);
  });

  test('is not learned twice from the same log; one that is forgotten teaches nothing any more', async () => {
    const own = join(folder.path, 'own');
    await flarewise(own, 'shelf', 'add', 'first', ...BOWLER, '--ball', 'plain-medium', ...LAYOUT);
    const shot = ['log', 'first', '22', '15', '10', '20', '--night', '2026-03-31', '--lane', 'house-easy'];
    await flarewise(own, ...shot);
    const learned = () => flarewise(own, 'learned', ...BOWLER, '--json');
    const lessons = () => readdirSync(join(own, 'lessons')).map((name) => join(own, 'lessons', name));
    const first = await learned();
    const [kept] = lessons();
    const written = statSync(kept).mtimeMs;
    expect(await learned()).toEqual(first);
    expect(statSync(kept).mtimeMs).toBe(written);
    // what is kept is what is told: a lesson of another log in its place
    await flarewise(own, ...shot.with(5, '18'));
    const second = await learned();
    expect(second.out).not.toBe(first.out);
    const other = lessons().find((path) => path !== kept)!;
    copyFileSync(kept, other);
    expect(await learned()).toEqual(first);
    await flarewise(own, 'learned', ...BOWLER, '--forget', join(folder.path, 'own.json'), '--yes');
    expect(existsSync(join(own, 'lessons'))).toBe(false);
  });

  test('from a day on, only the nights since are learned from', async () => {
    const { out } = await atHome('learned', ...BOWLER, '--since', '2026-04-01', '--json');
    expect(JSON.parse(out).nights).toHaveLength(1);
  });

  test('a page is written beside the screen', async () => {
    const page = join(folder.path, 'learned.html');
    const { code, out } = await atHome('learned', ...BOWLER, '--report', page);
    expect(code).toBe(0);
    expect(out).toMatch(/^Learned for Average right-hander: 5 shots on 2 nights/);
    expect(readFileSync(page, 'utf8')).toMatch(/<figure id="foretold-figure">[\s\S]*before 1\d\.\d ± \d\.\d/);
  });

  test.each([
    { name: 'nothing is kept', at: elsewhere, args: BOWLER },
    { name: 'no night is meant', at: atHome, args: [...BOWLER, '--since', '2027-01-01'] },
    {
      name: 'no night to forget is meant',
      at: atHome,
      args: [...BOWLER, '--lane', 'long', '--forget', join(folder.path, 'none.json')],
    },
    { name: 'it is another’s log', at: atHome, args: ['--bowler', 'two-handed'] },
  ])('where $name, it says what is missing; exit 2', async ({ at, args }) => {
    const { code, out, err } = await at('learned', ...args);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain('the log must hold a night of this bowler');
  });
});

describe('answers count in what was learned', () => {
  test.each([
    { name: 'recommend', args: ['recommend', ...CASE, '--hook-start', '41 ft'] },
    { name: 'roll', args: ['roll', ...CASE, ...LAYOUT] },
    { name: 'compare', args: ['compare', ...CASE, ...LAYOUT, '--layout', '70 x 4 x 30'] },
    {
      name: 'coach',
      args: [
        'coach',
        '--bowlers',
        'average-right',
        '--balls',
        'plain-medium',
        '--lanes',
        'house-easy',
        '--total-hook',
        '4',
      ],
    },
    { name: 'map', args: ['map', ...CASE] },
  ])('$name says so; with --unlearned not a byte differs from no log', async ({ args }) => {
    const one = [...args, '--workers', '1'];
    const [learned, unlearned, none] = [
      await atHome(...one),
      await atHome(...one, '--unlearned'),
      await elsewhere(...one),
    ];
    expect(learned.out.replace(/\s+/g, ' ')).toMatch(
      /Learned from 5 shots on 2 nights: board at the pins ± \d/,
    );
    expect(unlearned).toEqual(none);
    expect(none.out).not.toContain('Learned');
  });

  test('on a lane without a log, nights on other lanes count, and the answer says so', async () => {
    const long = ['--lane', 'long'];
    const { out, err } = await atHome('roll', ...BOWLER, '--ball', 'plain-medium', ...long, ...LAYOUT);
    expect(err).toBe('');
    const shown = out.replace(/\s+/g, ' ');
    const [, before, after] = /2 nights \(all on other lanes\): board at the pins ± ([\d.]+) → ± ([\d.]+)/
      .exec(shown)!
      .map(Number);
    expect(after).toBeLessThan(before);
    const { out: learned } = await atHome('learned', ...BOWLER, ...long);
    expect(learned.replace(/\s+/g, ' ')).toContain('2 nights (none on Long pattern)');
  });

  test('a wish in feet gains from knowing the oil, a step of five does not: the answer says which', async () => {
    const feet = await atHome('judge', ...CASE, ...LAYOUT, '--hook-start', '41 ft', '--workers', '1');
    expect(feet.out.replace(/\s+/g, ' ')).toContain('A wish in feet or boards gains most from it.');
    const step = await atHome('judge', ...CASE, ...LAYOUT, '--hook-start', '4', '--workers', '1');
    expect(step.out.replace(/\s+/g, ' ')).toContain('not the choice of layout');
  });
});

describe('--forget', () => {
  const file = join(folder.path, 'forgotten.json');

  test('without a terminal it takes --yes, and without it nothing is lost', async () => {
    const { code, err } = await atHome('learned', ...BOWLER, '--forget', file);
    expect(code).toBe(2);
    expect(err).toContain('--yes');
    expect([existsSync(file), nightsKept().length]).toEqual([false, 2]);
  });

  test('a file that is there already is refused', async () => {
    const taken = join(folder.path, 'taken.json');
    writeFileSync(taken, 'mine');
    const { code, err } = await atHome('learned', ...BOWLER, '--forget', taken, '--yes');
    expect(code).toBe(2);
    expect(err).toContain('must name a file that is not there yet');
    expect([readFileSync(taken, 'utf8'), nightsKept().length]).toEqual(['mine', 2]);
  });

  test('what is forgotten is written first, and shelf import takes it back', async () => {
    const before = nightsKept();
    const { code, out } = await atHome(
      'learned',
      ...BOWLER,
      '--since',
      '2026-04-01',
      '--forget',
      file,
      '--yes',
    );
    expect(code).toBe(0);
    expect(out).toContain('taken out of the log: 1 shot on 1 night with first');
    expect(nightsKept()).toEqual([before[0]]);
    const back = await atHome('shelf', 'import', file);
    expect(back.out).toBe('layout/first-2\n');
    const again = JSON.parse(readFileSync(join(home, 'layouts', 'first-2.json'), 'utf8'));
    expect(again.nights).toEqual([before[1]]);
  });
});
