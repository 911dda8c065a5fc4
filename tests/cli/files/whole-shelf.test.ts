import { execFileSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { readInterviewDraft } from '../../../src/cli/files/interview-draft.js';
import { otherKeptBalls, wholeShelf } from '../../../src/cli/files/whole-shelf.js';
import type { Terminal } from '../../../src/cli/terminal/terminal.js';
import { plainBall } from '../../support/problems.js';

const home = mkdtempSync(join(tmpdir(), 'flarewise-'));
mkdirSync(join(home, 'balls'));
writeFileSync(join(home, 'balls', 'sound.json'), JSON.stringify({ ...plainBall, name: 'Sound' }));
writeFileSync(join(home, 'balls', 'cut.json'), '{"schema": "flarewise/ball/1", "na');
writeFileSync(join(home, 'balls', 'foreign.json'), '[1, 2, 3]');
afterAll(() => rmSync(home, { recursive: true }));

/** A terminal that keeps what is said on stderr. */
function terminalOf(): { terminal: Terminal; said: string[] } {
  const said: string[] = [];
  const stderr = { write: (text: string) => said.push(text) };
  return { terminal: { env: { FLAREWISE_HOME: home }, stderr } as unknown as Terminal, said };
}

test('damaged records are named, once each, and the others still served beside the demos', () => {
  const { terminal, said } = terminalOf();
  const { balls } = wholeShelf(terminal);
  expect(balls[0]?.record.name).toBe('Sound');
  expect(balls.some(({ id }) => id === 'plain-medium')).toBe(true);
  expect(said).toHaveLength(2);
  expect(said.join('')).toMatch(/^ball\/cut is left out, for it is damaged: /m);
  expect(said.join('')).toMatch(/^ball\/foreign is left out, for it is damaged: /m);
});

test('so are the other balls that a recommendation compares with', () => {
  const { terminal, said } = terminalOf();
  expect(otherKeptBalls({ name: 'New' }, terminal).map(({ name }) => name)).toEqual(['Sound']);
  expect(said).toHaveLength(2);
  expect(otherKeptBalls({ name: 'Sound' }, terminal)).toEqual([]);
});

test.runIf(process.platform !== 'win32')('a left interview that is a pipe is none, and does not hang', () => {
  execFileSync('mkfifo', [join(home, 'interview-draft.json')]);
  expect(readInterviewDraft(home)).toBeNull();
});
