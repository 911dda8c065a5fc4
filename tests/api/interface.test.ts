import { execFileSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import * as source from '../../src/api/flarewise.js';
import { inputErrorOf } from '../support/faults-of.js';
import { ball, bowler, lane } from '../support/plain-records.js';
import { ENV, MAIN } from '../support/run-cli.js';

const { compare, drilled, judge, readBall, recommend, roll } = source;
const ROOT = fileURLToPath(new URL('../../', import.meta.url));
const LAYOUT = '70 x 4 1/2 x 30';
const want = { hookStart: 3 };

test('the package gives its interface and nothing else', () => {
  const code = `
    const { createRequire } = await import('node:module');
    console.log(Object.keys(await import('flarewise')).sort().join());
    for (const path of ['flarewise/dist/cli/main.js', 'flarewise/dist/answer/recommend.js'])
      console.log(await import(path).then(() => 'open', ({ code }) => code));`;
  const out = execFileSync(process.execPath, ['--input-type=module', '--eval', code], {
    cwd: ROOT,
    encoding: 'utf8',
  });
  const shut = 'ERR_PACKAGE_PATH_NOT_EXPORTED';
  expect(out.trim().split('\n')).toEqual([Object.keys(source).sort().join(), shut, shut]);
});

test.each([
  ['drilled', ['--layout', LAYOUT]],
  ['roll', ['--layout', LAYOUT, '--lane', 'data/lanes/house-easy.json']],
])('%s answers what the command prints with --json', async (name, flags) => {
  const files = { bowler: 'data/bowlers/average-right.json', ball: 'data/balls/own-solids.json' };
  const named = Object.entries(files).flatMap(([flag, file]) => [`--${flag}`, file]);
  const printed = execFileSync(process.execPath, [MAIN, name, ...named, ...flags, '--json'], {
    cwd: ROOT,
    env: ENV,
    encoding: 'utf8',
  });
  const { readFileSync } = await import('node:fs');
  const read = (file: string) => JSON.parse(readFileSync(`${ROOT}${file}`, 'utf8'));
  const records = { bowler: read(files.bowler), ball: readBall(`${ROOT}${files.ball}`), layout: LAYOUT };
  const answer =
    name === 'drilled' ? drilled(records) : roll({ ...records, lane: read('data/lanes/house-easy.json') });
  expect(JSON.parse(JSON.stringify(answer))).toEqual(JSON.parse(printed));
});

test('judge tries the bowler’s other balls, as the command does with those that are kept', async () => {
  const read = (id: string) => readBall(`${ROOT}data/balls/${id}.json`);
  const inputs = { bowler, ball: read('plain-low'), lane, want: { totalHook: 5 }, layout: LAYOUT };
  const { levers } = await judge(inputs, { otherBalls: [read('asymmetric-strong')] });
  expect(levers.filter(({ kind }) => kind === 'ball').map(({ change }) => change.text)).toEqual([
    expect.stringContaining(read('asymmetric-strong').name),
  ]);
  await expect(judge(inputs, { otherBalls: [{ ...read('plain-low'), rgIn: 9 }] })).rejects.toThrow(
    source.InputError,
  );
});

describe('what cannot be used is refused with every fault, never with a TypeError', () => {
  test.each([
    ['a bowler', { bowler: { ...bowler, revRateRpm: 3000, speedMph: 'fast' } }, ['speedMph', 'revRateRpm']],
    ['no bowler', { bowler: undefined }, ['record']],
    ['no ball', { ball: null }, ['record']],
    [
      'a core that was not read',
      { ball: { ...readBall(`${ROOT}data/balls/own-solids.json`), coreFile: undefined } },
      ['core'],
    ],
    ['a layout', { layout: '70 x 4' }, ['layout']],
    ['no layout', { layout: undefined }, ['layout']],
  ])('%s', (_, wrong, fields) => {
    const inputs = { bowler, ball, layout: LAYOUT, ...wrong } as never;
    expect(inputErrorOf(() => drilled(inputs)).faults.map(({ field }) => field)).toEqual(fields);
  });

  test.each([
    ['nothing of which there are several', { layouts: [LAYOUT] }],
    ['two kinds of several', { layouts: [LAYOUT, '50 x 4 x 40'], finishes: [500, 1000] }],
    ['a finish beside several layouts', { layouts: [LAYOUT, '50 x 4 x 40'], finishes: [500] }],
    ['no ball', { balls: undefined, finishes: [500, 1000] }],
    ['more than six', { finishes: [500, 600, 700, 800, 900, 1000, 1100] }],
  ])('what cannot be compared: %s', async (_, parts) => {
    const error = await compare({ bowler, lane, balls: [ball], ...parts } as never).catch((each) => each);
    expect(error).toBeInstanceOf(source.InputError);
    expect(error.faults.map(({ field }: source.Fault) => field)).toEqual(['balls, layouts, finishes']);
  });

  test('a finish that no cover has', async () => {
    const error = await compare({ bowler, lane, balls: [ball], finishes: [500, 7000] }).catch((each) => each);
    expect(error.faults.map(({ field }: source.Fault) => field)).toEqual(['surfaceGrit']);
  });

  test('options, all at once', async () => {
    const options = { seed: -1, workers: 1.5, pinSide: 'left', top: 11 } as never;
    const error = await recommend({ bowler, ball, lane, want }, options).catch((each) => each);
    expect(error).toBeInstanceOf(source.InputError);
    expect(error.faults.map(({ field }: source.Fault) => field).sort()).toEqual([
      'pinSide',
      'seed',
      'top',
      'workers',
    ]);
  });
});

describe('a signal ends a search', () => {
  const reason = new Error('enough');

  test('before it begins', async () => {
    let steps = 0;
    const options = { signal: AbortSignal.abort(reason), onProgress: () => void steps++ };
    await expect(recommend({ bowler, ball, lane, want }, options)).rejects.toBe(reason);
    await expect(judge({ bowler, ball, lane, want, layout: LAYOUT }, options)).rejects.toBe(reason);
    expect(steps).toBe(0);
  });

  test('at its next step', async () => {
    const leave = new AbortController();
    const stages: string[] = [];
    const onProgress = ({ stage }: source.Progress): void => {
      stages.push(stage);
      if (stages.length === 3) leave.abort(reason);
    };
    await expect(recommend({ bowler, ball, lane, want }, { signal: leave.signal, onProgress })).rejects.toBe(
      reason,
    );
    expect(stages).toHaveLength(3);
  });
});
