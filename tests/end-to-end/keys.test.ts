import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, expect, test } from 'vitest';
import { CTRL_C, ENTER, ESCAPE, openSession, turnsOf } from '../support/pty-session.js';
import { smallMain } from '../support/run-cli.js';

/* The keys after an answer, in a real pseudo-terminal: each does what the menu says. */

const FLAGS = ['--bowler', 'average-right', '--lane', 'house-easy', '--hook-start', '4'];

/** What is typed into a line, in place of what stands there. */
const inPlace = (text: string): string => `\u0015${text}${ENTER}`;

const folder = mkdtempSync(join(tmpdir(), 'flarewise-keys-'));
let session: ReturnType<typeof openSession> | undefined;
afterEach(() => {
  if (session && !session.isOver()) session.kill();
});

/** A recommendation for a ball of the person's own, its menu on the screen. */
async function answered(size: { columns?: number; rows?: number } = {}) {
  const ball = join(folder, 'ball.json');
  const demo = JSON.parse(
    readFileSync(new URL('../../data/balls/plain-medium.json', import.meta.url), 'utf8'),
  );
  writeFileSync(ball, JSON.stringify({ ...demo, name: 'Blue one' }));
  session = openSession(['recommend', ...FLAGS, '--ball', ball], {
    main: smallMain(),
    cwd: folder,
    ...size,
  });
  const turn = turnsOf(session);
  await turn(/Layout for [\s\S]*Enter: done/);
  return { turn, type: session.type, text: session.text, exit: session.exit };
}

test('s writes a sheet, r a web page; the name offered is taken, and nothing is written over without leave', async () => {
  const { turn, type, exit } = await answered();
  type('s');
  await turn(/Work sheet for which layout\?/, ENTER);
  await turn(/which file\?[\s\S]*blue-one\.pdf/, ENTER);
  await turn(/Written: (\S+)\.pdf[\s\S]*Enter: done/, 's');
  const sheet = join(folder, 'average-right-hander-blue-one.pdf');
  expect(readFileSync(sheet).subarray(0, 5).toString()).toBe('%PDF-');
  writeFileSync(sheet, 'mine');
  await turn(/which layout\?/, inPlace('70x4½x30'));
  await turn(/which file\?/, ENTER);
  await turn(/is there already\. Replace it\?[\s\S]*> No/, ENTER);
  await turn(/which file\?/, inPlace('no-such-folder/x.pdf'));
  await turn(/folder\s+that does not exist/, inPlace('other.doc'));
  await turn(/must end in/, inPlace('other.svg'));
  await turn(/Written: other\.svg[\s\S]*Enter: done/, 'r');
  expect(readFileSync(sheet, 'utf8')).toBe('mine');
  expect(readFileSync(join(folder, 'other.svg'), 'utf8')).toMatch(/^<svg/);
  await turn(/web page, to which file\?/, ENTER);
  await turn(/Written: (\S+)\.html[\s\S]*Enter: done/, 'q');
  expect(readFileSync(join(folder, 'average-right-hander-blue-one.html'), 'utf8')).toContain(
    '<!doctype html>',
  );
  expect(await exit).toMatchObject({ exitCode: 0 });
});

test('j judges another layout, typed in any form; a text that is none is refused and can be mended', async () => {
  const { turn, type, exit } = await answered();
  type('j');
  await turn(/Judge which layout\?/, `70 x 4${ENTER}`);
  await turn(/must be three numbers/, `4,5 by 3 3/8 by 2${ENTER}`);
  await turn(/Second opinion for [\s\S]*VERDICT[\s\S]*LEGAL[\s\S]*Enter: done/, 'j');
  await turn(/Judge which layout\?/, ESCAPE);
  await turn(/Enter: done/, CTRL_C);
  expect(await exit).toMatchObject({ exitCode: 0 });
});

test('k keeps under names what has no id, and gives the next command with ids; other keys do nothing, ? says what each is', async () => {
  const { turn, type, exit } = await answered();
  type('z');
  type('?');
  await turn(/x: what was searched[\s\S]*k: save bowler, ball and lane[\s\S]*Enter: done/, 'k');
  await turn(/Name to save this ball under\?[\s\S]*\(Blue one\)/, `Red${ENTER}`);
  await turn(
    /Kept as ball\/red\.[\s\S]*--bowler average-right --ball red --lane house-easy[\s\S]*Enter: done/,
    'k',
  );
  await turn(/Name to save this ball under\?/, ESCAPE);
  await turn(/Not saved: ball\.[\s\S]*Enter: done/, ESCAPE);
  expect(await exit).toMatchObject({ exitCode: 0 });
});

test('answer and menu fit a terminal of 24 lines, at 60 and 80 columns', async () => {
  for (const columns of [60, 80]) {
    const { turn, text, exit } = await answered({ columns, rows: 24 });
    const shown = text().slice(text().lastIndexOf('Layout for ')).trimEnd();
    expect(shown.split('\n').length, shown).toBeLessThan(24);
    expect(shown).toMatch(/DRILL[\s\S]*HOW SURE[\s\S]*s: sheet[\s\S]*all\s+Enter: done$/);
    await turn(/^/, 'q');
    expect(await exit).toMatchObject({ exitCode: 0 });
  }
});

test('keys pressed at once are all heard, those behind a question by the question', async () => {
  const { turn, type, exit } = await answered();
  type('wm');
  await turn(/Contribution of each layout number[\s\S]*Enter: done[\s\S]*Marks to lay out[\s\S]*Enter: done/);
  type(`s${ESCAPE}`);
  await turn(/Enter: done/, 'q');
  expect(await exit).toMatchObject({ exitCode: 0 });
});

test('a section opens by its key as often as pressed', async () => {
  const { turn, type, exit } = await answered();
  type('w');
  await turn(/Contribution of each layout number[\s\S]*Enter: done/, 'm');
  await turn(/Marks to lay out[\s\S]*Enter: done/, ENTER);
  expect(await exit).toMatchObject({ exitCode: 0 });
  rmSync(folder, { recursive: true, force: true });
  expect(existsSync(folder)).toBe(false);
});
