import { stripVTControlCharacters } from 'node:util';
import { expect, test } from 'vitest';
import { progressLine } from '../../../src/cli/print/progress.js';
import { UNITS } from '../../../src/report/text/display-units.js';
import { fakeTerminal } from '../../support/fake-terminal.js';

const LOOK = { text: '45 x 4 1/2 x 30', hookStartFt: 38.2 };
const PAGE = { units: UNITS.trade, ascii: false };

test('progressLine: in a pipe it is silent', async () => {
  const terminal = fakeTerminal();
  const line = await progressLine(terminal);
  line.look(LOOK, PAGE);
  line.show({ stage: 'layouts', done: 3, total: 9 });
  line.end();
  expect(terminal.written.err() + terminal.written.out()).toBe('');
});

test('progressLine: on a terminal it names the stage on stderr, cleans up, and leaves cursor and wrapping alone', async () => {
  const terminal = fakeTerminal({ tty: true, columns: 80 });
  const line = await progressLine(terminal);
  line.show({ stage: 'shots', done: 0, total: 9 });
  line.show({ stage: 'worlds', done: 2, total: 4 });
  line.end();
  expect(terminal.written.err()).toContain('shots 0 %');
  expect(terminal.written.err()).toContain('Comparing under plausible conditions 50 %');
  expect(terminal.written.err()).not.toMatch(/\[\?(25|7)[hl]/);
  expect(terminal.written.out()).toBe('');
});

test('progressLine: a first look stands above the bar, marked as such, and goes with it', async () => {
  const terminal = fakeTerminal({ tty: true, columns: 80 });
  const line = await progressLine(terminal);
  line.look(LOOK, PAGE);
  const shown = terminal.written.err();
  expect(shown.replace(/\s+/g, ' ').trim()).toBe(
    'First look, by the regression alone: about 45 x 4 1/2 x 30, hook start near 38 ft. Working it out…',
  );
  const lines = shown.trimEnd().split('\n');
  expect(lines.length).toBe(2);
  line.show({ stage: 'layouts', done: 1, total: 9 });
  line.end();
  expect(terminal.written.err()).toMatch(/\[2F.\[J$/s); // up two lines, and all below is cleared
  expect(terminal.written.out()).toBe('');
});

test('progressLine: a first look takes the place of a bar that stands', async () => {
  const terminal = fakeTerminal({ tty: true, columns: 80 });
  const line = await progressLine(terminal);
  line.show({ stage: 'logged shots', done: 0, total: 1 });
  const before = terminal.written.err().length;
  line.look(LOOK, PAGE);
  line.show({ stage: 'layouts', done: 1, total: 9 });
  line.end();
  const [cleared, , after] = terminal.written
    .err()
    .slice(before)
    .split(/(First look[\s\S]*?Working it out…)/);
  expect(cleared).toContain('\u001b['); // the bar's line is taken away first
  expect(after).toContain('Trying layouts 11 %');
});

test('progressLine: a first look in metric units and ASCII signs', async () => {
  const terminal = fakeTerminal({ tty: true, columns: 200 });
  (await progressLine(terminal)).look(LOOK, { units: UNITS.metric, ascii: true });
  expect(terminal.written.err()).toBe(
    'First look, by the regression alone: about 45 x 4 1/2 x 30, hook start near 11.6 m. Working it out...\n',
  );
});

test('progressLine: on a narrow terminal a stage takes one line', async () => {
  const terminal = fakeTerminal({ tty: true, columns: 40 });
  const line = await progressLine(terminal);
  line.show({ stage: 'worlds', done: 4, total: 4 });
  expect(stripVTControlCharacters(terminal.written.err()).trimEnd().length).toBeLessThan(40);
  line.end();
});
