import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, afterEach, expect, test, vi } from 'vitest';
import { printFailure } from '../../src/cli/print/print-failure.js';
import { CARD_FILE, cardSchema, MODEL_FILE } from '../../src/regression/card.js';
import { openModel } from '../../src/regression/reaction-model.js';
import { TARGETS } from '../../src/regression/targets.js';
import { scratchFolder } from '../support/demo-files.js';
import { fakeTerminal } from '../support/fake-terminal.js';
import { runFit } from '../support/run-fit.js';
import { fitCommand } from './fit-command.js';

const scratch = scratchFolder();
const at = (...names: string[]): string => join(scratch.path, ...names);
afterAll(() => scratch.remove());
afterEach(() => {
  vi.doUnmock('onnxruntime-node');
});

test('folders that cannot be made are refused, both at once, before anything is rolled', async () => {
  scratch.write('file', 'as it was');
  const { code, err } = await runFit(['--data', at('file', 'a'), '--out', at('file')]);
  expect(code).toBe(2);
  expect(err).toMatch(/--data must be a folder.*\n.*--out must be a folder/);
});

test('without the runtime it says what is missing, before anything is rolled', async () => {
  vi.doMock('onnxruntime-node', () => {
    throw new Error('cannot find it');
  });
  const terminal = fakeTerminal();
  const sizes = { lanes: '20', epochs: '1', data: at('d'), out: at('o') };
  const error = await fitCommand({ ...sizes, color: false, input: false }, terminal).catch((each) => each);
  expect(printFailure(error, terminal)).toBe(2);
  expect(terminal.written.err()).toContain('The fitted regression needs the package onnxruntime-node');
  expect(readdirSync(at('d'))).toEqual([]);
});

test('a small fit by worker threads writes a model that opens, its card and its page, and says how it errs', async () => {
  const { code, out, err } = await runFit(
    ['--lanes', '20', '--epochs', '2', '--workers', '2', '--data', 'fit-data', '--out', 'fit-models'],
    { cwd: scratch.path },
  );
  expect(code, err).toBe(0);
  expect(out).toContain('Fitted on');
  const card = cardSchema.parse(JSON.parse(readFileSync(at('fit-models', CARD_FILE), 'utf8')));
  expect(out).toContain(`${card.data.fittedOn} shots of 20 lanes`);
  const model = await openModel(
    readFileSync(at('fit-models', MODEL_FILE)),
    card.fit.basis,
    card.outputs.length,
  );
  expect(model.arithmetic).toBe('runtime');
  const middle = Float32Array.from(card.inputs, ({ least, most }) => (least + most) / 2);
  const answered = await model.answer({ dims: [1, middle.length], values: middle });
  await model.close();
  expect([...answered].filter(Number.isFinite)).toHaveLength(TARGETS.length);
  expect(existsSync(at('fit-models', 'README.md'))).toBe(true);
});
