import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { run } from '../../../src/cli/run.js';
import { fakeTerminal } from '../../support/fake-terminal.js';

const CORE = new URL('../../../data/cores/own-solids.json', import.meta.url).pathname;

const core = async (...args: string[]) => {
  const terminal = fakeTerminal({ tty: false, env: {} });
  const code = await run(['core', ...args], terminal);
  return { code, out: terminal.written.out(), err: terminal.written.err() };
};

test('core: a core file and the demo ball that names it give the same drawing', async () => {
  const [file, ball] = [await core(CORE), await core('own-solids')];
  expect([file.code, ball.code]).toEqual([0, 0]);
  const drawing = (text: string): string => text.slice(text.indexOf('Through pin'), text.indexOf('Parts,'));
  expect(drawing(file.out)).toBe(drawing(ball.out));
  expect(drawing(file.out)).toContain('AAAA');
});

test('core: a ball of published numbers has no shape to draw, and is told so; exit 2', async () => {
  const { code, out, err } = await core('plain-high');
  expect([code, out]).toEqual([2, '']);
  expect(err).toContain('of which only published numbers are known');
  expect(err).toContain('no picture is drawn');
});

test('core --ball: published numbers of another ball stand beside those of the core, at its weight', async () => {
  const { code, out } = await core(CORE, '--ball', 'asymmetric-strong', '--json');
  expect(code).toBe(0);
  const answer = JSON.parse(out);
  expect(answer.published.rgIn).toBe(2.507);
  expect(answer.doubts.map(({ code: each }: { code: string }) => each)).toContain('core-against-file');
});

test('core: a core that makes no ball is drawn on stdout; stderr says why; exit 2', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'flarewise-core-'));
  const path = join(folder, 'mm.json');
  writeFileSync(path, readFileSync(CORE, 'utf8').replace('"unit": "in"', '"unit": "mm"'));
  const { code, out, err } = await core(path);
  expect(code).toBe(2);
  expect(out).toContain('No ball can be made with this core.');
  expect(err).toContain('With "in" it would be a usual core');
});

test('core: a layout needs the bowler whose holes it places; without a core nothing is done', async () => {
  expect((await core(CORE, '--layout', '70 x 4 1/2 x 30')).err).toContain('--bowler is missing');
  expect((await core()).err).toContain('the core is missing');
});
