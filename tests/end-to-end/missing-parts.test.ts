import { existsSync, readFileSync, rmSync, statSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import { CARD_FILE, MODEL_FILE } from '../../src/regression/card.js';
import { packageCopy } from '../support/package-copy.js';
import { runCli, runSmall, smallMain } from '../support/run-cli.js';

/* The built program where a part of it is missing, damaged or dies: the rest still works, and says what is wrong. */

let copy: ReturnType<typeof packageCopy> | undefined;
afterEach(() => {
  copy?.remove();
  copy = undefined;
});

const RECORDS = ['--bowler', 'average-right', '--ball', 'plain-medium'];

describe.each([
  { what: 'without the library that draws PNG', parts: { without: ['@resvg/resvg-js'] } },
  { what: 'with one whose native part is of another machine', parts: { broken: ['@resvg/resvg-js'] } },
])('$what', ({ parts }) => {
  const sheet = (...more: readonly string[]) => {
    copy ??= packageCopy(parts);
    return runCli(['sheet', ...RECORDS, '--layout', '70 x 4 1/2 x 30', ...more], {
      main: copy.main,
      cwd: copy.path,
    });
  };

  test.each(['svg', 'html', 'pdf'])('a sheet as %s is written as ever', async (kind) => {
    const { code, err } = await sheet('--out', `sheet.${kind}`);
    expect([code, err]).toEqual([0, '']);
    expect(existsSync(join(copy!.path, `sheet.${kind}`))).toBe(true);
  });

  test('a sheet is shown on screen as ever', async () => {
    const { code, out, err } = await sheet();
    expect([code, err]).toEqual([0, '']);
    expect(out).toContain('Mark the layout');
  });

  test('a PNG says what is missing and what to do, with exit code 2 and no file', async () => {
    const { code, out, err } = await sheet('--out', 'sheet.png');
    expect([code, out]).toEqual([2, '']);
    expect(err).toBe(
      'command line\n  A PNG file needs the package @resvg/resvg-js; got none that loads on this machine. ' +
        'Name a .pdf, .svg or .html file instead, or install flarewise again.\n',
    );
    expect(existsSync(join(copy!.path, 'sheet.png'))).toBe(false);
  });
});

describe('without a regression that can be used, physics alone recommends', () => {
  const alone = async (why: string): Promise<void> => {
    const { code, out } = await runCli(['recommend', ...RECORDS, '--lane', 'house-easy', '--workers', '2'], {
      main: smallMain(join(copy!.path, 'dist')),
    });
    expect(code).toBe(0);
    const told = out.replace(/\s+/g, ' ').split(`Searched by physics alone: ${why}.`);
    expect(told).toHaveLength(2); // said once
    expect(told.join('')).not.toMatch(/regression|runtime|onnx/i);
  };

  test('where it was fitted to another engine', async () => {
    copy = packageCopy();
    const file = join(copy.path, 'models', CARD_FILE);
    const card = JSON.parse(readFileSync(file, 'utf8'));
    card.physics = { hash: 'another', numbers: card.physics.numbers.map((number: number) => 1.5 * number) };
    writeFileSync(file, JSON.stringify(card));
    await alone('the fitted regression was made for an earlier physics engine');
  });

  test.each([MODEL_FILE, CARD_FILE])('where %s was cut short', async (name) => {
    copy = packageCopy();
    const file = join(copy.path, 'models', name);
    truncateSync(file, statSync(file).size >> 1);
    await alone('the fitted regression is damaged');
  });

  test.each([MODEL_FILE, CARD_FILE])('where %s is missing', async (name) => {
    copy = packageCopy();
    rmSync(join(copy.path, 'models', name));
    await alone('the fitted regression is missing');
  });
});

test.each([
  { what: 'without the ONNX runtime', parts: { without: ['onnxruntime-node'] } },
  { what: 'with one whose native part is of another machine', parts: { broken: ['onnxruntime-node'] } },
])(
  '$what the regression surveys all the same, the ranking stays, and one line says so',
  async ({ parts }) => {
    copy = packageCopy(parts);
    const ask = ['recommend', ...RECORDS, '--lane', 'house-easy', '--workers', '2'];
    const [usual, without, shown] = [
      await runSmall([...ask, '--json']),
      await runCli([...ask, '--json'], { main: smallMain(join(copy.path, 'dist')) }),
      await runCli(ask, { main: smallMain(join(copy.path, 'dist')) }),
    ].map(({ code, out, err }) => {
      expect(code, err).toBe(0);
      return out;
    });
    const [here, there] = [JSON.parse(usual), JSON.parse(without)];
    expect(here.search.regression.arithmetic).toBe('runtime');
    expect(there.search.regression.arithmetic).toBe('plain');
    expect(there.search.regression.candidateWorlds).toBeGreaterThan(0);
    // the best is ahead by far more than floats of 24 bits differ from doubles; what follows it need not be
    const names = ({ layouts }: typeof here) => layouts.map(({ text }: { text: string }) => text);
    expect(names(there)).toEqual(names(here));
    const told = shown
      .replace(/\s+/g, ' ')
      .split('The package onnxruntime-node is missing or does not load on this machine');
    expect(told).toHaveLength(2); // said once
  },
);

describe('a worker thread that dies', () => {
  // ends a thread in the middle of its work, as the machine does
  const DEATH = `import { isMainThread } from 'node:worker_threads';
    if (!isMainThread) {
      const { sqrt } = Math;
      let left = 50_000;
      Math.sqrt = (x) => { if (left-- === 0) process.exit(9); return sqrt(x); };
    }`;
  const env = { NODE_OPTIONS: `--import data:text/javascript,${encodeURIComponent(DEATH)}` };

  test.each([
    ['recommend', ['recommend', ...RECORDS, '--lane', 'house-easy', '--workers', '2']],
    [
      'coach',
      [
        'coach',
        '--bowlers',
        'average-right,average-left',
        '--balls',
        'plain-medium',
        '--lanes',
        'house-easy',
        '--workers',
        '2',
      ],
    ],
  ])('ends %s with exit code 2 and says what to do', async (_, args) => {
    const { code, err } = await runCli(args, { env });
    expect(err).toContain('worker thread must live until its work is done; got one that ended early.');
    expect(err).toContain('--workers 1');
    expect(err).not.toMatch(/\n {4}at /);
    expect(code).toBe(2);
  });
});
