import { existsSync, readFileSync, rmSync, statSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, describe, expect, test } from 'vitest';
import { CARD_FILE, MODEL_FILE } from '../../src/regression/card.js';
import { packageCopy } from '../support/package-copy.js';
import { runCli, smallMain } from '../support/run-cli.js';

/* The built program where a part of it is missing, damaged or dies: the rest still works, and says what is wrong. */

let copy: ReturnType<typeof packageCopy> | undefined;
afterEach(() => {
  copy?.remove();
  copy = undefined;
});

const RECORDS = ['--bowler', 'average-right', '--ball', 'plain-medium'];
const SHEET = ['sheet', ...RECORDS, '--layout', '70 x 4 1/2 x 30'];

const expectNoPng = async ({ main, path }: ReturnType<typeof packageCopy>): Promise<void> => {
  const { code, out, err } = await runCli([...SHEET, '--out', 'sheet.png'], { main, cwd: path });
  expect([code, out]).toEqual([2, '']);
  expect(err).toBe(
    'command line\n  A PNG file needs the package @resvg/resvg-js; got none that loads on this machine. ' +
      'Name a .pdf, .svg or .html file instead, or install flarewise again.\n',
  );
  expect(existsSync(join(path, 'sheet.png'))).toBe(false);
};

test('without the library that draws PNG a PNG says what to do, and a sheet is shown and written otherwise as ever', async () => {
  copy = packageCopy({ without: ['@resvg/resvg-js'] });
  const { main, path } = copy;
  await expectNoPng(copy);
  for (const name of ['sheet.svg', 'sheet.html', 'sheet.pdf']) {
    const { code, err } = await runCli([...SHEET, '--out', name], { main, cwd: path });
    expect([code, err]).toEqual([0, '']);
    expect(existsSync(join(path, name))).toBe(true);
  }
  const { code, out, err } = await runCli(SHEET, { main, cwd: path });
  expect([code, err]).toEqual([0, '']);
  expect(out).toContain('Mark the layout');
});

test('with one whose native part is of another machine a PNG says the same', async () => {
  copy = packageCopy({ broken: ['@resvg/resvg-js'] });
  await expectNoPng(copy);
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

  test('where its model was cut short', async () => {
    copy = packageCopy();
    const file = join(copy.path, 'models', MODEL_FILE);
    truncateSync(file, statSync(file).size >> 1);
    await alone('the fitted regression is damaged');
  });

  test('where its card is missing', async () => {
    copy = packageCopy();
    rmSync(join(copy.path, 'models', CARD_FILE));
    await alone('the fitted regression is missing');
  });
});

describe('the ONNX runtime', () => {
  const ASK = ['recommend', ...RECORDS, '--lane', 'house-easy', '--workers', '2'];
  const answerOf = async (main: readonly string[], ...more: readonly string[]): Promise<string> => {
    const { code, out, err } = await runCli([...ASK, ...more], { main });
    expect(code, err).toBe(0);
    return out;
  };

  test('without it the regression surveys all the same, and the ranking stays', async () => {
    copy = packageCopy({ without: ['onnxruntime-node'] });
    const here = JSON.parse(await answerOf(smallMain(), '--json'));
    const there = JSON.parse(await answerOf(smallMain(join(copy.path, 'dist')), '--json'));
    expect(here.search.regression.arithmetic).toBe('runtime');
    expect(there.search.regression.arithmetic).toBe('plain');
    expect(there.search.regression.candidateWorlds).toBeGreaterThan(0);
    // the best is ahead by far more than floats of 24 bits differ from doubles; what follows it need not be
    const names = ({ layouts }: typeof here) => layouts.map(({ text }: { text: string }) => text);
    expect(names(there)).toEqual(names(here));
  });

  test('with one whose native part is of another machine one line says so', async () => {
    copy = packageCopy({ broken: ['onnxruntime-node'] });
    const told = (await answerOf(smallMain(join(copy.path, 'dist'))))
      .replace(/\s+/g, ' ')
      .split('The package onnxruntime-node is missing or does not load on this machine');
    expect(told).toHaveLength(2); // said once
  });
});

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
