import { expect, test } from 'vitest';
import { progressLine } from '../../../src/cli/print/progress.js';
import { fakeTerminal } from '../../support/fake-terminal.js';

test('progressLine: in a pipe it is silent', async () => {
  const terminal = fakeTerminal();
  const line = await progressLine(terminal);
  line.show({ stage: 'shots', done: 3, total: 9 });
  line.end();
  expect(terminal.written.err() + terminal.written.out()).toBe('');
});

test('progressLine: on a terminal it names the stage on stderr, cleans up, and leaves cursor and wrapping alone', async () => {
  const terminal = fakeTerminal({ tty: true, columns: 80 });
  const line = await progressLine(terminal);
  line.show({ stage: 'shots', done: 0, total: 9 });
  line.show({ stage: 'worlds', done: 2, total: 4 });
  line.end();
  expect(terminal.written.err()).toContain('shots 0/9');
  expect(terminal.written.err()).toContain('worlds 2/4');
  expect(terminal.written.err()).not.toMatch(/\[\?(25|7)[hl]/);
  expect(terminal.written.out()).toBe('');
});
